import type { Command } from './command.ts';
import type { ExitStatus, Terminal } from './terminal.ts';

interface CommandRow {
  readonly does: string;
  /** Loaded only when called: `calc` need not wait for the recogniser's megabytes. */
  load(): Promise<Command>;
}

const COMMANDS: Readonly<Record<string, CommandRow>> = {
  serve: {
    does: 'run the server with the page',
    load: async () => (await import('./serve.ts')).serveCommand,
  },
  understand: {
    does: 'sentences on standard input, what each meant as JSON',
    load: async () => (await import('./understand.ts')).understandCommand,
  },
  hear: {
    does: 'recordings, what was said in each and what it meant as JSON',
    load: async () => (await import('./hear.ts')).hearCommand,
  },
  enrol: {
    does: 'recordings of sentences to read, a voice that hear --voice hears by',
    load: async () => (await import('./enrol.ts')).enrolCommand,
  },
  replay: {
    does: 'a visit from a text file: the dialogue, then the note',
    load: async () => (await import('./replay.ts')).replayCommand,
  },
  calc: {
    does: 'one calculation by name, with its source',
    load: async () => (await import('./calc.ts')).calcCommand,
  },
};

/** The `gloveside` executable: the first word picks the command, the rest is the command's. */
export async function runGloveside(
  args: readonly string[],
  terminal: Terminal,
): Promise<ExitStatus> {
  const [name, ...rest] = args;
  if (name === '--help' || name === '-h' || name === 'help') return printed(terminal, overview());
  const row = name === undefined || !Object.hasOwn(COMMANDS, name) ? undefined : COMMANDS[name];
  if (row === undefined) {
    const what = name === undefined ? 'no command given' : `there is no command "${name}"`;
    terminal.complain(`gloveside: ${what}; choose ${choices()}, or --help`);
    return 2;
  }
  const command = await row.load();
  if (asksForHelp(rest)) return printed(terminal, command.usage);
  return command.run(rest, terminal);
}

function asksForHelp(args: readonly string[]): boolean {
  const own = args.includes('--') ? args.slice(0, args.indexOf('--')) : args;
  return own.includes('--help') || own.includes('-h');
}

async function printed(terminal: Terminal, text: string): Promise<ExitStatus> {
  await terminal.print(text);
  return 0;
}

const choices = (): string => Object.keys(COMMANDS).join(', ');

function overview(): string {
  const rows = Object.entries(COMMANDS).map(([name, row]) => `  ${name.padEnd(12)}${row.does}`);
  return [
    'gloveside COMMAND …   (in a clone: npm run --silent gloveside -- COMMAND …)',
    '',
    ...rows,
    '',
    'gloveside COMMAND --help says how each is called.',
  ].join('\n');
}
