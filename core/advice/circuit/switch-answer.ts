import { switchAcross, switchAcrossFormula } from '../../calculations/switch-voltage.ts';
import type { PlaceId } from '../../terms/names.ts';
import { voltage } from '../../units/quantity-values.ts';
import type { VisitState } from '../../visit/state.ts';
import { toBase } from '../../units/convert.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import type { CautionId, Input, Known, Refused, Verdict } from '../verdict.ts';
import { hasCapacitor, switchesOf, type Circuit } from './circuit.ts';
import { circuitOf } from './circuit-of.ts';
import type { LeadsAt, SwitchState } from './circuit-verdict.ts';
import {
  isSupply,
  metered,
  observationsOf,
  ohmsOutcome,
  supplyReading,
  takenIn,
} from './evidence.ts';
import { isPassing, type Observation } from './explanations.ts';
import { leadsAt } from './leads-at.ts';
import { nextMeasurement } from './next-measurement.ts';
import { PROVE_SUPPLY } from './next-place.ts';

/** What the voltage across it says of each place: a switch opens, a load is fed. */
const ROLES: Partial<Record<PlaceId, 'switch' | 'load'>> = {
  highPressureSwitch: 'switch',
  lowPressureSwitch: 'switch',
  temperatureControl: 'switch',
  defrostTimer: 'switch',
  doorSwitch: 'switch',
  overload: 'switch',
  contactor: 'load',
  liquidLineSolenoid: 'load',
  compressor: 'load',
  condenserFan: 'load',
  evaporatorFan: 'load',
};

const NOT_A_SWITCH: Refused = {
  kind: 'refused',
  about: null,
  reason: 'notASwitch',
  cautions: ['deadAndDisconnected'],
};

/** Whether the device at a place is open, by the voltage across it: never "closed" from its own zero. */
export function switchAnswer(place: PlaceId | null, state: VisitState): Verdict {
  if (place === null) return { kind: 'needs', about: null, need: 'whichSwitch', cautions: [] };
  const role = ROLES[place];
  if (role === undefined) return NOT_A_SWITCH;
  const ohms = newestAt(place, state);
  if (ohms?.reading.quantity === 'resistance') return byOhms(place, ohms);
  const supply = voltsOf(supplyReading(state));
  const across = voltsOf(
    metered(state).findLast(
      ({ reading }) => reading.quantity === 'voltage' && reading.place === place,
    ) ?? null,
  );
  if (supply === null) return PROVE_SUPPLY;
  if (!isSupply(supply.value)) return known(place, { supply, across: across ?? supply }, NO_SUPPLY);
  if (across === null) {
    return { kind: 'needs', about: null, need: 'voltageAcross', place, cautions: ['liveWork'] };
  }
  return judged(place, { supply, across }, { state, role });
}

const newestAt = (place: PlaceId, state: VisitState): ReadingEntry | null =>
  metered(state).findLast(({ reading }) => reading.place === place) ?? null;

/** Power off, leads off: no path is open, next to none is closed, anything between is a winding or a bad contact. */
function byOhms(place: PlaceId, { reading, at }: ReadingEntry): Known {
  const amount = amountOf(reading);
  const ohms = amount === null ? null : toBase(amount);
  const outcome = ohmsOutcome(ohms ?? Infinity);
  const state = { none: 'path', part: 'ohmsRead', all: 'noPath' } as const;
  const input: Input = {
    name: 'resistance',
    value: ohms ?? 0,
    unit: 'ohm',
    place,
    from: 'read',
    at,
  };
  return {
    kind: 'known',
    formula: null,
    inputs: ohms === null ? [] : [input],
    source: 'an open switch or coil shows no path, a closed contact near zero: common practice',
    cautions: ['deadAndDisconnected', ...(outcome === 'all' ? resetCautions(place) : [])],
    answer: 'switch',
    place,
    state: state[outcome],
    across: 0,
    supply: 0,
    unit: 'V',
    ...(ohms === null ? {} : { ohms }),
    next: null,
  };
}

