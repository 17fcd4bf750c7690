import { longer } from '../../grammar/longer.ts';
import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { withoutBegun, withoutUnread } from './begun-again.ts';
import { ARTICLES, DESCRIBES, FINITE, opensClause } from '../words/clause-tokens.ts';
import { withoutHesitations } from './hesitations.ts';
import { kindOf, namesBeginAt, namesEndAt } from '../names/name-phrases.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { standAt } from '../words/phrases-at.ts';
import { repaired } from './self-repairs.ts';
import { WordSet } from '../words/word-set.ts';
import { has, hasPause } from './token-looks.ts';

/** One of them is in all that is said to find a word or to take one back; most sentences hold none. */
const HESITATES = new WordSet(
  'know see think mean meant what er hang hold yeah like right well ok so oh guess say believe no nope wait sorry make rather scratch strike check correction actually excuse oops whoops bad call lied back not',
);

/** The tokens as they were meant, without what was only said on the way to them. */
export function withoutStumbles(tokens: readonly Token[]): readonly Token[] {
  const said = HESITATES.hasAny(tokens)
    ? withoutHesitations(withoutHesitations(repaired(tokens)))
    : tokens;
  const whole = SELDOM.hasAny(said) ? withHalves(withoutUnread(withoutSwearing(said))) : said;
  return mayRepeat(whole) ? withoutBegun(withoutRepeats(whole)) : whole;
}

const SWEARS = new WordSet(
  'damn damned dang danged darn darned dadgum bloody freaking freakin frigging friggin blasted effing',
);
const SELDOM = WordSet.ofAll([SWEARS, new WordSet('half quarter quarters something')]);

/** "How come it's so damn high": what tells only how the speaker feels, wherever a clause goes on around it. */
function withoutSwearing(tokens: readonly Token[]): readonly Token[] {
  if (!SWEARS.hasAny(tokens, 1)) return tokens;
  return tokens.filter(
    (token, at) => at === 0 || token.pause || !SWEARS.has(token) || endsAt(tokens, at + 1),
  );
}

const endsAt = (tokens: readonly Token[], at: number): boolean => tokens[at]?.pause ?? true;

/** "Superheat eight, and a half": a recogniser hears the breath before it. */
function withHalves(tokens: readonly Token[]): readonly Token[] {
  return tokens.map((token, at) =>
    token.pause && isNumber(tokens[at - 1]) && isAndPart(tokens, at)
      ? changed(token, { pause: false })
      : token,
  );
}

const isAndPart = (tokens: readonly Token[], at: number): boolean =>
  AND_PARTS.some((words) => standAt(tokens, at, words)) && tokens[at + 2]?.pause === false;
const AND_PARTS = ['and a half', 'and a quarter', 'and three quarters'].map((words) =>
  words.split(' '),
);

/** So many words are said again at most: "head pressure on the, head pressure on the" */
const MOST_REPEATED = 5;

/** No sentence and no clause ends with them. */
const LEADS_ON = new WordSet(
  'the a an my our your is are was were at of to on in for with from and or into i we you they he she it got have',
);
/** Said twice, these are answers, or words of their own. */
const TWICE_MEANT = new WordSet('no nope yes yeah uh huh ok bye very much more so long one hold');

/** Of how many tokens in turn, up to the last one, each stands so many places behind its like. */
const alike = new Int32Array(MOST_REPEATED + 2);

/** Whether words may be said again at once: most sentences repeat nothing, and a glance tells. */
function mayRepeat(tokens: readonly Token[]): boolean {
  return hasCutOff(tokens) || (hasLikeNear(tokens) && hasAlike(tokens));
}

function hasCutOff(tokens: readonly Token[]): boolean {
  for (let at = 1; at < tokens.length; at += 1) {
    const [token, before] = [tokens[at], tokens[at - 1]];
    if (isCutOff(before, token)) return true;
    if (has(ARTICLES, before) && isCutOff(tokens[at - 2], token)) return true;
  }
  return false;
}

/** Of each word, by the tokeniser's number for it: its last place, counted over all sentences. */
let lastPlaces = new Int32Array(0);
let places = 0;

