/** Food times, pull-down, sensors, thermometer checks: values worked or printed outside the project. */
import type { CheckRow } from './check-row.ts';

const PT100 = 'IEC 60751 table as printed at sensorsci.com and scribd.com/document/366724594';
const DWMAI = 'dwmai.com, permissible deviations in accordance with IEC 751 (DIN EN 60751)';
const AC_MANUAL = 'an air conditioner maker’s manual';
const PROBE = 'Campbell Scientific 109SS manual, table C-1';
const COOLER = 'easymanua.ls, a soft-serve maker’s manual 8751, page 18, thermistor curve';
const LDT = 'manualsdump.com, LDT-5525 manual, table A.1';
const ALTITUDES = 'blog.etundra.com, thermometer calibrating tips, rows printed to the degree';
const TENNESSEE = 'Tennessee 0080-04-09-.03, read 2026-11';
const WISCONSIN = 'Wisconsin ATCP 75, 3-501.19, read 2026-11';

const PLATINUM: readonly CheckRow[] = [
  ...(
    [
      [-200, 18.52],
      [-100, 60.26],
      [-50, 80.31],
      [-40, 84.27],
      [-30, 88.22],
      [-20, 92.16],
      [-10, 96.09],
      [0, 100],
      [10, 103.9],
      [20, 107.79],
      [50, 119.4],
      [150, 157.33],
      [200, 175.86],
      [400, 247.09],
    ] as const
  ).map(([tempC, ohms]): CheckRow => ({
    name: 'platinumResistance',
    inputs: { temperature: `${tempC}C` },
    gives: { value: ohms, unit: 'ohm' },
    within: 0.005,
    source: `${PT100}: ${ohms} Ω at ${tempC} °C`,
    standing: 'published',
  })),
  {
    name: 'platinumResistance',
    inputs: { temperature: '100C', nominal: '1000ohm' },
    gives: { value: 1385.1, unit: 'ohm' },
    within: 0.05,
    source: 'sensingtemp.com: a 1000 Ω sensor has ten times the table',
    standing: 'published',
  },
  ...(
    [
      [-100, 60.26, 0.024],
      [-20, 92.16, 0.024],
      [20, 107.79, 0.024],
      [100, 138.51, 0.024],
    ] as const
  ).map(([tempC, ohms, within]): CheckRow => ({
    name: 'platinumTemperature',
    inputs: { resistance: `${ohms}ohm` },
    gives: { value: (tempC * 9) / 5 + 32, unit: 'degF' },
    within,
    source: `${PT100}: ${ohms} Ω at ${tempC} °C; half the last digit is 0.013 °C`,
    standing: 'published',
  })),
  {
    name: 'platinumTemperature',
    inputs: { resistance: '10ohm' },
    refused: 'belowLimit',
    source: `${PT100}: the table ends at 18.52 Ω, −200 °C`,
    standing: 'published',
  },
  ...(
    [
      ['A', -100, 0.35],
      ['A', 0, 0.15],
      ['A', 200, 0.55],
      ['B', 0, 0.3],
      ['B', 100, 0.8],
    ] as const
  ).map(([of, tempC, kelvin]): CheckRow => ({
    name: 'platinumTolerance',
    inputs: { class: of, temperature: `${tempC}C` },
    gives: { value: kelvin, unit: 'dC' },
    within: 0.005,
    source: `${DWMAI}; sensorsci.com`,
    standing: 'published',
  })),
];

