import type { Token } from '../../grammar/tokens.ts';
import { isCountedThing, isPointedOut } from '../words/counted-things.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { WordSet } from '../words/word-set.ts';

/** "Four point one", "a hundred and one" */
const GOES_ON = new WordSet('point dot and oh minus negative');
const SMALL = new WordSet([...ONES, ...TEENS]);
const NUMBERS = new WordSet([...ONES, ...TEENS, ...TENS, 'hundred', 'thousand', 'half', 'zero']);
/** "Head one ninety, fans running": what we have names for is told of by itself. */
const OURS = new WordSet(NAME_WORDS);
/** "The same one", "the inside one": which, and not how much. */
const BEFORE_WHICH = new WordSet(
  'the a an this that these those same other another inside outside new old next last first second bad good big small ' +
    'left right top bottom front back current no any every each which what wrong want wants wanted need needs',
);
const WHOLE = new WordSet('the a an of price my your our their his her this that these');
/** "Two or more", "three of them" */
const JOINS = new WordSet('or of');
const OF_MANY = new WordSet('more fewer less them those these us the my our your his her their');
const OF_FEW = new WordSet('more different other such people');

/** Whether the number that a reading ends in counts or points at things: "a case of twenty four waters", "the inside one". */
export function countsThings(tokens: readonly Token[], start: number, end: number): boolean {
  if (isRestOfTime(tokens, start)) return true;
  if (isNobody(tokens, start) && !holdsNumber(tokens, start + 1, end)) return true;
  const last = tokens[end - 1];
  if (last === undefined) return false;
  if (!isNumber(last)) return isSize(last, tokens[end]);
  const before = tokens[end - 2];
  const isAlone =
    end - 1 > start && !isNumber(before) && !(before !== undefined && GOES_ON.has(before));
  if (isOneOfAKind(tokens, end)) return true;
  if (isAlone && isWhich(last, before) && !holdsNumber(tokens, start, end - 1)) return true;
  const next = tokens[end];
  if (next === undefined || next.pause) return false;
  if (LETTERS.has(next) && endsGas(tokens, end)) return true;
  if (SIZED_IN.has(next)) return true;
  if (isCountedThing(next) && !OURS.has(next)) return true;
  if (last.text === 'half') return WHOLE.has(next);
  // "Sixteen pounds one now": the ounces.
  if (!isAlone || !isSmall(last) || (before !== undefined && POUNDS.has(before))) return false;
  const second = tokens[end + 1];
  return (
    OF_FEW.has(next) ||
    (JOINS.has(next) && second !== undefined && OF_MANY.has(second)) ||
    (last.text === 'one' && next.text === 'of') ||
    (last.text === 'one' && isPointedOut(next) && !OURS.has(next) && second?.text !== 'now')
  );
}

const POUNDS = new WordSet('pound pounds lb lbs');

/** "An hour and a half on the walk-in": the half is of the hour. */
function isRestOfTime(tokens: readonly Token[], start: number): boolean {
  const article = tokens[start - 1]?.text === 'a' ? start - 1 : start;
  const part = tokens[tokens[article]?.text === 'a' ? article + 1 : article];
  const of = tokens[article - 2];
  if (part === undefined || of === undefined || tokens[article - 1]?.text !== 'and') return false;
  return PARTS.has(part) && TIMES.has(of);
}
const PARTS = new WordSet('half quarter third');
const TIMES = new WordSet('hour hours hr hrs minute minutes day days week weeks');

/** "Steaming the coil for half an hour": how long, and nothing read. */
export function isHowLong(tokens: readonly Token[], end: number): boolean {
  const isHalf = tokens[end - 1]?.text === 'half' && tokens[end]?.text === 'an';
  const next = tokens[isHalf ? end + 1 : end];
  return next !== undefined && !next.pause && TIMES.has(next);
}

/** "The condenser one and the evaporator one", "the coil one's good", "the meat one": which, and not how much. */
export function isOneOfAKind(tokens: readonly Token[], end: number): boolean {
  const [the, kind, one] = [tokens[end - 3], tokens[end - 2], tokens[end - 1]];
  if (the === undefined || kind === undefined || one?.text !== 'one') return false;
  // "The under counter one"
  const isTheOne = the.text === 'the' || tokens[end - 4]?.text === 'the';
  return (isTheOne && SETS_APART.has(kind)) || isOneMore(the, kind);
}

/** "A mechanical one": another of its kind. */
const isOneMore = (a: Token, kind: Token): boolean =>
  ARTICLES.has(a) && !isNumber(kind) && !GOES_ON.has(kind) && !kind.pause;
