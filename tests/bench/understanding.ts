import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';

export interface UnderstandingFigures {
  readonly microsecondsPerSentence: number;
  readonly sentences: number;
}

const ROUNDS = 20;

/** The whole corpus through `understand`: the mean of the best of twenty rounds, so that others' work shows least. */
export function benchUnderstanding(): UnderstandingFigures {
  const corpus = readCorpus();
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    for (const { said, context } of corpus) understand(said, context);
    return performance.now() - start;
  });
  return {
    microsecondsPerSentence: (Math.min(...rounds) * 1000) / corpus.length,
    sentences: corpus.length,
  };
}
