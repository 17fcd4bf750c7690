import type { Token } from '../../grammar/tokens.ts';
import type { Item } from '../parse/parse.ts';
import type { Said } from '../questions/by-cue.ts';
import type { Meaning } from '../rule.ts';
import type { Sentence } from '../parse/sentence.ts';
import { FILLERS } from '../words/fillers.ts';
import { WordSet } from '../words/word-set.ts';

/** What may stand unread before what we did; behind any other word somebody else did it, or it was not done. */
const BEFORE_OURS = new WordSet(
  'i we us also just finally already went ahead but because helper apprentice partner both up them again first next ' +
    'after well plus thing today once soon while anyway done too back on off out in down over was did to it silver ' +
    'triple double completely fully carefully quickly gently still even myself ourselves all everything always now ' +
    'next simply only temporarily hand pressure chemically soft hard',
);

/** "Plumber cleaned the drain line" and "almost replaced the board" are no work of ours: kept as they were said. */
export function oursOnly({ text, tokens }: Sentence, items: readonly Item[]): readonly Item[] {
  let ours: Item[] | null = null;
  for (let index = 0; index < items.length; index += 1) {
    const item = items[index];
    // A part that is only named has no words of its own.
    const before = items.slice(0, index).findLast(({ start, end }) => end > start);
    const fresh = item === undefined ? null : notOurs({ text, tokens }, item, before);
    if (fresh === null) continue;
    ours ??= [...items];
    ours[index] = fresh;
  }
  return ours ?? items;
}

/** `null` where it is ours, or nothing that anybody does. */
function notOurs({ text, tokens }: Said, item: Item, before: Item | undefined): Item | null {
  if (item.start === 0 || !isDoing(item.meaning)) return null;
  if (isOrdered(text.slice(tokens[item.start]?.start), before)) return { ...item, meaning: {} };
  if (isDenied(tokens, item)) return { ...item, meaning: {} };
  const from = strangerFrom(tokens, { item, before });
  if (from === null) return null;
  const words = text.slice(tokens[from]?.start, tokens[item.end - 1]?.end);
  return { ...item, meaning: ASKS.test(words) ? {} : { remarks: [words] } };
}

/** "Should I put gauges on it" is asked, and neither done nor told. */
const ASKS =
  /^(?:(?:so|and|but|ok|okay|well|then) )*(?:should|shall|do|does|did|can|could|would|may|must) (?:i|we|you|they|he|she|it)\b/i;

const isDoing = ({ work, ofIt }: Meaning): boolean => work !== undefined || ofIt !== undefined;

/** "If it hits three hundred, shut it off" is asked of somebody. */
const isOrdered = (words: string, before: Item | undefined): boolean =>
  before?.meaning.supposed === true && !/^(?:and |then |so )*(?:i|we)\b/i.test(words);

/** "I haven't reset it": what stands unread behind a "not" was not done. */
const isDenied = (tokens: readonly Token[], { start }: Item): boolean =>
  tokens[start]?.pause !== true &&
  (DENIALS.has(tokens[start - 1]?.text ?? '') || isPlanned(tokens, start));

/** "I'm gonna cut that drier out" is told in the same word as what was cut. */
const isPlanned = (tokens: readonly Token[], start: number): boolean =>
  tokens[start - 1]?.text === 'to' && PLANS.has(tokens[start - 2]?.text ?? '');
const PLANS: ReadonlySet<string> = new Set(
  'going need needs have has want wants about got plan planning trying ready fixing'.split(' '),
);

const DENIALS: ReadonlySet<string> = new Set(['not', 'never']);

interface Placed {
  readonly item: Item;
  readonly before: Item | undefined;
}

/** Where the clause begins in which somebody else did it; `null` where we did. */
function strangerFrom(tokens: readonly Token[], { item, before }: Placed): number | null {
  const { start, meaning } = item;
  const isWork = meaning.work !== undefined;
  const isOthers = meaning.ofIt !== undefined && isSomebody(tokens, start);
  if (!(isWork || isOthers) || tokens[start]?.pause === true) return null;
  const least = before?.end ?? 0;
  const word = start > least ? tokens[start - 1] : undefined;
  if (word === undefined || (isOfOurs(word) && !isSomeMan(tokens, start))) return null;
  let from = start - 1;
  while (from > least && tokens[from]?.pause !== true) from -= 1;
  const isSequel = JOINS.has(tokens[start]?.text ?? '');
  const isOurs = DID.test(tokens[from]?.text ?? '') || before?.meaning.work !== undefined;
  return isSequel && isOurs && !saysWho(tokens.slice(from, start)) ? null : from;
}

/** "Killed the switch and pulled the panel": what follows what we did is ours, unless somebody comes between. */
const JOINS: ReadonlySet<string> = new Set(['and', 'then']);
const WHO: ReadonlySet<string> = new Set(
  'he she they who you customer owner manager cook chef staff somebody someone guy tech plumber electrician'.split(
    ' ',
  ),
);
const saysWho = (tokens: readonly Token[]): boolean => tokens.some(({ text }) => WHO.has(text));

/** "Pulled and cleaned the blades": what was done first is ours, too. */
const DID = /ed$|^(?:blew|took|cut|swept|shut|dug|got|went|found|put|made)$/;

/** "Last man jumped it out" is of somebody; "man, I jumped it out" is said as one breathes. */
const isSomeMan = (tokens: readonly Token[], start: number): boolean =>
  tokens[start - 1]?.text === 'man' && SOME.has(tokens[start - 2]?.text ?? '');
const isSomebody = (tokens: readonly Token[], start: number): boolean =>
  isSomeMan(tokens, start) || WHO.has(tokens[start - 1]?.text ?? '');
const SOME: ReadonlySet<string> = new Set('last other previous maintenance service old'.split(' '));

const isOfOurs = (token: Token): boolean =>
  BEFORE_OURS.has(token) || FILLERS.has(token) || DID.test(token.text);
