import type { ExitStatus, Terminal } from './terminal.ts';

/** One command: what it is for, how it is called, and what it does with the words after its name. */
export interface Command {
  readonly usage: string;
  run(args: readonly string[], terminal: Terminal): Promise<ExitStatus>;
}
