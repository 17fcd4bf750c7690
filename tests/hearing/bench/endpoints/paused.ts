import { joined } from '../../../../core/hearing/joined.ts';
import { RATE_HZ } from '../../signals.ts';
import { isNumberWord } from '../say-number.ts';
import type { BenchVoice } from '../voices.ts';

/** The reading with a rest before its value; nothing where the sentence does not end with one. */
export function paused(said: string, voice: BenchVoice, pauseMs: number): readonly Float32Array[] {
  const words = said.split(' ');
  const at = words.findLastIndex((word) => !isNumberWord(word)) + 1;
  if (at === 0 || at === words.length) return [];
  const [name, value] = [words.slice(0, at), words.slice(at)].map((part) =>
    trimmed(voice.say(part.join(' '))),
  );
  if (name === undefined || value === undefined) return [];
  return [joined([name, new Float32Array((pauseMs * RATE_HZ) / 1000), value])];
}

const LEAST = 0.01;

/** Without the silence that a synthesiser puts around what it says. */
function trimmed(sound: Float32Array): Float32Array {
  const isHeard = (sample: number): boolean => Math.abs(sample) > LEAST;
  return sound.slice(sound.findIndex(isHeard), sound.findLastIndex(isHeard) + 1);
}
