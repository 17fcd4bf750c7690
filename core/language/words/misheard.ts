import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { WordSet } from './word-set.ts';

// What recognisers of everyday speech write for words of the trade that they do not know. Each is only taken for the
// other where what stands beside it leaves it no sense of its own, and only in sentences that the rules do not read.

/** Whether the word may be one of the trade where it stands. */
type MayBe = (tokens: readonly Token[], at: number) => boolean;

const wordsIn = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const isOneOf = (words: ReadonlySet<string>, token: Token | undefined): boolean =>
  token !== undefined && words.has(token.text);

const NUMBERS: ReadonlySet<string> = new Set([...ONES, ...TEENS, ...TENS, 'zero', 'point', 'oh']);
const isFigure = (token: Token | undefined): boolean =>
  token !== undefined && (token.value !== null || NUMBERS.has(token.text));

const LINKS = wordsIn('is at was reads reading pressure temp');

/** "Section is at forty", "ambience ninety five", "section line fifty" */
const isRead: MayBe = (tokens, at) => {
  const [next, second] = [tokens[at + 1], tokens[at + 2]];
  if (next === undefined || next.pause) return false;
  if (isFigure(next) || next.text === 'pressure') return true;
  return isOneOf(LINKS, next) && (isFigure(second) || isOneOf(LINKS, second));
};
const OF_SUCTION = wordsIn('line side pressure');
const isSuction: MayBe = (tokens, at) =>
  isRead(tokens, at) || isOneOf(OF_SUCTION, tokens[at + 1]) || isOnThe(tokens, at);

/** "Thirty two on the section", and nothing behind it. */
function isOnThe(tokens: readonly Token[], at: number): boolean {
  const [number, on, the] = tokens.slice(Math.max(0, at - 3), at);
  const isLast = tokens[at + 1]?.pause ?? true;
  return isLast && isFigure(number) && on?.text === 'on' && the?.text === 'the';
}

/** "Had one ninety": where it begins a clause, and no smaller figure than a pressure has follows. */
const isHead: MayBe = (tokens, at) => {
  const [token, next, second] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (at > 0 && token?.pause !== true) return false;
  if (next?.text === 'pressure') return true;
  return (next?.value ?? 0) >= LEAST_HEAD || (isFigure(next) && isFigure(second));
};
const LEAST_HEAD = 60;

const ELECTRICAL = wordsIn(
  'common start run winding windings terminal heater compressor motor pulling drawing draws pulls contactor across volts amps amp ohms ' +
    'capacitor leg',
);

/** "Six point two ants": behind a number, with something else that is metered. */
const isMetered: MayBe = (tokens, at) =>
  isFigure(tokens[at - 1]) &&
  tokens.some((token, other) => other !== at && isOneOf(ELECTRICAL, token));

/** Bolts are counted: nobody has two hundred and eight of them at a contactor. */
const isSupply: MayBe = (tokens, at) => {
  const [first, last] = [tokens[at - 2], tokens[at - 1]];
  const isLarge = (last?.value ?? 0) >= LEAST_SUPPLY || (isFigure(first) && isFigure(last));
  return isLarge && isOneOf(METERED_AT, tokens[at + 1]);
};
const LEAST_SUPPLY = 24;
const METERED_AT = wordsIn('at across between');

const AT_CONTACTOR = wordsIn('volts volt ohms coil pitted welded chattering');

/** "Two oh eight volts at the contractor": nobody else has a coil. */
const isMeteredAt: MayBe = (tokens) => tokens.some((token) => isOneOf(AT_CONTACTOR, token));

const behind = (text: string): MayBe => {
  const words = wordsIn(text);
  return (tokens, at) => isOneOf(words, tokens[at - 1]);
};
const before = (text: string): MayBe => {
  const words = wordsIn(text);
  return (tokens, at) => isOneOf(words, tokens[at + 1]);
};

const HEARD_FOR: ReadonlyMap<string, readonly [string, MayBe]> = new Map([
  ['section', ['suction', isSuction]],
  ['auction', ['suction', isSuction]],
  ['ambience', ['ambient', isRead]],
  ['ambiance', ['ambient', isRead]],
  ['ambien', ['ambient', isRead]],
  ...['had', 'hid', 'ed', 'hed'].map((word): [string, [string, MayBe]] => [word, ['head', isHead]]),
  ...['homes', 'oms', 'ohm'].map((word): [string, [string, MayBe]] => [word, ['ohms', isMetered]]),
  ['ants', ['amps', isMetered]],
  ['lamps', ['amps', isMetered]],
  ['vaults', ['volts', isSupply]],
  ['bolts', ['volts', isSupply]],
  ['really', ['relay', behind('start potential')]],
  ['leek', ['leak', before('check checked checking test detector at on')]],
  ['braised', ['brazed', before('in it the a them')]],
  ['braise', ['braze', before('in it the a them')]],
  ['coal', ['coil', behind('evaporator evap condenser contactor solenoid')]],
  ['contractor', ['contactor', isMeteredAt]],
  ['eh', ['a', (tokens: readonly Token[], at: number): boolean => isFigure(tokens[at - 1])]],
] satisfies [string, [string, MayBe]][]);

/** One word that was heard as two. */
const IN_TWO: ReadonlyMap<string, string> = new Map([
  ['gas kit', 'gasket'],
  ['gas kits', 'gaskets'],
  ['gas get', 'gasket'],
  ['contact her', 'contactor'],
  ['contact or', 'contactor'],
  ['con denser', 'condenser'],
  ['my cron', 'micron'],
  ['my crons', 'microns'],
  ['nitro gen', 'nitrogen'],
  ['t stat', 'thermostat'],
]);

export const MISHEARD = new WordSet([
  ...HEARD_FOR.keys(),
  ...[...IN_TWO.keys()].map((two) => two.slice(two.indexOf(' ') + 1)),
]);

/** Whether it stands in the place of these words, which were heard for it. */
export function isPutRight({ text }: Token, words: string): boolean {
  const heard = words.toLowerCase().replace('-', ' ');
  return heard !== text && (IN_TWO.get(heard) === text || HEARD_FOR.get(heard)?.[0] === text);
}

/** What it may have been said for; `null` where it was meant. */
export function heardFor(tokens: readonly Token[], at: number): Token | null {
  const token = tokens[at];
  const found = HEARD_FOR.get(token?.text ?? '');
  if (token === undefined || found === undefined) return null;
  const [word, mayBe] = found;
  return mayBe(tokens, at) ? changed(token, { text: word, known: UNKNOWN }) : null;
}

/** The word that it and the one before it were heard for; `null` where both were meant. */
export function heardInTwo(before: Token | undefined, token: Token): Token | null {
  if (before === undefined || token.pause) return null;
  const word = IN_TWO.get(`${before.text} ${token.text}`);
  return word === undefined
    ? null
    : changed(before, { text: word, known: UNKNOWN, end: token.end });
}
