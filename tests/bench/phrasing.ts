import fc from 'fast-check';
import type { Verdict } from '../../core/advice/verdict.ts';
import { recordOf } from '../../prompts/record/record-of.ts';
import { loadPhraser, OWN_MODEL } from '../../server/phraser/transformers-phraser.ts';
import { openBrowser } from '../browser/chromium.ts';
import { startPageServer } from '../browser/page-server.ts';
import { verdict } from '../replies/random-verdicts.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';

export interface PhrasingFigures {
  readonly loadMs: number;
  readonly medianMs: number;
  readonly slowMs: number;
}

const VERDICTS: readonly Verdict[] = fc
  .sample(verdict, { numRuns: 700, seed: 4099 })
  .filter((one) => recordOf(one) !== null)
  .slice(0, 200);
/** The first ones pay for what is compiled on the way. */
const WARM_UP = 10;

/** An answer from verdict to guarded sentence, in this process. */
export async function benchPhrasingInNode(): Promise<PhrasingFigures> {
  const began = performance.now();
  const loaded = await loadPhraser(OWN_MODEL);
  const loadMs = performance.now() - began;
  if (loaded.kind === 'failed') throw new Error(loaded.message);
  const times: number[] = [];
  for (const one of VERDICTS) {
    const asked = performance.now();
    await loaded.phraser.phrase(one, 'short');
    times.push(performance.now() - asked);
  }
  return { loadMs, ...spread(times) };
}

/** The same in the worker of the built page, there and back, in Chromium. */
export async function benchPhrasingInChromium(): Promise<PhrasingFigures> {
  const folder = await createScratchFolder();
  const server = await startPageServer({ data: `${folder.path}/data` });
  const browser = await openBrowser({ profile: `${folder.path}/profile` });
  try {
    const script = server.files.find((file) => /\/phraser\.worker-.*\.js$/.test(file));
    if (script === undefined) throw new Error('the built page has no phraser: npm run build');
    await browser.page.goto(`${server.address}/icon.svg`);
    // tsx names functions by a helper of its own, which the page does not have.
    await browser.page.evaluate('globalThis.__name = (named) => named');
    const { loadMs, times } = await browser.page.evaluate(inWorker, { script, verdicts: VERDICTS });
    return { loadMs, ...spread(times) };
  } finally {
    await browser.close();
    await server.stop();
    await folder.discard();
  }
}

async function inWorker(given: { script: string; verdicts: readonly unknown[] }) {
  const worker = new Worker(given.script, { type: 'module' });
  const ask = (message: unknown) =>
    new Promise<unknown>((resolve, reject) => {
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = () => reject(new Error('the worker broke'));
      worker.postMessage(message);
    });
  const began = performance.now();
  await ask({ kind: 'load', modelUrl: '/phrasing' });
  const loadMs = performance.now() - began;
  const times: number[] = [];
  for (const [request, verdict] of given.verdicts.entries()) {
    const asked = performance.now();
    await ask({ kind: 'phrase', request, verdict, manner: 'short' });
    times.push(performance.now() - asked);
  }
  worker.terminate();
  return { loadMs, times };
}

function spread(times: readonly number[]): Omit<PhrasingFigures, 'loadMs'> {
  const sorted = times.slice(WARM_UP).toSorted((a, b) => a - b);
  const at = (part: number): number => sorted[Math.floor(sorted.length * part)] ?? 0;
  return { medianMs: at(0.5), slowMs: at(0.95) };
}