/** Whether a word stands not far behind its like, as far as the words' numbers tell. */
function hasLikeNear(tokens: readonly Token[]): boolean {
  places += MOST_REPEATED + 2;
  for (const { known } of tokens) {
    if (known === UNKNOWN) return true;
    places += 1;
    if (known >= lastPlaces.length) lastPlaces = longer(lastPlaces, known);
    if (places - (lastPlaces[known] ?? 0) <= MOST_REPEATED + 1) return true;
    lastPlaces[known] = places;
  }
  return false;
}

function hasAlike(tokens: readonly Token[]): boolean {
  alike.fill(0);
  for (let at = 1; at < tokens.length; at += 1) if (isAlike(tokens, at)) return true;
  return false;
}

/** Whether the words up to there may end what is said again: but for the last one, which may be cut off. */
function isAlike(tokens: readonly Token[], at: number): boolean {
  const most = Math.min(at, MOST_REPEATED + 1);
  for (let back = 1; back <= most; back += 1) {
    const isSame = isSameWord(tokens[at], tokens[at - back]);
    const count = isSame ? (alike[back] ?? 0) + 1 : 0;
    if (isSame && count >= back - 1) return true;
    alike[back] = count;
  }
  return false;
}

function withoutRepeats(tokens: readonly Token[]): readonly Token[] {
  const { length } = tokens;
  let kept: Token[] | null = null;
  let pause: boolean | null = null;
  for (let at = 0; at < length; at += 1) {
    const token = tokens[at];
    if (token === undefined) break;
    const again = repeatedUpTo(tokens, at);
    if (again > at) {
      kept ??= tokens.slice(0, at);
      pause ??= token.pause;
      at = again - 1;
      continue;
    }
    if (kept === null) continue;
    kept.push(pause === null || pause === token.pause ? token : changed(token, { pause }));
    pause = null;
  }
  return kept ?? tokens;
}

/** From where the words that begin there are said again; the place itself where they are not. */
function repeatedUpTo(tokens: readonly Token[], at: number): number {
  const most = Math.min(MOST_REPEATED, Math.floor((tokens.length - at) / 2));
  for (let count = most; count > 0; count -= 1) {
    const second = secondAt(tokens, at, count);
    if (second !== null && isStumble(tokens, at, { count, second })) return second;
  }
  return at;
}

/** "Head the head": where the same words stand behind themselves, an article before them or not. */
function secondAt(tokens: readonly Token[], at: number, count: number): number | null {
  const behind = at + count;
  if (isSame(tokens, { at, behind, count })) return behind;
  const article = tokens[behind];
  if (article === undefined || !ARTICLES.has(article)) return null;
  if (!isSame(tokens, { at, behind: behind + 1, count })) return null;
  const before = tokens[at - 1];
  const isDescribed = before !== undefined && (ARTICLES.has(before) || DESCRIBES.has(before));
  return isDescribed ? behind + 1 : behind;
}

interface Two {
  readonly at: number;
  readonly behind: number;
  readonly count: number;
}

/** The last of them may have been cut off: "the cond the condenser". */
function isSame(tokens: readonly Token[], { at, behind, count }: Two): boolean {
  const last = count - 1;
  for (let index = 0; index < last; index += 1) {
    if (!isSameWord(tokens[at + index], tokens[behind + index])) return false;
  }
  const [one, other] = [tokens[at + last], tokens[behind + last]];
  return isSameWord(one, other) || isCutOff(one, other);
}

/** What was written in other letters, and what it comes to, may have no number. */
function isSameWord(one: Token | undefined, other: Token | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  if (one.known === other.known && one.known !== UNKNOWN) return true;
  return (one.known === UNKNOWN || other.known === UNKNOWN) && one.text === other.text;
}

/** So many letters of a word are said at least before it is said again. */
const SHORTEST_CUT = 3;
/** Words of their own that others begin with. */
const WHOLE_WORDS = new WordSet(
  'the for and can you not all over under with her she thing other there then them this fan box pan cool cold man off ice oil door line valve motor relay light leak head high low point time work need freeze heat start stop clean check pump charge meter test',
);

