/** Values of pressure controls, heads and risers from outside: makers' settings, articles, an equation of state. */
import { checksOf } from './checks-of.ts';
import type { Row } from './checks-of.ts';
import type { CatalogueCheck, CheckRow } from './check-row.ts';

const EQUATION_OF_STATE = 'CoolProp 8.0, worked apart from the fits';
const BY_HAND = 'arithmetic by hand';
const SLIDES = 'scribd.com/document/610292100, Pressure controls';

const LOW_PRESSURE = [
  ...checksOf('lowPressureCutIn', [
    {
      inputs: { refrigerant: 'R-134a', coilTemp: '36F' },
      gives: { value: 31.3, unit: 'psi' },
      within: 0.05,
      source: 'dhilreefer.blogspot.com, Low pressure switch: a 36 °F beer cooler, 31.3 psig',
      standing: 'published',
    },
    {
      inputs: { refrigerant: 'R-134a', coilTemp: '38F' },
      gives: { value: 33, unit: 'psi' },
      within: 0.5,
      source: `${SLIDES}: R-134a reach-in, cut-in 33 psig, 38 °F`,
      standing: 'published',
    },
  ]),
  ...checksOf('lowPressureCutOut', [
    {
      inputs: { refrigerant: 'R-134a', boxTemp: '38F', temperatureDifference: '28dF' },
      gives: { value: 12, unit: 'psi' },
      within: 0.5,
      source: `${SLIDES}: 28 °F below a 38 °F box, 12 psig, 10 °F`,
      standing: 'published',
    },
    {
      inputs: {
        refrigerant: 'R-404A',
        boxTemp: '-10F',
        temperatureDifference: '10dF',
        lineDrop: '2psi',
      },
      gives: { value: 14, unit: 'psi' },
      within: 0.5,
      source:
        'a display-case maker’s control settings, page 8-2: −20 °F with 2 psi of drop, 14 psig',
      standing: 'published',
    },
  ]),
  ...checksOf('controlCutOut', [
    {
      inputs: { cutIn: '15psi', differential: '10psi' },
      gives: { value: 5, unit: 'psi' },
      within: 0.001,
      source: 'a display-case maker’s control settings, page 8-2: 15 in, fixed 10, out at 5 psig',
      standing: 'published',
    },
    {
      inputs: { cutIn: '5bar', differential: '3bar' },
      gives: { value: 2, unit: 'bar' },
      within: 0.001,
      source: 'a cooling-unit maker’s manual, page 17: 5 barg less 3',
      standing: 'published',
    },
    {
      inputs: { cutIn: '300psi', differential: '100psi' },
      gives: { value: 200, unit: 'psi' },
      within: 0.001,
      source: 'an air-conditioner maker’s CF series manual: fan on at 300, off at 200 psi',
      standing: 'published',
    },
    {
      inputs: { cutIn: '170psi', differential: '50psi' },
      gives: { value: 120, unit: 'psi' },
      within: 0.001,
      source: 'a wine-cooler maker’s manual, page 16: fan in 170, out 120, differential 50 psig',
      standing: 'published',
    },
  ]),
  ...checksOf('controlDifferential', [
    {
      inputs: { cutIn: '320psi', cutOut: '240psi' },
      gives: { value: 80, unit: 'psi' },
      within: 0.001,
      source: 'a condenser maker’s SCS manual, table 1, by hand: R-407C fan in 320, out 240 psig',
      standing: 'computed',
    },
  ]),
  ...checksOf('coldStart', [
    {
      inputs: { refrigerant: 'R-134a', cutIn: '33psi', coldestTemp: '20F' },
      gives: { value: 18.4, unit: 'psi' },
      findings: { start: 'staysOff' },
      within: 0.1,
      source: `${EQUATION_OF_STATE}: R-134a at 20 °F`,
      standing: 'computed',
    },
    {
      inputs: { refrigerant: 'R-134a', cutIn: '15psi', coldestTemp: '40F' },
      gives: { value: 35, unit: 'psi' },
      findings: { start: 'starts' },
      within: 0.1,
      source: `${EQUATION_OF_STATE}: R-134a at 40 °F`,
      standing: 'computed',
    },
  ]),
  ...checksOf('controlTrip', [
    {
      inputs: { side: 'high', setting: '640psi', opened: '650psi' },
      gives: { value: 10, unit: 'psi' },
      findings: { verdict: 'whereSet' },
      within: 0.001,
      source: 'a rooftop maker’s LCM156U manual, page 23: 640 ± 10 psig',
      standing: 'published',
    },
    {
      inputs: { side: 'low', setting: '40psi', opened: '47psi' },
      gives: { value: -7, unit: 'psi' },
      findings: { verdict: 'early' },
      within: 0.001,
      source: 'a rooftop maker’s LCM156U manual, page 23: 40 ± 5 psig',
      standing: 'published',
    },
  ]),
];

/**
 * The table's one column for two refrigerants is R-404A's: R-507A's own dew pressure is 1.5 to 3 psi higher. Its
 * rows of 9, 12 and 30 °F print 0.6 to 1 psi above R-404A's and are left out; 25 °F is the formula's own example.
 */