const BETA: readonly CheckRow[] = (
  [
    // Rated kilohms, at °C, beta, °C, kilohms as printed, half the last digit.
    [15, 0, 3480, 10, 9.6, 0.05],
    [6, 0, 3390, 10, 3.9, 0.05],
    [6, 0, 3390, 20, 2.6, 0.05],
    [6, 0, 3390, 30, 1.8, 0.05],
    [6, 0, 3390, 60, 0.6, 0.05],
    [7.465, 120, 4057, 110, 9.8, 0.05],
    [7.465, 120, 4057, 90, 17.5, 0.05],
    [7.465, 120, 4057, 80, 24, 0.5],
    [7.465, 120, 4057, 70, 34, 0.5],
    [7.465, 120, 4057, 60, 48, 0.5],
    [7.465, 120, 4057, 50, 70, 0.5],
    [7.465, 120, 4057, 40, 104, 0.5],
  ] as const
).map(([rated, ratedAt, beta, tempC, kilohms, half]): CheckRow => ({
  name: 'thermistorResistance',
  inputs: {
    ...{ rated: `${rated * 1000}ohm`, ratedAt: `${ratedAt}C` },
    ...{ beta: String(beta), temperature: `${tempC}C` },
  },
  gives: { value: kilohms * 1000, unit: 'ohm' },
  within: half * 1000,
  source: `${AC_MANUAL} (PLH-P3AAH, page 48; PCH-2.5, page 54): ${kilohms} kΩ at ${tempC} °C`,
  standing: 'published',
}));

const THREE_POINTS: readonly CheckRow[] = [
  ...(
    [
      [10, 19_549],
      [30, 7908],
    ] as const
  ).map(([tempC, ohms]): CheckRow => ({
    name: 'steinhartHart',
    inputs: { points: '0C:32128ohm,20C:12262ohm,50C:3542ohm', resistance: `${ohms}ohm` },
    gives: { value: tempC, unit: 'degC' },
    within: 0.01,
    findings: { points: 'between' },
    source: `${LDT}: ${ohms} Ω at ${tempC} °C; the equation is within 0.01 °C`,
    standing: 'published',
  })),
  ...(
    [
      [-35, 242_430.2],
      [-30, 176_804.8],
      [-25, 130_307.6],
      [-15, 72_911.1],
      [-10, 55_303.9],
      [-5, 42_316.7],
    ] as const
  ).map(([tempC, ohms]): CheckRow => ({
    name: 'steinhartHart',
    inputs: {
      points: '-40C:336103.2ohm,-20C:97006.9ohm,0C:32650.9ohm',
      resistance: `${ohms}ohm`,
    },
    gives: { value: tempC, unit: 'degC' },
    within: 0.01,
    source: `${PROBE}: ${ohms} Ω at ${tempC} °C, to 0.01 °C`,
    standing: 'published',
  })),
  ...(
    [
      // °F and kilohms.
      [5, 72.98],
      [23, 42.34],
      [41, 25.4],
    ] as const
  ).map(([degF, kilohms]): CheckRow => ({
    name: 'steinhartHart',
    inputs: {
      points: '-4F:97120ohm,32F:32660ohm,50F:19900ohm',
      resistance: `${kilohms * 1000}ohm`,
    },
    gives: { value: degF, unit: 'degF' },
    within: 0.01,
    source: `${COOLER}: ${kilohms} kΩ at ${degF} °F`,
    standing: 'published',
  })),
  {
    name: 'steinhartHart',
    inputs: { points: '0C:32128ohm,20C:12262ohm', resistance: '9814ohm' },
    refused: 'tooFewReadings',
    source: 'three constants take three points',
    standing: 'computed',
  },
];

const CHECKS: readonly CheckRow[] = [
  ...(
    [
      [1000, 210],
      [2000, 208],
      [6000, 201],
      [7000, 199],
      [10_000, 194],
      [12_000, 190],
    ] as const
  ).map(([feet, degF]): CheckRow => ({
    name: 'boilingPointCheck',
    inputs: { altitude: `${feet}ft` },
    gives: { value: degF, unit: 'degF' },
    within: 0.5,
    source: `${ALTITUDES}: ${degF} °F at ${feet} ft`,
    standing: 'published',
  })),
  {
    name: 'iceBathCheck',
    inputs: { reading: '1.5C' },
    gives: { value: 1.5, unit: 'dC' },
    within: 0.001,
    findings: { verdict: 'off' },
    source: 'cataptyltd.com: the acceptable range at the ice point is −1.0 to 1.0 °C',
    standing: 'published',
  },
  {
    name: 'iceBathCheck',
    inputs: { reading: '30F', tolerance: '2dF' },
    gives: { value: -2, unit: 'dF' },
    within: 0.001,
    findings: { verdict: 'within' },
    source: 'blog.etundra.com: within ± 2 °F',
    standing: 'published',
  },
];

