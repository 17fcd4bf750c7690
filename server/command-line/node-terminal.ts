import { once } from 'node:events';
import process from 'node:process';
import type { Terminal } from './terminal.ts';

/** The process's own streams and signals. */
export function createNodeTerminal(): Terminal {
  endQuietlyWhenTheReaderLeaves();
  return {
    input: decoded(process.stdin),
    print: (line) => write(`${line}\n`),
    complain: (line) => process.stderr.write(`${line}\n`),
    stopAsked: () =>
      new Promise((resolve) => {
        process.once('SIGINT', () => resolve());
        process.once('SIGTERM', () => resolve());
      }),
  };
}

async function* decoded(stream: NodeJS.ReadableStream): AsyncIterable<string> {
  const decoder = new TextDecoder();
  for await (const chunk of stream) {
    yield typeof chunk === 'string' ? chunk : decoder.decode(chunk, { stream: true });
  }
  yield decoder.decode();
}

async function write(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, 'drain');
}

/** `… | head -1` closes the pipe early: that is the reader's right, and no fault to print a stack for. */
function endQuietlyWhenTheReaderLeaves(): void {
  process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code === 'EPIPE') process.exit(0);
    throw fault;
  });
}
