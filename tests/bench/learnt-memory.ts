import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';

export interface LearntMemory {
  readonly sentences: number;
  /** What the process holds more once it has understood them. */
  readonly megabytes: number;
}

/** As many sentences as a day's calls have, and all of the corpus: what is learnt of them is kept. Asked before they are understood. */
export function benchLearntMemory(): readonly LearntMemory[] {
  const corpus = readCorpus();
  const apart = Math.floor(corpus.length / A_DAY);
  const day = corpus.filter((_, index) => index % apart === 0);
  const before = heldBytes();
  return [day, corpus].map((sentences) => {
    for (const { said, context } of sentences) understand(said, context);
    return { sentences: sentences.length, megabytes: (heldBytes() - before) / 1e6 };
  });
}

const A_DAY = 300;

function heldBytes(): number {
  setFlagsFromString('--expose-gc');
  runInNewContext('gc()');
  return process.memoryUsage().heapUsed;
}
