import { gloveside } from '../support/fake-terminal.ts';

export const DEVELOPERS = new URL('../../DEVELOPERS.md', import.meta.url);

/** DEVELOPERS' printed explanation: the sentence that is echoed, and what follows the command up to the fence. */
const PRINTED =
  /(?<=\$ echo "(?<said>[^"]+)" \| npm run --silent gloveside -- understand --explain\n)[\s\S]*?(?=\n```)/;

export const printedExplanation = (text: string): string | undefined => PRINTED.exec(text)?.[0];

/** What `understand --explain` prints today of the sentence that the text echoes. */
export async function explainedDemo(text: string): Promise<string> {
  const said = PRINTED.exec(text)?.groups?.['said'] ?? '';
  const { printed } = await gloveside(['understand', '--explain'], { input: [`${said}\n`] });
  return printed.join('\n').trim();
}

export const withExplanation = (text: string, explanation: string): string =>
  text.replace(PRINTED, () => explanation);
