/** Recovery cylinders, charging, leak rates and the rules on them: values worked or printed outside the project. */
import type { CheckRow } from './check-row.ts';

const EOS = 'CoolProp 8.0.1dev, worked apart from the fits';
const GOV_UK =
  'gov.uk, Calculate the carbon dioxide equivalent quantity of an F gas, table, read 2026-11';
const NETREGS = 'netregs.org.uk, Calculating the equipment charge as CO2 equivalent, read 2026-11';
const BITZER = 'bitzer.de, AT-660: kilograms for each litre of vessel at 20 °C and 90 %';
const CFR_157 = '40 CFR 82.157 as printed at compliancecosmos.org, read 2026-11';
const HVACR_15 = 'hvacrschool.com, EPA’s 15-pound threshold in 2026 (40 CFR 84.106), read 2026-11';
const BY_HAND = 'arithmetic by hand';

const CYLINDERS: readonly CheckRow[] = [
  ...(
    [
      ['R-134a', 1.208],
      ['R-404A', 1.045],
      ['R-410A', 1.06],
      ['R-507A', 1.049],
      ['R-407C', 1.139],
      ['R-32', 0.962],
      ['R-290', 0.493],
      ['R-448A', 1.099],
      ['R-449A', 1.098],
      ['R-454C', 1.046],
      ['R-455A', 1.033],
      ['R-600a', 0.551],
      ['R-717', 0.604],
    ] as const
  ).map(([refrigerant, gravity]): CheckRow => ({
    name: 'specificGravity',
    inputs: { refrigerant },
    gives: { value: gravity, unit: 'ratio' },
    within: 0.0006,
    source: EOS,
    standing: 'computed',
  })),
  {
    name: 'specificGravity',
    inputs: { refrigerant: 'R-744' },
    refused: 'ruleDoesNotApply',
    source: 'carbon dioxide is critical at 87.8 °F: the rule does not hold for it',
    standing: 'computed',
  },
  ...(
    [
      ['R-22', 90],
      ['R-134a', 89],
      ['R-410A', 97],
      ['R-507A', 97],
      ['R-32', 95],
      ['R-290', 90],
    ] as const
  ).map(([refrigerant, percent]): CheckRow => ({
    name: 'liquidShare',
    inputs: { refrigerant, temperature: '130F' },
    gives: { value: percent, unit: 'percent' },
    within: 0.6,
    findings: { state: 'vapourSpaceLeft' },
    source: `${EOS}: 80 % at 77 °F, warmed to 130 °F`,
    standing: 'computed',
  })),
  {
    name: 'cylinderFill',
    inputs: { refrigerant: 'R-717', waterCapacity: '100lb', tare: '0lb' },
    gives: { value: 48.3, unit: 'lb' },
    within: 0.1,
    findings: { ruledBy: 'eightyPercent' },
    source: `${EOS}: 0.8 × 0.604; the filling density of 49 CFR 173.304a, 54 %, is above it`,
    standing: 'computed',
  },
  {
    name: 'cylinderFill',
    inputs: { refrigerant: 'R-22', waterCapacity: '1000lb', tare: '0lb', specificGravity: '1.4' },
    gives: { value: 1050, unit: 'lb' },
    within: 0.001,
    findings: { ruledBy: 'fillingDensity' },
    source: '49 CFR 173.304a at laws9.com, read 2026-11: R-22 105 % of the water capacity at most',
    standing: 'published',
  },
  {
    name: 'cylinderRemaining',
    inputs: {
      ...{ refrigerant: 'R-22', waterCapacity: '1000lb', tare: '380lb' },
      ...{ specificGravity: '1.197', present: '1350lb' },
    },
    gives: { value: -12.4, unit: 'lb' },
    within: 0.05,
    findings: { state: 'overfilled' },
    source: 'achrnews.com/articles/111771: gross 1,337.6 lb; 1,350 on the scale is 12.4 over',
    standing: 'computed',
  },
];

