/** Pressure tests, vacuum, moisture, recovery: values worked or printed outside the project. */
import type { CheckRow } from './check-row.ts';

const SPAN =
  'nitrogen at constant density by CoolProp 8.0.1dev (tests/checks/reference/nitrogen.json)';
const KPA_PER_MICRON = 0.0001333224;
const PERRY = 'Perry’s Handbook, 9th edition, table 2-135, saturated water';
const OHIO =
  'people.ohio.edu/trembly, saturation properties for steam, temperature table (Moran and Shapiro data)';
const CFR = '40 CFR 82.156, table 1, as printed at d1tvxue8o4w0fl.cloudfront.net, read 2026-11';
const DEEP_VACUUM = 'hvacspecialists.info, Deep vacuum dehydration method';

const micronsOf = (kPa: number): number => kPa / KPA_PER_MICRON;

const NITROGEN: readonly CheckRow[] = (
  [
    // psig and °F before, °F after, psig after.
    [150, 80, 70, 146.8682],
    [300, 75, 55, 287.6247],
    [500, 95, 60, 465.035],
    [150, 60, 90, 159.7771],
    [300, 40, 100, 340.0183],
    [600, 70, 40, 561.6271],
  ] as const
).map(([pressure, from, to, after]): CheckRow => ({
  name: 'nitrogenPressure',
  inputs: { pressure: `${pressure}psi`, from: `${from}F`, to: `${to}F` },
  gives: { value: after, unit: 'psi' },
  within: 0.0002 * (after + 14.7),
  source: `${SPAN}; 0.02 % is what the virial form states`,
  standing: 'computed',
}));

const TESTS: readonly CheckRow[] = [
  {
    name: 'nitrogenTest',
    inputs: { pressure: '150psi', from: '95F', to: '75F', found: '144psi' },
    gives: { value: 0.08, unit: 'psi' },
    within: 0.03,
    findings: { verdict: 'holds' },
    source:
      'knowt.com, Gas Pressure Temperature Relationship: 150 psig at 95 °F is about 144 at 75; real nitrogen 143.92',
    standing: 'computed',
  },
  {
    name: 'nitrogenTest',
    inputs: { pressure: '150psi', from: '80F', to: '70F', found: '140psi' },
    gives: { value: -6.87, unit: 'psi' },
    within: 0.03,
    findings: { verdict: 'leaks' },
    source: `${SPAN}: 146.87 expected`,
    standing: 'computed',
  },
  {
    name: 'nitrogenTest',
    inputs: { pressure: '150psi', from: '80F', to: '70F', found: '150psi' },
    gives: { value: 3.13, unit: 'psi' },
    within: 0.03,
    findings: { verdict: 'rises' },
    source: `${SPAN}: 146.87 expected; the gas never cooled`,
    standing: 'computed',
  },
  {
    name: 'nitrogenPressure',
    inputs: { pressure: '1200psi', from: '80F', to: '70F' },
    refused: 'aboveLimit',
    source: 'beyond the points that the virial form was fitted to',
    standing: 'computed',
  },
];

