import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { heardFor, heardInTwo, MISHEARD } from '../words/misheard.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { NAME_WORDS } from '../names/name-words.ts';
import { WordSet } from '../words/word-set.ts';

/** Words between others that change nothing of what is told: "line two is just pulling nine", "the light is actually out". */
const MERE = new WordSet(
  'actually just still really basically honestly definitely literally obviously clearly pretty very quite totally completely presently',
);
/** "The compressor is like really hot"; but "it sounds like a bearing". */
const LIKE = new WordSet('like');
const BEFORE_LIKE = new WordSet('is are was were am just really');
/** "It's not just the fan" is about more than the fan. */
const TURNS = new WordSet('not no never');

/** Which kind of a part or whose make: "a new ECM fan motor", "a universal start cap". */
const MAKES = new WordSet('ecm psc oem universal generic aftermarket factory reman');
const SPELLED_MAKES = ['e c m', 'p s c', 'o e m'].map((spelled) => spelled.split(' '));
const MAKES_BEGIN = new WordSet('e p o');

/** "The fans are both running", "the heaters both good": of each of them, as without it. */
const BEHIND_BOTH = new WordSet(
  'are were fan fans motor motors heaters gaskets compressors doors coils caps',
);
/** "They should replace both of them": them. */
const BOTH_OF = new WordSet('both of');
const THEM = new WordSet('them those these');

/** "Is" is no name's word with an ending. */
const SHORTEST = 3;
/** Of what a name ends in, with the "is" behind it whose apostrophe nobody wrote: "heads one ninety". */
const WITH_IS = new WordSet(
  NAME_WORDS.filter(({ length }) => length >= SHORTEST).map((word) => `${word}s`),
);

const MANY = new WordSet(NAME_WORDS);
/** Behind these the word is meant as it is written: "gauges are off". */
const OF_MANY = new WordSet(
  'is are was were has have had do did will would should can could to and or',
);
/** Of more than one, too, where that is a name: "left the caps off". */
const WHERE = new WordSet('off on in out back up down');

/** "Were twelve superheated" */
const WE_ARE = new WordSet('were');

/** What is the unit of the number before it, or the name of the one behind it: "suction forty one amps six point two". */
const UNIT_OR_NAME: ReadonlyMap<string, string> = new Map([
  ['amps', 'amperage'],
  ['volts', 'voltage'],
  ['ohms', 'resistance'],
]);
const METERED = new WordSet([...UNIT_OR_NAME.keys()]);
const SHOWS = new WordSet('is are at');
/** "Amps down to three one" */
const MOVED = new WordSet('down up');

/** Without any of them there is no other way: one look at each token, where there would be four. */
const MAY_BE_MEANT = WordSet.ofAll([
  MERE,
  LIKE,
  WITH_IS,
  WE_ARE,
  MISHEARD,
  MAKES,
  MAKES_BEGIN,
  METERED,
  new WordSet('both'),
]);

export interface Otherwise {
  readonly tokens: readonly Token[];
  /** How many were left out. */
  readonly leftOut: number;
}

/** The tokens as they may have been meant where the rules do not read all of them; `null` where that is no other way. */
export function saidOtherwise(tokens: readonly Token[]): Otherwise | null {
  if (!MAY_BE_MEANT.hasAny(tokens)) return null;
  const others: Token[] = [];
  let leftOut = 0;
  let isOther = false;
  for (const [at, token] of tokens.entries()) {
    const heard = MISHEARD.has(token) ? putRight(others, tokens, at) : false;
    const name = nameOfNext(tokens, at);
    if (heard || name !== null) isOther = true;
    if (heard) continue;
    if (name !== null) others.push(name);
    else if (isMere(tokens, at) || isMake(tokens, at) || isBothOf(tokens, at)) leftOut += 1;
    else if (mayHoldIs(tokens, at)) others.push(...apart(token, [token.text.slice(0, -1), 'is']));
    else if (at === 0 && WE_ARE.has(token)) others.push(...apart(token, ['we', 'are']));
    else others.push(token);
  }
  if (!isOther && leftOut === 0 && others.length === tokens.length) return null;
  return { tokens: others, leftOut };
}

/** Whether a word was put in the place of what was heard for it. */
function putRight(others: Token[], tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token === undefined) return false;
  const joined = heardInTwo(others.at(-1), token);
  if (joined !== null) others.pop();
  const heard = joined ?? heardFor(tokens, at);
  if (heard !== null) others.push(heard);
  return heard !== null;
}

/** A unit that stands between two numbers, as the name of the second; `null` where it does not. */
function nameOfNext(tokens: readonly Token[], at: number): Token | null {
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (token === undefined || next === undefined || !METERED.has(token)) return null;
  const value = MOVED.has(next) ? at + 3 : SHOWS.has(next) ? at + 2 : at + 1;
  const isBetween = isNumber(tokens[at - 1]) && isNumber(tokens[value]);
  const text = isBetween ? UNIT_OR_NAME.get(token.text) : undefined;
  return text === undefined ? null : changed(token, { text, known: UNKNOWN, pause: true });
}

/** Where no pause stands before it: what begins a clause may belong to what is done in it. */
function isMere(tokens: readonly Token[], at: number): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (before === undefined || token === undefined || token.pause || TURNS.has(before)) return false;
  if (token.text === 'both') return BEHIND_BOTH.has(before);
  return MERE.has(token) || (LIKE.has(token) && BEFORE_LIKE.has(before));
}

function isBothOf(tokens: readonly Token[], at: number): boolean {
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (token === undefined || next === undefined || !BOTH_OF.has(token)) return false;
  if (token.text === 'of') return tokens[at - 1]?.text === 'both' && THEM.has(next);
  const then = tokens[at + 2];
  return next.text === 'of' && then !== undefined && THEM.has(then);
}

function isMake(tokens: readonly Token[], at: number): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (before === undefined || token === undefined || token.pause) return false;
  return MAKES.has(token) || SPELLED_MAKES.some((letters) => isWithin(letters, tokens, at));
}

/** Whether a letter is one of those, all of them in their order. */
const isWithin = (letters: readonly string[], tokens: readonly Token[], at: number): boolean =>
  letters.some((_letter, index) =>
    letters.every((letter, other) => tokens[at - index + other]?.text === letter),
  );

/** "It returns", "in some cases": done, or more than one, and nobody's name with an ending. */
const DONE_OR_MANY = new WordSet('returns cases boxes rooms sites');
const LEADS_TO_NAME = new WordSet('the my our and ok so');
const DOERS = new WordSet('i you he she it we they that who which');

function mayHoldIs(tokens: readonly Token[], at: number): boolean {
  const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (token === undefined || !WITH_IS.has(token)) return false;
  if (next === undefined || next.pause) return false;
  if (before !== undefined && !token.pause) {
    if (DOERS.has(before)) return false;
    if (DONE_OR_MANY.has(token) && !LEADS_TO_NAME.has(before)) return false;
  }
  return !OF_MANY.has(next) && !(MANY.has(token) && WHERE.has(next));
}

function apart(token: Token, [first, second]: readonly [string, string]): readonly Token[] {
  const cut = token.start + Math.min(first.length, token.end - token.start);
  return [
    changed(token, { text: first, known: UNKNOWN, end: cut }),
    changed(token, { text: second, known: UNKNOWN, start: cut, pause: false }),
  ];
}
