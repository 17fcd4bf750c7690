import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { FINITE } from '../words/clause-tokens.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { TEENS, TENS } from '../numbers/number-words.ts';
import { Phrases } from '../words/phrases-at.ts';
import { WordSet } from '../words/word-set.ts';

/** What is said while a word is looked for: nothing else wherever a clause goes on before it. */
const SEARCHING = new Phrases([
  ...['let us see here', 'let us see', 'let is see here', 'let is see', 'let me see here'],
  ...['let me see', 'let me think'],
  ...['you know what', 'you know', 'what is it', 'what was it', 'what do you call it', 'i mean'],
  ...['er', 'hang on', 'hold on', 'yeah'],
]);
/** Before a number only. */
const BEFORE_NUMBER = new Phrases([
  ...['like', 'right', 'well', 'ok so', 'ok', 'so', 'what', 'it looks like', 'looks like', 'oh'],
]);
/** Between two commas, where a clause goes on before them. */
const IN_PASSING = new Phrases([
  ...['well', 'right', 'oh', 'ok', 'like', 'so', 'i guess', 'i think', 'i would say', 'man', 'see'],
]);
/** What says that a number is none too sure. */
const UNSURE = new Phrases([
  ...['i guess', 'i think it is', 'i think', 'i would say', 'i want to say', 'i believe'],
  ...['i am going to say', 'oh about', 'probably like', 'we will say', 'let us say', 'let is say'],
]);
const STARTS = new WordSet(
  [SEARCHING, BEFORE_NUMBER, IN_PASSING, UNSURE].flatMap((phrases) => [...phrases.firstWords]),
);

/** Behind these a clause goes on, whatever stands between. */
const LEADS_ON = new WordSet(
  'the a an my our is are was were at of on in to for with from across into reading about around pulling needs need replaced found new',
);
/** What a clause begins with. */
const BEGINS = new WordSet('the i we it my our there this that they he she');
/** And before a number behind these, and behind names. */
const LEADS_TO_NUMBER = new WordSet([
  ...['is', 'are', 'was', 'were', 'at', 'of', 'reading', 'reads', 'about', 'around', 'pulling'],
  ...[
    'to',
    'for',
    'in',
    'says',
    'said',
    'added',
    'recovered',
    'out',
    'drawing',
    'showing',
    'shows',
  ],
  ...['got', 'have', 'on', 'timer', 'across', 'pulls', 'draws', ...NAME_WORDS],
]);
const BE = new WordSet('is are was were');
/** "You know what the head is", "let's see if it holds" */
const ASKS = new WordSet('what how why where when who which if whether that about');
/** "Do you know the head" */
const KNOWS = new WordSet(
  'do does did if let would should not that what as how can could so because all',
);
/** "Hard to hold on" */
const TAKES = new WordSet(
  'do does did if let to would should you i we they not that what as how can could and or but so because',
);

/** "What do I think", "and I guess two of them" */
const IS_ASKED = new WordSet('do does did and but or so because that what if when should would');

/** The tokens without what was said only to find the next word. */
export function withoutHesitations(tokens: readonly Token[]): readonly Token[] {
  let kept: Token[] | null = null;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    if (token === undefined) break;
    const found = STARTS.has(token) ? hesitationAt(tokens, at) : null;
    if (found === null) {
      kept?.push(token);
      continue;
    }
    kept ??= tokens.slice(0, at);
    if (found.instead !== null) kept.push(found.instead);
    const next = tokens[at + found.count];
    if (next !== undefined) kept.push(changed(next, { pause: found.pause }));
    at += found.count;
  }
  return kept ?? tokens;
}

interface Hesitation {
  readonly count: number;
  /** Whether the sentence breaks off there all the same. */
  readonly pause: boolean;
  readonly instead: Token | null;
}

function hesitationAt(tokens: readonly Token[], at: number): Hesitation | null {
  const before = tokens[at - 1];
  if (before === undefined) return unsureAt(tokens, at);
  return (
    unsureAt(tokens, at) ??
    searchAt(tokens, at) ??
    inPassingAt(tokens, at) ??
    (LEADS_TO_NUMBER.has(before) ? leadAt(tokens, at) : null)
  );
}

