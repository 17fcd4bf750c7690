import type { CorpusLine } from './corpus-line.ts';

/** Words that may stand for each other without changing what is said: no number, direction or degree. */
const GROUPS: readonly (readonly string[])[] = [
  ['right now', 'just now', 'at the moment'],
  ['reads', 'is at', 'is reading', 'sits at', 'shows'],
  ['should be', 'ought to be'],
  ['so', 'which means'],
  ['over', 'above'],
  ['under', 'below'],
];

const SWAPS: readonly (readonly [string, string])[] = GROUPS.flatMap((group) =>
  group.flatMap((one) =>
    group.filter((other) => other !== one).map((other) => [one, other] as const),
  ),
);

/** The line once more for every words of it that have others: one change at a time. */
export function reworded(line: CorpusLine): readonly CorpusLine[] {
  const padded = ` ${line.sentence}`;
  return SWAPS.flatMap(([from, to]) => {
    const at = padded.search(new RegExp(`(?<= )${from}(?=[ ,.:;])`));
    if (at < 0) return [];
    const sentence = padded.slice(1, at) + to + padded.slice(at + from.length);
    return [{ ...line, sentence }];
  });
}
