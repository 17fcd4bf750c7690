/** Flammable charges, gas in a room, carbon dioxide, exposure limits: values from outside the project. */
import type { CheckRow } from './check-row.ts';

const BY_HAND = 'arithmetic by hand on the standard’s limits';
const MDA = 'mda.state.mn.us, anhydrous ammonia, read 2026-11';
const ETB = 'engineeringtoolbox.com, gases, dangerous concentration levels, read 2026-11';

const FLAMMABLE: readonly CheckRow[] = [
  {
    name: 'flammableChargeLimit',
    inputs: { refrigerant: 'R-290', rule: 'usListed', cabinet: 'open' },
    gives: { value: 500, unit: 'g' },
    within: 0.001,
    source: 'achrnews.com/articles/166073, service tips for R-290 equipment',
    standing: 'published',
  },
  {
    name: 'flammableChargeLimit',
    inputs: { refrigerant: 'R-290', rule: 'before2019', cabinet: 'closed' },
    gives: { value: 150, unit: 'g' },
    within: 0.001,
    source: 'refrige.com, January 2012: three hydrocarbons listed, 150 g',
    standing: 'published',
  },
  {
    name: 'flammableChargeLimit',
    inputs: { refrigerant: 'R-290', rule: 'iec2019', cabinet: 'closed' },
    gives: { value: 500, unit: 'g' },
    within: 50,
    source:
      'ior.org.uk, charge size limits increased: about 500 g of R-290 (13 × LFL, which is 494)',
    standing: 'published',
  },
  {
    name: 'flammableChargeLimit',
    inputs: { refrigerant: 'R-455A', rule: 'iec2019', cabinet: 'open' },
    gives: { value: 1200, unit: 'g' },
    within: 0.001,
    source: 'ior.org.uk, charge size limits increased: 1.2 kg for A2 and A2L',
    standing: 'published',
  },
  {
    name: 'flammableChargeLimit',
    inputs: { refrigerant: 'R-404A', rule: 'iec2019', cabinet: 'open' },
    refused: 'ruleDoesNotApply',
    source: 'ANSI/ASHRAE Standard 34: R-404A is A1, from memory',
    standing: 'from memory',
  },
];

const AIR: readonly CheckRow[] = [
  ...(
    [
      ['R-134a', 210, 50_400],
      ['R-290', 9.5, 5270],
      ['R-32', 77, 36_200],
      ['R-744', 54, 30_000],
    ] as const
  ).map(([refrigerant, gPerM3, ppm]): CheckRow => ({
    name: 'shareOfAir',
    inputs: { refrigerant, concentration: `${gPerM3}g/m3` },
    gives: { value: ppm, unit: 'ppm' },
    within: 0.002 * ppm,
    source:
      'g/m³ over molar mass times 24,465 by hand; the ppm listed by ANSI/ASHRAE Standard 34, from memory, agree',
    standing: 'computed',
  })),
  ...(
    [
      // Refrigerant, pounds for a thousand cubic feet, verdict.
      ['R-134a', 13.1, 'within'],
      ['R-410A', 26.2, 'within'],
      ['R-290', 0.6, 'over'],
      ['R-32', 4.9, 'over'],
    ] as const
  ).map(([refrigerant, pounds, verdict]): CheckRow => ({
    name: 'roomConcentration',
    inputs: { refrigerant, charge: `${pounds}lb`, volume: '1000ft3' },
    gives: { value: pounds, unit: 'lbPerMcf' },
    within: 0.001,
    findings: { verdict },
    source: `${BY_HAND}: 210, 420, 9.5 and 77 g/m³ are 13.1, 26.2, 0.59 and 4.8 lb/Mcf`,
    standing: 'computed',
  })),
  {
    name: 'roomConcentration',
    inputs: { refrigerant: 'R-134a', charge: '5kg', volume: '40m3', occupancy: 'institutional' },
    gives: { value: 125, unit: 'gPerM3' },
    within: 0.001,
    findings: { verdict: 'over' },
    source: 'ASHRAE 15, half the limit in institutions, from memory: 125 against 105 g/m³',
    standing: 'from memory',
  },
  {
    name: 'roomConcentration',
    inputs: { refrigerant: 'R-290', charge: '150g', volume: '20m3' },
    gives: { value: 7.5, unit: 'gPerM3' },
    within: 0.001,
    findings: { verdict: 'within' },
    source: `${BY_HAND}: 150 g in 20 m³ against a quarter of 38 g/m³`,
    standing: 'computed',
  },
];

const EXPOSURE: readonly CheckRow[] = [
  ...(
    [
      ['R-717', 20, 0, 'none', MDA],
      ['R-717', 25, 25, 'recommended', MDA],
      [
        'R-717',
        299,
        50,
        'permissible',
        'sigueigerem.com, ammonia exposure control plan: PEL 50 ppm',
      ],
      ['R-717', 300, 300, 'immediateDanger', MDA],
      [
        'R-717',
        160_000,
        150_000,
        'flammable',
        'sigueigerem.com, ammonia exposure control plan: LFL 15 to 16 %',
      ],
      ['R-744', 45_000, 40_000, 'immediateDanger', ETB],
      ['R-744', 32_000, 30_000, 'shortTerm', `${ETB}: 30 in a thousand tolerable below an hour`],
    ] as const
  ).map(([refrigerant, ppm, level, passed, source]): CheckRow => ({
    name: 'gasExposure',
    inputs: { refrigerant, concentration: `${ppm}ppm` },
    gives: { value: level, unit: 'ppm' },
    within: 0.001,
    findings: { passed },
    source,
    standing: 'published',
  })),
];

const CARBON_DIOXIDE: readonly CheckRow[] = [
  ...(
    [
      // psig, °F, state.
      [55, -60, 'noLiquid'],
      [1000, 95, 'transcritical'],
      [900, 70, 'liquid'],
      [700, 70, 'vapour'],
    ] as const
  ).map(([psig, degF, state]): CheckRow => ({
    name: 'carbonDioxideState',
    inputs: { pressure: `${psig}psi`, temperature: `${degF}F` },
    gives: { value: psig + 14.696 - 75.124, unit: 'psi' },
    within: 0.06,
    findings: { state },
    source:
      'freezeoil.com, liquid carbon dioxide: 518 kPa and −56.6 °C, 7.38 MPa and 31.1 °C; at 70 °F 853 psia by CoolProp 8.0.1dev',
    standing: 'published',
  })),
  {
    name: 'carbonDioxideState',
    inputs: { pressure: '4.2bar', temperature: '-56C' },
    gives: { value: 0.03, unit: 'bar' },
    within: 0.05,
    source:
      'a compressor maker’s article on R-744 (copy at evrealestatestlouis.com): the triple point at 4.2 bar and −56.6 °C',
    standing: 'published',
  },
];

export const SAFETY_CHECKS: readonly CheckRow[] = [
  ...FLAMMABLE,
  ...AIR,
  ...EXPOSURE,
  ...CARBON_DIOXIDE,
];
