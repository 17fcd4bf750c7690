import { understand } from '../../core/language/understand.ts';
import { type CorpusLine, readCorpus } from '../corpus/corpus.ts';

export interface UnderstandingFigures {
  readonly microsecondsPerSentence: number;
  readonly sentences: number;
}

const ROUNDS = 30;

/** The whole corpus through `understand`: the mean over sentences of each one's best of thirty rounds, as a
 * round of the whole is long enough for the machine's other work to fall into every one. */
export function benchUnderstanding(): UnderstandingFigures {
  const corpus = readCorpus();
  const best = corpus.map(() => Infinity);
  for (let round = 0; round < ROUNDS; round += 1) {
    corpus.forEach(
      (line, at) => (best[at] = Math.min(best[at] ?? Infinity, microsecondsFor(line))),
    );
  }
  const total = best.reduce((sum, each) => sum + each, 0);
  return { microsecondsPerSentence: total / corpus.length, sentences: corpus.length };
}

function microsecondsFor({ said, context }: CorpusLine): number {
  const start = performance.now();
  understand(said, context);
  return (performance.now() - start) * 1000;
}
