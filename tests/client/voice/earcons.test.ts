import { describe, expect, it } from 'vitest';
import { durationMs, EARCONS } from '../../../client/voice/web-audio-earcons.ts';

const rise = (tones: (typeof EARCONS)['kept']): number =>
  (tones.at(-1)?.toHz ?? 0) - (tones[0]?.fromHz ?? 0);

describe('the earcons', () => {
  it.each(Object.entries(EARCONS))('%s is over within 200 ms', (_name, tones) => {
    expect(durationMs(tones)).toBeLessThan(200);
  });

  it('differ by contour: rising, level, a falling pair', () => {
    expect(rise(EARCONS.listening)).toBeGreaterThan(0);
    expect(rise(EARCONS.kept)).toBe(0);
    expect(rise(EARCONS.again)).toBeLessThan(0);
    expect(EARCONS.again).toHaveLength(2);
  });
});
