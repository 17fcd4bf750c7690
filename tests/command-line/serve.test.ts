import { mkdir, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { gloveside } from '../support/fake-terminal.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';

describe('serve', () => {
  let folder: Awaited<ReturnType<typeof createScratchFolder>>;
  let options: readonly string[];

  beforeEach(async () => {
    folder = await createScratchFolder();
    const page = join(folder.path, 'page');
    await mkdir(page);
    await writeFile(join(page, 'index.html'), '<!doctype html>');
    options = ['--port', '0', '--page', page, '--data', join(folder.path, 'data')];
  });
  afterEach(() => folder.discard());

  const serve = async (...more: string[]) => {
    const { status, printed, complaints } = await gloveside(['serve', ...options, ...more]);
    return { status, text: printed.join('\n'), complaints };
  };

  it('prints where to open the page and where the visits are', async () => {
    const { status, text, complaints } = await serve();
    expect(status).toBe(0);
    expect(text).toMatch(/^Open the page:\n {2}http:\/\/localhost:\d+\/\n/);
    expect(text).toContain(join(folder.path, 'data'));
    expect(text).not.toContain('--https');
    expect(complaints).toEqual([]);
  });

  it('says on a plain address of the network that a phone cannot listen there', async () => {
    const { text } = await serve('--host', '0.0.0.0');
    expect(text).toMatch(/microphone.*secure pages/);
    expect(text).toContain('--https');
  });

  it('says with its own certificate how a phone comes to trust it', async () => {
    const { status, text } = await serve('--https');
    expect(status).toBe(0);
    expect(text).toMatch(/https:\/\/[^ ]+:\d+\/certificate\.crt/);
    expect(text).toMatch(/iPhone.*\n?.*Certificate Trust Settings/);
    expect(text).toContain('Android');
  });

  it('ends with status 1 and one line when the port is in use', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const bound = other.address();
    const port = typeof bound === 'object' && bound !== null ? String(bound.port) : '';
    const { status, text, complaints } = await serve('--port', port);
    expect([status, text]).toEqual([1, '']);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(new RegExp(`port ${port}.*--port`));
    await new Promise((resolve) => other.close(resolve));
  });

  it('ends with status 1 when the page is not built', async () => {
    const { status, complaints } = await serve('--page', join(folder.path, 'nowhere'));
    expect(status).toBe(1);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain('npm run build');
  });
});
