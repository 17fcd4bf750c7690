/** Electrical values from outside: makers' sheets and manuals, standards as cited, trade articles. */
import { checksOf } from './checks-of.ts';
import type { Row } from './checks-of.ts';
import type { CheckRow, RefusalCheck } from './check-row.ts';

const BY_HAND = 'arithmetic by hand';

const volts = (ab: number, bc: number, ca: number) => ({
  ab: `${ab}V`,
  bc: `${bc}V`,
  ca: `${ca}V`,
});

const VOLTAGE_IMBALANCE = checksOf('voltageImbalance', [
  {
    inputs: volts(224, 231, 226),
    gives: { value: 1.76, unit: 'percent' },
    within: 0.005,
    source: 'a rooftop maker’s RGH072 sheet 509 01 3808 00, page 30',
    standing: 'published',
  },
  {
    inputs: volts(452, 464, 455),
    gives: { value: 1.53, unit: 'percent' },
    within: 0.005,
    source: 'a rooftop maker’s 50JZ product data, page 22',
    standing: 'published',
  },
  {
    inputs: volts(221, 230, 227),
    gives: { value: 2.2, unit: 'percent' },
    within: 0.05,
    source: 'a condenser maker’s CXRC-SVX01J-EN, page 20: above the 2 % it allows',
    standing: 'published',
  },
  {
    inputs: volts(235, 236, 230),
    gives: { value: 1.6, unit: 'percent' },
    within: 0.05,
    source: 'an air handler maker’s PD manual IOM-39, page 17',
    standing: 'published',
  },
  {
    inputs: volts(480, 476, 472),
    gives: { value: 0.84, unit: 'percent' },
    within: 0.005,
    source: 'industrialmonitordirect.com, Industrial voltage unbalance: 4 V of 476 V',
    standing: 'published',
  },
  {
    inputs: volts(462, 463, 455),
    gives: { value: 1.1, unit: 'percent' },
    within: 0.05,
    source: 'NEMA’s own example, 460 V average and 5 V off, as cited by eng-tips.com thread 481112',
    standing: 'published',
  },
]);

const amps = (one: number, two: number, three: number) => ({
  one: `${one}A`,
  two: `${two}A`,
  three: `${three}A`,
});
const after = (one: number, two: number, three: number) => ({
  afterOne: `${one}A`,
  afterTwo: `${two}A`,
  afterThree: `${three}A`,
});

const HOOKUPS = 'a pump maker’s 6S series manual, page 5';
const HOOKUPS_230 = 'a pump maker’s SP series manual, page 43';

const CURRENTS = [
  ...checksOf('currentImbalance', [
    {
      inputs: amps(51, 46, 53),
      gives: { value: 8, unit: 'percent' },
      within: 0.05,
      source: `${HOOKUPS}: hookup 1`,
      standing: 'published',
    },
    {
      inputs: amps(50, 49, 51),
      gives: { value: 2, unit: 'percent' },
      within: 0.05,
      source: `${HOOKUPS}: hookup 3`,
      standing: 'published',
    },
    {
      inputs: amps(25.5, 23, 26.5),
      gives: { value: 8, unit: 'percent' },
      within: 0.05,
      source: `${HOOKUPS_230}: hookup 1`,
      standing: 'published',
    },
    {
      inputs: amps(25, 24, 26),
      gives: { value: 4, unit: 'percent' },
      within: 0.05,
      source: `${HOOKUPS_230}: hookup 2`,
      standing: 'published',
    },
  ]),
  ...checksOf('imbalanceOrigin', [
    {
      inputs: { ...amps(51, 46, 53), ...after(50, 49, 51) },
      gives: { value: 2, unit: 'percent' },
      findings: { origin: 'supply' },
      within: 0.05,
      source: `${HOOKUPS}: the same line highest at every hookup is the power source`,
      standing: 'published',
    },
    {
      inputs: { ...amps(51, 46, 53), ...after(53, 51, 46) },
      gives: { value: 8, unit: 'percent' },
      findings: { origin: 'motor' },
      within: 0.05,
      source:
        'the same currents moved on by one line, by the rule of ecmweb.com, Unbalanced current',
      standing: 'computed',
    },
  ]),
];

