import { beforeAll, describe, expect, it } from 'vitest';

import {
  type VoiceDetector,
  WINDOW_MS,
  WINDOW_SAMPLES,
} from '../../core/hearing/voice-detector.ts';
import { openVoiceDetector } from '../../server/hearing/voice-model.ts';
import { NOISES } from './bench/noises.ts';
import { besideFan, RATE_HZ, speak } from './signals.ts';

let detector: VoiceDetector;
beforeAll(async () => {
  const opened = await openVoiceDetector();
  if (opened === null) throw new Error('The detector’s model cannot be read.');
  detector = opened;
});

async function chancesIn(sound: Float32Array, portion = sound.length): Promise<readonly number[]> {
  detector.reset();
  const chances: number[] = [];
  for (let at = 0; at < sound.length; at += portion) {
    chances.push(...(await detector.accept(sound.slice(at, at + portion))));
  }
  return chances;
}

const shareOver = (chances: readonly number[], least: number): number =>
  chances.filter((chance) => chance > least).length / chances.length;

describe('the voice detector', () => {
  it.each([20, 5, 0])(
    'hears a sentence and the room around it beside a fan at %i dB',
    async (snrDb) => {
      for (const voice of ['rms', 'slt', 'awb'] as const) {
        const speech = speak('head one ninety two', voice);
        const chances = await chancesIn(besideFan(speech, snrDb, 3));
        const at = (ms: number): number => Math.round(ms / WINDOW_MS);
        const endMs = 1000 + (speech.length * 1000) / RATE_HZ;
        expect(shareOver(chances.slice(at(1200), at(endMs - 200)), 0.5)).toBeGreaterThan(0.8);
        expect(shareOver(chances.slice(0, at(900)), 0.5)).toBe(0);
        expect(shareOver(chances.slice(at(endMs + 600)), 0.35)).toBe(0);
      }
    },
  );

  it.each(['fan', 'compressor and hum', 'clatter beside a fan'])(
    'hears no voice in %s',
    async (name) => {
      const noise = NOISES[name]?.(6, 5) ?? new Float32Array(0);
      expect(shareOver(await chancesIn(noise.map((sample) => 0.3 * sample)), 0.5)).toBe(0);
    },
  );

  it('hears the same in whatever portions the sound comes', async () => {
    const sound = besideFan(speak('suction two', 'rms'), 10, 4);
    const whole = await chancesIn(sound);
    expect(whole).toHaveLength(Math.floor(sound.length / WINDOW_SAMPLES));
    for (const portion of [160, 1600, 5000]) expect(await chancesIn(sound, portion)).toEqual(whole);
  });

  it('is not there where its file is none', async () => {
    expect(await openVoiceDetector('no-such-file.onnx')).toBeNull();
    expect(await openVoiceDetector(import.meta.filename)).toBeNull();
  });
});
