import { describe, expect, it } from 'vitest';

import { createResampler } from '../../core/hearing/resample.ts';
import { rms } from './signals.ts';

const sine = (frequencyHz: number, rateHz: number, seconds = 0.5): Float32Array =>
  Float32Array.from({ length: rateHz * seconds }, (_, index) =>
    Math.sin((2 * Math.PI * frequencyHz * index) / rateHz),
  );

describe('createResampler', () => {
  it.each([8_000, 11_025, 22_050, 44_100, 48_000])('keeps a 440 Hz tone from %i Hz', (rateHz) => {
    const output = createResampler(rateHz)(sine(440, rateHz));
    expect(Math.abs(output.length - 8_000)).toBeLessThan(4);
    const crossings = output.filter(
      (sample, index) => index > 0 && sample >= 0 !== (output[index - 1] ?? 0) >= 0,
    ).length;
    expect(crossings).toBeGreaterThanOrEqual(438);
    expect(crossings).toBeLessThanOrEqual(441);
    expect(rms(output)).toBeCloseTo(Math.SQRT1_2, 1);
  });

  it('gives the same stream whatever the portions', () => {
    const input = sine(700, 44_100);
    const whole = createResampler(44_100)(input);
    const resample = createResampler(44_100);
    const parts: number[] = [];
    for (let at = 0; at < input.length; at += 128)
      parts.push(...resample(input.slice(at, at + 128)));
    expect(parts.length).toBe(whole.length);
    parts.forEach((sample, index) => expect(sample).toBeCloseTo(whole[index] ?? NaN, 5));
  });

  it('halves at least what would fold into speech', () => {
    const folded = createResampler(48_000)(sine(14_000, 48_000));
    expect(rms(folded)).toBeLessThan(0.5 * Math.SQRT1_2);
  });
});
