import { gloveside } from '../support/fake-terminal.ts';

export const README = new URL('../../README.md', import.meta.url);
const DEMO = 'tests/corpus/visits/reach-in-plugged-condenser.txt';

/** The README's printed visit: from the fence after its command to the next fence. */
const PRINTED_VISIT = /(?<=prints the dialogue and the note:\n\n```\n)[\s\S]*?(?=\n```)/;

export const printedVisit = (readme: string): string | undefined => PRINTED_VISIT.exec(readme)?.[0];

export const withVisit = (readme: string, visit: string): string =>
  readme.replace(PRINTED_VISIT, () => visit);

/** The demo visit as `replay` prints it by the built-in sentences: a model trained anew says it otherwise. */
export async function replayDemo(): Promise<string> {
  const { printed } = await gloveside(['replay', '--phrasing', 'off', DEMO]);
  return printed.join('\n').trim();
}
