import { LOCKED_ROTOR_MULTIPLE } from '../../calculations/electrical-defaults.ts';
import type { CauseId } from '../../terms/causes.ts';
import type { PlaceId } from '../../terms/names.ts';
import { toBase } from '../../units/convert.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { absoluteOf, readAmount } from '../current.ts';
import { both } from '../found.ts';
import { inputOf, readingAt } from '../judged/read-at.ts';
import type { EvidenceRow } from '../verdict.ts';
import { RATIOS, type FindingRule } from './finding-rules.ts';
import type { Evidence } from './observation.ts';
import { ratiosOfRule } from './seen-findings.ts';

/** Whether motors and heaters draw, and whether the compressor pumps at all (weights from memory). */
export function motorEvidence(state: VisitState): readonly Evidence[] {
  return [
    ...CLAMPED.flatMap((rule) => clampEvidence(rule, state)),
    ...compressorEvidence(state),
    ...pumpingEvidence(state),
  ];
}

type Points = Partial<Pick<FindingRule, 'for' | 'against'>>;
const NO_POINTS = { for: {}, against: {} } as const;

interface Clamped {
  readonly place: PlaceId;
  readonly none: Points;
  readonly some: Points;
}

/** Amps tell a dead motor; one that draws may still stand, so amps alone clear it only a little. */
const CLAMPED: readonly Clamped[] = [
  {
    place: 'evaporatorFan',
    none: { for: { evaporatorFanOut: 'shows' } },
    some: { against: { evaporatorFanOut: 'hints' } },
  },
  {
    place: 'condenserFan',
    none: { for: { condenserFanOut: 'shows', fanControlStuckOff: 'shows' } },
    some: { against: { condenserFanOut: 'hints', fanControlStuckOff: 'shows' } },
  },
  {
    place: 'defrostHeater',
    none: { for: { defrostFailed: 'hints' }, against: { stuckInDefrost: 'shows' } },
    some: { for: { stuckInDefrost: 'hints' }, against: { defrostFailed: 'shows' } },
  },
];

function clampEvidence({ place, none, some }: Clamped, state: VisitState): readonly Evidence[] {
  const entry = readingAt(state, 'current', [place]);
  const amps = entry === null ? null : ampsOf(entry);
  return entry === null || amps === null ? [] : [shown(entry, amps < NO_CURRENT ? none : some)];
}

/** Amps that a clamp shows around nothing (common practice). */
const NO_CURRENT = 0.05;
/** Of the plate's locked-rotor amps: a weak supply pulls them down in its own share (common practice). */
const LOCKED_SHARE = 0.7;
/** Of the supply across the compressor: it gets its voltage (common practice). */
const FED_SHARE = 0.9;

const LOCKED: Points = {
  for: { startGear: 'shows', overloadOpen: 'hints', badSupply: 'hints' },
};
const FED_WITHOUT_AMPS: Points = {
  for: { overloadOpen: 'shows' },
  against: { startGear: 'hints' },
};

/** Locked-rotor amps are a motor that does not turn: high amps of a running one they are not. */
export function isLockedRotor(amps: number, { unit: { nameplate } }: VisitState): boolean {
  const { lockedRotorAmps, ratedLoadAmps } = nameplate;
  if (lockedRotorAmps !== undefined) return amps >= LOCKED_SHARE * toBase(lockedRotorAmps);
  return ratedLoadAmps !== undefined && amps >= LOCKED_ROTOR_MULTIPLE.value * toBase(ratedLoadAmps);
}

function compressorEvidence(state: VisitState): readonly Evidence[] {
  const entry = readingAt(state, 'current', ['compressor', null]);
  const amps = entry === null ? null : ampsOf(entry);
  if (entry === null || amps === null) return [];
  if (isLockedRotor(amps, state)) return [shown(entry, LOCKED, STANDS)];
  return amps < NO_CURRENT && isFed(state) ? [shown(entry, FED_WITHOUT_AMPS, STANDS)] : [];
}

function isFed(state: VisitState): boolean {
  const across = readingAt(state, 'voltage', ['compressor']);
  const supply = readingAt(state, 'voltage', ['lineSide', 'lineOneTwo']);
  const volts = across && ampsOf(across);
  const rated = state.unit.nameplate.voltage;
  const full = (supply && ampsOf(supply)) ?? (rated === undefined ? null : toBase(rated));
  return volts !== null && full !== null && volts >= FED_SHARE * full;
}

const ampsOf = ({ reading }: ReadingEntry): number | null => {
  const amount = amountOf(reading);
  return amount && toBase(amount);
};

/** Faults of a compressor that stands though it is called for. */
const STANDING: readonly CauseId[] = ['startGear', 'overloadOpen', 'stuckInDefrost'];
/** With the compressor not turning, what a running one would show is no likelier than anything else. */
const STANDS = 1 / RATIOS.hints;

/** Absolute head over suction: below it the compressor moves nothing, above it has run just now (common practice). */
const EQUAL_RATIO = 1.1;
const PUMPED_RATIO = 1.6;

function pumpingEvidence(state: VisitState): readonly Evidence[] {
  const pressures = both(absoluteOf(state, 'headPressure'), absoluteOf(state, 'suctionPressure'));
  const head = readAmount(state, 'headPressure');
  if (pressures.kind !== 'known' || head.kind !== 'known') return [];
  const ratio = pressures.value[0] / pressures.value[1];
  if (ratio > EQUAL_RATIO && ratio < PUMPED_RATIO) return [];
  const weight = ratio <= EQUAL_RATIO ? RATIOS.hints : 1 / RATIOS.shows;
  const row: EvidenceRow = { kind: 'reading', about: 'headPressure', ...head.value };
  const ratios = new Map(STANDING.map((cause) => [cause, weight] as const));
  return [{ shown: row, ratios, inputs: pressures.inputs }];
}

function shown(entry: ReadingEntry, points: Points, others = 1): Evidence {
  const { reading } = entry;
  const amount = amountOf(reading) ?? { value: 0, unit: 'A' as const };
  const told = ratiosOfRule({ ...NO_POINTS, ...points });
  const ratios = new Map(
    [...told].map(([cause, ratio]) => [cause, ratio === 1 ? others : ratio] as const),
  );
  return {
    shown: { kind: 'reading', about: reading.quantity, ...amount },
    ratios,
    inputs: [inputOf(entry, amount)],
  };
}
