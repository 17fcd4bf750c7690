import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { Phrases } from '../words/phrases-at.ts';
import { deniedTo, taking } from '../words/taken-back-words.ts';
import { WordSet } from '../words/word-set.ts';
import { has } from './token-looks.ts';

/** What takes a number back that no rule for numbers knows. */
const TAKES_BACK = new Phrases([
  ...['er', 'nope', 'or no', 'oops', 'whoops', 'my bad', 'hold on', 'hang on', 'well', 'i lied'],
  ...['let us call it', 'let is call it', 'let us make it', 'let is make it', 'call it'],
  ...['let us make that', 'let is make that', 'better make that', 'better make it', 'check that'],
  ...['i am sorry', 'i should say', 'or i should say', 'i take that back', 'or actually'],
  ...['or i mean', 'or wait', 'oh wait', 'oh no', 'no i said', 'did i say', 'did i just say'],
  ...['did i say that', 'i said that wrong'],
]);
const KNOWN_TO_RULES = new Phrases([
  ...['no', 'wait', 'sorry', 'i mean', 'i meant', 'make that', 'make it', 'or rather', 'rather'],
  ...['scratch that', 'strike that', 'correction', 'actually', 'excuse me', 'it is', 'that is'],
]);
/** Alone they tell of something else: "after two hours, it's two degrees cooler". */
const IS = new Phrases(['it is', 'that is']);
export const STARTS_TAKING_NUMBER = new WordSet(
  [TAKES_BACK, KNOWN_TO_RULES].flatMap((phrases) => [...phrases.firstWords]),
);

/** Units may stand between a number and what takes it back. */
const UNITS = new WordSet(
  'psi degrees degree pounds pound ounces ounce amps amp volts volt ohms bar microfarads grams kilos inches percent',
);
/** Of these no rule knows a number that was taken back. */
const COUNTED = new WordSet('minutes minute mins hours hour seconds microns micron');
const MOST_TAKING = 6;

/** "Fifteen, er, fifty" is told as "fifteen no wait fifty" is; `null` where no number is put right there. */
export function numberAt(tokens: readonly Token[], at: number): readonly Token[] | null {
  if (tokens[at - 1]?.text === 'point') return brokenOffAt(tokens, at);
  const unit = tokens[at - 1];
  const isCounted = has(COUNTED, unit);
  if (!isNumber(unit) && !isCounted && !has(UNITS, unit)) return null;
  const wrongEnd = isNumber(unit) ? at : at - 1;
  const wrong = runBegin(tokens, wrongEnd);
  const denied = deniedTo(tokens, at, { from: wrong, to: wrongEnd });
  const taken = denied + taking(tokens, denied, [TAKES_BACK, KNOWN_TO_RULES]);
  const right = askedTo(tokens, taken, { from: wrong, to: wrongEnd });
  if (right - at > MOST_TAKING || wrong === wrongEnd) return null;
  if (right === at + taking(tokens, at, [IS])) return null;
  if (isOh(tokens[wrongEnd - 1]) || isOh(tokens[right])) return null;
  if (!isNumber(tokens[right]) || isBeforePoint(tokens, at, right) || isPlainWell(tokens[at]))
    return null;
  const end = runEnd(tokens, right);
  if (isSame(tokens, { from: wrong, to: wrongEnd }, { from: right, to: end })) {
    return [...tokens.slice(0, at), ...tokens.slice(end)];
  }
  if (!mayBeLeftOut(tokens, wrong, wrongEnd)) return asRulesKnow(tokens, at, right);
  const unitAgain = tokens[end];
  if (has(COUNTED, unitAgain) && isWholeNumber(tokens[wrong])) {
    return [...tokens.slice(0, wrong), ...tokens.slice(right)];
  }
  if (isCounted && unit !== undefined && isOneNumber(tokens, right, end)) {
    return [...tokens.slice(0, wrong), ...tokens.slice(right, end), unit, ...tokens.slice(end)];
  }
  return asRulesKnow(tokens, at, right);
}