const REGULATOR_404A = [
  [-25, 11],
  [-22, 13],
  [-20, 14],
  [-15, 18],
  [6, 37],
  [15, 47],
  [18, 51],
  [21, 55],
] as const;
/** Its row of −15 °F prints 12 where every chart has 13.2 less 2: a slip, left out. */
const REGULATOR_22 = [
  [-25, 5],
  [-22, 7],
  [-20, 8],
  [6, 27],
  [9, 30],
  [12, 33],
  [15, 36],
  [18, 39],
  [21, 42],
  [25, 47],
  [30, 53],
] as const;

const regulator = (
  refrigerant: string,
  rows: readonly (readonly [degF: number, psi: number])[],
): Row[] =>
  rows.map(([degF, psi]) => ({
    inputs: { refrigerant, evaporatingTemp: `${degF}F`, lineDrop: '2psi' },
    gives: { value: psi, unit: 'psi' },
    within: 0.5,
    source: `a display-case maker’s control settings, August 1996, page 8-2: ${degF} °F`,
    standing: 'published',
  }));

const REGULATORS = checksOf('regulatorSetting', [
  ...regulator('R-404A', REGULATOR_404A),
  ...regulator('R-22', REGULATOR_22),
]);

const TIP = 'hvac-talk.com, Tech tip on flooded head pressure control';
const CONDENSER_LOAD = 'civilengineeringhandbook.tk, Condenser load, table 36-1';

const HEADS = [
  ...checksOf('highPressureWindow', [
    {
      inputs: {
        refrigerant: 'R-404A',
        hottestTemp: '110F',
        split: '30dF',
        rating: '400psi',
        margin: '0psi',
      },
      gives: { value: 404, unit: 'psi' },
      also: { highest: 400 },
      findings: { window: 'empty' },
      within: 0.5,
      source: `${EQUATION_OF_STATE}: R-404A at 140 °F boils at 404 psig: above a 400 psig rating`,
      standing: 'computed',
    },
    {
      inputs: {
        refrigerant: 'R-404A',
        hottestTemp: '110F',
        split: '15dF',
        rating: '450psi',
        relief: '450psi',
        margin: '25psi',
      },
      gives: { value: 358, unit: 'psi' },
      also: { highest: 405 },
      findings: { window: 'open' },
      within: 0.5,
      source: `${EQUATION_OF_STATE}: 333 psig and 25; nine tenths of 450`,
      standing: 'computed',
    },
  ]),
  ...checksOf('floodedShare', [
    {
      inputs: { heldTemp: '90F', ambientTemp: '60F', split: '15dF' },
      gives: { value: 50, unit: 'percent' },
      within: 0.001,
      source: `${TIP}: twice the difference, half the condenser`,
      standing: 'published',
    },
    {
      inputs: { heldTemp: '90F', ambientTemp: '45F', split: '15dF' },
      gives: { value: 66.7, unit: 'percent' },
      within: 0.05,
      source: `${TIP}: three times the difference, two thirds`,
      standing: 'published',
    },
  ]),
  ...checksOf('heldHead', [
    {
      inputs: { refrigerant: 'R-404A', setting: '180psi', ambientTemp: '95F', split: '15dF' },
      gives: { value: 110, unit: 'degF' },
      findings: { ruledBy: 'ambient' },
      within: 0.001,
      source: `${BY_HAND}: the weather is above what the valve holds`,
      standing: 'computed',
    },
  ]),
  ...checksOf('fanCycle', [
    {
      inputs: { refrigerant: 'R-134a', on: '124.2psi', off: '86.7psi' },
      gives: { value: 100, unit: 'degF' },
      also: { off: 80 },
      findings: { on: 'usual', off: 'usual' },
      within: 0.1,
      source: `${EQUATION_OF_STATE}: 100 and 80 °F`,
      standing: 'computed',
    },
  ]),
  ...checksOf('waterCondensingTarget', [
    {
      inputs: { leavingWaterTemp: '100F' },
      gives: { value: 110, unit: 'degF' },
      within: 0.001,
      source: `${CONDENSER_LOAD}: city water 80 °F in, 100 °F out, 110 °F condensing`,
      standing: 'published',
    },
  ]),
];