const IMBALANCE_EFFECTS = [
  ...checksOf('imbalanceHeating', [
    {
      inputs: { imbalance: '3.5%' },
      gives: { value: 25, unit: 'percent' },
      within: 0.5,
      source: 'empoweringmotors.com, Voltage unbalance: 3.5 % raises the rise by 25 %',
      standing: 'published',
    },
  ]),
  ...checksOf('imbalanceDerating', [
    {
      inputs: { imbalance: '1%' },
      gives: { value: 100, unit: 'percent' },
      within: 0.5,
      source: 'xcela.ca, Voltage imbalance: motors carry rated load up to 1 %',
      standing: 'published',
    },
    {
      inputs: { imbalance: '5%' },
      gives: { value: 75, unit: 'percent' },
      within: 1,
      source: 'NEMA MG 1 figure 14-1',
      standing: 'from memory',
    },
  ]),
];

const NOT_OPERATED: RefusalCheck = {
  name: 'imbalanceDerating',
  inputs: { imbalance: '5.5%' },
  refused: 'ruleDoesNotApply',
  source: 'xcela.ca, Voltage imbalance: operation above 5 % is not recommended',
  standing: 'published',
};

const UTILIZATION = 'a maker’s CL series manual, page 22, table 4';

const SUPPLY = checksOf('supplyVoltage', [
  ...(
    [
      // System, acceptable low and high, operating low and high.
      [120, 108, 126, 104, 127],
      [240, 216, 252, 208, 254],
      [277, 249, 291, 240, 293],
      [480, 432, 504, 416, 508],
      [600, 540, 630, 520, 635],
    ] as const
  ).map(([nominal, low, high, toleratedLow, toleratedHigh]): Row => ({
    inputs: { nominal: `${nominal}V`, point: 'utilization' },
    gives: { value: low, unit: 'V' },
    also: { high, toleratedLow, toleratedHigh },
    within: 0.5,
    source: `${UTILIZATION}: ${nominal} V system`,
    standing: 'published',
  })),
  {
    inputs: { nominal: '120V', point: 'service', measured: '112V' },
    gives: { value: 114, unit: 'V' },
    also: { high: 126, toleratedLow: 110, toleratedHigh: 127 },
    findings: { range: 'b' },
    within: 0.5,
    source: 'ANSI C84.1, table 1',
    standing: 'from memory',
  },
]);

const ROOFTOP = 'a rooftop maker’s CHS072 sheet, table 8';

const MOTOR_VOLTAGE = checksOf('motorVoltage', [
  {
    inputs: { rated: '208V', ratedHigh: '230V' },
    gives: { value: 187, unit: 'V' },
    also: { high: 253 },
    within: 0.5,
    source: `${ROOFTOP}: 208/230 V, 187 to 253`,
    standing: 'published',
  },
  {
    inputs: { rated: '575V' },
    gives: { value: 518, unit: 'V' },
    also: { high: 633 },
    within: 0.5,
    source: `${ROOFTOP}: 575 V, 518 to 633`,
    standing: 'published',
  },
  {
    inputs: { rated: '230V', measured: '198V' },
    gives: { value: 207, unit: 'V' },
    also: { high: 253 },
    findings: { verdict: 'low' },
    within: 0.5,
    source: `${BY_HAND}: a 230 V motor on 208 V less 5 %`,
    standing: 'computed',
  },
]);

const POWER = [
  ...checksOf('power', [
    {
      inputs: { voltage: '415V', current: '20A', powerFactor: '1', phases: 'three' },
      gives: { value: 14400, unit: 'W' },
      within: 50,
      source: 'engineeringtoolbox.com/three-phase-electrical-d_888: 14.4 kW',
      standing: 'published',
    },
    {
      inputs: { voltage: '240V', current: '18.75A', powerFactor: '1', phases: 'single' },
      gives: { value: 4500, unit: 'W' },
      within: 0.5,
      source:
        'a water-heater maker’s service handbook (manualsdump.com 51783, page 3): 18.75 A, 240 V',
      standing: 'published',
    },
    {
      inputs: { voltage: '460V', current: '10A', powerFactor: '85%', phases: 'three' },
      gives: { value: 6772, unit: 'W' },
      within: 0.5,
      source: `${BY_HAND}: √3 × 460 × 10 × 0.85`,
      standing: 'computed',
    },
  ]),
];

