import type { Token } from '../../grammar/tokens.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import type { Utterance } from '../utterance.ts';
import { tokenise } from '../words/tokenise.ts';
import { WordSet } from '../words/word-set.ts';
import type { Fragment } from './fragments.ts';
import { meaningOf } from './meaning.ts';
import { type Changed, changedIn } from './same-but-one.ts';
import type { Span } from '../rule.ts';

/** Words with their tokens. */
interface Words {
  readonly text: string;
  readonly tokens: readonly Token[];
}

/** What was said, said once more with what puts it right in its place, and what of it is another now. */
export interface PutInto {
  readonly text: string;
  readonly meant: Utterance;
  readonly changed: Changed;
}

export type Reads = (text: string) => Utterance;

/** Longer ones tell something of their own. */
const LONGEST_FRAGMENT = 6;
/** So many ways are tried at most: what is said in one breath is short. */
const MOST_TRIED = 80;

/**
 * "Clean it every six months", put right by "every three": said once more as "clean it every three months". A way to put the
 * fragment in is taken only where just one thing that was told becomes another of its kind, and all else stays as it was.
 *
 * @returns `null` where the fragment fits nowhere; `doubtful` where it does, and what it would tell is doubted.
 */
export function putInto(
  said: string,
  fragment: Fragment,
  reads: Reads,
): PutInto | 'doubtful' | null {
  const [words, fix] = [wordsOf(said), wordsOf(fragment.words)];
  if (fix.tokens.length === 0 || fix.tokens.length > LONGEST_FRAGMENT) return null;
  const before = reads(said);
  const isOfNumber = fix.tokens.some(isNumber);
  if (!isOfNumber && !holdsWords(before)) return null;
  const ways = isOfNumber ? numbersIn(words, fix) : placesIn(words, fix, before);
  for (const text of ways.slice(0, MOST_TRIED)) {
    const meant = reads(text);
    const changed = changedIn(before, meant);
    // "Suction line's fifty three, scratch that, fifty three": it is right as it stands, and nothing said before it is meant.
    if (isOfNumber && meaningOf(meant) === meaningOf(before)) return null;
    if (changed !== null && (isOfNumber || mayBeMeant(changed, fragment)))
      return { text, meant, changed };
    if (isOfNumber && meant.doubts.length > before.doubts.length) return 'doubtful';
  }
  return null;
}

/** Findings, work and readings no words put right. */
const holdsWords = ({ facts, recommendations, commands }: Utterance): boolean =>
  facts.length + recommendations.length + commands.length > 0;

/** Words put no number right that was read, and what may also be told of something else puts right only what is like it. */
function mayBeMeant({ was, is }: Changed, { words, lead }: Fragment): boolean {
  if (is.of === 'reading' || was.of !== is.of) return false;
  if (is.of !== 'fact' || was.of !== 'fact') return true;
  const [one, other] = [was.fact, is.fact];
  if (one.fact === 'site' || one.fact === 'unit')
    return sharesWord(one.value, words) || (lead === 'sure' && !TELLS.hasAny(tokenise(words)));
  if (lead !== 'bareNo') return true;
  return one.fact === 'equipment' && other.value === one.value;
}

/** What a name hardly holds. */
const TELLS = new WordSet(
  'i we you they he she it that this is are was were am not have has had will do does did got about for to with but because',
);

const sharesWord = (one: string, other: string): boolean => {
  const said = new Set(tokenise(one).map(({ text }) => text));
  return tokenise(other).some(
    ({ text }) => said.has(text) && !TELLS.hasWord(text) && text !== 'the',
  );
};

const wordsOf = (text: string): Words => ({ text, tokens: tokenise(text) });

/** The text with a stretch of it replaced, everything around it as it was written. */
function replaced({ text, tokens }: Words, { from, to }: Span, by: string): string {
  const start = tokens[from]?.start ?? text.length;
  const end = tokens[to - 1]?.end ?? start;
  return `${text.slice(0, start)}${by}${text.slice(end)}`;
}

const textOf = ({ text, tokens }: Words, { from, to }: Span): string =>
  text.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0);

