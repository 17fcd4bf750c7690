import { gzipSync } from 'node:zlib';
import * as node from 'onnxruntime-node';
import * as web from 'onnxruntime-web';
import { beforeAll, describe, expect, it } from 'vitest';

import { PHONES } from '../../../core/hearing/garbage.ts';
import { type AcousticModel, createListener } from '../../../core/hearing/listener.ts';
import { openModel, readDescription, readModel, readReference } from './runtimes.ts';

/** Rounding the weights to 8 bits moved the reference's probabilities by 0.009 at most. */
const ROUNDING = 0.03;
const COLUMNS = PHONES.length + 1;

let reference: Awaited<ReturnType<typeof readReference>>;
const models = new Map<string, AcousticModel>();

beforeAll(async () => {
  web.env.wasm.numThreads = 1;
  reference = await readReference();
  models.set('WebAssembly', await openModel(web, 'wasm'));
  models.set('Node', await openModel(node, 'cpu'));
}, 60_000);

const modelIn = (name: string): AcousticModel => {
  const model = models.get(name);
  if (model === undefined) throw new Error(`no runtime is called ${name}`);
  return model;
};

/** The rows of one utterance given in portions of so many samples. */
async function hear(name: string, sound: Float32Array, portion: number): Promise<Float32Array> {
  const listener = createListener(modelIn(name));
  const rows: Float32Array[] = [];
  for (let at = 0; at < sound.length; at += portion) {
    rows.push(...(await listener.accept(sound.subarray(at, at + portion))));
  }
  rows.push(...(await listener.flush()));
  return Float32Array.from(rows.flatMap((row) => [...row]));
}

/** The largest difference of a probability. */
function apart(left: Float32Array, right: Float32Array): number {
  expect(left.length).toBe(right.length);
  return left.reduce(
    (most, value, at) => Math.max(most, Math.abs(Math.exp(value) - Math.exp(right[at] ?? 0))),
    0,
  );
}

/** The likeliest column of each row, said once while it lasts, blanks left out. */
function phonesOf(rows: Float32Array): readonly string[] {
  const best = Array.from({ length: rows.length / COLUMNS }, (_, row) => {
    const values = rows.subarray(row * COLUMNS, (row + 1) * COLUMNS);
    return values.indexOf(Math.max(...values));
  });
  return best
    .filter((column, row) => column !== 0 && column !== best[row - 1])
    .map((column) => PHONES[column - 1] ?? '?');
}

describe('the acoustic model', { timeout: 30_000 }, () => {
  it('names the phones that the pronunciations are made of', async () => {
    expect((await readDescription()).phones.slice(1)).toEqual(PHONES);
  });

  it('is small enough to bring to a phone', async () => {
    const model = await readModel();
    expect(model.length).toBeLessThan(6e6);
    expect(gzipSync(model).length).toBeLessThan(4e6);
  });

  describe.each(['WebAssembly', 'Node'])('in %s', (name) => {
    it('gives what the trained network gave', async () => {
      const rows = await hear(name, reference.sound, reference.sound.length);
      expect(apart(rows, reference.rows)).toBeLessThan(ROUNDING);
      expect(phonesOf(rows)).toEqual(phonesOf(reference.rows));
    });

    it.each([160, 640, 1000, 5120])('gives the same in portions of %i samples', async (portion) => {
      const whole = await hear(name, reference.sound, reference.sound.length);
      expect(apart(await hear(name, reference.sound, portion), whole)).toBeLessThan(1e-3);
    });

    it('hears the phones of a voice it was not trained on', async () => {
      const rows = await hear(name, reference.sound, 5120);
      expect(phonesOf(rows)).toEqual(reference.phones);
    });

    it('hears the same at a tenth of the loudness', async () => {
      const faint = await hear(
        name,
        reference.sound.map((sample) => sample / 10),
        5120,
      );
      expect(apart(faint, reference.rows)).toBeLessThan(ROUNDING);
    });
  });
});
