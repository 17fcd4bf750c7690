import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import { fitOf } from '../../../core/hearing/evidence.ts';
import {
  chanceRight,
  type Fit,
  JUDGEMENT,
  type Judgement,
  type Second,
  shares,
} from '../../../core/hearing/judgement.ts';
import { votesOf, wordingOf } from '../../../core/hearing/neural-hearing.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { meaningOf } from '../../../core/language/settle/meaning.ts';
import { understand } from '../../../core/language/understand.ts';
import type { Row } from './rows.ts';

/** The figures of core/hearing/judgement.ts, and how well they fit: the mean negative log likelihood. */
export interface Calibration {
  readonly judgement: Judgement;
  readonly loss: number;
}

/** Half of the sentences, of every kind and voice: kinds take turns by four, and voices by as many. */
export const isFitted = ({ number }: Row): boolean => Math.floor(number / 8) % 2 === 0;

const STEPS = 200;
const SMALLEST_STEP = 0.01;

/** The likeliest figures for what was right and what was not: sentences of ours, and talk, of which nothing is right. */
export function calibrate(rows: readonly Row[], pronunciations: Pronunciations): Calibration {
  const heard = rows.flatMap((row) => toHeard(row, pronunciations));
  let best = { judgement: JUDGEMENT, loss: lossOf(heard, JUDGEMENT) };
  let step = 1;
  // By turns along each figure, in steps that halve when none helps.
  for (let turn = 0; turn < STEPS && step > SMALLEST_STEP; turn += 1) {
    const tries = FIGURES.flatMap((change) => [
      change(best.judgement, step),
      change(best.judgement, -step),
    ]);
    const found = tries
      .filter(({ temperature }) => Math.min(...Object.values(temperature)) > 0)
      .map((judgement) => ({ judgement, loss: lossOf(heard, judgement) }));
    const better = found.reduce((so, each) => (each.loss < so.loss ? each : so));
    if (better.loss < best.loss) best = better;
    else step /= 2;
  }
  return best;
}

type Change = (judgement: Judgement, by: number) => Judgement;

const warmer =
  (second: Second): Change =>
  (judgement, by) => ({
    ...judgement,
    temperature: { ...judgement.temperature, [second]: judgement.temperature[second] + by },
  });

const FIGURES: readonly Change[] = [
  warmer('alone'),
  warmer('agreed'),
  warmer('differed'),
  (judgement, by) => ({ ...judgement, opinionWorth: Math.max(0, judgement.opinionWorth + by) }),
  (judgement, by) => ({ ...judgement, perfectFit: judgement.perfectFit + by }),
  (judgement, by) => ({ ...judgement, strangeness: judgement.strangeness + by }),
  (judgement, by) => ({ ...judgement, lost: judgement.lost + by / 4 }),
  (judgement, by) => ({ ...judgement, differed: judgement.differed + by }),
  (judgement, by) => ({
    ...judgement,
    perfectFit: judgement.perfectFit + by,
    strangeness: judgement.strangeness - by,
  }),
  (judgement, by) => ({
    ...judgement,
    perfectFit: judgement.perfectFit + by,
    lost: judgement.lost - by / 20,
  }),
];

export interface Bin {
  readonly from: number;
  readonly count: number;
  readonly meanChance: number;
  readonly right: number;
}

const EDGES = [0, 0.1, 0.3, 0.5, 0.7, 0.8, 0.85, 0.9, 0.95, 0.97, 0.99];

/** Of meanings that were said to be so likely, the share that was right. */
export function reliability(
  rows: readonly Row[],
  pronunciations: Pronunciations,
  judgement: Judgement,
): readonly Bin[] {
  const examples = rows
    .flatMap((row) => toHeard(row, pronunciations))
    .map((each) => toExample(each, judgement));
  return EDGES.map((from, at) => {
    const within = examples.filter(
      ({ chance }) => chance >= from && chance < (EDGES[at + 1] ?? Infinity),
    );
    const meanOf = (values: readonly number[]): number =>
      values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
    return {
      from,
      count: within.length,
      meanChance: meanOf(within.map(({ chance }) => chance)),
      right: meanOf(within.map(({ right }) => (right ? 1 : 0))),
    };
  });
}

interface Heard {
  readonly wordings: readonly {
    readonly score: number;
    readonly isChosen: boolean;
    readonly meaning: string;
    readonly fit: Fit;
  }[];
  readonly second: Second;
  /** What was meant; null of talk. */
  readonly meant: string | null;
}

const meanings = new Map<string, string>();

function meaningOfWords(words: string): string {
  const meaning = meanings.get(words) ?? meaningOf(understand(words, EMPTY_CONTEXT));
  meanings.set(words, meaning);
  return meaning;
}

/** As one engine alone heard it, and with the other one's opinion where there is one. */
function toHeard({ kind, said, ranking }: Row, pronunciations: Pronunciations): readonly Heard[] {
  const { hypotheses, opinion } = ranking;
  if (kind === 'noise' || hypotheses.length === 0) return [];
  const wordings = hypotheses.map((heard) => ({
    score: heard.score,
    isChosen: wordingOf(heard) === opinion?.words,
    meaning: meaningOfWords(wordingOf(heard)),
    fit: fitOf(heard.words, pronunciations),
  }));
  const meant = kind === 'ours' ? meaningOfWords(said) : null;
  const alone = {
    wordings: wordings.map((each) => ({ ...each, isChosen: false })),
    second: 'alone' as const,
    meant,
  };
  const { second } = votesOf(ranking);
  return second === 'alone' ? [alone] : [alone, { wordings, second, meant }];
}

interface Example {
  /** Of the likeliest meaning among the wordings. */
  readonly chance: number;
  readonly right: boolean;
}

function toExample({ wordings, second, meant }: Heard, judgement: Judgement): Example {
  const scores = wordings.map(
    ({ score, isChosen }) => score + (isChosen ? judgement.opinionWorth : 0),
  );
  const parts = shares(scores, second, judgement);
  const byMeaning = new Map<string, number>();
  wordings.forEach(({ meaning }, at) =>
    byMeaning.set(meaning, (byMeaning.get(meaning) ?? 0) + (parts[at] ?? 0)),
  );
  const [likeliest = ['', 0] as const] = [...byMeaning].toSorted(
    ([, one], [, other]) => other - one,
  );
  const [meaning, share] = likeliest;
  const best = wordings[scores.indexOf(Math.max(...scores))];
  const chance = best === undefined ? 0 : share * chanceRight(best.fit, second, judgement);
  return { chance, right: meaning === meant };
}

const LEAST = 1e-6;

function lossOf(heard: readonly Heard[], judgement: Judgement): number {
  const sum = heard.reduce((total, each) => {
    const { chance, right } = toExample(each, judgement);
    const likely = Math.min(1 - LEAST, Math.max(LEAST, chance));
    return total - Math.log(right ? likely : 1 - likely);
  }, 0);
  return sum / Math.max(1, heard.length);
}