/** Between a number and its half: "two and a half" */
const AND_PART = new WordSet('and a an half quarter');

/** "Two pounds four ounces" is one weight. */
const LARGER = new WordSet('pound pounds lb lbs hour hours');

/** The numbers of a text, the last of them first. */
function runsOf(tokens: readonly Token[]): readonly Span[] {
  const runs: Span[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    if (!isNumber(tokens[at])) continue;
    let to = at + 1;
    while (goesOn(tokens, to)) to += 1;
    runs.push({ from: at, to });
    at = to - 1;
  }
  return runs.toReversed();
}

function goesOn(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token === undefined || token.pause) return false;
  if (isNumber(token)) return true;
  if (LARGER.has(token)) return isNumber(tokens[at + 1]) && tokens[at + 1]?.pause === false;
  if (!AND_PART.has(token)) return false;
  const rest = tokens.slice(at, at + 3).findIndex((each) => !AND_PART.has(each));
  return tokens
    .slice(at, rest === -1 ? at + 3 : at + rest)
    .some(({ text }) => text === 'half' || text === 'quarter');
}

/** What may stand before a number and need not have been said before the one that it puts right. */
const LEADS_TO_NUMBER = new WordSet(
  'at about around for like exactly a total of only just closer to',
);
/** Behind a number its unit was said so far off at most. */
const LONGEST_UNIT = 2;

/** The number in the place of each number that was told, the last one first, its unit with it where one is said. */
function numbersIn(said: Words, fix: Words): readonly string[] {
  const [run, ...others] = runsOf(fix.tokens);
  if (run === undefined || others.length > 0) return [];
  const lead = fix.tokens.slice(0, run.from);
  const unit = fix.tokens.length - run.to;
  const lengths = unit === 0 ? [0] : [unit, 1, LONGEST_UNIT, 0];
  return runsOf(said.tokens)
    .filter(({ from }) => leadsAlike(said.tokens, from, lead))
    .flatMap(({ from, to }) =>
      [...new Set(lengths)].map((length) =>
        replaced(
          said,
          { from, to: Math.min(to + length, said.tokens.length) },
          textOf(fix, { from: run.from, to: fix.tokens.length }),
        ),
      ),
    );
}

/** "Every three" puts an "every six" right, "about three" any number. */
function leadsAlike(tokens: readonly Token[], at: number, lead: readonly Token[]): boolean {
  if (lead.every((token) => LEADS_TO_NUMBER.has(token))) return true;
  return lead.every((token, index) => tokens[at - lead.length + index]?.text === token.text);
}

/** Of these any words are a name: only the name itself is replaced. */
const hasFreeName = ({ facts, memos, remarks }: Utterance): boolean =>
  memos.length + remarks.length > 0 || facts.some(({ fact }) => fact === 'site' || fact === 'unit');

/** Words in the place of words, those first that say most of the same again. */
function placesIn(said: Words, fix: Words, meant: Utterance): readonly string[] {
  const names = meant.facts.flatMap((fact) =>
    fact.fact === 'site' || fact.fact === 'unit' ? [fact.value] : [],
  );
  const named = names
    .filter((name) => said.text.includes(name))
    .map((name) => said.text.replace(name, () => fix.text));
  if (hasFreeName(meant)) return named;
  const again = new Set(fix.tokens.map(({ text }) => text));
  const sames = ({ from, to }: Span): number =>
    said.tokens.slice(from, to).filter(({ text }) => again.has(text)).length;
  return stretchesOf(said.tokens.length, fix.tokens.length + 1)
    .toSorted(
      (one, other) =>
        sames(other) - sames(one) ||
        one.to - one.from - (other.to - other.from) ||
        other.to - one.to,
    )
    .map((stretch) => replaced(said, stretch, fix.text));
}

function stretchesOf(length: number, longest: number): readonly Span[] {
  const stretches: Span[] = [];
  for (let to = length; to > 0; to -= 1) {
    for (let from = to - 1; from >= Math.max(0, to - longest); from -= 1)
      stretches.push({ from, to });
  }
  return stretches;
}
