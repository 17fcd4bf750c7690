import type { ExitStatus, Terminal } from './terminal.ts';

/** One line on standard error and the status of a wrong call. */
export function wrongCall(terminal: Terminal, command: string, why: string): ExitStatus {
  terminal.complain(
    `gloveside ${command}: ${why} (gloveside ${command} --help says how it is called)`,
  );
  return 2;
}
