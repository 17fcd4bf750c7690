import { changed, type Token } from '../../grammar/tokens.ts';
import { opensClause } from '../words/clause-tokens.ts';
import { kindOf, namesBeginAt, namesEndAt } from '../names/name-phrases.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { Phrases } from '../words/phrases-at.ts';
import { taking } from '../words/taken-back-words.ts';
import { WordSet } from '../words/word-set.ts';
import { has } from './token-looks.ts';

/** What tells that what was said before it was wrong. */
const TAKES_BACK = new Phrases([
  ...['no', 'nope', 'wait', 'sorry', 'i am sorry', 'actually', 'hold on', 'hang on', 'oops', 'er'],
  ...['scratch that', 'strike that', 'correction', 'my bad', 'whoops', 'well', 'i mean', 'rather'],
]);
const POINTS = new WordSet('that it this those');
const IS = new WordSet('is was are were');
const WHOSE = new WordSet('the a an my our your');
/** Between a name and its number. */
const TELLS = new WordSet(
  'is was at reads reading running shows showing sitting about around on pulling drawing pulls draws like maybe probably just still now right there here',
);
/** Behind the right name the sentence may go on so. */
const GOES_ON = new WordSet('now right here there thanks please at after and so yeah ok but');
const AT = new WordSet('at on across through of for seeing have got reading showing');
const UNITS = new WordSet(
  'psi degrees degree pounds pound inches inch of vacuum bar amps amp volts volt ohms microns kpa celsius fahrenheit',
);

interface Told {
  /** From where the wrong name stands, and up to where. */
  readonly from: number;
  readonly to: number;
}

/**
 * "Head's one ninety, no wait, that's the suction": the number stands, under the name that was said last.
 *
 * @returns `null` where nothing is named anew there.
 */
export function renamedAt(tokens: readonly Token[], marker: number): readonly Token[] | null {
  const points = marker + taking(tokens, marker, [TAKES_BACK]);
  if (points === marker || !has(POINTS, tokens[points]) || !has(IS, tokens[points + 1])) {
    return null;
  }
  const right = has(WHOSE, tokens[points + 2]) ? points + 3 : points + 2;
  const end = namesEndAt(tokens, right);
  if (end === right || (tokens[end]?.pause === false && !has(GOES_ON, tokens[end]))) return null;
  const told = toldBefore(tokens, marker);
  if (told === null || !areOfOneKind(tokens, told, { from: right, to: end })) return null;
  const [first, ...more] = tokens.slice(right, end);
  if (first === undefined) return null;
  return [
    ...tokens.slice(0, told.from),
    changed(first, { pause: tokens[told.from]?.pause ?? false }),
    ...more,
    ...tokens.slice(told.to, marker),
    ...tokens.slice(saidAgainTo(tokens, end, marker)),
  ];
}

/** "Nine amps, no, that's the gauge": a thing is no quantity. */
function areOfOneKind(tokens: readonly Token[], one: Told, other: Told): boolean {
  const kinds = [one, other].map(({ from, to }) => kindOf(tokens, from, to));
  if (kinds.includes(null)) return false;
  return kinds.includes('both') || kinds[0] === kinds[1];
}

/** The name that a number was told under, up to the word that takes it back: before the number, or behind it. */
function toldBefore(tokens: readonly Token[], marker: number): Told | null {
  const number = numberBegin(tokens, marker);
  if (number === null) return toldBehind(tokens, marker);
  const name = tellsBegin(tokens, number);
  const from = namesBeginAt(tokens, name);
  if (from === name) return null;
  const start = has(WHOSE, tokens[from - 1]) ? from - 1 : from;
  return has(AT, tokens[start - 1]) || opensClause(tokens, start) ? { from, to: name } : null;
}

/** "One ninety on the head", "one ninety head" */
function toldBehind(tokens: readonly Token[], marker: number): Told | null {
  const from = namesBeginAt(tokens, marker);
  if (from === marker) return null;
  const on = has(WHOSE, tokens[from - 1]) ? from - 2 : from - 1;
  const isTold = numberBegin(tokens, on) !== null || numberBegin(tokens, on + 1) !== null;
  return isTold ? { from, to: marker } : null;
}

/** Where the number begins that ends there, units behind it or not; `null` where none does. */
function numberBegin(tokens: readonly Token[], end: number): number | null {
  let at = end;
  while (has(UNITS, tokens[at - 1])) at -= 1;
  const numberEnd = at;
  while (isNumber(tokens[at - 1])) at -= 1;
  return at === numberEnd ? null : at;
}

function tellsBegin(tokens: readonly Token[], at: number): number {
  let begin = at;
  while (has(TELLS, tokens[begin - 1])) begin -= 1;
  return begin;
}

/** "…, no wait, that's the suction, three inches": the number once more tells nothing new. */
function saidAgainTo(tokens: readonly Token[], at: number, marker: number): number {
  let end = at;
  while (has(TELLS, tokens[end])) end += 1;
  const begin = numberBegin(tokens, marker);
  if (begin === null || !isNumber(tokens[end])) return at;
  for (let place = begin; place < marker; place += 1) {
    const word = tokens[end];
    if (word === undefined || (word.pause && place > begin)) return end;
    if (word.text !== tokens[place]?.text) return isNumber(tokens[place]) ? at : end;
    end += 1;
  }
  return end;
}
