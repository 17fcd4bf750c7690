// `npm run readme`: README and DEVELOPERS show what the program says, not what it once said.
import { readFile, writeFile } from 'node:fs/promises';
import { DEVELOPERS, explainedDemo, withExplanation } from './demo-explanation.ts';
import { README, replayDemo, withVisit } from './demo-visit.ts';

await writeFile(README, withVisit(await readFile(README, 'utf8'), await replayDemo()));

const developers = await readFile(DEVELOPERS, 'utf8');
await writeFile(DEVELOPERS, withExplanation(developers, await explainedDemo(developers)));