const WATER: readonly CheckRow[] = [
  ...(
    [
      // K and MPa, to the last digit printed.
      [280, 0.000992, 5e-7],
      [310, 0.006231, 5e-7],
      [320, 0.010546, 5e-7],
      [330, 0.017213, 5e-7],
      [350, 0.041682, 5e-7],
      [360, 0.062194, 5e-7],
      [380, 0.12885, 5e-6],
    ] as const
  ).map(([kelvin, MPa, half]): CheckRow => ({
    name: 'waterVapourPressure',
    inputs: { temperature: `${(kelvin - 273.15).toFixed(2)}C` },
    gives: { value: micronsOf(1000 * MPa), unit: 'micron' },
    // The printed digit, and what the auxiliary equation is off IAPWS-95: 0.006 % at most.
    within: micronsOf(1000 * (half + 6e-5 * MPa)),
    source: `${PERRY}: ${MPa} MPa at ${kelvin} K`,
    standing: 'published',
  })),
  ...(
    [
      [10, 0.00123],
      [20, 0.00234],
      [25, 0.00317],
      [40, 0.00739],
      [45, 0.0096],
      [70, 0.0312],
      [80, 0.04741],
    ] as const
  ).map(([tempC, MPa]): CheckRow => ({
    name: 'waterVapourPressure',
    inputs: { temperature: `${tempC}C` },
    gives: { value: micronsOf(1000 * MPa), unit: 'micron' },
    within: micronsOf(0.005 + 0.06 * MPa),
    source: `${OHIO}: ${MPa} MPa at ${tempC} °C`,
    standing: 'published',
  })),
  {
    name: 'waterVapourPressure',
    inputs: { temperature: '-43.15C' },
    gives: { value: 67.11, unit: 'micron' },
    within: 0.005,
    findings: { phase: 'ice' },
    source: 'IAPWS R14-08(2011), table 3: 8.94735 Pa at 230 K',
    standing: 'published',
  },
  ...(
    [
      // °C and kPa by Murphy and Koop 2005, equation 7.
      [-60, 0.001081771],
      [-40, 0.01284428],
      [-20, 0.1032525],
      [-10, 0.2598922],
    ] as const
  ).map(([tempC, kPa]): CheckRow => ({
    name: 'waterVapourPressure',
    inputs: { temperature: `${tempC}C` },
    gives: { value: micronsOf(kPa), unit: 'micron' },
    within: micronsOf(0.0004 * kPa),
    findings: { phase: 'ice' },
    source: 'Murphy and Koop 2005, equation 7, another laboratory’s fit, 0.04 % apart at −60 °C',
    standing: 'computed',
  })),
  ...(
    [
      [2000, 14.5],
      [1000, 0.8],
      [500, -12.1],
      [250, -24.3],
    ] as const
  ).map(([micron, degF]): CheckRow => ({
    name: 'waterBoilingPoint',
    inputs: { pressure: `${micron}micron` },
    gives: { value: degF, unit: 'degF' },
    within: 0.06,
    findings: { phase: 'ice' },
    source: 'Murphy and Koop 2005 solved for the frost point',
    standing: 'computed',
  })),
  {
    name: 'waterBoilingPoint',
    inputs: { pressure: '4.6mmHg' },
    gives: { value: 32, unit: 'degF' },
    within: 0.28,
    source: 'ASHRAE Journal 46(4), vacuum cooling: 32 °F at 4.6 mmHg absolute, to 0.05 mmHg',
    standing: 'published',
  },
  {
    name: 'waterBoilingPoint',
    inputs: { pressure: '7.6mmHg' },
    gives: { value: 45, unit: 'degF' },
    within: 0.5,
    source: 'ASHRAE Journal 46(4), vacuum cooling: 45 °F at 7.6 mmHg absolute',
    standing: 'published',
  },
  {
    name: 'waterBoilingPoint',
    inputs: { pressure: '-10inHg' },
    gives: { value: 192, unit: 'degF' },
    within: 0.5,
    source: 'physicsforums.com/threads/401379: at 10 inHg of vacuum water boils at 192 °F',
    standing: 'published',
  },
];

const VACUUM: readonly CheckRow[] = [
  {
    name: 'vacuumReading',
    inputs: { pressure: '500micron' },
    gives: { value: 500, unit: 'micron' },
    within: 0.01,
    findings: { dial: 'cannotShow' },
    source: `${DEEP_VACUUM}: 500 micron is 29.92 inHg, off the end of any dial`,
    standing: 'published',
  },
  {
    name: 'vacuumReading',
    inputs: { pressure: '-10inHg' },
    gives: { value: micronsOf(9.78 * 6.894757), unit: 'micron' },
    within: micronsOf(0.005 * 6.894757),
    findings: { dial: 'shows' },
    source: 'arithmetic by hand: 10 inHg of vacuum leave 9.78 psia',
    standing: 'computed',
  },
  {
    name: 'vacuumReading',
    inputs: { pressure: '-30.5inHg' },
    refused: 'impossibleVacuum',
    source: 'a standard atmosphere is 29.92 inHg: nothing lies below it',
    standing: 'published',
  },
  ...(
    [
      // °F and micron.
      [50, 9212],
      [60, 13_260],
      [70, 18_790],
      [80, 26_240],
      [90, 36_150],
      [100, 49_150],
    ] as const
  ).map(([degF, micron]): CheckRow => ({
    name: 'dryingVacuum',
    inputs: { pressure: '500micron', coldestTemp: `${degF}F` },
    gives: { value: micron, unit: 'micron' },
    within: 0.0006 * micron,
    findings: { moisture: 'sublimes' },
    source: 'IAPWS-95 by CoolProp 8.0.1dev, to four figures',
    standing: 'computed',
  })),
  {
    name: 'dryingVacuum',
    inputs: { pressure: '10000micron', coldestTemp: '40F' },
    gives: { value: 6296, unit: 'micron' },
    within: 4,
    findings: { moisture: 'stays' },
    source: 'IAPWS-95 by CoolProp 8.0.1dev',
    standing: 'computed',
  },
];