const ARTICLES = new WordSet('a an');
const SETS_APART = new WordSet(
  'condenser evaporator evap cond coil air box defrost counter undercounter food product meat dairy milk beer produce chicken ' +
    'fish seafood beef pork cheese salad dough cream',
);

/** "The coil's ten below that", "head's twenty over the outdoor": how far it is from something, and not where it stands. */
export function isBeyond(tokens: readonly Token[], end: number): boolean {
  const [last, way, than] = [tokens[end - 1], tokens[end], tokens[end + 1]];
  // "Ten below" may be read as below zero.
  if (last !== undefined && BEYOND.has(last)) return namesMeasure(tokens, end);
  if (way === undefined || way.pause) return false;
  if (PAST.has(way) && (than === undefined || than.pause)) return true;
  if (BEYOND.has(way)) return namesMeasure(tokens, end + 1);
  return COMPARED.has(way) && than?.text === 'than';
}
const BEYOND = new WordSet('below above under over');
/** "Box is four over" is said from no zero, as "four below" is. */
const PAST = new WordSet('under over');
const COMPARED = new WordSet('colder warmer hotter cooler higher lower');

/** Whether what it is measured from begins there: "it", "the box". */
function namesMeasure(tokens: readonly Token[], at: number): boolean {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first === undefined || first.pause) return false;
  if (OF_IT.has(first)) return true;
  const thing = MEASURED_BY.has(first) ? second : first;
  return thing !== undefined && !thing.pause && MEASURED_FROM.has(thing);
}
const OF_IT = new WordSet('that it this');
const MEASURED_BY = new WordSet('the a my its their');
const MEASURED_FROM = new WordSet(
  'box air room ambient outdoor outdoors outside setpoint set target saturation',
);

/** "Dairy case, twelve footer", "a fifteen horse": no box at twelve, and what no instrument shows. */
export const SIZED_IN = new WordSet(
  'foot footer footers feet ft horse horsepower hp pole cubic mesh sweat pounder',
);

/** "Kitchen, four oh four A": a gas, and no heat. */
const LETTERS = new WordSet('a b c f');
const GASES: ReadonlySet<string> = new Set([
  ...[
    'four oh four',
    'four zero four',
    'four oh seven',
    'four oh eight',
    'five oh seven',
    'four ten',
  ],
  ...['one thirty four', 'four forty eight', 'four forty nine', 'four fifty', 'four fifty two'],
  ...[
    'four fifty four',
    'four fifty five',
    'five thirteen',
    'four twenty two',
    'four thirty eight',
  ],
]);
const LONGEST_GAS = 3;

function endsGas(tokens: readonly Token[], end: number): boolean {
  let words = '';
  for (let at = end - 1; at >= Math.max(0, end - LONGEST_GAS); at -= 1) {
    words = words === '' ? (tokens[at]?.text ?? '') : `${tokens[at]?.text ?? ''} ${words}`;
    if (GASES.has(words)) return true;
  }
  return false;
}

/** "Twenty amp breaker", "a twelve volt coil": told of what it is made for, and read off nothing. */
const OF_SIZE = new WordSet('amp volt watt microfarad mfd mike mic');
/** Behind which it is a reading all the same. */
const BEHIND_READING = new WordSet(
  'on at across to from into in through over between is was for of with and but or when while as off after before now here there right ' +
    'draw drop load reading current supply difference imbalance each per still steady it i we that this so then out back down up a the hot ' +
    'under between leg phase feed coming going only total peak inrush running start starting',
);
export const isSize = (last: Token, next: Token | undefined): boolean =>
  OF_SIZE.has(last) && next !== undefined && !next.pause && !BEHIND_READING.has(next);

/** "No one out there", "a mechanical one on the wall" */
function isNobody(tokens: readonly Token[], start: number): boolean {
  const [before, first, next] = [tokens[start - 1], tokens[start], tokens[start + 1]];
  if (first === undefined || before === undefined || first.pause || isNumber(next)) return false;
  const article = tokens[start - 2];
  return (
    isWhich(first, before) ||
    (first.text === 'one' && article !== undefined && isOneMore(article, before))
  );
}

/** "Two thirty across the other one": the figure was told before. */
function holdsNumber(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (isNumber(tokens[at])) return true;
  return false;
}

const isNumber = (token: Token | undefined): boolean =>
  token !== undefined && (token.value !== null || NUMBERS.has(token));

const isSmall = (token: Token): boolean =>
  token.value === null ? SMALL.has(token) : token.value < 20;

const isWhich = ({ text }: Token, before: Token | undefined): boolean =>
  text === 'one' && before !== undefined && BEFORE_WHICH.has(before);