interface Volts {
  readonly value: number;
  readonly place: PlaceId;
  readonly at: number;
}

function voltsOf(entry: ReadingEntry | null): Volts | null {
  if (entry === null) return null;
  const { value, place } = entry.reading;
  return value === undefined || place === null ? null : { value, place, at: entry.at };
}

interface Pair {
  readonly supply: Volts;
  readonly across: Volts;
}

interface Judgement {
  readonly state: SwitchState;
  readonly next: LeadsAt | null;
  readonly cautions: readonly CautionId[];
}

const NO_SUPPLY: Judgement = { state: 'noSupply', next: null, cautions: ['notProvenDead'] };

function judged(
  place: PlaceId,
  pair: Pair,
  { state, role }: { readonly state: VisitState; readonly role: 'switch' | 'load' },
): Known {
  const outcome = switchAcross({
    supply: voltage(pair.supply.value),
    across: voltage(Math.abs(pair.across.value)),
  });
  const [first] = outcome.kind === 'known' ? outcome.value.possible : [];
  const cautions = outcome.kind === 'known' ? outcome.cautions : [];
  if (cautions.includes('ghostVoltage')) {
    return known(place, pair, { state: 'partial', next: null, cautions });
  }
  if (role === 'load') return known(place, pair, loadJudgement(first === 'open', { place, state }));
  if (first !== 'open') return known(place, pair, zeroAcross(place, state));
  return known(place, pair, {
    state: 'open',
    next: null,
    cautions: [...cautions, ...resetCautions(place)],
  });
}

/** Safeties that open for a cause: not to be reset again and again, and one that resets itself not to be jumped out. */
function resetCautions(place: PlaceId): readonly CautionId[] {
  if (place === 'highPressureSwitch' || place === 'overload') return ['repeatedReset'];
  return place === 'lowPressureSwitch' ? ['noBypass'] : [];
}

function loadJudgement(
  isFed: boolean,
  { place, state }: { readonly place: PlaceId; readonly state: VisitState },
): Judgement {
  const cautions: readonly CautionId[] = hasCapacitor(place) ? ['capacitorCharge'] : [];
  if (isFed) return { state: 'fed', next: null, cautions };
  return { state: 'notFed', next: nextFor(state), cautions: ['notProvenDead'] };
}

interface Traced {
  readonly circuit: Circuit;
  readonly read: readonly Observation[];
}

function traced(state: VisitState): Traced | null {
  const circuit = circuitOf(state);
  const read = circuit && observationsOf(circuit, takenIn(circuit, state));
  return circuit && read ? { circuit, read } : null;
}

function nextFor(state: VisitState): LeadsAt | null {
  const trace = traced(state);
  const next = trace && nextMeasurement(trace.circuit, trace.read);
  return trace && next ? leadsAt(trace.circuit, next) : null;
}

/** "Passing" takes another reading beside the zero: one that no single or double fault with it open gives. */
function zeroAcross(place: PlaceId, state: VisitState): Judgement {
  const trace = traced(state);
  const part = trace && switchesOf(trace.circuit).find(({ id }) => id === place);
  if (trace && part && isPassing(trace.circuit, part, trace.read)) {
    return { state: 'passing', next: null, cautions: [] };
  }
  return { state: 'undetermined', next: nextFor(state), cautions: [] };
}

function known(
  place: PlaceId,
  { supply, across }: Pair,
  { state, next, cautions }: Judgement,
): Known {
  const input = ({ value, place: at, at: when }: Volts): Input => ({
    name: 'voltage',
    value,
    unit: 'V',
    place: at,
    from: 'read',
    at: when,
  });
  return {
    kind: 'known',
    formula: switchAcrossFormula.id,
    inputs: [supply, across].map(input),
    source: switchAcrossFormula.source,
    cautions: [...new Set<CautionId>(['liveWork', ...cautions])],
    answer: 'switch',
    place,
    state,
    across: across.value,
    supply: supply.value,
    unit: 'V',
    next,
  };
}
