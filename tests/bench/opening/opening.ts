import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { z } from 'zod';

export interface OpeningFigures {
  readonly rehearsalMs: number;
  /** From the words to the reply: the first sentence ever, the middle one of the next ten, and of the thirty behind them. */
  readonly firstMs: number;
  readonly nextTenMs: number;
  readonly laterMs: number;
}

const REPORT = z.object({ rehearsalMs: z.number(), eachMs: z.array(z.number()) });
const SCRIPT = fileURLToPath(new URL('said-at-first.ts', import.meta.url));

/** How soon a page just opened answers, each in a process that never read a sentence before. */
export async function benchOpening(how: 'rehearsed' | 'unprepared'): Promise<OpeningFigures> {
  const run = promisify(execFile);
  const { stdout } = await run(process.execPath, ['--import', 'tsx', SCRIPT, how]);
  const { rehearsalMs, eachMs } = REPORT.parse(JSON.parse(stdout));
  const [firstMs = Number.NaN, ...others] = eachMs;
  return {
    rehearsalMs,
    firstMs,
    nextTenMs: median(others.slice(0, 10)),
    laterMs: median(others.slice(10)),
  };
}

function median(values: readonly number[]): number {
  return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
