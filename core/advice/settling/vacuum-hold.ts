import {
  type DecayVerdict,
  vacuumDecay,
  vacuumDecayFormula,
} from '../../calculations/vacuum-decay.ts';
import { VACUUM_DECAY } from '../../calculations/vacuum-defaults.ts';
import { toBase } from '../../units/convert.ts';
import { absolutePressure } from '../../units/quantity-values.ts';
import type { VisitState } from '../../visit/state.ts';
import { timerOf, type TimerEntry } from '../../visit/timers.ts';
import { amountOf, isNewer } from '../../visit/views.ts';
import { needing, worked, type Found } from '../found.ts';
import { minutesBetween } from './series.ts';
import type { VacuumHoldAnswer } from './settling-verdict.ts';

interface HoldReading {
  readonly minutes: number;
  readonly microns: number;
  readonly at: number;
}

/**
 * What the vacuum did since the hold was timed: from the last reading before it, taken as its start. Two readings
 * may show that it is tight, but not where a rise comes from.
 */
export function vacuumHoldOf(state: VisitState): Found<VacuumHoldAnswer> {
  const timer = timerOf(state, 'vacuumHold');
  return holdBy(timer ? holdReadings(timer, state) : []);
}

/** The same where nothing was timed, by the minutes that were told: "valved off, five minutes in, four twenty". */
export function toldHoldOf(state: VisitState): Found<VacuumHoldAnswer> | null {
  const all = state.readings.filter(({ reading }) => reading.quantity === 'vacuum');
  const start = all.findLastIndex(({ reading }) => reading.afterMinutes === undefined);
  const readings = all.slice(Math.max(start, 0)).flatMap(({ at, reading }) => {
    const amount = amountOf(reading);
    return amount?.unit === 'micron'
      ? [{ minutes: reading.afterMinutes ?? 0, microns: amount.value, at }]
      : [];
  });
  return start < 0 || readings.length < 2 ? null : holdBy(readings);
}

function holdBy(readings: readonly HoldReading[]): Found<VacuumHoldAnswer> {
  const [first, last] = [readings[0], readings.at(-1)];
  if (!first || !last) return needing('vacuum');
  if (readings.length < 2) {
    return { kind: 'refused', about: 'vacuum', reason: 'seriesTooShort', readings: 1, wanted: 2 };
  }
  const decay = vacuumDecay({
    readings: readings.map(({ minutes, microns }) => ({
      minutes,
      pressure: absolutePressure(toBase({ value: microns, unit: 'micron' })),
    })),
  });
  const answer: VacuumHoldAnswer = {
    answer: 'vacuumHold',
    verdict: verdictOf(decay.kind === 'known' ? decay.value.verdict : 'readLonger', last.microns),
    from: first.microns,
    to: last.microns,
    unit: 'micron',
    minutes: last.minutes - first.minutes,
    readings: readings.length,
  };
  return worked(answer, {
    inputs: readings.map(({ microns, at }) => ({
      name: 'vacuum',
      value: microns,
      unit: 'micron',
      from: 'read',
      at,
    })),
    cautions: decay.kind === 'known' ? decay.cautions : [],
    formula: vacuumDecayFormula,
    sources: [VACUUM_DECAY.source],
  });
}

function verdictOf(verdict: DecayVerdict, microns: number): VacuumHoldAnswer['verdict'] {
  const isLow = toBase({ value: microns, unit: 'micron' }) <= VACUUM_DECAY.tightUpTo;
  return verdict === 'readLonger' && isLow ? 'holdingSoFar' : verdict;
}

/** Said so soon after the clock was started, it is where the hold began. */
const START_MINUTES = 2;

function holdReadings(timer: TimerEntry, state: VisitState): readonly HoldReading[] {
  const all = state.readings.flatMap(({ id, at, reading }) => {
    const amount = reading.quantity === 'vacuum' ? amountOf(reading) : null;
    if (amount?.unit !== 'micron') return [];
    const isAfter = isNewer(state, id, timer.id);
    const counted = reading.afterMinutes ?? minutesBetween(timer.at, at);
    const isStart = !isAfter || (reading.afterMinutes === undefined && counted <= START_MINUTES);
    return [{ minutes: isStart ? 0 : counted, microns: amount.value, at }];
  });
  const start = all.findLast(({ minutes }) => minutes === 0);
  const held = all.filter(({ minutes }) => minutes > 0);
  return start ? [start, ...held] : held;
}
