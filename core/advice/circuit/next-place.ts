import { toBase } from '../../units/convert.ts';
import { amountOf } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { kindOf } from '../../visit/unit-kind.ts';
import { isLockedRotor } from '../causes/motor-evidence.ts';
import type { CautionId, Input, Known, Refused, Verdict } from '../verdict.ts';
import { hasCapacitor, loadsOf, type Circuit, type Fault } from './circuit.ts';
import { circuitOf } from './circuit-of.ts';
import type { NextPlaceAnswer } from './circuit-verdict.ts';
import {
  isSupply,
  metered,
  observationsOf,
  ohmsOnly,
  supplyRead,
  takenIn,
  type Taken,
} from './evidence.ts';
import { suspicion, type Observation, type Suspicion } from './explanations.ts';
import { leadsAt } from './leads-at.ts';
import { nextMeasurement } from './next-measurement.ts';

/** The hopscotch method and the order of proof behind every next place. */
const METHOD =
  'achrnews.com, Ice breaker: the hopscotch method; proving line to line and the reference first: common practice';

/**
 * Whether the technician is at the meter: the newest reading is of volts or amps at a place. A motor on its locked-rotor
 * amps is fed: nothing is open before it.
 */
export function isTracing(state: VisitState): boolean {
  const newest = state.readings.at(-1);
  if (newest === undefined || !metered(state).includes(newest)) return false;
  const amount = newest.reading.quantity === 'current' ? amountOf(newest.reading) : null;
  return amount === null || !isLockedRotor(toBase(amount), state);
}

/** The devices that can explain the voltages so far, and the next place to put the leads. */
export function nextPlaceToMeasure(state: VisitState): Verdict {
  if (kindOf(state.unit) === null) return { kind: 'needs', about: null, need: 'equipment' };
  const circuit = circuitOf(state);
  if (circuit === null) return NO_CIRCUIT;
  const taken = takenIn(circuit, state);
  const supply = supplyRead(circuit, taken);
  const read = observationsOf(circuit, taken);
  if (supply === null || read === null) return byOhms(circuit, taken);
  return placed(circuit, taken, { read, isLive: isSupply(supply) });
}

/** With power off an open device is found by its ohms alone; whatever else they leave open takes the supply. */
function byOhms(circuit: Circuit, taken: readonly Taken[]): Verdict {
  const read = ohmsOnly(circuit, taken);
  const isFound = read.some(({ outcome }) => outcome === 'all');
  return isFound ? placed(circuit, taken, { read, isLive: true }) : PROVE_SUPPLY;
}

const NO_CIRCUIT: Refused = {
  kind: 'refused',
  about: null,
  reason: 'noCircuitKnown',
  cautions: ['liveWork'],
};

/** Without the supply no zero means anything. */
export const PROVE_SUPPLY: Verdict = {
  kind: 'needs',
  about: null,
  need: 'supplyVoltage',
  place: 'lineSide',
  cautions: ['liveWork'],
};

interface Evidence {
  readonly read: readonly Observation[];
  readonly isLive: boolean;
}

function placed(circuit: Circuit, taken: readonly Taken[], { read, isLive }: Evidence): Known {
  const suspected = suspicion(circuit, read);
  const next = isLive ? nextMeasurement(circuit, read) : null;
  const answer = answerOf(suspected, next === null ? null : leadsAt(circuit, next));
  return {
    kind: 'known',
    formula: null,
    inputs: inputsOf(taken),
    source: `${METHOD}; ${circuit.source}`,
    cautions: cautionsOf(circuit, answer, isLive),
    ...answer,
  };
}

function answerOf(suspected: Suspicion, next: NextPlaceAnswer['next']): NextPlaceAnswer {
  const base = { answer: 'nextPlace', suspects: [], together: false } as const;
  if (suspected.kind === 'contradiction') return { ...base, found: 'contradiction', next: null };
  if (suspected.kind === 'sound') return { ...base, found: 'sound', next: null };
  const { faults: suspects, together } = suspected;
  const isSettled = next === null || (suspects.length === 1 && !together);
  return {
    ...base,
    found: isSettled ? 'suspects' : 'searching',
    suspects,
    together,
    next: isSettled ? null : next,
  };
}

/** Safeties that open for a cause, and are not to be reset again and again. */
const SAFETIES: readonly Fault['of'][] = ['highPressureSwitch', 'overload'];

function cautionsOf(
  circuit: Circuit,
  { found, suspects }: NextPlaceAnswer,
  isLive: boolean,
): readonly CautionId[] {
  const isFound = found === 'suspects';
  const has = (is: (fault: Fault) => boolean): boolean => isFound && suspects.some(is);
  const isMotor = ({ of }: Fault): boolean =>
    loadsOf(circuit).some(({ id }) => id === of && hasCapacitor(id));
  return [
    'liveWork',
    ...(isLive ? [] : (['notProvenDead'] as const)),
    ...(has(({ of, mode }) => mode === 'open' && SAFETIES.includes(of))
      ? (['repeatedReset'] as const)
      : []),
    ...(has(({ mode }) => mode === 'burnt') ? (['ghostVoltage'] as const) : []),
    ...(has(isMotor) ? (['capacitorCharge'] as const) : []),
  ];
}

const METERED_AS = {
  draws: { name: 'current', unit: 'A' },
  ohms: { name: 'resistance', unit: 'ohm' },
  volts: { name: 'voltage', unit: 'V' },
} as const;

export function inputsOf(taken: readonly Taken[]): readonly Input[] {
  return taken.flatMap(({ measurement, value, place, at }) =>
    value === null || place === null || !Number.isFinite(value)
      ? []
      : [
          {
            ...METERED_AS[
              measurement.kind === 'draws' || measurement.kind === 'ohms'
                ? measurement.kind
                : 'volts'
            ],
            value,
            place,
            from: 'read',
            at,
          },
        ],
  );
}
