import { describe, expect, it } from 'vitest';
import { handClock } from '../scripted.ts';
import { createEarcons, durationMs, EARCONS } from '../../../client/voice/web-audio-earcons.ts';

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

it.each(['suspended', 'interrupted'] as const)(
  'are wished back at each tone and press while their sound is %s, and hold nobody up',
  async (state) => {
    let resumes = 0;
    const refuse = (): never => {
      throw new Error('nothing can play');
    };
    const context = {
      state,
      resume: () => {
        resumes += 1;
        return Promise.reject(new Error('not now'));
      },
      currentTime: 0,
      createOscillator: refuse,
      createGain: refuse,
      get destination(): AudioDestinationNode {
        return refuse();
      },
    };
    const earcons = createEarcons({ createContext: () => context, clock: handClock() });
    earcons.unlock();
    await earcons.play('kept');
    await earcons.play('listening');
    expect(resumes).toBe(3);
  },
);
