// `npm run readme`: README and DEVELOPERS show what the program says, not what it once said.
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { DEVELOPERS, explainedDemo, withExplanation } from './demo-explanation.ts';
import { README, replayDemo, withVisit } from './demo-visit.ts';
import { roomArrows, withRooms } from './rooms-table.ts';

await writeFile(README, withVisit(await readFile(README, 'utf8'), await replayDemo()));

const developers = await readFile(DEVELOPERS, 'utf8');
const shown = withRooms(
  withExplanation(developers, await explainedDemo(developers)),
  await roomArrows(),
);
const style = await resolveConfig(fileURLToPath(DEVELOPERS));
await writeFile(DEVELOPERS, await format(shown, { ...style, parser: 'markdown' }));