/** "Head's at I'd say one sixty": about so much. */
function unsureAt(tokens: readonly Token[], at: number): Hesitation | null {
  const [before, first] = [tokens[at - 1], tokens[at]];
  const count = UNSURE.at(tokens, at)?.length ?? 0;
  if (count === 0 || first === undefined || !isNumber(tokens[at + count])) return null;
  if (before !== undefined && (endsNumber(before) || IS_ASKED.has(before))) return null;
  // "I think one fan is out" is about one that is counted.
  if (before === undefined && !isLong(tokens, at + count)) return null;
  const isHedged = before?.text === 'about' || before?.text === 'around';
  const isTimed = isTime(tokens, at + count);
  const about = changed(first, { text: 'about', known: UNKNOWN, pause: false });
  return { count, pause: false, instead: isHedged || isTimed ? null : about };
}

/** "Compressor's, you know, hot" */
function searchAt(tokens: readonly Token[], at: number): Hesitation | null {
  const phrase = SEARCHING.at(tokens, at);
  const [before, first] = [tokens[at - 1], tokens[at]];
  if (phrase === null || before === undefined || first === undefined) return null;
  const count = phrase.length;
  const next = tokens[at + count];
  if (next === undefined || ASKS.has(next)) return null;
  if (first.text === 'er') return { count, pause: false, instead: null };
  const isKnown = first.text === 'you';
  if (endsNumber(before) && (!isKnown || isNumber(next) || first.pause !== next.pause)) return null;
  const goesOn = LEADS_ON.has(before) || isNumber(next) || FINITE.has(next);
  if (!goesOn && !isInside(tokens, at, count)) return null;
  if ((isKnown ? KNOWS : TAKES).has(before) && !isNumber(next)) return null;
  const isPause = (first.pause || next.pause) && !(first.pause && next.pause && !BEGINS.has(next));
  return { count, pause: !goesOn && isPause, instead: null };
}

/** "The, well, the contactor" */
function inPassingAt(tokens: readonly Token[], at: number): Hesitation | null {
  const [before, first] = [tokens[at - 1], tokens[at]];
  if (first?.pause !== true || before === undefined || !LEADS_ON.has(before)) return null;
  const count = IN_PASSING.at(tokens, at)?.length ?? 0;
  return count > 0 && tokens[at + count]?.pause === true
    ? { count, pause: false, instead: null }
    : null;
}

/** Of these only "you know" is said between any two words. */
function isInside(tokens: readonly Token[], at: number, count: number): boolean {
  const [first, next] = [tokens[at], tokens[at + count]];
  if (first === undefined || next === undefined) return false;
  if (first.text === 'you') return true;
  return first.text !== 'yeah' && first.pause && next.pause;
}

/** "Head is like one sixty", "head's at, right, one sixty" */
function leadAt(tokens: readonly Token[], at: number): Hesitation | null {
  const [before, first] = [tokens[at - 1], tokens[at]];
  if (before === undefined || first === undefined) return null;
  const count = BEFORE_NUMBER.at(tokens, at)?.length ?? 0;
  const next = tokens[at + count];
  if (count === 0 || next === undefined || !isNumber(next)) return null;
  // "Superheat's like twenty, twenty two" is from twenty to twenty two.
  if (first.text === 'like' && BE.has(before)) return null;
  // "One oh six point two", "ambient ninety four so one eighteen at the contactor"
  if (isNumber(before)) return null;
  if (first.text === 'oh' && !next.pause && !isWholeNumber(tokens, at + 1)) return null;
  return { count, pause: false, instead: null };
}

/** "At oh five" is a nought and a five, "at oh forty five" is none. */
function isWholeNumber(tokens: readonly Token[], at: number): boolean {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first === undefined) return false;
  return TWO_PLACES.has(first) || (second !== undefined && BEHIND_FIGURE.has(second));
}
const TWO_PLACES = new WordSet([...TENS, ...TEENS]);
const BEHIND_FIGURE = new WordSet([...TENS, ...TEENS, 'hundred', 'thousand', 'point', 'oh']);

const isLong = (tokens: readonly Token[], at: number): boolean =>
  isNumber(tokens[at + 1]) || (tokens[at]?.value ?? 0) > MOST_COUNTED;
const MOST_COUNTED = 9;

/** "Set point" is no number. */
const endsNumber = (token: Token): boolean => isNumber(token) && token.text !== 'point';

/** How long a timer is to run is about nothing. */
function isTime(tokens: readonly Token[], at: number): boolean {
  let end = at;
  while (isNumber(tokens[end])) end += 1;
  const unit = tokens[end];
  return unit !== undefined && TIMES.has(unit);
}
const TIMES = new WordSet('minutes minute hours hour seconds');
