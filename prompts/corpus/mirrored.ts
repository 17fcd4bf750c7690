import type { CorpusLine } from './corpus-line.ts';

const OTHER_WAY = otherWay({
  over: 'under',
  above: 'below',
  high: 'low',
  higher: 'lower',
  alongsideOver: 'alongsideUnder',
});

function otherWay(pairs: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  const there = Object.entries(pairs);
  return new Map([...there, ...there.map(([one, other]): [string, string] => [other, one])]);
}

const turned = (word: string): string => OTHER_WAY.get(word) ?? word;

/**
 * A line that needs `over` is as good for `under` with its words turned, so that it is written once. Slots
 * keep their roles: {low} and {high} are the ends of a band whichever way the reading is off.
 */
export function mirrored(line: CorpusLine): readonly CorpusLine[] {
  if (!line.needs.includes('over')) return [];
  const sentence = line.sentence.replace(/\{[a-zA-Z]+\}|[a-z]+/g, turned);
  return [{ ...line, needs: line.needs.map(turned), sentence }];
}