const FOOD: readonly CheckRow[] = [
  {
    name: 'coldHolding',
    inputs: { product: '46F' },
    gives: { value: 5, unit: 'dF' },
    within: 0.001,
    findings: { verdict: 'above' },
    source: 'WAC 246-215-03525: 41 °F or below, read 2026-11',
    standing: 'published',
  },
  {
    name: 'timeControl',
    inputs: { start: '41F', highest: '70F', elapsed: '5h', procedure: 'writtenBefore' },
    gives: { value: 1, unit: 'h' },
    within: 0.001,
    findings: { time: 'left' },
    source: `${WISCONSIN}: six hours while it stays at 70 °F or below`,
    standing: 'published',
  },
  {
    name: 'timeControl',
    inputs: { start: '41F', highest: '65F', elapsed: '1h', procedure: 'none' },
    refused: 'ruleDoesNotApply',
    source: `${WISCONSIN}: a written procedure prepared in advance`,
    standing: 'published',
  },
  {
    name: 'foodCooling',
    inputs: { readings: '0h:135F,3h:70F,5h:41F', from: 'cooked' },
    gives: { value: 5, unit: 'h' },
    within: 0.001,
    findings: { firstStep: 'missed', whole: 'met' },
    source: `${TENNESSEE}: 135 to 70 °F within 2 h, to 41 °F within 6 h in all`,
    standing: 'published',
  },
  {
    name: 'foodCooling',
    inputs: { readings: '0h:70F,4.5h:41F', from: 'ambientIngredients' },
    gives: { value: 4.5, unit: 'h' },
    within: 0.001,
    findings: { whole: 'missed' },
    source: 'foodprotect.org, 2018 issue III-019: within 4 h from room temperature',
    standing: 'published',
  },
  ...(
    [
      ['freezerFull', 48],
      ['freezerHalf', 24],
    ] as const
  ).map(([store, limit]): CheckRow => ({
    name: 'outageTime',
    inputs: { store, elapsed: '10h' },
    gives: { value: limit - 10, unit: 'h' },
    within: 0.001,
    findings: { time: 'left' },
    source: 'FDA emergency guidance as given by cobbanddouglaspublichealth.com, read 2026-11',
    standing: 'published',
  })),
  {
    name: 'pullDownTime',
    inputs: { start: '200F', final: '72F', target: '180F', timeConstant: '29.43min' },
    gives: { value: 5 / 60, unit: 'h' },
    within: 0.0001,
    source:
      'learnmath.org, Newton’s law of cooling, example 1: 108/128 = e^(−5k), so 1/k is 29.43 min',
    standing: 'published',
  },
  {
    name: 'pullDownTime',
    inputs: { start: '60F', final: '42F', target: '41F', timeConstant: '3h' },
    refused: 'belowLimit',
    source: 'the logarithm of a negative number: it never gets there',
    standing: 'computed',
  },
  {
    name: 'pullDownFit',
    inputs: { readings: '0h:60F,1h:52.9133F,2h:47.8354F', target: '41F', final: '35F' },
    gives: { value: 2.281, unit: 'h' },
    within: 0.002,
    also: { timeConstant: 3 },
    source: '35 + 25·e^(−t/3 h) by hand',
    standing: 'computed',
  },
  {
    name: 'timeToTarget',
    inputs: {
      readings: '0min:80F,30min:62.2918F,60min:51.5513F,90min:45.0366F,120min:41.0853F',
      target: '38F',
    },
    gives: { value: 42.3, unit: 'min' },
    within: 0.3,
    findings: { basis: 'curve' },
    source: '35 + 45·e^(−t/60 min): 60·ln(45/3) is 162.5 min, of which 120 have passed, by hand',
    standing: 'computed',
  },
  {
    name: 'timeToTarget',
    inputs: { readings: '0min:60F,10min:60.2F,20min:59.9F', target: '40F' },
    refused: 'readingsDoNotFit',
    source: 'a tenth of a degree in 20 min is no more than a thermometer’s own error',
    standing: 'computed',
  },
];

export const TEMPERATURE_CHECKS: readonly CheckRow[] = [
  ...PLATINUM,
  ...BETA,
  ...THREE_POINTS,
  ...CHECKS,
  ...FOOD,
];
