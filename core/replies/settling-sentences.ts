import type {
  Moved,
  SettledAnswer,
  SettledRow,
  SettlingNext,
  TooSoonAnswer,
  TrendAnswer,
} from '../advice/settling/settling-verdict.ts';
import { readsNothing } from '../units/format-amount.ts';
import type { UnitId } from '../units/units.ts';
import { figure } from './amounts.ts';
import { placedName, SHORT_NAMES } from './names.ts';
import { line, plain, sentences, type Said } from './said.ts';
import { spanSaid } from './timer-sentences.ts';

/** Older than this a reading is not what it is doing now. */
const STALE_MINUTES = 10;

/** Where it is and which way it goes, whether it holds, and what to do. */
export function trendSaid(trend: TrendAnswer): Said {
  const { about, place, value, unit, recent, changeUnit } = trend;
  return sentences([
    line`${placedName(about, place)} is ${figure({ value, unit })}, ${movedSaid(recent, changeUnit)}.`,
    ...heldSaid(trend),
    trendTail(trend),
  ]);
}

/** What came of the change, and what to do. */
export function trendTail(trend: TrendAnswer): Said {
  const { changeUnit, sinceChange, agoMinutes } = trend;
  const isStale = agoMinutes >= STALE_MINUTES;
  return sentences([
    ...(sinceChange === null
      ? []
      : [line`${waySaid(sinceChange.change, changeUnit)} since the change.`]),
    isStale ? line`That was read ${spanSaid(agoMinutes)} ago: read it again.` : nextSaid(trend),
  ]);
}

function movedSaid({ change, minutes }: Moved, unit: UnitId): Said {
  if (wayOf(change, unit) === 'same') return line`the same as ${spanSaid(minutes)} before`;
  return line`${waySaid(change, unit)} in ${spanSaid(minutes)}`;
}

function waySaid(change: number, unit: UnitId): Said {
  const way = wayOf(change, unit);
  if (way === 'same') return plain('the same');
  return line`${way} ${figure({ value: Math.abs(change), unit })}`;
}

export type Way = 'up' | 'down' | 'same';

/** Nobody is told that something went "up 0 psi". */
export function wayOf(change: number, unit: UnitId): Way {
  if (readsNothing({ value: change, unit })) return 'same';
  return change > 0 ? 'up' : 'down';
}

function heldSaid({ held, changeUnit }: TrendAnswer): readonly Said[] {
  if (held === null) return [];
  const band = figure({ value: held.within, unit: changeUnit });
  return held.isSteady
    ? [line`Steady: within ${band} for ${spanSaid(held.minutes)}.`]
    : [line`Not steady yet: it must hold within ${band} for ${spanSaid(held.wantedMinutes)}.`];
}

function nextSaid({ about, next }: TrendAnswer): Said {
  return next.kind === 'readAgain' && next.about === about ? plain('') : settlingNextSaid(next);
}

function settlingNextSaid(next: SettlingNext): Said {
  switch (next.kind) {
    case 'nothing':
      return plain('');
    case 'takeAfter':
      return plain('Take the after readings.');
    case 'readAgain':
      return plain(`Read ${SHORT_NAMES[next.about]} again: it is not shown to hold yet.`);
  }
}

/** Several that settled in one breath share what is said of the first. */
export function settledSaid({ rows: [first, ...others], next }: SettledAnswer): Said {
  if (!first) return plain('');
  return sentences([rowSaid(first), settledTail(others, next)]);
}

/** What settled with it, and what to do. */
export function settledTail(others: readonly SettledRow[], next: SettlingNext): Said {
  const also = others.map(({ about, place }) => placedName(about, place)).join(' and ');
  return sentences([
    plain(also === '' ? '' : `So ${others.length === 1 ? 'has' : 'have'} ${also}.`),
    settlingNextSaid(next),
  ]);
}

function rowSaid({ about, place, within, changeUnit, minutes, sinceChange }: SettledRow): Said {
  const band = figure({ value: within, unit: changeUnit });
  const held = line`${placedName(about, place)} has held within ${band} for ${spanSaid(minutes)}`;
  if (sinceChange === null || wayOf(sinceChange.change, changeUnit) === 'same') {
    return line`${held}.`;
  }
  return line`${held}, ${waySaid(sinceChange.change, changeUnit)} since the change.`;
}

const AGAIN = 'Let it run, read again, and mark the after again.';

export function tooSoonSaid({ minutes, moving }: TooSoonAnswer): Said {
  const is =
    moving === null
      ? line`Only ${spanSaid(minutes)} since the change: too soon to call it settled.`
      : plain(`Too soon: ${SHORT_NAMES[moving]} is still moving.`);
  return sentences([is, plain(AGAIN)]);
}

export const SECOND_CHANGE = 'One change at a time: the last one has not settled yet.';
