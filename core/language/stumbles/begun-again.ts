import { changed, type Token } from '../../grammar/tokens.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { WordSet } from '../words/word-set.ts';
import { hasPause } from './token-looks.ts';

/** Beside these there are several numbers, or a range of them. */
const OF_SEVERAL = new WordSet(
  'legs lines phases windings both each all between like around about anywhere no not',
);
/** Named anywhere before, each of several has a number of its own. */
const MANY = new WordSet('legs leg lines phases phase windings both each all');
/** A single figure behind these is of the name: "line two, two thirty". */
const NUMBERED = new WordSet(
  'leg line l t phase terminal winding number circuit fan unit compressor comp case door rack timer',
);
/** "Left one one point three": which, and how much. */
const WHICH = new WordSet(
  'left right top bottom middle front back other first second third this that',
);
/** "In twenty twenty four" is a year. */
const [FIRST_OF_YEAR] = TENS;
const LEADS_TO_YEAR = new WordSet(
  'in since from of by until the a during before after model year built made january february march april may june july august september october november december',
);
const mayBeYear = (before: Token | undefined): boolean =>
  before === undefined || LEADS_TO_YEAR.has(before);
const FIGURES = new WordSet(ONES);
const ROUND = new WordSet([...TENS, 'hundred', 'oh']);
const TWO_PLACES = new WordSet([...TENS, ...TEENS]);

/** "Head's one forty, one forty six", "seven, seven point two": a number that is begun, and begun again to say all of it. */
export function withoutBegun(tokens: readonly Token[]): readonly Token[] {
  for (let at = 0; at < tokens.length; at += 1) {
    if (!isNumber(tokens[at]) || isNumber(tokens[at - 1])) continue;
    const end = runEnd(tokens, at);
    const again = againIn(tokens, at, end);
    if (again !== null) return withoutBegun(withoutStretch(tokens, at, again));
    at = end;
  }
  return tokens;
}

/** "Fourteen point something, fourteen three": read as far as it could be, and then whole. */
export function withoutUnread(tokens: readonly Token[]): readonly Token[] {
  const point = tokens.findIndex(
    ({ text }, at) => text === 'point' && tokens[at + 1]?.text === 'something',
  );
  if (!isNumber(tokens[point - 1]) || !isNumber(tokens[point + 2])) return tokens;
  let from = point;
  while (isNumber(tokens[from - 1])) from -= 1;
  return withoutStretch(tokens, from, point + 2);
}

function runEnd(tokens: readonly Token[], at: number): number {
  let end = at;
  while (isNumber(tokens[end]) || isYeah(tokens, end)) end += 1;
  return end;
}

/** "One sixty two, yeah, one sixty two" */
const isYeah = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'yeah' && isNumber(tokens[at + 1]);

function withoutStretch(tokens: readonly Token[], from: number, to: number): readonly Token[] {
  const [first, ...more] = tokens.slice(to);
  const pause = tokens[from]?.pause ?? false;
  if (first === undefined) return tokens;
  return [...tokens.slice(0, from), changed(first, { pause }), ...more];
}

/** From where the number is said again, in all of the numbers that stand there together. */
function againIn(tokens: readonly Token[], at: number, end: number): number | null {
  const before = tokens[at - 1];
  if (before !== undefined && OF_SEVERAL.has(before)) return null;
  if (before !== undefined && WHICH.has(before) && tokens[at]?.text === 'one') return null;
  if (MANY.hasAny(tokens, 0, at) && tokens[end]?.text === 'and') return null;
  const isNumbered = before !== undefined && NUMBERED.has(before);
  for (let to = at + 1; to < end; to += 1) {
    const again = isYeah(tokens, to) ? to + 1 : to;
    const isApart = again > to || tokens[again]?.pause === true;
    const count = to - at;
    if (end - again < count || !isSame(tokens, { at, again, count })) continue;
    if (isNumbered && isFigureAlone(tokens[at], count)) continue;
    const isMeant = isApart
      ? goesOnApart(tokens, { at, again, count, end })
      : goesOn(tokens, { at, again, count, end });
    if (isMeant) return again;
  }
  return null;
}

interface Twice {
  readonly at: number;
  readonly again: number;
  readonly count: number;
}
interface Begun extends Twice {
  readonly end: number;
}

function isSame(tokens: readonly Token[], { at, again, count }: Twice): boolean {
  for (let index = 0; index < count; index += 1) {
    const [one, other] = [tokens[at + index], tokens[again + index]];
    if (one?.text !== other?.text || (index > 0 && (one?.pause || other?.pause))) return false;
  }
  return true;
}

/** Behind a pause: the same again, a figure more, or what comes behind the point. */
function goesOnApart(tokens: readonly Token[], { at, again, count, end }: Begun): boolean {
  const rest = again + count;
  const next = tokens[rest];
  if (rest >= end) return isSaidAgain(tokens, { at, again, count, end });
  if (next === undefined || next.pause || hasPause(tokens, rest, end)) return false;
  if (next.text === 'point') return true;
  const last = tokens[rest - 1];
  if (last !== undefined && (ROUND.has(last) || hasPoint(tokens, at, again)))
    return rest + 1 === end && FIGURES.has(next);
  return isFigureAlone(tokens[at], count) && rest + 2 >= end && TWO_PLACES.has(next);
}

/** The same number twice: a figure by itself only where something is told of it, and none of several. */
function isSaidAgain(tokens: readonly Token[], { at, count, end }: Begun): boolean {
  const next = tokens[end];
  const goesOnBehind = next !== undefined && !next.pause;
  if (goesOnBehind && OF_SEVERAL.hasAny(tokens, end, Math.min(tokens.length, end + AHEAD))) {
    return false;
  }
  if (goesOnBehind) return true;
  return at > 0 && (count > 1 || isTwoPlaces(tokens[at]) || tokens[at]?.value !== null);
}
const AHEAD = 4;

function hasPoint(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (tokens[at]?.text === 'point') return true;
  return false;
}

const isFigureAlone = (token: Token | undefined, count: number): boolean =>
  count === 1 && token !== undefined && FIGURES.has(token);

const isTwoPlaces = (token: Token | undefined): boolean =>
  token !== undefined && TWO_PLACES.has(token);

/** In one breath: "two two thirty" may be two hundred and thirty of leg two. */
function goesOn(tokens: readonly Token[], { at, again, count, end }: Begun): boolean {
  const rest = again + count;
  const [next, last] = [tokens[rest], tokens[rest - 1]];
  if (hasPause(tokens, at + 1, end) || last === undefined) return false;
  if (tokens[at]?.text === FIRST_OF_YEAR && count === 1 && mayBeYear(tokens[at - 1])) return false;
  if (rest >= end) {
    const isLong = count > 2 || (tokens[end]?.pause === false && !isFigureAlone(tokens[at], count));
    return isLong && isSaidAgain(tokens, { at, again, count, end });
  }
  if (next?.text === 'point') return true;
  if (!ROUND.has(last) && !hasPoint(tokens, at, again)) return false;
  if (next === undefined || !FIGURES.has(next)) return false;
  return rest + 1 === end || isWhollySaidAgain(tokens, { at: again, again: rest + 1, end });
}

/** "One fifty, one fifty five one fifty five": what was begun and said whole is said once more. */
const isWhollySaidAgain = (
  tokens: readonly Token[],
  { at, again, end }: Omit<Begun, 'count'>,
): boolean => end - again === again - at && isSame(tokens, { at, again, count: again - at });