function isCutOff(one: Token | undefined, other: Token | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  const { length } = one.text;
  if (other.text.length <= length || length < SHORTEST_CUT) return false;
  if (one.text.charCodeAt(0) !== other.text.charCodeAt(0)) return false;
  return other.text.startsWith(one.text) && !isNumber(one) && !WHOLE_WORDS.has(one);
}

interface Again {
  readonly count: number;
  readonly second: number;
}

function isStumble(tokens: readonly Token[], at: number, again: Again): boolean {
  const { count, second } = again;
  if (isMeantTwice(tokens, at, count)) return false;
  if (hasPause(tokens, at + 1, at + count)) return isBegunAnew(tokens, at, again);
  if (holdsNumber(tokens, at, at + count)) return isNumberAgain(tokens, at, again);
  const last = tokens[at + count - 1];
  const end = second + count;
  const next = tokens[end];
  const endsClause = next === undefined || next.pause;
  if (has(LEADS_ON, last)) return true;
  // "That's it, that's it": told twice.
  if (opensClause(tokens, at)) return tokens[second]?.pause === false || !endsClause;
  if (endsClause || isCutOff(last, tokens[end - 1])) return true;
  const isPaused = hasPause(tokens, at + count, second + 1);
  // "Washed the evaporator. Evaporator fan motor is noisy"
  if (!isPaused && kindOf(tokens, at, at + count) !== null && namesEndAt(tokens, second) > end)
    return true;
  if (isPaused) return isBrokenOff(tokens, at, again);
  return !FINITE.has(next) || namesBeginAt(tokens, at + count) < at || has(ASKING, tokens[at - 1]);
}

/** "Manual defrost, give manual defrost, give me thirty minutes": so many words are said twice by no other way. */
const isBegunAnew = (tokens: readonly Token[], at: number, { count, second }: Again): boolean =>
  count >= FEWEST_ANEW &&
  tokens[second]?.pause === false &&
  opensClause(tokens, at) &&
  !holdsNumber(tokens, at, at + count);
const FEWEST_ANEW = 3;

/** "What temperature temperature is" */
const ASKING = new WordSet('what which how whose');
const POINTS = new WordSet('that this it there here now then one off on out up down in running');

/** "On its last... its last legs"; but a name said twice may be what the next clause is about. */
function isBrokenOff(tokens: readonly Token[], at: number, { count, second }: Again): boolean {
  const [first, next] = [tokens[at], tokens[second + count]];
  // "The contactor should be replaced, replaced the run capacitor"
  if (has(FINITE, next) || has(POINTS, first)) return false;
  if (count === 1 && has(ARTICLES, next)) return false;
  // "Forty on the suction, the suction line's eight"
  const article = count > 1 && has(ARTICLES, first) ? 1 : 0;
  const isName = kindOf(tokens, at + article, at + count) !== null;
  if (isName || namesEndAt(tokens, second + article) > second + count) return false;
  return count > 1 || namesEndAt(tokens, second + count) === second + count;
}

/** "Head is one, head is one forty": only where a clause is begun anew, and not where there are several of it. */
function isNumberAgain(tokens: readonly Token[], at: number, { count, second }: Again): boolean {
  const end = second + count;
  if (count === 1 || !opensClause(tokens, at)) return false;
  if (!isNumber(tokens[at])) return true;
  const isOften = secondAt(tokens, second, count) !== null;
  const isWhole = tokens[second]?.pause === true && !has(LEADS_ON, tokens[second - 1]);
  const isAllNumber = !tokens.slice(at, at + count).some((token) => !isNumber(token));
  return !isOften && !isWhole && !isAllNumber && tokens[end]?.pause === false;
}

function holdsNumber(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (isNumber(tokens[at])) return true;
  return false;
}

/** "No no", and letters that are spelled: "s s t". */
function isMeantTwice(tokens: readonly Token[], at: number, count: number): boolean {
  const token = tokens[at];
  if (token === undefined || token.text === 'oh') return true;
  if (count > 1) return false;
  if (token.text === 'a') return isNumber(tokens[at - 1]);
  return TWICE_MEANT.has(token) || (token.text.length < 2 && token.text !== 'i');
}
