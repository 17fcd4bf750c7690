import { changed, type Token } from '../../grammar/tokens.ts';
import { ARTICLES, DESCRIBES, FINITE, opensClause } from '../words/clause-tokens.ts';
import { kindOf, namesBeginAt, namesEndAt } from '../names/name-phrases.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { Phrases } from '../words/phrases-at.ts';
import { numberAt, STARTS_TAKING_NUMBER } from './repaired-numbers.ts';
import { renamedAt } from './renamed.ts';
import { DENIES, deniedTo, taking } from '../words/taken-back-words.ts';
import { WordSet } from '../words/word-set.ts';

/** What tells that the name before it was the wrong one. */
const TAKES_BACK = new Phrases([
  ...['nope', 'or no', 'wait', 'sorry', 'i am sorry', 'i mean', 'i meant', 'make that', 'no'],
  ...['or rather', 'rather', 'scratch that', 'strike that', 'check that', 'correction', 'actually'],
  ...['excuse me', 'er', 'oops', 'whoops', 'my bad', 'hold on', 'hang on', 'well', 'i should say'],
  ...['or i should say', 'or actually', 'or i mean'],
]);
const STARTS = WordSet.ofAll([
  new WordSet(TAKES_BACK.firstWords),
  STARTS_TAKING_NUMBER,
  new WordSet(DENIES),
]);

/** The tokens with what was put right in the place of what was said before it. */
export function repaired(tokens: readonly Token[]): readonly Token[] {
  if (!STARTS.hasAny(tokens, 1)) return tokens;
  let kept: readonly Token[] = tokens;
  for (let at = 1; at < kept.length; at += 1) {
    const token = kept[at];
    if (token === undefined || !STARTS.has(token)) continue;
    const mended = renamedAt(kept, at) ?? nameAt(kept, at) ?? numberAt(kept, at);
    if (mended !== null) kept = mended;
  }
  return kept;
}

interface Names {
  /** Where the wrong name begins and what stands behind it and takes it back. */
  readonly wrong: number;
  readonly marker: number;
  /** Where what is said instead begins, and its name. */
  readonly instead: number;
  readonly right: number;
  /** The first word behind what takes it back. */
  readonly behind: number;
  readonly end: number;
}

/** "Head, I mean suction, is twelve", "replaced the contactor, no, the relay" */
function nameAt(tokens: readonly Token[], marker: number): readonly Token[] | null {
  const names = namesAround(tokens, marker);
  if (names === null || !isPutRight(tokens, names)) return null;
  const { wrong, instead } = names;
  const [first, ...more] = tokens.slice(instead);
  if (first === undefined) return null;
  const pause = tokens[wrong]?.pause ?? false;
  // "Head, I mean suction, is twelve": the comma behind belongs to what was put in.
  const behind = names.end - instead;
  const rest = [changed(first, { pause }), ...more].map((token, index) =>
    index === behind && token.pause && (FINITE.has(token) || isNumber(token))
      ? changed(token, { pause: false })
      : token,
  );
  return [...tokens.slice(0, wrong), ...rest];
}

function namesAround(tokens: readonly Token[], marker: number): Names | null {
  const isBehindVerb = isBe(tokens[marker - 1]);
  const wrongEnd = isBehindVerb ? marker - 1 : marker;
  const wrong = namesBeginAt(tokens, wrongEnd);
  if (wrong === wrongEnd) return null;
  const taken = marker + taking(tokens, marker, [TAKES_BACK]);
  const instead = deniedTo(tokens, taken, { from: wrong, to: wrongEnd });
  if (instead === marker) return null;
  const right = retracedTo(tokens, wrong, instead);
  const end = namesEndAt(tokens, right);
  if (end === right || (isBehindVerb && !isBe(tokens[end]))) return null;
  const isAgain = right > instead + 1 || (right > instead && isInPlaceOfArticle(tokens, wrong));
  return { wrong, marker, instead: isAgain ? right : instead, right, behind: instead, end };
}