const WEIGHTS: readonly CheckRow[] = [
  ...(
    [
      ['R-22', 1.09],
      ['R-290', 0.45],
      ['R-1270', 0.46],
    ] as const
  ).map(([refrigerant, kg]): CheckRow => ({
    name: 'receiverCapacity',
    inputs: { refrigerant, volume: '1L', temperature: '20C' },
    gives: { value: kg, unit: 'kg' },
    within: 0.005,
    source: BITZER,
    standing: 'published',
  })),
  ...(
    [
      // Refrigerant, bore in inches, ounces a foot at 70 °F.
      ['R-404A', 0.315, 0.57],
      ['R-134a', 0.315, 0.66],
      ['R-410A', 0.315, 0.58],
      ['R-404A', 0.436, 1.1],
    ] as const
  ).map(([refrigerant, bore, ounces]): CheckRow => ({
    name: 'lineContent',
    inputs: { refrigerant, length: '16ft', bore: `${bore}in` },
    gives: { value: ounces, unit: 'lb' },
    within: 0.006,
    source: `${EOS}: sixteen feet weigh in pounds what one foot weighs in ounces`,
    standing: 'computed',
  })),
  ...(
    [
      ['R-404A', 0.25, 50],
      ['R-404A', 0.1875, 28],
      ['R-290', 0.1875, 13],
    ] as const
  ).map(([refrigerant, bore, grams]): CheckRow => ({
    name: 'hoseContent',
    inputs: { refrigerant, length: '60in', bore: `${bore}in`, temperature: '77F' },
    gives: { value: grams, unit: 'g' },
    within: 0.6,
    source: `${EOS}: a 60 in hose full of liquid at 77 °F`,
    standing: 'computed',
  })),
  ...(
    [
      ['1/4', 0.3],
      ['5/16', 0.4],
      ['1/2', 1.2],
    ] as const
  ).map(([line, perFoot]): CheckRow => ({
    name: 'lineSetAdjustment',
    inputs: { length: '15ft', chargedFor: '25ft', perFoot: `${perFoot}oz` },
    gives: { value: -10 * perFoot, unit: 'oz' },
    within: 0.001,
    source: `manualshive.com, manual HR18D2VAR, page 18: ${line} in line ± ${perFoot} oz a foot from 25 ft`,
    standing: 'published',
  })),
  {
    name: 'chargeByWeight',
    inputs: { nameplate: '150g', step: '1g' },
    gives: { value: 0.67, unit: 'percent' },
    within: 0.005,
    findings: { scale: 'tooCoarse' },
    source: `${BY_HAND}: one gram of 150 is 0.67 %, four steps are more than 2 %`,
    standing: 'common practice',
  },
  {
    name: 'chargeByWeight',
    inputs: { nameplate: '1000g', step: '1g' },
    gives: { value: 0.1, unit: 'percent' },
    within: 0.001,
    findings: { scale: 'fineEnough' },
    source: BY_HAND,
    standing: 'common practice',
  },
];

const LEAK_RULES = [
  // Refrigerant, charge, use, rate, threshold, verdict, rule, source.
  ['R-404A', '100lb', 'commercialRefrigeration', '20%', 20, 'within', '84.106', HVACR_15],
  ['R-404A', '100lb', 'industrialProcess', '30.1%', 30, 'overThreshold', '84.106', HVACR_15],
  ['R-410A', '15lb', 'comfortCooling', '10.5%', 10, 'overThreshold', '84.106', HVACR_15],
  ['R-404A', '14.9lb', 'commercialRefrigeration', '40%', 20, 'notCovered', 'none', HVACR_15],
  ['R-744', '200lb', 'commercialRefrigeration', '40%', 20, 'notCovered', 'none', HVACR_15],
  ['R-22', '49lb', 'commercialRefrigeration', '40%', 20, 'notCovered', 'none', CFR_157],
  ['R-22', '50lb', 'commercialRefrigeration', '40%', 20, 'overThreshold', '82.157', CFR_157],
  ['R-22', '60lb', 'comfortCooling', '9%', 10, 'within', '82.157', CFR_157],
] as const;

