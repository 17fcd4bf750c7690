import { fan, RATE_HZ, rms } from '../../signals.ts';
import { NOISES } from '../noises.ts';
import { STRAY_TALK } from '../stray-talk.ts';
import type { BenchVoice } from '../voices.ts';

export type Bed = (seconds: number, seed: number) => Float32Array;

/** What goes on around a sentence, or without one. */
export function bedsOf(voices: readonly BenchVoice[]): Readonly<Record<string, Bed>> {
  return { ...NOISES, 'far talk beside a fan': (seconds, seed) => farTalk(voices, seconds, seed) };
}

const BETWEEN_SAMPLES = RATE_HZ / 4;
/** Echoes of a hard room: the first after 12 ms, then one every 10 ms, gone after half a second. */
const ECHOES = Array.from({ length: 40 }, (_, nth) => ({
  late: 200 + 160 * nth + ((7919 * nth) % 120),
  gain: (nth % 2 === 0 ? -0.35 : 0.35) * Math.exp(-nth / 13),
}));
const FAN_BELOW = 10 ** (-20 / 20);

/** People talk across the room, one sentence after the other. */
function farTalk(voices: readonly BenchVoice[], seconds: number, seed: number): Float32Array {
  const dry = new Float32Array(Math.round(seconds * RATE_HZ));
  for (let at = 0, nth = seed; at < dry.length; nth += 1) {
    const said = voices[nth % voices.length]?.say(STRAY_TALK[(7 * nth) % STRAY_TALK.length] ?? '');
    if (said === undefined) break;
    dry.set(said.subarray(0, dry.length - at), at);
    at += said.length + BETWEEN_SAMPLES;
  }
  const wet = dry.slice();
  for (const { late, gain } of ECHOES) {
    for (let at = late; at < wet.length; at += 1)
      wet[at] = (wet[at] ?? 0) + gain * (dry[at - late] ?? 0);
  }
  const noise = fan(seconds, seed);
  const level = (rms(wet) / rms(noise)) * FAN_BELOW;
  return wet.map((sample, at) => sample + level * (noise[at] ?? 0));
}
