import { runGloveside } from '../../server/command-line/run-gloveside.ts';
import type { ExitStatus, Terminal } from '../../server/command-line/terminal.ts';

export interface Ran {
  readonly status: ExitStatus;
  readonly printed: readonly string[];
  readonly complaints: readonly string[];
}

/** Runs the command line in this process, with `input` as what arrives on standard input, chunk by chunk. */
export async function gloveside(
  args: readonly string[],
  { input = [] }: { readonly input?: readonly string[] } = {},
): Promise<Ran> {
  const printed: string[] = [];
  const complaints: string[] = [];
  const terminal: Terminal = {
    input: arriving(input),
    print: (line) => Promise.resolve(void printed.push(line)),
    complain: (line) => void complaints.push(line),
    stopAsked: () => Promise.resolve(),
  };
  return { status: await runGloveside(args, terminal), printed, complaints };
}

async function* arriving(chunks: readonly string[]): AsyncIterable<string> {
  for (const chunk of chunks) yield await Promise.resolve(chunk);
}
