// Run in a process of its own, as a page just opened: times its first sentences, with `rehearsed` behind the rehearsal.
import { rehearsalSteps } from '../../../core/turn/rehearse.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { EMPTY_MEMORY } from '../../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import { readCorpus } from '../../corpus/corpus.ts';
import { createStamp } from '../../support/stamp.ts';

const SENTENCES = 40;

function timeOf(work: () => void): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

const rehearsalMs = timeOf(() => {
  if (process.argv.includes('rehearsed')) for (const step of rehearsalSteps()) step();
});
const stamp = createStamp();
let sofar = { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
const corpus = readCorpus();
const apart = Math.floor(corpus.length / SENTENCES);
const eachMs = corpus
  .filter((_, index) => index % apart === 0)
  .slice(0, SENTENCES)
  .map(({ said: words }) => timeOf(() => void (sofar = takeTurn({ ...sofar, words, stamp }))));
console.log(JSON.stringify({ rehearsalMs, eachMs }));
