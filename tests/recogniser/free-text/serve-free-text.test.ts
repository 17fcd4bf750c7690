import { describe, expect, it } from 'vitest';

import { serveFreeText } from '../../../client/recogniser/free-text/serve-free-text.ts';
import type { FromEngine } from '../../../client/recogniser/worker/protocol.ts';

const FILES = { model: 'shop/ear', runtimeUrl: '/runtime' };
const loud = (seconds: number): Float32Array => new Float32Array(16_000 * seconds).fill(0.1);

function setUp(transcribe: (samples: Float32Array) => Promise<string>) {
  const sent: FromEngine[] = [];
  const tell = serveFreeText({
    send: (message) => sent.push(message),
    load: (files, onProgress) => {
      onProgress({ loadedBytes: 1, totalBytes: 2 });
      return files.model === 'shop/gone'
        ? Promise.reject(new Error('it did not come'))
        : Promise.resolve(transcribe);
    },
  });
  return { sent, tell };
}

const lengths = (samples: Float32Array) => Promise.resolve(`heard ${samples.length}`);
const finish = (utterance: number) =>
  ({ kind: 'finish', utterance, awaitsOpinion: false }) as const;

describe('the worker of a model that writes whatever is said', () => {
  it('loads with progress, or says why not', async () => {
    const on = setUp(lengths);
    await on.tell({ kind: 'load', files: FILES });
    await on.tell({ kind: 'load', files: { ...FILES, model: 'shop/gone' } });
    const progress = { kind: 'progress', loadedBytes: 1, totalBytes: 2 };
    expect(on.sent).toEqual([
      progress,
      { kind: 'loaded', pace: null },
      progress,
      { kind: 'loadFailed', message: 'it did not come' },
    ]);
  });

  it('takes any grammar, and the sound of one utterance as a whole', async () => {
    const on = setUp(lengths);
    await on.tell({ kind: 'load', files: FILES });
    on.sent.length = 0;
    await on.tell({ kind: 'setGrammar', request: 7, jsgf: 'anything' });
    await on.tell({ kind: 'accept', utterance: 1, samples: loud(1) });
    await on.tell({ kind: 'accept', utterance: 1, samples: loud(2) });
    await on.tell(finish(1));
    await on.tell(finish(2));
    expect(on.sent).toMatchObject([
      { kind: 'grammarSet', request: 7 },
      { kind: 'heard', utterance: 1, hearing: { alternatives: [{ words: 'heard 48000' }] } },
      { kind: 'heard', utterance: 2, hearing: { rejected: 'nothing' } },
    ]);
  });

  it('forgets an utterance that is reset, or that another takes the place of', async () => {
    const on = setUp(lengths);
    await on.tell({ kind: 'load', files: FILES });
    on.sent.length = 0;
    await on.tell({ kind: 'accept', utterance: 1, samples: loud(1) });
    await on.tell({ kind: 'reset', utterance: 2 });
    await on.tell(finish(1));
    await on.tell({ kind: 'accept', utterance: 2, samples: loud(1) });
    await on.tell({ kind: 'accept', utterance: 3, samples: loud(2) });
    await on.tell(finish(3));
    expect(on.sent).toMatchObject([
      { utterance: 1, hearing: { rejected: 'nothing' } },
      { utterance: 3, hearing: { alternatives: [{ words: 'heard 32000' }] } },
    ]);
  });

  it('says that a model broke, so that a new one is had', async () => {
    const on = setUp(() => Promise.reject(new Error('out of memory')));
    await on.tell({ kind: 'load', files: FILES });
    await on.tell({ kind: 'accept', utterance: 1, samples: loud(1) });
    await on.tell(finish(1));
    expect(on.sent.at(-1)).toEqual({
      kind: 'decodeFailed',
      utterance: 1,
      message: 'out of memory',
    });
  });
});
