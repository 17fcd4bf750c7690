import { describe, expect, it } from 'vitest';

import { createFramer } from '../../core/hearing/framer.ts';
import { createNoiseMeter, type NoiseMeasure } from '../../core/hearing/noise-meter.ts';
import { besideFan, createNoise, fan, RATE_HZ, rms } from './signals.ts';

function measured(samples: Float32Array): NoiseMeasure {
  const meter = createNoiseMeter();
  for (const frame of createFramer()(samples)) meter.accept(frame);
  return meter.measure();
}

/** Loud and soft by turns, as syllables are. */
function babble(seconds: number): Float32Array {
  const noise = createNoise(7);
  return Float32Array.from(
    { length: seconds * RATE_HZ },
    (_, index) => noise() * Math.max(0, Math.sin((2 * Math.PI * 3 * index) / RATE_HZ)),
  );
}

const inDb = (amplitude: number): number => 20 * Math.log10(amplitude);

describe('createNoiseMeter', () => {
  it.each([20, 15, 10, 5])('measures a voice %i dB above a fan within 4 dB', (snrDb) => {
    const { snrDb: found } = measured(besideFan(babble(2), snrDb, 5));
    expect(Math.abs((found ?? NaN) - snrDb)).toBeLessThan(4);
  });

  it('puts a closer voice above a farther one', () => {
    const found = [0, 5, 10, 20].map(
      (snrDb) => measured(besideFan(babble(2), snrDb, 5)).snrDb ?? 0,
    );
    expect(found.toSorted((one, other) => one - other)).toEqual(found);
    expect(new Set(found).size).toBe(4);
  });

  it('measures the room within 1.5 dB, and no voice where there is none', () => {
    const room = fan(5, 3).map((sample) => sample * 0.05);
    const { noiseDb, snrDb } = measured(room);
    expect(snrDb).toBeNull();
    expect(Math.abs(noiseDb - inDb(rms(room)))).toBeLessThan(1.5);
    expect(measured(new Float32Array(RATE_HZ)).snrDb).toBeNull();
  });

  it('takes a knock for no voice', () => {
    const room = fan(5, 3).map((sample, index) =>
      index > RATE_HZ && index < RATE_HZ * 1.05 ? 1 : sample * 0.01,
    );
    expect(measured(room).snrDb).toBeNull();
  });

  it('forgets a room that was left', () => {
    const left = fan(6, 3);
    const entered = fan(6, 4).map((sample) => sample * 0.01);
    const both = new Float32Array(left.length + entered.length);
    both.set(left);
    both.set(entered, left.length);
    expect(measured(both).noiseDb).toBeCloseTo(measured(entered).noiseDb, 1);
  });
});
