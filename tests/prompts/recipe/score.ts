import {
  type Phrased,
  phraseInTries,
  type Writer,
} from '../../../prompts/decode/phrase-in-tries.ts';
import type { Lexicon } from '../../../prompts/decode/lexicon.ts';
import type { Register } from '../../../prompts/record/phrase-record.ts';
import type { Told } from './told.ts';

/** What came of a number of records. */
export interface Score {
  readonly records: number;
  readonly firstTry: number;
  readonly withinTries: number;
  /** Sentences that are no line of the corpus, and those that were not put together from it either. */
  readonly notInCorpus: number;
  readonly notLearnt: number;
  readonly distinct: Readonly<Record<string, number>>;
}

export interface ToScore {
  readonly told: Told;
  readonly register: Register;
  readonly isHeldOut: boolean;
}

export interface Scored {
  readonly told: Told;
  readonly phrased: Phrased | null;
  readonly isHeldOut: boolean;
}

/** One after the other, as a visit would: each knows what was said last. */
export async function phraseAll(
  write: Writer,
  lexicon: Lexicon,
  all: readonly ToScore[],
): Promise<readonly Scored[]> {
  const scored: Scored[] = [];
  let last: Phrased | null = null;
  for (const [seed, { told, register, isHeldOut }] of all.entries()) {
    const phrased = await phraseInTries(write, lexicon, { ...told, register, seed, last });
    last = phrased ?? last;
    scored.push({ told, phrased, isHeldOut });
  }
  return scored;
}

export function scoreOf(
  scored: readonly Scored[],
  known: { readonly corpus: ReadonlySet<string>; readonly learnt: ReadonlySet<string> },
): Score {
  const said = scored.flatMap(({ phrased, told }) => (phrased ? [{ phrased, told }] : []));
  const share = (count: number, of: number): number => Math.round((count / of) * 10_000) / 10_000;
  const isNew = (set: ReadonlySet<string>) =>
    said.filter(({ phrased, told }) => !set.has(`${told.record.kind} ${phrased.sentence}`));
  const distinct: Record<string, Set<string>> = {};
  for (const { told, phrased } of said) {
    (distinct[told.record.kind] ??= new Set()).add(phrased.sentence);
  }
  return {
    records: scored.length,
    firstTry: share(said.filter(({ phrased }) => phrased.tries === 1).length, scored.length),
    withinTries: share(said.length, scored.length),
    notInCorpus: share(isNew(known.corpus).length, said.length),
    notLearnt: share(isNew(known.learnt).length, said.length),
    distinct: Object.fromEntries(Object.entries(distinct).map(([kind, set]) => [kind, set.size])),
  };
}

/** Told of by the test of the whole: a number in a sentence that nothing it tells of has. */
export function foreignNumbers({ told, phrased }: Scored): readonly string[] {
  if (phrased === null) return [];
  const { text } = phrased.said;
  const numbers = text.replace(/R-\d+\w*/g, '').match(/\d+(?:\.\d+)?/g) ?? [];
  const foreign = numbers.filter((number) => !told.numbers.has(number));
  return foreign.length > 0 ? [`${foreign.join(' ')} in: ${text}`] : [];
}
