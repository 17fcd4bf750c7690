// `npx tsx tests/journeys/redraft.ts FILE.visit …`: writes into each file what is heard now. Read the
// difference before it is committed: see README.md beside this.
import { readFile, writeFile } from 'node:fs/promises';
import { speakJourney } from './speak-journey.ts';
import { parseJourney } from './visit-file.ts';

for (const file of process.argv.slice(2)) {
  const text = await readFile(file, 'utf8');
  const { heard, note } = speakJourney(parseJourney(text).exchanges);
  await writeFile(file, redrafted(text, heard, note));
}

function redrafted(text: string, heard: readonly string[], note: string): string {
  const answers = [...heard];
  const lines = text.split('\n');
  const noteAt = lines.indexOf('note:');
  const dialogue = lines
    .slice(0, noteAt < 0 ? lines.length : noteAt)
    .filter((line) => !line.startsWith('gloveside: '))
    .flatMap((line) =>
      line.startsWith('technician: ') ? [line, `gloveside: ${answers.shift() ?? ''}`] : [line],
    );
  return `${dialogue.join('\n').trimEnd()}\n\nnote:\n${note}`;
}
