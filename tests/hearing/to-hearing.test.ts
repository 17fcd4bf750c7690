import { describe, expect, it } from 'vitest';

import { confidence, fit } from '../../core/hearing/confidence.ts';
import type { DecodedWord } from '../../core/hearing/decoder-port.ts';
import { toHearing, toPartial } from '../../core/hearing/to-hearing.ts';

const word = (text: string, probability = 0.95, startSeconds = 0): DecodedWord => ({
  word: text,
  startSeconds,
  durationSeconds: 0.3,
  probability,
});

describe('toHearing', () => {
  it('strips silence, noise, markers and the numbers of variants', () => {
    const hearing = toHearing([
      word('(NULL)'),
      word('<sil>'),
      word('head', 0.95, 0.25),
      word('[NOISE]'),
      word('forty(2)'),
      word('</s>'),
    ]);
    expect(hearing.alternatives.map(({ words }) => words)).toEqual(['head forty']);
    expect(hearing.rejected).toBeUndefined();
    expect(hearing.alternatives[0]?.wordConfidences[0]).toMatchObject({
      word: 'head',
      startMs: 250,
      endMs: 550,
    });
  });

  it('rejects a phone of the garbage loop, silence, and a poor fit, each for its reason', () => {
    expect(toHearing([word('ph_aa'), word('ph_t')])).toEqual({
      alternatives: [],
      rejected: 'notForUs',
    });
    expect(toHearing([])).toEqual({ alternatives: [], rejected: 'notForUs' });
    expect(toHearing([word('<sil>')])).toEqual({ alternatives: [], rejected: 'nothing' });
    expect(toHearing([word('head', 0.8)])).toMatchObject({
      alternatives: [{ words: 'head' }],
      rejected: 'unsure',
    });
  });

  it('measures fit as the mean log probability of a 10 ms frame', () => {
    expect(fit([word('a', Math.exp(-60 / 1024))])).toBeCloseTo(-2, 9);
    // Half a chance on its own scale.
    expect(confidence([word('a', Math.exp(-195 / 1024))])).toBeCloseTo((0.5 * 0.75) / 0.7, 9);
    expect(confidence([])).toBe(0);
    expect(confidence([word('a', 0)])).toBeGreaterThanOrEqual(0);
  });

  it('is the surer the better the fit, and never more than certain', () => {
    const told = [400, 300, 200, 150, 100, 60, 30, 0].map((off) =>
      confidence([word('a', Math.exp(-off / 1024))]),
    );
    expect(told).toEqual(told.toSorted((one, other) => one - other));
    expect(told.at(-1)).toBeLessThanOrEqual(1);
  });
});

describe('toPartial', () => {
  it('shows the words so far and nothing that is not for us', () => {
    expect(toPartial('<sil> head one(2) <sil>')).toBe('head one');
    expect(toPartial('ph_aa ph_b')).toBe('');
    expect(toPartial('')).toBe('');
  });
});
