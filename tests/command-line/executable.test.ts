import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createScratchFolder } from '../support/scratch-folder.ts';

const EXECUTABLE = fileURLToPath(
  new URL('../../server/command-line/gloveside.mjs', import.meta.url),
);

/** The real executable, as a person starts it. */
function start(args: readonly string[]) {
  const child = spawn(process.execPath, [EXECUTABLE, ...args], { stdio: 'pipe' });
  const ended = once(child, 'close').then(([status]: unknown[]) => status);
  return { child, ended, complaints: text(child.stderr) };
}

/** The first match in what is printed, as it is printed; the stream stays open. */
async function printed(stream: Readable, pattern: RegExp): Promise<string> {
  let seen = '';
  for await (const chunk of stream.iterator({ destroyOnReturn: false })) {
    seen += String(chunk);
    const [found] = pattern.exec(seen) ?? [];
    if (found !== undefined) return found;
  }
  throw new Error(`never printed: ${seen}`);
}

// Each starts a Node process that compiles what it loads; on a busy machine that takes seconds.
const PATIENCE = { timeout: 60_000 };

describe('the executable', PATIENCE, () => {
  it('ends with status 2 and one line on standard error when called wrongly', async () => {
    const { child, ended, complaints } = start(['sevre']);
    child.stdin.end();
    expect(await text(child.stdout)).toBe('');
    expect(await ended).toBe(2);
    expect((await complaints).trimEnd()).toMatch(/^gloveside: there is no command "sevre".*$/);
  });

  it('answers each sentence as it arrives, while standard input stays open', async () => {
    const { child, ended } = start(['understand']);
    child.stdin.write('head one forty six\n');
    const first = await printed(child.stdout, /^\{.*\}\n/);
    expect(JSON.parse(first)).toMatchObject({ text: 'head one forty six' });
    child.stdin.end();
    expect(await ended).toBe(0);
  });

  it('ends quietly when the reader of its output leaves', async () => {
    const { child, ended, complaints } = start(['understand']);
    child.stdin.on('error', () => undefined);
    const gone = once(child.stdout, 'close');
    child.stdout.destroy();
    await gone;
    child.stdin.end('head one forty six\n'.repeat(5000));
    expect(await ended).toBe(0);
    expect(await complaints).toBe('');
  });

  it('serves until it is asked to stop, then ends with status 0', async () => {
    const folder = await createScratchFolder();
    const page = join(folder.path, 'page');
    await mkdir(page);
    await writeFile(join(page, 'index.html'), '<!doctype html>');
    const data = join(folder.path, 'data');
    const served = start(['serve', '--port', '0', '--page', page, '--data', data]);
    const address = (await printed(served.child.stdout, /http:\/\/localhost:\d+\//)).trim();
    const health = await fetch(new URL('api/health', address));
    expect(await health.json()).toEqual({ status: 'up' });
    served.child.kill('SIGTERM');
    expect(await served.ended).toBe(0);
    expect(await served.complaints).toBe('');
    await folder.discard();
  });
});
