import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Ranking } from '../../../core/hearing/neural-decoder.ts';
import { recogniserGrammar } from '../../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../../core/language/vocabulary/pronunciations.ts';
import { createNeuralHearing } from '../../../server/hearing/neural-hearing.ts';
import { openNeuralModel } from '../../../server/hearing/neural-model.ts';
import { createNodeHearing } from '../../../server/hearing/node-hearing.ts';
import { opinionOf } from '../../../core/hearing/second-opinion.ts';
import type { EngineChoice } from '../../../server/hearing/open-hearer.ts';
import { measureRecording } from '../../../core/hearing/noise-meter.ts';
import { RATE_HZ } from '../signals.ts';
import type { Job } from './jobs.ts';
import type { Row } from './rows.ts';

/** Both engines, each asked once. */
export interface Ears {
  readonly hear: (job: Job) => Promise<Row>;
  /** What an engine makes of what was heard, by today's judgement. */
  readonly judge: (engine: EngineChoice, row: Row) => Hearing;
  readonly pronunciations: Pronunciations;
}

/** Rejects when the neural engine's model cannot be read. */
export async function openEars(modelFolder: string | undefined): Promise<Ears> {
  const options = { grammar: recogniserGrammar('anything'), pronunciations: PRONUNCIATIONS };
  const outcome = await openNeuralModel(modelFolder);
  if (outcome.kind === 'unavailable') throw new Error(outcome.message);
  const neural = await createNeuralHearing(outcome.model, options);
  const embedded = await createNodeHearing(options);
  return {
    hear: async ({ sound, ...said }) => {
      const samples = sound();
      const [heard, embeddedSeconds] = await timed(() => Promise.resolve(embedded.hear(samples)));
      const [ranking, neuralSeconds] = await timed(() => neural.rank(samples, opinionOf(heard)));
      return {
        ...said,
        seconds: samples.length / RATE_HZ,
        cpuSeconds: { neural: neuralSeconds, embedded: embeddedSeconds },
        snrDb: measureRecording(samples).snrDb,
        ranking,
        embedded: heard,
      };
    },
    judge: (engine, row) => JUDGES[engine](row, neural.judge),
    pronunciations: neural.pronunciations,
  };
}

type Judge = (row: Row, neural: (ranking: Ranking) => Hearing) => Hearing;

const JUDGES: Readonly<Record<EngineChoice, Judge>> = {
  embedded: ({ embedded }) => embedded,
  neural: ({ ranking }, neural) => neural({ ...ranking, asked: false, opinion: null }),
  both: ({ ranking }, neural) => neural(ranking),
};

async function timed<Result>(
  work: () => Promise<Result>,
): Promise<readonly [Result, seconds: number]> {
  const before = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(before);
  return [result, (user + system) / 1e6];
}
