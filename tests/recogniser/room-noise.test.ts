import { describe, expect, it } from 'vitest';
import { besideFan, fan } from '../hearing/signals.ts';
import { createBench, heard, loud, quiet, zeros } from './harness.ts';

describe('a session that hears', () => {
  it('tells of the room from the second second on, once a second, while nobody speaks', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(fan(5.5, 3).map((sample) => 0.05 * sample));
    expect(bench.noises.map(({ sentence, snrDb }) => [sentence, snrDb])).toEqual(
      [2, 3, 4, 5].map(() => [false, null]),
    );
  });

  it('tells how far a sentence stood above it as it ends, before its words come', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    const order: string[] = [];
    bench.recognition.addEventListener('result', () => order.push(`${bench.noises.length} told`));
    bench.recognition.start();
    await bench.settle();
    await bench.sound(besideFan(loud(1500), 12, 4));
    expect(order).toEqual(['1 told']);
    expect(bench.noises.map(({ sentence }) => sentence)).toEqual([true]);
    expect(Math.abs((bench.noises[0]?.snrDb ?? NaN) - 12)).toBeLessThan(2);
  });

  it('measures a word as short as “no”, and no room from within a word', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(500), loud(200), quiet(1500));
    expect(bench.noises).toEqual([expect.objectContaining({ sentence: true })]);
    expect(bench.noises[0]?.snrDb).toBeGreaterThan(50);
  });

  it('takes the zeros of a muted or gating headset for no room', async () => {
    const bench = createBench({ hearings: [heard('yes')] });
    bench.recognition.start();
    await bench.settle();
    await bench.sound(zeros(4500));
    expect(bench.noises).toEqual([]);
    await bench.sound(besideFan(loud(1500), 12, 4));
    expect(Math.abs((bench.noises.at(-1)?.snrDb ?? NaN) - 12)).toBeLessThan(2);
  });

  it('forgets the room of the session before', async () => {
    const bench = createBench({ hearings: [heard('yes'), heard('yes')] });
    const hear = async (gain: number): Promise<void> => {
      bench.recognition.start();
      await bench.settle();
      await bench.sound(besideFan(loud(1500), 20, 4).map((sample) => gain * sample));
    };
    await hear(0.1);
    await hear(1);
    const [first, second] = bench.noises.filter(({ sentence }) => sentence);
    expect((second?.noiseDb ?? NaN) - (first?.noiseDb ?? NaN)).toBeCloseTo(20, 0);
    expect(second?.snrDb).toBeCloseTo(first?.snrDb ?? NaN, 0);
  });
});