const isBe = (token: Token | undefined): boolean => token !== undefined && BE.has(token);
const BE = new WordSet('is are was were');

const hasArticle = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1];
  return before !== undefined && ARTICLES.has(before);
};

/** "A bad contactor, no, the relay" */
const isInPlaceOfArticle = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1];
  return before !== undefined && (ARTICLES.has(before) || DESCRIBES.has(before));
};

const MOST_RETRACED = 4;

/** "On the head, I mean on the suction": past what stood before the wrong name and is said again, or an article. */
function retracedTo(tokens: readonly Token[], wrong: number, instead: number): number {
  for (let count = Math.min(MOST_RETRACED, wrong); count > 0; count -= 1) {
    let isAgain = true;
    for (let index = 0; index < count; index += 1) {
      isAgain &&= tokens[wrong - count + index]?.text === tokens[instead + index]?.text;
    }
    if (isAgain) return instead + count;
  }
  const first = tokens[instead];
  return first !== undefined && ARTICLES.has(first) ? instead + 1 : instead;
}

/** Whether the one name stands for the other, and not for what is told next. */
function isPutRight(tokens: readonly Token[], names: Names): boolean {
  const { wrong, end } = names;
  const next = tokens[end];
  const tells = next !== undefined && (FINITE.has(next) || isNumber(next));
  const start = subjectFrom(tokens, wrong);
  const opens = opensClause(tokens, start);
  if (tells && !opens && (FINITE.has(next) || holdsNumber(tokens, start))) return false;
  return !isBareNo(tokens, names) || isNoName(tokens, names, { opens, tells });
}

/** "Voltage at the contactor": from where the name begins, or what is measured at it. */
function subjectFrom(tokens: readonly Token[], wrong: number): number {
  const start = hasArticle(tokens, wrong) ? wrong - 1 : wrong;
  const place = tokens[start - 1];
  if (place === undefined || !OF.has(place)) return start;
  const measured = namesBeginAt(tokens, start - 1);
  if (measured === start - 1) return start;
  return hasArticle(tokens, measured) ? measured - 1 : measured;
}

function holdsNumber(tokens: readonly Token[], to: number): boolean {
  for (let at = to - 1; at >= 0 && tokens[at + 1]?.pause !== true; at -= 1) {
    if (isNumber(tokens[at])) return true;
  }
  return false;
}

const OF = new WordSet('on at for of in');

/** Nothing else tells that it is no "no power". */
function isBareNo(tokens: readonly Token[], { marker, behind, right }: Names): boolean {
  const next = tokens[behind];
  const isNo = tokens[marker]?.text === 'no' && behind === marker + 1;
  if (!isNo || next === undefined || next.pause) return false;
  return right === behind || !(ARTICLES.has(next) || OF.has(next));
}

/** What may be there or not: "found a drier, no sight glass". */
const HAVING = new WordSet('have has got there with found see sees seeing is was checked');

interface Where {
  readonly opens: boolean;
  readonly tells: boolean;
}

/** "Suction no head is one ninety", "replaced the contactor, no relay"; but "checked the breaker, no power". */
function isNoName(
  tokens: readonly Token[],
  { wrong, right, behind, end, marker }: Names,
  { opens, tells }: Where,
): boolean {
  if (right > behind) return false;
  const [one, other] = [kindOf(tokens, wrong, marker), kindOf(tokens, right, end)];
  if (one === null || other === null || (one !== other && one !== 'both' && other !== 'both')) {
    return false;
  }
  if (opens) return tells;
  const [place, article] = [tokens[wrong - 2], tokens[wrong - 1]];
  if (place !== undefined && article !== undefined && ARTICLES.has(article) && OF.has(place)) {
    return true;
  }
  return other === 'thing' && !HAVING.hasAny(tokens, 0, wrong);
}
