// `npm run readme`: the README shows what the program says, not what it once said.
import { readFile, writeFile } from 'node:fs/promises';
import { README, replayDemo, withVisit } from './demo-visit.ts';

await writeFile(README, withVisit(await readFile(README, 'utf8'), await replayDemo()));