const LEAKS: readonly CheckRow[] = [
  ...LEAK_RULES.map(
    ([refrigerant, charge, use, rate, threshold, verdict, rule, source]): CheckRow => ({
      name: 'leakThreshold',
      inputs: { refrigerant, charge, use, rate },
      gives: { value: threshold, unit: 'percent' },
      within: 0.001,
      findings: { verdict, rule },
      source,
      standing: 'published',
    }),
  ),
  {
    name: 'rollingLeakRate',
    inputs: { additions: '400day:12lb,10day:9lb', charge: '100lb' },
    gives: { value: 9, unit: 'percent' },
    within: 0.001,
    source: `${BY_HAND}: what was added more than 365 days ago is out of the window`,
    standing: 'computed',
  },
  {
    name: 'rollingLeakRate',
    inputs: { additions: '200day:12lb,10day:9lb', charge: '100lb', verifiedDaysAgo: '100' },
    gives: { value: 9, unit: 'percent' },
    within: 0.001,
    source: '40 CFR 82.152: since the last successful follow-up verification, from memory',
    standing: 'from memory',
  },
  {
    name: 'leakRate',
    inputs: { added: '10lb', charge: '100lb', days: '0' },
    refused: 'ruleDoesNotApply',
    source: 'two additions on one day count as one: 40 CFR 82.152, from memory',
    standing: 'from memory',
  },
];

const EQUIVALENTS: readonly CheckRow[] = [
  ...(
    [
      // Refrigerant, kilograms as printed for 50 t, and half the last digit in tonnes.
      ['R-143a', 11.2, 0.23],
      ['R-507A', 12.5, 0.2],
      ['R-404A', 12.7, 0.2],
      ['R-125', 14.3, 0.18],
      ['R-422D', 18.3, 0.14],
      ['R-407A', 23.7, 0.11],
      ['R-407F', 27.4, 0.1],
    ] as const
  ).map(([refrigerant, kg, within]): CheckRow => ({
    name: 'carbonDioxideEquivalent',
    inputs: { refrigerant, charge: `${kg}kg` },
    gives: { value: 50, unit: 'tCO2e' },
    within,
    source: `${GOV_UK}: ${kg} kg are 50 t`,
    standing: 'published',
  })),
  ...(
    [
      ['R-134a', 1, 1.43, 0.005],
      ['R-404A', 1, 3.92, 0.005],
      ['R-134a', 3.5, 5, 0.07],
      ['R-404A', 1.27, 5, 0.02],
    ] as const
  ).map(([refrigerant, kg, tonnes, within]): CheckRow => ({
    name: 'carbonDioxideEquivalent',
    inputs: { refrigerant, charge: `${kg}kg` },
    gives: { value: tonnes, unit: 'tCO2e' },
    within,
    source: `${NETREGS}: ${kg} kg are ${tonnes} t`,
    standing: 'published',
  })),
  ...(
    [
      // Refrigerant, kilograms, tonnes, interval.
      ['R-404A', 1.2, 4.7, 'none'],
      ['R-134a', 3.6, 5.1, 'every12Months'],
      ['R-404A', 12.7, 49.8, 'every12Months'],
      ['R-404A', 12.8, 50.2, 'every6Months'],
      ['R-134a', 34.9, 49.9, 'every12Months'],
      ['R-404A', 127.6, 500.4, 'every3Months'],
      ['R-410A', 240, 501, 'every3Months'],
    ] as const
  ).map(([refrigerant, kg, tonnes, interval]): CheckRow => ({
    name: 'leakCheckInterval',
    inputs: { refrigerant, charge: `${kg}kg` },
    gives: { value: tonnes, unit: 'tCO2e' },
    within: 0.05,
    findings: { interval },
    source: 'gov.uk, Checking F gas equipment for leaks: 5, 50 and 500 t, read 2026-11',
    standing: 'published',
  })),
  {
    name: 'leakCheckInterval',
    inputs: { refrigerant: 'R-134a', charge: '5kg', sealed: 'hermetic' },
    gives: { value: 7.15, unit: 'tCO2e' },
    within: 0.01,
    findings: { interval: 'none' },
    source: 'gov.uk, Checking F gas equipment for leaks: hermetic below 10 t, read 2026-11',
    standing: 'published',
  },
];

export const REFRIGERANT_CHECKS: readonly CheckRow[] = [
  ...CYLINDERS,
  ...WEIGHTS,
  ...LEAKS,
  ...EQUIVALENTS,
];
