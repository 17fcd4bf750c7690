import { readFileSync } from 'node:fs';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { type CorpusLine, readCorpus } from '../corpus/corpus.ts';
import { numbersMeant } from '../corpus/numbers-meant.ts';
import { type NumberReader, readers as allReaders } from './number-readers.ts';

export interface ReaderFigures {
  readonly name: string;
  /** For a sentence of the corpus: the median over rounds. */
  readonly microseconds: number;
  /** Sentences that bear numbers, and in which it found every one written by hand. */
  readonly found: number;
}

export interface UnderstandingFigures {
  /** Of what. */
  readonly title: string;
  readonly wordsEach: number;
  /** `understand` first. */
  readonly readers: readonly ReaderFigures[];
  readonly sentences: number;
  readonly withNumbers: number;
}

interface Rounds {
  /** Before the first round that counts, so that the engine has made the code ready. */
  readonly warmUps: number;
  readonly counted: number;
}
const QUICK: Rounds = { warmUps: 12, counted: 15 };
const SLOW: Rounds = { warmUps: 1, counted: 5 };
/** What takes longer than ten times the quickest is slow: a round of it takes seconds. */
const IS_SLOW = 10;

/** The whole corpus, and the number sentences of others' tests. */
export async function benchUnderstanding(): Promise<readonly UnderstandingFigures[]> {
  const all = await allReaders();
  return [
    benchSentences('the corpus', readCorpus(), all),
    benchSentences('the published tests of number readers', publishedLines(), all),
  ];
}

const PUBLISHED = new URL('../corpus/published/agreed.tsv', import.meta.url);

function publishedLines(): readonly CorpusLine[] {
  const lines = readFileSync(PUBLISHED, 'utf8').split('\n');
  return lines
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split('\t'))
    .map(([said = '', meant = '', where = '']) => ({ said, meant, context: EMPTY_CONTEXT, where }));
}

/**
 * Every sentence through `understand`, beside readers of numbers alone, in turns: what else the machine does falls on
 * each alike. Those that are much slower take their turns after the others, so that what they leave to be cleared away is
 * cleared in no other's time.
 */
function benchSentences(
  title: string,
  lines: readonly CorpusLine[],
  all: readonly NumberReader[],
): UnderstandingFigures {
  const first = all.map((reader) => microsecondsFor(reader, lines.slice(0, 1000)));
  const bound = Math.min(...first) * IS_SLOW;
  const isSlow = (reader: NumberReader): boolean =>
    reader !== all[0] && (first[all.indexOf(reader)] ?? 0) > bound;
  const times = new Map([
    ...timesInTurns(
      all.filter((reader) => !isSlow(reader)),
      lines,
      QUICK,
    ),
    ...timesInTurns(all.filter(isSlow), lines, SLOW),
  ]);
  const readers = all.map((reader) => ({
    name: reader.name,
    microseconds: median(times.get(reader) ?? []),
    found: lines.filter((line) => hasNumbers(line) && findsAll(reader, line)).length,
  }));
  const words = lines.reduce((sum, { said }) => sum + said.split(' ').length, 0);
  return {
    title,
    wordsEach: words / lines.length,
    readers,
    sentences: lines.length,
    withNumbers: lines.filter(hasNumbers).length,
  };
}

/** Of each reader the microseconds a sentence took, round by round. */
function timesInTurns(
  readers: readonly NumberReader[],
  lines: readonly CorpusLine[],
  { warmUps, counted }: Rounds,
): ReadonlyMap<NumberReader, readonly number[]> {
  const times = new Map<NumberReader, number[]>(readers.map((reader) => [reader, []]));
  for (let round = -warmUps; round < counted; round += 1) {
    for (const [reader, all] of times) {
      const microseconds = microsecondsFor(reader, lines);
      if (round >= 0) all.push(microseconds);
    }
  }
  return times;
}

function microsecondsFor({ read }: NumberReader, corpus: readonly CorpusLine[]): number {
  const start = performance.now();
  for (const line of corpus) read(line);
  return ((performance.now() - start) * 1000) / corpus.length;
}

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? NaN;

const hasNumbers = ({ meant }: CorpusLine): boolean => numbersMeant(meant).length > 0;

/** By size alone: "twenty nine inches" is below zero by the trade's meaning, which others need not know. */
function findsAll({ numbers }: NumberReader, line: CorpusLine): boolean {
  const found = numbers(line).map(Math.abs);
  return numbersMeant(line.meant).every((number) =>
    found.some((each) => Math.abs(each - Math.abs(number)) < 1e-6),
  );
}