const AT_REST = [
  ...checksOf('nonCondensables', [
    {
      inputs: { refrigerant: 'R-134a', pressure: '86.7psi', coilTemp: '80F' },
      gives: { value: 0, unit: 'dF' },
      findings: { verdict: 'none' },
      within: 0.05,
      source: `${EQUATION_OF_STATE}: R-134a at 80 °F is 86.7 psig`,
      standing: 'computed',
    },
    {
      inputs: { refrigerant: 'R-134a', pressure: '91.7psi', coilTemp: '80F' },
      gives: { value: 3, unit: 'dF' },
      within: 0.15,
      source: `${EQUATION_OF_STATE}: 5 psi of R-134a is 3 °F`,
      standing: 'computed',
    },
  ]),
  ...checksOf('steadyState', [
    {
      inputs: { readings: '0:25F,5:25.4F,10:25F,15:25.2F' },
      gives: { value: 0.06, unit: 'dF' },
      findings: { state: 'steady' },
      within: 0.001,
      source: `${BY_HAND}: slope 0.004 °F a minute over 15 min`,
      standing: 'computed',
    },
    {
      inputs: { readings: '0:25F,5:29F,10:25F,15:29F,20:25F' },
      gives: { value: 0, unit: 'dF' },
      also: { swing: 2.4 },
      findings: { state: 'swinging' },
      within: 0.001,
      source: `${BY_HAND}: level line at 26.6 °F`,
      standing: 'computed',
    },
  ]),
  ...checksOf('heldWithin', [
    {
      inputs: { readings: '0:30psi,10:32psi,20:34psi,30:36psi', within: '2psi' },
      gives: { value: 10, unit: 'min' },
      findings: { readings: '2' },
      within: 0.001,
      source: `${BY_HAND}: a steady climb is in no band for long`,
      standing: 'computed',
    },
    {
      inputs: { readings: '0:180psi,5:174psi,9:172psi,15:173psi,21:174psi', within: '2psi' },
      gives: { value: 16, unit: 'min' },
      findings: { readings: '4' },
      within: 0.001,
      source: `${BY_HAND}: 172 to 174 from minute 5 on`,
      standing: 'computed',
    },
  ]),
];

const DISCHARGE = checksOf('dischargeLine', [
  {
    inputs: { dischargeLineTemp: '240F', condensingTemp: '120F' },
    gives: { value: 315, unit: 'degF' },
    findings: { verdict: 'aboveLimit' },
    within: 0.5,
    source:
      'achrnews.com/articles/133927: 240 °F discharge, overcharged and hot; the valve by hand',
    standing: 'published',
  },
  {
    inputs: { dischargeLineTemp: '140F', condensingTemp: '115F' },
    gives: { value: 215, unit: 'degF' },
    findings: { verdict: 'floodBack' },
    within: 0.5,
    source: 'less than 30 °F above condensing',
    standing: 'common practice',
  },
]);

const TEXTBOOK = 'fliphtml5.com/gshwa/gmim, Refrigeration and Air-Conditioning, page 135';

const PRODUCTS = checksOf(
  'productDifference',
  (
    [
      ['about85Percent', 6],
      ['upTo80Percent', 8],
      ['insensitive', 10],
    ] as const
  ).map(([product, kelvin]): Row => ({
    inputs: { product },
    gives: { value: (kelvin * 9) / 5, unit: 'dF' },
    within: 0.001,
    source: `${TEXTBOOK}: ${kelvin} K`,
    standing: 'published',
  })),
);

const RISERS = 'a condensing-unit maker’s K90-KPCS manual, page 7, risers at 110 °F';

/** Rise in feet, printed psi and °F of subcooling. */
const RISER_TABLE = {
  'R-134a': [
    [10, 4.9, 2.0],
    [50, 24.6, 11.0],
    [100, 49.1, 23.7],
  ],
  'R-22': [
    [10, 4.8, 1.6],
    [30, 14.5, 4.7],
    [50, 24.2, 8.0],
    [100, 48.4, 16.5],
  ],
  'R-404A': [
    [10, 4.1, 1.1],
    [30, 12.2, 3.3],
    [50, 20.4, 5.6],
    [100, 40.8, 11.8],
  ],
} as const;

/** Its rows are not in proportion among themselves: 40 ft of R-134a prints 19.7 psi, 100 ft makes it 19.64. */
const psiWithin = (feet: number): number => Math.max(0.1, 0.0015 * feet);

/** Read off a chart of whole psi: half of one is 0.25 °F or less there. */
const DEGREES_WITHIN = 0.3;

const RISER_ROWS = Object.entries(RISER_TABLE).flatMap(([refrigerant, rows]) =>
  rows.flatMap(([feet, psi, degF]): CatalogueCheck[] => {
    const inputs = { refrigerant, rise: `${feet}ft`, liquidTemp: '110F' };
    const shared = { inputs, source: RISERS, standing: 'published' } as const;
    const within = psiWithin(feet);
    return [
      { name: 'riserLoss', ...shared, gives: { value: psi, unit: 'psi' }, within },
      {
        name: 'riserSubcooling',
        ...shared,
        gives: { value: degF, unit: 'dF' },
        within: DEGREES_WITHIN,
      },
    ];
  }),
);

const RISER_FOOT = checksOf(
  'riserLoss',
  (
    [
      ['R-134a', 0.501],
      ['R-404A', 0.424],
      ['R-290', 0.204],
    ] as const
  ).map(([refrigerant, psi]): Row => ({
    inputs: { refrigerant, rise: '1ft', liquidTemp: '100F' },
    gives: { value: psi, unit: 'psi' },
    within: 0.0005,
    source: `${EQUATION_OF_STATE}: saturated liquid at 100 °F`,
    standing: 'computed',
  })),
);

export const CONTROL_CHECKS: readonly CheckRow[] = [
  ...LOW_PRESSURE,
  ...REGULATORS,
  ...HEADS,
  ...AT_REST,
  ...DISCHARGE,
  ...PRODUCTS,
  ...RISER_ROWS,
  ...RISER_FOOT,
];
