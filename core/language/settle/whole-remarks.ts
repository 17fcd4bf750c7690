import type { Token } from '../../grammar/tokens.ts';
import { pauseAfter } from '../words/clause.ts';
import { FILLERS } from '../words/fillers.ts';
import type { Item } from '../parse/read-rules.ts';
import { tellsNothing } from '../rule.ts';
import type { Sentence } from '../parse/sentence.ts';
import { WordSet } from '../words/word-set.ts';

/** Nothing of it is told but words that are kept as they were said. */
function isKept({ meaning }: Item): boolean {
  for (const part in meaning) if (part !== 'remarks') return false;
  return meaning.remarks !== undefined;
}

/**
 * "Screen at the valve inlet is clean": where all that rules read between two pauses are words to keep, they are kept with
 * those around them, which say of what they are told.
 */
export function withWholeRemarks(sentence: Sentence, items: readonly Item[]): readonly Item[] {
  if (!items.some(isKept)) return items;
  const { tokens } = sentence;
  const whole: Item[] = [];
  for (let start = 0; start < tokens.length;) {
    const end = pauseAfter(tokens, start);
    const within = items.filter((item) => item.start >= start && item.start < end);
    whole.push(...(keptWhole(sentence, { start, end, within }) ?? within));
    start = end;
  }
  return whole;
}

interface Section {
  readonly start: number;
  readonly end: number;
  readonly within: readonly Item[];
}

/** One item of all that is said there but what leads up to it; `null` where it is not all to be kept, or all is read. */
function keptWhole(sentence: Sentence, { start, end, within }: Section): readonly Item[] | null {
  const kept = within.find(isKept);
  const last = within.at(-1);
  if (kept === undefined || last === undefined || last.end > end) return null;
  if (!within.every((item) => isKept(item) || tellsNothing(item.meaning))) return null;
  const from = behindLeads(sentence.tokens, within, start);
  const isAllRead = kept.start <= from && kept.end === end;
  if (isAllRead || hasOpenNumber(sentence, within, { start: from, end })) return null;
  const remarks = [sentence.wordsOf({ from, to: end })];
  return [{ ...kept, start: from, end, meaning: { remarks } }];
}

/** A number there is asked about, unless a rule reads it. */
function hasOpenNumber(
  sentence: Sentence,
  within: readonly Item[],
  { start, end }: { readonly start: number; readonly end: number },
): boolean {
  for (let at = start; at < end; at += 1) {
    const isRead = within.some((item) => item.start <= at && at < item.end);
    if (!isRead && sentence.canBeNumber(at)) return true;
  }
  return false;
}

function behindLeads(tokens: readonly Token[], within: readonly Item[], start: number): number {
  let at = start;
  for (;;) {
    const talk = within.find((item) => item.start === at && tellsNothing(item.meaning));
    const token = tokens[at];
    if (talk !== undefined) at = talk.end;
    else if (token !== undefined && (LEADS.has(token) || FILLERS.has(token))) at += 1;
    else return at;
  }
}
const LEADS = new WordSet('and but so then well also because');
