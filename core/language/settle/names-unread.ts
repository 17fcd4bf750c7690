import { HOLES } from '../holes.ts';
import type { Item } from '../parse/parse.ts';
import { GRAMMAR, type Sentence } from '../parse/sentence.ts';
import { partId } from '../slots.ts';
import type { PartId } from '../../terms/names.ts';
import { WordSet } from '../words/word-set.ts';
import type { Meaning } from '../rule.ts';

const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/**
 * "Door heater should be looked at, it's not working": no rule reads the clause that names the part, and the next one
 * speaks of it. Where "it" would be nothing at all, it is the part that was named last in what nobody read before it.
 *
 * @returns the items themselves where none speaks of such a part.
 */
export function withUnreadNames(sentence: Sentence, items: readonly Item[]): readonly Item[] {
  const at = items.findIndex(({ meaning }) => isOfNothing(meaning));
  const of = items[at];
  if (of === undefined || items.slice(0, at).some(({ meaning }) => namesSomething(meaning)))
    return items;
  const from = items[at - 1]?.end ?? 0;
  const part = lastPartIn(sentence, from, of.start);
  if (part === null) return items;
  const named: Item = { ...of, start: of.start, end: of.start, meaning: { names: part } };
  return [...items.slice(0, at), named, ...items.slice(at)];
}

/** Unless something is named before it nothing comes of it but its words. */
function isOfNothing({ ofIt, ofThat }: Meaning): boolean {
  if (ofIt === undefined || ofThat !== undefined) return false;
  for (const part in ofIt.otherwise) if (part !== 'remarks') return false;
  return true;
}

const namesSomething = ({ names, readings, findings, work, recommendations }: Meaning): boolean =>
  [names, readings, findings, work, recommendations].some((each) => each !== undefined);

const SIGNALS = new WordSet('red green yellow amber orange blue flashing blinking solid');

function lastPartIn(sentence: Sentence, from: number, to: number): PartId | null {
  if (PARTS === null) return null;
  const { matcher, tokens } = sentence;
  let behind = from;
  for (let at = from, last: PartId | null = null; ; at += 1) {
    if (at >= to) return last;
    const [named] = matcher
      .run(PARTS, at)
      .filter(({ end }) => end <= to)
      .toSorted((one, other) => other.end - one.end);
    if (named === undefined) continue;
    // "Termination's a fifty five degree klixon", "switch has a wire nut on it": what it is or has, and not what is told of next.
    const isKind: boolean =
      last !== null && IS.hasAny(tokens, behind, behind + 1) && beginsKind(behind + 1);
    const part: PartId | null = isKind ? last : partId(named.tags[0]?.['part']);
    behind = named.end;
    // "Light's still green": by which a control tells how it is.
    if (
      part !== 'light' ||
      !SIGNALS.hasAny(sentence.tokens, named.end, Math.min(to, named.end + 3))
    )
      last = part ?? last;
    at = named.end - 1;
  }

  /** "A", "got a" */
  function beginsKind(at: number): boolean {
    const token = tokens[at];
    if (token === undefined || token.pause) return false;
    return A.has(token) || (token.text === 'got' && beginsKind(at + 1));
  }
}
const IS = new WordSet('is was has had');
const A = new WordSet('a an');
