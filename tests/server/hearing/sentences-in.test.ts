import { describe, expect, it } from 'vitest';

import { sentencesIn } from '../../../server/hearing/sentences-in.ts';
import { createNoise, RATE_HZ } from '../../hearing/signals.ts';
import { collect } from '../../support/collect.ts';

/** A soft room in which something as loud as a voice sounds from one second to another. */
function bursts(seconds: number, loud: readonly (readonly [from: number, to: number])[]) {
  const noise = createNoise(11);
  return Float32Array.from({ length: seconds * RATE_HZ }, (_, index) => {
    const isLoud = loud.some(([from, to]) => index >= from * RATE_HZ && index < to * RATE_HZ);
    return noise() * (isLoud ? 0.2 : 0.001);
  });
}

const byLoudness = { detector: null, decoder: null };

describe('sentences of a recording', () => {
  it('are given with the second before them, but with nothing of the sentence before', async () => {
    const sound = bursts(9, [
      [2, 3],
      [4.05, 5],
    ]);
    const found = await collect(sentencesIn(sound, byLoudness));
    expect(found).toHaveLength(2);
    const [first, second] = found;
    if (first === undefined || second === undefined) throw new Error('not found');
    expect(first.fromMs).toBe(first.noticedMs - 1000);
    expect(first.toMs).toBeGreaterThan(3000);
    expect(second.noticedMs - 1000).toBeLessThan(first.toMs);
    expect(second.fromMs).toBe(first.toMs);
    expect(second.toMs).toBeGreaterThan(5000);
  });

  it('end with the recording where somebody still speaks', async () => {
    const [only, ...more] = await collect(sentencesIn(bursts(4, [[3, 4]]), byLoudness));
    expect(more).toEqual([]);
    expect(only?.toMs).toBe(4000);
  });

  it('are told as they end, before the rest is looked at', async () => {
    const sound = bursts(9, [
      [2, 3],
      [6, 7],
    ]);
    let heardS = 0;
    const decoder = {
      attune: () => Promise.resolve(),
      start: () => undefined,
      accept: ({ length }: Float32Array) => Promise.resolve(void (heardS += length / RATE_HZ)),
      words: () => 'head',
      standing: () => 'closed' as const,
    };
    const sentences = sentencesIn(sound, { detector: null, decoder });
    const first = await sentences.next();
    expect(first.value?.toMs).toBeLessThan(4000);
    expect(heardS).toBeLessThan(3);
    await collect(sentences);
    expect(heardS).toBeGreaterThan(4);
  });
});