/** "Fourteen point, no wait, thirteen point one": broken off before its tenth, the first was none. */
function brokenOffAt(tokens: readonly Token[], at: number): readonly Token[] | null {
  const wrong = runBegin(tokens, at - 1);
  const right = at + taking(tokens, at, [TAKES_BACK, KNOWN_TO_RULES]);
  const isPutRight = wrong < at - 1 && right > at && isNumber(tokens[right]);
  return isPutRight ? [...tokens.slice(0, wrong), ...tokens.slice(right)] : null;
}

interface Run {
  readonly from: number;
  readonly to: number;
}

/** "One eighty, did I say eighty, one ninety": past the number that was said, or the end of it, and what takes it back once more. */
function askedTo(tokens: readonly Token[], at: number, { from, to }: Run): number {
  if (tokens[at - 1]?.text !== 'say') return at;
  for (let begin = from; begin < to; begin += 1) {
    const end = at + to - begin;
    const isSaid = tokens
      .slice(begin, to)
      .every(({ text }, index) => text === tokens[at + index]?.text);
    if (isSaid && !(isNumber(tokens[end]) && tokens[end]?.pause === false)) {
      return end + taking(tokens, end, [TAKES_BACK, KNOWN_TO_RULES]);
    }
  }
  return at;
}

/** "No, twenty, call it twenty": nothing more is put right. */
const isSame = (tokens: readonly Token[], one: Run, other: Run): boolean =>
  one.to - one.from === other.to - other.from &&
  tokens
    .slice(one.from, one.to)
    .every(({ text }, index) => text === tokens[other.from + index]?.text);

/** Minutes and microns are counted whole. */
const isWholeNumber = (token: Token | undefined): boolean =>
  token !== undefined && Number.isInteger(token.value ?? 0);

/** In words, or written in figures: "fifteen 7982" is two. */
const isOneNumber = (tokens: readonly Token[], from: number, to: number): boolean =>
  to === from + 1 || tokens.slice(from, to).every(({ value }) => value === null);

/** "Oh no, oh oh" */
const isOh = (token: Token | undefined): boolean => token?.text === 'oh';

/** "Nine, er, point two" goes on. */
const isBeforePoint = (tokens: readonly Token[], at: number, right: number): boolean =>
  tokens[at]?.text === 'er' && tokens[right]?.text === 'point';

const TIMERS = new WordSet('timer remind wake alarm');
const LEADS_TO_TIME = new WordSet('for in to of at on timer');

/** A number written in figures is lost to nobody: only in an order for a timer does what is ordered hold it. */
function mayBeLeftOut(tokens: readonly Token[], from: number, to: number): boolean {
  const isWritten = tokens.slice(from, to).some(({ value }) => value !== null);
  if (!isWritten) return true;
  return to === from + 1 && TIMERS.hasAny(tokens, 0, from) && has(LEADS_TO_TIME, tokens[from - 1]);
}

/** "One sixty as well two" */
const isPlainWell = (token: Token | undefined): boolean => token?.text === 'well' && !token.pause;

function asRulesKnow(tokens: readonly Token[], at: number, right: number): readonly Token[] | null {
  if (taking(tokens, at, [KNOWN_TO_RULES]) === right - at) return null;
  const [first, last] = [tokens[at], tokens[right - 1]];
  if (first === undefined || last === undefined) return null;
  const no = changed(first, { text: 'no', known: UNKNOWN, pause: false });
  const wait = changed(last, { text: 'wait', known: UNKNOWN, pause: false });
  return [...tokens.slice(0, at), no, wait, ...tokens.slice(right)];
}

function runBegin(tokens: readonly Token[], end: number): number {
  let from = end;
  while (isNumber(tokens[from - 1]) && (from === end || tokens[from]?.pause === false)) from -= 1;
  return from;
}

function runEnd(tokens: readonly Token[], at: number): number {
  let end = at + 1;
  while (isNumber(tokens[end]) && tokens[end]?.pause === false) end += 1;
  return end;
}
