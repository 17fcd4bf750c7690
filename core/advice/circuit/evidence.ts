import { ACROSS_BANDS, NO_VOLTAGE } from '../../calculations/electrical-defaults.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import { toBase } from '../../units/convert.ts';
import { amountOf, isNewer, type ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { CIRCUITS } from './circuits.ts';
import { loadsOf, switchesOf, type Circuit, type DevicePlace, type SuspectId } from './circuit.ts';
import type { Observation } from './explanations.ts';
import { measurementKey, supplyOf, type Measurement, type Outcome } from './measurement.ts';

/** A measurement with the number it gave, if it was read off a meter. */
export interface Taken {
  readonly measurement: Measurement;
  readonly value: number | null;
  readonly place: PlaceId | null;
  readonly at: number;
}

export const devicesOf = (circuit: Circuit): readonly SuspectId[] =>
  [...switchesOf(circuit), ...loadsOf(circuit)].map(({ id }) => id);

/** Every device that any circuit here has: ohms of anything else are a part's own business. */
const DEVICES: ReadonlySet<string> = new Set(CIRCUITS.flatMap(devicesOf));

/** Less than the smallest control circuit's supply is a ghost, not a supply (common practice: 24 V, less 15 %). */
const LEAST_SUPPLY = 20;
/** Amps that a clamp shows around nothing (common practice). */
const NO_CURRENT = 0.05;

/**
 * What was measured in a circuit since the last work, the newest of each place: what was done may have closed
 * what was open before.
 */
export function takenIn(circuit: Circuit, state: VisitState): readonly Taken[] {
  const readings = metered(state);
  const all = [
    ...readings.flatMap((entry, index) =>
      takenFrom(entry, { circuit, before: readings.slice(0, index) }),
    ),
    ...sinceWork(state, state.findings).flatMap((entry) => seenFrom(entry, circuit)),
  ].sort((one, other) => placeInLog(state, one.id) - placeInLog(state, other.id));
  return [...new Map(all.map(({ taken }) => [measurementKey(taken.measurement), taken])).values()];
}

function sinceWork<Kept extends { readonly id: string }>(
  state: VisitState,
  all: readonly Kept[],
): readonly Kept[] {
  const last = state.work.at(-1);
  return last === undefined ? all : all.filter(({ id }) => isNewer(state, id, last.id));
}

/** Volts and amps with a number and a place, and ohms through a device of a circuit, as it stands now. */
export const metered = (state: VisitState): readonly ReadingEntry[] =>
  sinceWork(state, state.readings).filter(
    ({ reading: { quantity, value, place, when, overlimit } }) =>
      when === undefined &&
      place !== null &&
      (quantity === 'resistance'
        ? DEVICES.has(place) && (value !== undefined || overlimit === true)
        : (quantity === 'voltage' || quantity === 'current') && value !== undefined),
  );

interface Logged {
  readonly id: string;
  readonly taken: Taken;
}

const placeInLog = ({ history }: VisitState, id: string): number =>
  history.findIndex((event) => event.id === id);

interface Around {
  readonly circuit: Circuit;
  readonly before: readonly ReadingEntry[];
}

function takenFrom(
  { id, at, reading }: Pick<ReadingEntry, 'id' | 'at' | 'reading'>,
  around: Around,
): readonly Logged[] {
  const { quantity, value, place } = reading;
  if (place === null) return [];
  if (quantity === 'resistance') return ohmsThrough({ id, at, reading }, around);
  if (value === undefined) return [];
  const measurement =
    quantity === 'current' ? drawnBy(place, around) : voltageAt(place, reading.words, around);
  return measurement === null ? [] : [{ id, taken: { measurement, value, place, at } }];
}

/** No path on the meter is endless ohms. */
function ohmsThrough(
  { id, at, reading }: Pick<ReadingEntry, 'id' | 'at' | 'reading'>,
  { circuit }: Around,
): readonly Logged[] {
  const { place } = reading;
  const amount = amountOf(reading);
  const of = devicesOf(circuit).find((device) => device === place);
  if (of === undefined) return [];
  const value = amount === null ? Infinity : toBase(amount);
  return [{ id, taken: { measurement: { kind: 'ohms', of }, value, place, at } }];
}

function drawnBy(place: PlaceId, { circuit }: Around): Measurement | null {
  const load = loadsOf(circuit).find(({ id }) => id === place);
  return load ? { kind: 'draws', of: load.id } : null;
}

/** Readings to ground are not here: on two legs both sides of an open switch read the same. */
function voltageAt(place: PlaceId, words: string, around: Around): Measurement | null {
  const { circuit } = around;
  if (place === 'lineOneTwo') return supplyOf(circuit);
  if (place === 'lineSide' || place === 'loadSide') return sideOf(place, words, around);
  const third = thirdLegPair(place, circuit);
  if (third) return third;
  const device = devicesOf(circuit).find((id) => id === place);
  return device === undefined ? null : { kind: 'across', of: device };
}

/**
 * "In" and "out" are those of the switch last named, and so is a load side said alone; else they are the
 * contactor's. A line side is the unit's own, where the supply is proved.
 */
function sideOf(
  kind: 'lineSide' | 'loadSide',
  words: string,
  { circuit, before }: Around,
): Measurement | null {
  const last = lastNamed(before);
  const named = switchesOf(circuit).find(({ id }) => id === last);
  const isOfNamed = named !== undefined && !/contactor/i.test(words);
  if (kind === 'lineSide')
    return isInAndOut(words) && isOfNamed ? { kind, of: named.id } : supplyOf(circuit);
  if (isOfNamed) return { kind, of: named.id };
  return isSwitch('contacts', circuit) ? { kind, of: 'contacts' } : null;
}

const isInAndOut = (words: string): boolean => /\bin\b.*\bout\b/i.test(words);

export const lastNamed = (before: readonly ReadingEntry[]): PlaceId | null =>
  before.findLast(({ reading }) => !isSide(reading.place))?.reading.place ?? null;

/** The newest reading of the supply, whatever the circuit: "in" alone is no supply once a device was named. */
export function supplyReading(state: VisitState): ReadingEntry | null {
  const readings = metered(state);
  const isOfSupply = (
    { reading: { quantity, place, words } }: ReadingEntry,
    at: number,
  ): boolean => {
    if (quantity !== 'voltage') return false;
    if (place === 'lineOneTwo') return true;
    return (
      place === 'lineSide' && !(isInAndOut(words) && lastNamed(readings.slice(0, at)) !== null)
    );
  };
  return readings.findLast(isOfSupply) ?? null;
}

const isSide = (place: PlaceId | null): boolean => place === 'lineSide' || place === 'loadSide';

const isSwitch = (id: SuspectId, circuit: Circuit): boolean =>
  switchesOf(circuit).some((one) => one.id === id);

function thirdLegPair(place: PlaceId, { parts }: Circuit): Measurement | null {
  const [one, two, three] = parts.flatMap((part) => (part.kind === 'supply' ? [part.at] : []));
  if (one === undefined || two === undefined || three === undefined) return null;
  if (place === 'lineTwoThree') return { kind: 'legs', between: [two, three] };
  return place === 'lineOneThree' ? { kind: 'legs', between: [one, three] } : null;
}

const MOTOR_OF: Partial<Record<PartId, DevicePlace>> = {
  compressor: 'compressor',
  condenserFan: 'condenserFan',
  condenserFanMotor: 'condenserFan',
  evaporatorFan: 'evaporatorFan',
  evaporatorFanMotor: 'evaporatorFan',
};

/** A motor seen to run, or to stand still. */
function seenFrom(
  { id, at, finding }: VisitState['findings'][number],
  circuit: Circuit,
): readonly Logged[] {
  const motor = MOTOR_OF[finding.part];
  if (motor === undefined || !loadsOf(circuit).some((load) => load.id === motor)) return [];
  if (finding.state !== 'running' && finding.state !== 'notRunning') return [];
  const value = finding.state === 'running' ? null : 0;
  return [{ id, taken: { measurement: { kind: 'draws', of: motor }, value, place: null, at } }];
}

/** What the numbers mean once the supply is known; nothing before. */
export function observationsOf(
  circuit: Circuit,
  taken: readonly Taken[],
): readonly Observation[] | null {
  const supply = supplyRead(circuit, taken);
  if (supply === null) return null;
  return observed(circuit, taken, supply);
}

/** Ohms need no supply: power is off for them. */
export const ohmsOnly = (circuit: Circuit, taken: readonly Taken[]): readonly Observation[] =>
  observed(
    circuit,
    taken.filter(({ measurement }) => measurement.kind === 'ohms'),
    0,
  );

function observed(
  circuit: Circuit,
  taken: readonly Taken[],
  supply: number,
): readonly Observation[] {
  return taken.map(({ measurement, value }) => ({
    measurement,
    outcome: outcomeOf(measurement, value, { supply, circuit }),
  }));
}

export function supplyRead(circuit: Circuit, taken: readonly Taken[]): number | null {
  const key = measurementKey(supplyOf(circuit));
  return taken.find(({ measurement }) => measurementKey(measurement) === key)?.value ?? null;
}

export const isSupply = (supply: number): boolean => supply >= LEAST_SUPPLY;

interface Basis {
  readonly supply: number;
  readonly circuit: Circuit;
}

function outcomeOf(
  measurement: Measurement,
  value: number | null,
  { supply, circuit }: Basis,
): Outcome {
  if (value === null) return 'all';
  if (measurement.kind === 'ohms') return ohmsOutcome(value);
  if (measurement.kind === 'draws') return value < NO_CURRENT ? 'none' : 'all';
  if (measurementKey(measurement) === measurementKey(supplyOf(circuit))) {
    return isSupply(value) ? 'all' : 'none';
  }
  if (!isSupply(supply)) return value < LEAST_SUPPLY ? 'none' : 'all';
  const { none, all } = ACROSS_BANDS.value;
  if (value < NO_VOLTAGE || value < none * supply) return 'none';
  return value >= all * supply ? 'all' : 'part';
}

/** Leads and contacts have a few tenths; past this no coil or winding is left, only leakage (common practice). */
const CLOSED_OHMS = 0.5;
const NO_PATH_OHMS = 100_000;

export function ohmsOutcome(ohms: number): Outcome {
  if (ohms <= CLOSED_OHMS) return 'none';
  return ohms >= NO_PATH_OHMS ? 'all' : 'part';
}
