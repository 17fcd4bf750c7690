import type { EngineChoice } from '../../../../server/hearing/open-hearer.ts';
import type { Ears } from '../ears.ts';
import { isActedOn, isTaken } from '../verdict.ts';
import type { Overheard } from './overheard.ts';

const HEAD = ['bed', 'minutes', 'begun', 'CPU s/s', 'engine', 'heard', 'acted on', 'readings'];
const ALL = { noise: 'all noise', talk: 'all talk' } as const;
const WIDTHS = [24, 8, 7, 8, 9, 7, 9, 9];

/**
 * begun: taken for the beginning of a sentence. heard: not told from the product's language by the engine. acted on:
 * something would be kept, done, answered or asked about. readings: a value would be kept.
 */
export function reportOverheard(
  overheard: readonly Overheard[],
  ears: Ears,
  engines: readonly EngineChoice[],
): readonly string[] {
  const names = overheard.map(({ bed }) => bed);
  const groups = [...new Set(names), ALL.noise, ALL.talk].map(
    (name) => [name, overheard.filter(({ bed, kind }) => [bed, ALL[kind]].includes(name))] as const,
  );
  return [
    line(HEAD),
    ...groups.flatMap(([name, group]) => {
      const sum = (of: (each: Overheard) => number): number =>
        group.reduce((all, each) => all + of(each), 0);
      const seconds = sum((each) => each.seconds);
      const sentences = group.flatMap((each) => each.sentences);
      const found = (sum((each) => each.findingCpuSeconds) / seconds).toFixed(3);
      return engines.map((engine) => {
        const heard = sentences.map((row) => ears.judge(engine, row));
        const counts = [
          heard.filter(({ rejected }) => rejected === undefined),
          heard.filter(isActedOn),
          heard.filter(isTaken),
        ].map(({ length }) => String(length));
        const begun = String(sentences.length);
        return line([name, (seconds / 60).toFixed(1), begun, found, engine, ...counts]);
      });
    }),
  ];
}

const line = (cells: readonly string[]): string =>
  cells
    .map((cell, at) => cell.padEnd(WIDTHS[at] ?? 8))
    .join(' ')
    .trimEnd();
