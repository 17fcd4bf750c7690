import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder of the test's own, and how to be rid of it. */
export async function createScratchFolder(): Promise<{
  readonly path: string;
  discard(): Promise<void>;
}> {
  const path = await mkdtemp(join(tmpdir(), 'gloveside-'));
  return { path, discard: () => rm(path, { recursive: true, force: true }) };
}
