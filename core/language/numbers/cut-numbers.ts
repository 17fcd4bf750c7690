import type { QuantityId } from '../../terms/quantities.ts';
import { wordBefore } from '../words/clause-start.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import type { Amounted } from './measure.ts';
import type { Frame } from '../rule.ts';

const FIGURES: ReadonlySet<string> = new Set(ONES);
const TENS_ONLY: ReadonlySet<string> = new Set(TENS);
const LENGTHS: ReadonlySet<string> = new Set(['inch', 'inches', 'foot', 'feet']);
const PAIRS: ReadonlySet<string> = new Set([...TEENS, ...TENS]);

/**
 * Whether what a rule read breaks off a number that goes on: "head's up there thirty" of "thirty eight in the box",
 * "twelve one" of "one nineteen", "point two six" of "six point one". Only of rules that read loosely or without a
 * point: "suction twenty eight superheat" may well be two values.
 */
export function isCutShort(frame: Frame): boolean {
  if (frame.endsAtPause) return false;
  const { to } = frame.span;
  const last = frame.wordsOf({ from: to - 1, to }).toLowerCase();
  const next = frame.wordsOf({ from: to, to: to + 1 }).toLowerCase();
  if (TENS_ONLY.has(last)) return FIGURES.has(next);
  // "One ninety six six inches from the compressor"
  return FIGURES.has(last) && (PAIRS.has(next) || next === 'point' || LENGTHS.has(next));
}

/** Whether a number that ends there is none of its own: "eight pounds, and two fifty seven psi", "seventeen pounds, two ninety six volts". */
export function breaksOff(frame: Frame): boolean {
  if (frame.endsAtPause) return false;
  const { to } = frame.span;
  const [last, next] = [to - 1, to].map((at) =>
    frame.wordsOf({ from: at, to: at + 1 }).toLowerCase(),
  );
  return (isFigure(last) || last === 'hundred') && (isFigure(next) || GOES_ON.has(next ?? ''));
}
const isFigure = (word = ''): boolean => FIGURES.has(word) || PAIRS.has(word) || /^\d+$/.test(word);
const GOES_ON: ReadonlySet<string> = new Set(['hundred', 'thousand', 'point', 'oh']);

/** "We're on a twelve degree split": the figure is of what stands behind it. */
export const isSized = (frame: Frame): boolean =>
  !frame.endsAtPause && SIZES.test(frame.wordsOf({ from: frame.span.to, to: frame.span.to + 1 }));
const SIZES = /^(?:degrees?|inch|foot|amp|volt|ton)$/i;

/** "Reach-in two is warm", "evap one's fan": the second and the first of them, and nowhere near so many degrees. */
export function isCounted(
  { value, unit }: Amounted,
  frame: Frame,
  quantity: QuantityId | null = null,
): boolean {
  if (unit === null && (isMeasureOfElse(frame) || isNumberOfElse(quantity, frame))) return true;
  if (unit !== null || value === null || value <= 0 || value >= 10 || frame.endsAtPause)
    return false;
  const { to } = frame.span;
  return (
    COUNTABLE.test(frame.wordsOf(frame.span)) && TELLS.test(frame.wordsOf({ from: to, to: to + 1 }))
  );
}

/** "Ninety percent full", "twelve by fourteen feet" */
function isMeasureOfElse(frame: Frame): boolean {
  const { to } = frame.span;
  return !frame.endsAtPause && OF_ELSE.test(frame.wordsOf({ from: to, to: to + 2 }));
}
const OF_ELSE = new RegExp(
  `^(?:percent|%|feet|foot|footer)\\b|^by (?:\\d|(?:${[...ONES, ...TEENS, ...TENS].join('|')})\\b)`,
  'i',
);

const COUNTABLE =
  /\b(?:reach[- ]?in|walk[- ]?in|cooler|freezer|case|cabinet|prep table|merchandiser|evap|evaporator|coil) \S+$/i;
const TELLS =
  /^(?:'s|is|isn't|isnt|has|hasn't|was|wasn't|won't|will|does|doesn't|keeps|needs|quit|went|just|sounds|looks|trips|runs)$/i;

/** "He is in room twelve", "on a scale of one to ten": what has a number, and is not at so many degrees or pounds. */
function isNumberOfElse(quantity: QuantityId | null, frame: Frame): boolean {
  const words = frame.wordsOf(frame.span);
  switch (quantity) {
    case 'boxTemp':
      return HOLDS_SO_MANY.test(words);
    case 'ambientTemp':
      return NUMBERED_ROOM.test(words) && LEADS_TO_ROOM.test(wordBefore(frame));
    case 'cylinderWeight':
      return FROM_ONE.test(words);
    default:
      return false;
  }
}
const NUMBERED_ROOM = /^room (?:\d|(?!is\b|at\b|was\b|temp)[a-z])/i;
const LEADS_TO_ROOM = /^(?:in|to|for|from|of|at|near|by|outside|conference)$/i;
const FROM_ONE = /\bscale (?:of|from)\b/i;
/** "A case of twelve" is not at twelve. */
const HOLDS_SO_MANY = /\b(?:case|cabinet|room|return) of \S+(?: \S+)?$/i;