const DECAY: readonly CheckRow[] = [
  {
    name: 'vacuumDecay',
    inputs: { readings: '0min:500micron,5min:2500micron,10min:4500micron,15min:6500micron' },
    gives: { value: 6000, unit: 'micron' },
    within: 0.01,
    findings: { verdict: 'leak' },
    source: `${DEEP_VACUUM}: rises and goes on rising without leveling off: a leak`,
    standing: 'published',
  },
  {
    name: 'vacuumDecay',
    inputs: { readings: '0min:500micron,5min:1400micron,10min:1550micron,15min:1560micron' },
    gives: { value: 1060, unit: 'micron' },
    within: 0.01,
    findings: { verdict: 'moistureOrOffGassing' },
    source: `${DEEP_VACUUM}: levels off between 1,000 and 2,000 micron: tight, but still too wet`,
    standing: 'published',
  },
  {
    name: 'vacuumDecay',
    inputs: {
      readings: '0min:500micron,5min:5200micron,10min:6100micron,15min:6250micron',
      coldestTemp: '40F',
    },
    gives: { value: 5750, unit: 'micron' },
    within: 0.01,
    findings: { verdict: 'moisture' },
    source: 'water at 40 °F stands at 6,296 micron (IAPWS-95)',
    standing: 'computed',
  },
];

const LEVELS = [
  // Class, pounds, machine, inches.
  ['veryHigh', 50, 'since1993Nov15', 0],
  ['high', 199, 'before1993Nov15', 0],
  ['high', 199, 'since1993Nov15', 0],
  ['high', 200, 'before1993Nov15', 4],
  ['high', 200, 'since1993Nov15', 10],
  ['medium', 199, 'before1993Nov15', 4],
  ['medium', 199, 'since1993Nov15', 10],
  ['medium', 200, 'before1993Nov15', 4],
] as const;

const RECOVERY: readonly CheckRow[] = [
  ...LEVELS.map(([pressureClass, pounds, machine, inches]): CheckRow => ({
    name: 'recoveryLevel',
    inputs: { pressureClass, charge: `${pounds}lb`, machine },
    gives: { value: inches === 0 ? 0 : -inches, unit: 'inHg' },
    within: 0.001,
    source: CFR,
    standing: 'published',
  })),
  {
    name: 'recoveryLevel',
    inputs: { pressureClass: 'low', charge: '300lb', machine: 'since1993Nov15' },
    gives: { value: -28.94, unit: 'inHg' },
    within: 0.01,
    source: `${CFR}: 25 mmHg absolute, against 29.92 inHg`,
    standing: 'published',
  },
  {
    name: 'recoveryLevel',
    inputs: {
      ...{ pressureClass: 'medium', charge: '250lb', machine: 'since1993Nov15' },
      repair: 'minorNoEvacuationAfter',
    },
    gives: { value: 0, unit: 'inHg' },
    within: 0.001,
    source:
      'lawserver.com, 40 CFR 82.156(a): a minor repair without evacuation to the air afterwards, 0 psig',
    standing: 'published',
  },
  ...(
    [
      ['R-134a', 147, 'medium'],
      ['R-22', 222, 'high'],
      ['R-404A', 265, 'high'],
      ['R-410A', 352, 'high'],
      ['R-32', 359, 'veryHigh'],
    ] as const
  ).map(([refrigerant, psia, pressureClass]): CheckRow => ({
    name: 'pressureClass',
    inputs: { refrigerant },
    gives: { value: psia, unit: 'psia' },
    within: 0.6,
    findings: { pressureClass },
    source: 'CoolProp 8.0.1dev at 104 °F; limits of 40 CFR 82.152 from memory',
    standing: 'computed',
  })),
  {
    name: 'smallApplianceRecovery',
    inputs: { charge: '6lb', compressor: 'runs' },
    refused: 'ruleDoesNotApply',
    source: '40 CFR 82.152, small appliance: 5 lb or less, from memory',
    standing: 'from memory',
  },
];

export const EVACUATION_CHECKS: readonly CheckRow[] = [
  ...NITROGEN,
  ...TESTS,
  ...WATER,
  ...VACUUM,
  ...DECAY,
  ...RECOVERY,
];
