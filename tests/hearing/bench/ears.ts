import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Ranking } from '../../../core/hearing/neural-decoder.ts';
import { heardGrammars } from '../../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../../core/language/vocabulary/pronunciations.ts';
import { createNeuralHearing } from '../../../server/hearing/neural-hearing.ts';
import { openNeuralModel } from '../../../server/hearing/neural-model.ts';
import { createNodeHearing } from '../../../server/hearing/node-hearing.ts';
import type { Opinion } from '../../../core/hearing/second-opinion.ts';
import { NOTHING } from '../../../core/hearing/to-hearing.ts';
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

export interface EarsOptions {
  readonly modelFolder: string | undefined;
  /** The embedded engine's own hearing takes twice the time of all the rest: only where it is to be reported. */
  readonly engines: readonly EngineChoice[];
}

/** Rejects when the neural engine's model cannot be read. */
export async function openEars({ modelFolder, engines }: EarsOptions): Promise<Ears> {
  const options = { grammars: heardGrammars('anything'), pronunciations: PRONUNCIATIONS };
  const outcome = await openNeuralModel(modelFolder);
  if (outcome.kind === 'unavailable') throw new Error(outcome.message);
  const neural = await createNeuralHearing(outcome.model, options);
  const embedded = await createNodeHearing(options);
  return {
    hear: async ({ sound, ...said }) => {
      const samples = sound();
      const [heard, embeddedSeconds] = await timed(() =>
        Promise.resolve(engines.includes('embedded') ? embedded.hear(samples) : null),
      );
      let opinionSeconds = 0;
      const opine = (sound: Float32Array, wordings: readonly string[]): Opinion | null => {
        const before = cpuSeconds();
        const opinion = embedded.choose(sound, wordings);
        opinionSeconds = cpuSeconds() - before;
        return opinion;
      };
      const [ranking, bothSeconds] = await timed(() => neural.rank(samples, opine));
      return {
        ...said,
        seconds: samples.length / RATE_HZ,
        cpuSeconds: {
          neural: bothSeconds - opinionSeconds,
          opinion: opinionSeconds,
          embedded: embeddedSeconds,
        },
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
  embedded: ({ embedded }) => embedded ?? NOTHING,
  neural: ({ ranking }, neural) => neural({ ...ranking, asked: false, opinion: null }),
  both: ({ ranking }, neural) => neural(ranking),
};

async function timed<Result>(
  work: () => Promise<Result>,
): Promise<readonly [Result, seconds: number]> {
  const before = cpuSeconds();
  const result = await work();
  return [result, cpuSeconds() - before];
}

function cpuSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}