const MULTI_MOTOR = 'a condensing-unit maker’s 569C sheet, table 4';
const WHOLE_AMPS = `${ROOFTOP}, rounded up to the whole amp`;
const FANS = 'a condenser maker’s CXRC-SVX01J-EN, table 5';

const AMPACITY = checksOf(
  'minimumCircuitAmpacity',
  (
    [
      // Largest, the rest, printed, how far off its rounding lets it be, where.
      [7.6, 1.9, 11.4, 0.05, MULTI_MOTOR],
      [14.7, 1.9, 20.3, 0.05, MULTI_MOTOR],
      [10.8, 1.9, 15.4, 0.05, MULTI_MOTOR],
      [28.8, 1.5, 37.5, 0.05, MULTI_MOTOR],
      [19.6, 2 * 1.5, 28, 1, WHOLE_AMPS],
      [25.2, 2 * 1.5, 35, 1, WHOLE_AMPS],
      [15.9, 15.6 + 2 * 1.5, 39, 1, `${WHOLE_AMPS}; two compressors`],
      [4.1, 3 * 4.1, 17.4, 0.05, `${FANS}: four fans`],
      [4.1, 5 * 4.1, 25.6, 0.05, `${FANS}: six fans`],
      [4.1, 7 * 4.1, 33.8, 0.05, `${FANS}: eight fans`],
    ] as const
  ).map(([largest, others, value, within, source]): Row => ({
    inputs: { largest: `${largest}A`, others: `${others.toFixed(1)}A` },
    gives: { value, unit: 'A' },
    within,
    source,
    standing: 'published',
  })),
);

const RATED_LOAD = checksOf('ratedLoadCurrent', [
  {
    inputs: { maximumContinuous: '31.2A' },
    gives: { value: 20, unit: 'A' },
    also: { by144: 21.67, by140: 22.29 },
    within: 0.005,
    source: `${BY_HAND}: by 1.56, 1.44 and 1.4`,
    standing: 'computed',
  },
]);

const DOWN_RATED = 'studylib.net/doc/18163254, Down-rating electrical heating elements';

const HEATERS = [
  ...checksOf('heaterPower', [
    {
      // 240² / 5,500 Ω gives 5,500 W at 240 V.
      inputs: { voltage: '208V', resistance: `${(240 ** 2 / 5500).toFixed(6)}ohm` },
      gives: { value: 4131, unit: 'W' },
      within: 0.5,
      source: `${DOWN_RATED}: 5,500 W at 240 V is 4,131 W at 208 V`,
      standing: 'published',
    },
    {
      inputs: { voltage: '208V', resistance: '12.8ohm' },
      gives: { value: 3380, unit: 'W' },
      within: 0.5,
      source: 'waterheaterrescue.com thread 79: 4,500 W at 240 V is 3,375 to 3,380 W at 208 V',
      standing: 'published',
    },
  ]),
  ...checksOf('heaterResistance', [
    {
      inputs: { voltage: '240V', power: '5500W' },
      gives: { value: 10.47, unit: 'ohm' },
      within: 0.005,
      source: `${BY_HAND}: 240² / 5,500`,
      standing: 'computed',
    },
  ]),
  ...checksOf('heaterResistanceByAmps', [
    {
      inputs: { voltage: '208V', current: '16.25A' },
      gives: { value: 12.8, unit: 'ohm' },
      within: 0.005,
      source: `${BY_HAND}: 208 / 16.25`,
      standing: 'computed',
    },
  ]),
  ...checksOf('heaterCurrent', [
    {
      inputs: { voltage: '208V', resistance: '12.8ohm' },
      gives: { value: 16.25, unit: 'A' },
      within: 0.005,
      source: `${BY_HAND}: 208 / 12.8`,
      standing: 'computed',
    },
  ]),
];

export const ELECTRICAL_CHECKS: readonly CheckRow[] = [
  ...VOLTAGE_IMBALANCE,
  ...CURRENTS,
  ...IMBALANCE_EFFECTS,
  NOT_OPERATED,
  ...SUPPLY,
  ...MOTOR_VOLTAGE,
  ...POWER,
  ...AMPACITY,
  ...RATED_LOAD,
  ...HEATERS,
];
