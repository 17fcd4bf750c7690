import { rolesIn } from '../record/fill.ts';
import type { CorpusLine } from './corpus-line.ts';

/**
 * New sentences from old: the beginning of one and the end of another, parted at the same mark, where the two
 * ends say the same slots. "{about} reads {measured}, | so it is {difference} over." lends its end to
 * "{about} is at {measured} now, | that makes it {difference} over." What comes of it is held against the guard.
 */
export function recombined(lines: readonly CorpusLine[]): readonly CorpusLine[] {
  const known = new Set(lines.map(keyOf));
  const ends = new Map<string, Cut[]>();
  for (const cut of lines.flatMap(cuts)) {
    const alike = ends.get(endKey(cut));
    if (alike) alike.push(cut);
    else ends.set(endKey(cut), [cut]);
  }
  const made = lines
    .flatMap(cuts)
    .flatMap((cut) =>
      (ends.get(endKey(cut)) ?? [])
        .filter(({ end }) => !repeats(cut.start, end))
        .map(({ end, line }) => joined(cut, end, line)),
    );
  const fresh = new Map(made.map((line) => [keyOf(line), line]));
  return [...fresh].flatMap(([key, line]) => (known.has(key) ? [] : [line]));
}

interface Cut {
  readonly line: CorpusLine;
  readonly start: string;
  readonly end: string;
}

function cuts(line: CorpusLine): readonly Cut[] {
  const { sentence } = line;
  return Array.from(sentence.matchAll(/[,.:;] /g), ({ index }) => ({
    line,
    start: sentence.slice(0, index + 2),
    end: sentence.slice(index + 2),
  }));
}

/** Behind a comma the next word decides what may follow: "…, which is high" gives way to "…, which means" alone. */
function endKey({ line, start, end }: Cut): string {
  const mark = start.at(-2) ?? '';
  const joint = mark === ',' ? (end.split(' ')[0] ?? '') : '';
  return [line.kind, line.register, mark, joint, ...rolesIn(end).toSorted()].join(' ');
}

/** "Where it belongs, where it should be": what the beginning said in these words is not begun again. */
function repeats(start: string, end: string): boolean {
  const [first = '', second = ''] = end.split(' ');
  return ` ${start}`.includes(` ${first} ${second}`);
}

function joined({ line, start }: Cut, end: string, other: CorpusLine): CorpusLine {
  const needs = [...new Set([...line.needs, ...other.needs])].toSorted();
  return { ...line, needs, sentence: start + end };
}

const keyOf = ({ kind, register, needs, sentence }: CorpusLine): string =>
  [kind, register, needs.toSorted().join(' '), sentence].join('\t');
