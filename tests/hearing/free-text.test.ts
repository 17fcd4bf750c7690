import { describe, expect, it } from 'vitest';

import { hearFreeText } from '../../core/hearing/free-text.ts';

const sound = (seconds: number) => new Float32Array(16_000 * seconds).fill(0.1);
const hear = (text: string) => hearFreeText(sound(1), () => Promise.resolve(text));

describe('what a model without a grammar wrote', () => {
  it('is one wording, as it stands', async () => {
    expect(await hear(' Head one forty-six,  suction at 12. ')).toEqual({
      alternatives: [
        { words: 'Head one forty-six, suction at 12.', confidence: 0, wordConfidences: [] },
      ],
    });
  });

  it.each(['', ' . ', '[BLANK_AUDIO]', '(wind blowing)', '♪ ♪', '* *'])(
    'is nothing where no word is in it: “%s”',
    async (text) => {
      expect(await hear(text)).toEqual({ alternatives: [], rejected: 'nothing' });
    },
  );

  it('keeps the words beside a marked noise', async () => {
    const { alternatives } = await hear('[fan] box forty four (hum)');
    expect(alternatives.map(({ words }) => words)).toEqual(['box forty four']);
  });

  it('is not asked for of silence, of which such models make whole sentences', async () => {
    const asked: number[] = [];
    const silence = new Float32Array(16_000).fill(0.0009);
    const heard = await hearFreeText(silence, (samples) => {
      asked.push(samples.length);
      return Promise.resolve('thank you for watching');
    });
    expect([heard.rejected, asked]).toEqual(['nothing', []]);
  });

  it('has room for a short answer, and an end for a long one', async () => {
    const rooms: number[] = [];
    for (const seconds of [0.5, 1, 10]) {
      await hearFreeText(sound(seconds), (_, most) => {
        rooms.push(most);
        return Promise.resolve('yes');
      });
    }
    expect(rooms).toEqual([19, 22, 76]);
  });
});
