import type { Token } from '../grammar/tokens.ts';
import type { Tags } from '../grammar/nodes.ts';
import type { Context } from './context.ts';
import { type NearMiss, nearMisses } from './parse/near-misses.ts';
import { type Item, parse } from './parse/parse.ts';
import { type AskedByCue, askedByCues } from './questions/by-cue.ts';
import { FILLERS } from './words/fillers.ts';
import { tokenise } from './words/tokenise.ts';

/** One rule that the answer was built from. */
export interface Explained {
  readonly shape: string;
  readonly words: string;
  /** From this token up to that one. */
  readonly from: number;
  readonly to: number;
  readonly tags: Tags;
  /** What parts of the answer it gave; none: talk that is not for us. */
  readonly gave: readonly string[];
}

export interface Explanation {
  readonly rules: readonly Explained[];
  readonly unclaimed: readonly string[];
  /** Stretches that no rule reads. */
  readonly leftOver: readonly string[];
  /** What came closest to reading the words that no rule reads; empty where every word is read or passed over. */
  readonly nearMisses: readonly NearMiss[];
  /** Nodes the matcher tried. */
  readonly steps: number;
}

/** Which rules read the sentence and where, and which nearly did. */
export function explain(text: string, context: Context): Explanation {
  const { items, unclaimed, steps, tokens, sentence } = parse(text, context);
  const lead = leadOf(text, tokens);
  const byCue = askedByCues({ text, tokens }, items).map((each) => behind(lead, each));
  const rules = items.map(({ rule, start, end, tags, meaning }) => ({
    shape: rule.shape,
    words: sentence.wordsOf({ from: start, to: end }),
    from: start + lead,
    to: end + lead,
    tags,
    gave: Object.keys(meaning),
  }));
  const read = [...items.map((item) => behind(lead, item)), ...byCue].toSorted(
    (one, other) => one.start - other.start,
  );
  return {
    rules: [...rules, ...byCue.map((each) => explainedCue(text, each))],
    unclaimed,
    leftOver: leftOverIn(text, read),
    nearMisses: missedBy(text, read),
    steps,
  };
}

/** How many words stand before what was parsed. */
const leadOf = (text: string, parsed: readonly Token[]): number =>
  Math.max(
    0,
    tokenise(text).findIndex(({ start }) => start === parsed[0]?.start),
  );

const behind = <Placed extends Read>(lead: number, placed: Placed): Placed => ({
  ...placed,
  start: placed.start + lead,
  end: placed.end + lead,
});

/** No rule reads it: what it asks was told by the words in it. */
function explainedCue(text: string, { question, cue, start, end }: AskedByCue): Explained {
  const tokens = tokenise(text);
  const words = text.slice(tokens[start]?.start ?? 0, tokens[end - 1]?.end ?? 0);
  const told = cue === null ? 'a name and a question mark' : cue.says.join(' … ');
  const shape = `(asked by its words: ${question.ask}, by ${told})`;
  return { shape, words, from: start, to: end, tags: {}, gave: ['questions'] };
}

type Read = Pick<Item, 'start' | 'end'>;

function missedBy(text: string, items: readonly Read[]): readonly NearMiss[] {
  const tokens = tokenise(text);
  const unread = tokens.flatMap((token, at) =>
    items.some(({ start, end }) => start <= at && at < end) ? [] : [{ token, at }],
  );
  const isPassedOver = unread.every(({ token }) => FILLERS.has(token));
  const starts = unread.map(({ at }) => at);
  return isPassedOver ? [] : nearMisses(tokens, starts);
}

function leftOverIn(text: string, items: readonly Read[]): readonly string[] {
  const tokens = tokenise(text);
  const bounds = [0, ...items.flatMap(({ start, end }) => [start, end]), tokens.length];
  const stretches: string[] = [];
  for (let at = 0; at + 1 < bounds.length; at += 2) {
    const between = tokens.slice(bounds[at], bounds[at + 1]);
    const [first, last] = [between[0], between.at(-1)];
    const isRead = between.every((token) => FILLERS.has(token));
    if (first !== undefined && last !== undefined && !isRead) {
      stretches.push(text.slice(first.start, last.end));
    }
  }
  return stretches;
}
