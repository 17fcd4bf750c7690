interface Procedure {
  readonly name: string;
  /** In order: one short sentence aloud each. */
  readonly steps: readonly string[];
}

/** Jobs that are walked through by voice. */
export const PROCEDURES = {
  gaugesOn: {
    name: 'gauges on',
    steps: [
      'protectYourself',
      'backSeatBoth',
      'closeHands',
      'screwHosesOn',
      'purgeFromTheUnit',
      'crackBoth',
    ],
  },
  gaugesOnFittings: {
    name: 'gauges on',
    steps: ['protectYourself', 'closeHands', 'pullHosesDown', 'screwEndsOn', 'openEnds'],
  },
  gaugesOff: {
    name: 'gauges off',
    steps: [
      'keepItRunning',
      'backSeatDischarge',
      'drawIntoSuction',
      'waitForSuction',
      'closeHands',
      'backSeatSuction',
      'hosesOff',
      'leakCheckCaps',
    ],
  },
  gaugesOffFittings: {
    name: 'gauges off',
    steps: [
      'keepItRunning',
      'shutHighEnd',
      'drawIntoSuction',
      'waitForSuction',
      'shutLowEnd',
      'hosesOff',
      'leakCheckCaps',
    ],
  },
  pumpDown: {
    name: 'pump-down',
    steps: [
      'receiverHoldsIt',
      'solenoidOpen',
      'lowControlHeld',
      'closeKing',
      'runToZero',
      'stopAndWatch',
      'runAgain',
      'lockBeforeOpening',
    ],
  },
  valvesAndCaps: {
    name: 'closing up',
    steps: [
      'openKing',
      'backSeatAll',
      'snugGlands',
      'capsOn',
      'leakCheckCaps',
      'controlsBack',
      'askWhatIsOpen',
    ],
  },
  recovery: {
    name: 'recovery',
    steps: [
      'oneGasCylinder',
      'cylinderOnScale',
      'recoveryHoses',
      'liquidFirst',
      'watchTheScale',
      'pullToLevel',
      'holdTheLevel',
      'weighItOut',
    ],
  },
  evacuation: {
    name: 'evacuation',
    steps: [
      'provenTight',
      'coresOut',
      'gaugeFarEnd',
      'freshOil',
      'pullDeep',
      'valveOffAndWatch',
      'readTheRise',
      'breakWithCharge',
    ],
  },
  pressureTest: {
    name: 'pressure test',
    steps: [
      'nothingLeftIn',
      'regulatorAndRelief',
      'lowestRating',
      'raiseInSteps',
      'soapJoints',
      'noteBoth',
      'shutAndWait',
      'letItDown',
    ],
  },
} as const satisfies Record<string, Procedure>;

export type ProcedureId = keyof typeof PROCEDURES;
export type ProcedureStepId = (typeof PROCEDURES)[ProcedureId]['steps'][number];

/** The step at a place counted from 1; `null` past the last. */
export function stepAt(procedure: ProcedureId, number: number): ProcedureStepId | null {
  const steps: readonly ProcedureStepId[] = PROCEDURES[procedure].steps;
  return steps[number - 1] ?? null;
}

/** What is asked for by name; how the hoses go on and off depends on the valves. */
export const PROCEDURE_TASKS = [
  'gaugesOn',
  'gaugesOff',
  'pumpDown',
  'valvesAndCaps',
  'recovery',
  'evacuation',
  'pressureTest',
] as const;
export type ProcedureTaskId = (typeof PROCEDURE_TASKS)[number];

/** How a gauge gets at the unit. */
export const VALVE_KINDS = {
  serviceValves: 'service valves',
  accessFittings: 'access fittings',
} as const;
export type ValveKindId = keyof typeof VALVE_KINDS;

/** What is known to be wrong with what is in the unit. */
export const CHARGE_DOUBTS = { mixed: 'mixed', unknown: 'not known' } as const;
export type ChargeDoubtId = keyof typeof CHARGE_DOUBTS;

/** Why steps are not given. */
export const STEP_BARS = [
  'flammableOrToxic',
  'carbonDioxide',
  'mixedCharge',
  'frontSeatedDischarge',
  'trappedLiquid',
  'frozenSuction',
  'liquidReturning',
  'noReceiver',
] as const;
export type StepBarId = (typeof STEP_BARS)[number];
