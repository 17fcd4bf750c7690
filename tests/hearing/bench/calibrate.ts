import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import { strangeness } from '../../../core/hearing/evidence.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { meaningOf } from '../../../core/language/meaning.ts';
import { understand } from '../../../core/language/understand.ts';
import type { Row } from './rows.ts';

/** The figures of core/hearing/judgement.ts, and how well they fit. */
export interface Calibration {
  readonly opinionWorth: number;
  readonly temperature: number;
  readonly perfectFit: number;
  readonly strangeness: number;
  /** Mean negative log likelihood. */
  readonly loss: number;
}

const WORTHS = [0, 1, 2, 3, 4, 5, 6];
const TEMPERATURES = [1, 1.5, 2, 2.5, 3];

/** The likeliest figures for what was right and what was not: sentences of ours, and talk, of which nothing is right. */
export function calibrate(rows: readonly Row[], pronunciations: Pronunciations): Calibration {
  const heard = rows.flatMap((row) => toHeard(row, pronunciations));
  const fits = WORTHS.flatMap((opinionWorth) =>
    TEMPERATURES.map((temperature) => {
      const examples = heard.map((each) => toExample(each, { opinionWorth, temperature }));
      return { opinionWorth, temperature, ...fitChance(examples) };
    }),
  );
  return fits.reduce((best, each) => (each.loss < best.loss ? each : best));
}

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
  figures: Calibration,
): readonly Bin[] {
  const examples = rows
    .flatMap((row) => toHeard(row, pronunciations))
    .map((each) => toExample(each, figures));
  return EDGES.map((from, at) => {
    const within = examples.filter((each) => {
      const chance = chanceOf(each, figures);
      return chance >= from && chance < (EDGES[at + 1] ?? Infinity);
    });
    const meanOf = (values: readonly number[]): number =>
      values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
    return {
      from,
      count: within.length,
      meanChance: meanOf(within.map((each) => chanceOf(each, figures))),
      right: meanOf(within.map(({ right }) => (right ? 1 : 0))),
    };
  });
}

interface Heard {
  readonly wordings: readonly {
    readonly score: number;
    readonly isOpinion: boolean;
    readonly meaning: string;
    readonly strangeness: number;
  }[];
  /** What was meant; null of talk. */
  readonly meant: string | null;
}

const meanings = new Map<string, string>();

function meaningOfWords(words: string): string {
  const meaning = meanings.get(words) ?? meaningOf(understand(words, EMPTY_CONTEXT));
  meanings.set(words, meaning);
  return meaning;
}

function toHeard({ kind, said, ranking }: Row, pronunciations: Pronunciations): readonly Heard[] {
  const { hypotheses, opinion } = ranking;
  if (kind === 'noise' || hypotheses.length === 0) return [];
  const textOf = (heard: (typeof hypotheses)[number]): string =>
    heard.words.map(({ word }) => word).join(' ');
  const opined = opinion === null ? null : textOf(opinion);
  const others = hypotheses.filter((heard) => textOf(heard) !== opined);
  const all = opinion === null ? others : [...others, opinion];
  const wordings = all.map((heard) => ({
    score: heard.score,
    isOpinion: heard === opinion,
    meaning: meaningOfWords(textOf(heard)),
    strangeness: strangeness(heard.words, pronunciations),
  }));
  return [{ wordings, meant: kind === 'ours' ? meaningOfWords(said) : null }];
}

interface Example {
  readonly strangeness: number;
  /** Of the likeliest meaning among the wordings. */
  readonly share: number;
  readonly right: boolean;
}

function toExample(
  { wordings, meant }: Heard,
  { opinionWorth, temperature }: Pick<Calibration, 'opinionWorth' | 'temperature'>,
): Example {
  const scores = wordings.map(({ score, isOpinion }) => score + (isOpinion ? opinionWorth : 0));
  const most = Math.max(...scores);
  const weights = scores.map((score) => Math.exp((score - most) / temperature));
  const byMeaning = new Map<string, number>();
  wordings.forEach(({ meaning }, at) =>
    byMeaning.set(meaning, (byMeaning.get(meaning) ?? 0) + (weights[at] ?? 0)),
  );
  const [likeliest = ['', 0]] = [...byMeaning].toSorted(([, one], [, other]) => other - one);
  const [meaning, weight] = likeliest;
  return {
    strangeness: wordings[scores.indexOf(most)]?.strangeness ?? 0,
    share: weight / weights.reduce((sum, each) => sum + each, 0),
    right: meaning === meant,
  };
}

type Chance = Pick<Calibration, 'perfectFit' | 'strangeness'>;

const chanceOf = (example: Example, chance: Chance): number =>
  example.share / (1 + Math.exp(-(chance.perfectFit + chance.strangeness * example.strangeness)));

const LEAST = 1e-6;
const STEPS = 60;

/** By turns along each of the two figures, in steps that halve when none helps: the loss is smooth and has one valley. */
function fitChance(examples: readonly Example[]): Chance & { readonly loss: number } {
  let best = { perfectFit: 5, strangeness: -3 };
  let loss = lossOf(examples, best);
  let step = 2;
  for (let turn = 0; turn < STEPS && step > 0.01; turn += 1) {
    const tries = [
      { ...best, perfectFit: best.perfectFit + step },
      { ...best, perfectFit: best.perfectFit - step },
      { ...best, strangeness: best.strangeness + step },
      { ...best, strangeness: best.strangeness - step },
      { perfectFit: best.perfectFit + step, strangeness: best.strangeness - step },
      { perfectFit: best.perfectFit - step, strangeness: best.strangeness + step },
    ].map((chance) => ({ chance, loss: lossOf(examples, chance) }));
    const better = tries.reduce((so, each) => (each.loss < so.loss ? each : so));
    if (better.loss < loss) [best, loss] = [better.chance, better.loss];
    else step /= 2;
  }
  return { ...best, loss };
}

function lossOf(examples: readonly Example[], chance: Chance): number {
  const sum = examples.reduce((total, example) => {
    const likely = Math.min(1 - LEAST, Math.max(LEAST, chanceOf(example, chance)));
    return total - Math.log(example.right ? likely : 1 - likely);
  }, 0);
  return sum / Math.max(1, examples.length);
}
