/**
 * Scores a phrasing model on random verdicts and notes: `npm run phrasing:score -- [COUNT] [FOLDER]`, 50,000 of our
 * own model's unless told otherwise. Prints what passed at the first try and within the tries, on combinations that
 * were learnt and on those held out, and how much of it is neither in the corpus nor put together from it. Ends with
 * an error where a sentence has a number that is not its own. Writes the scores beside the model.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { OWN_MODEL } from '../../../server/phraser/transformers-phraser.ts';
import { scoreModel } from './score-model.ts';

const [count = '50000', folder = OWN_MODEL] = process.argv.slice(2);
const { scored, msEach, ...scores } = await scoreModel(folder, Number(count));
for (const { phrased, isHeldOut, told } of scored.filter(
  (_, at) => at % Math.ceil(scored.length / 60) === 0,
)) {
  console.log(
    isHeldOut ? '*' : ' ',
    told.record.kind,
    phrased?.tries ?? '-',
    phrased?.said.text ?? '',
  );
}
console.log(JSON.stringify(scores, null, 2));
console.log(`${msEach.toFixed(1)} ms each`);
writeFileSync(join(folder, 'scores.json'), `${JSON.stringify(scores, null, 2)}\n`);
if (scores.foreignNumbers.length > 0) process.exitCode = 1;
