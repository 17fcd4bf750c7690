import { seeded } from '../../../language/random.ts';
import { RATE_HZ } from '../../signals.ts';
import { CONDITIONS, type Condition, nameOf, staged, TOO_LOUD, toPeak } from '../conditions.ts';
import { bedsOf } from '../endpoints/beds.ts';
import { STRAY_TALK } from '../stray-talk.ts';
import type { BenchVoice } from '../voices.ts';

/** Half a minute in which nobody speaks to the product. */
export interface Stretch {
  readonly kind: 'noise' | 'talk';
  readonly number: number;
  readonly bed: string;
  readonly sound: () => Float32Array;
}

export interface StretchSettings {
  /** Of noise, and as many of talk; each is divided evenly among its beds. */
  readonly minutes: number;
  readonly seed: number;
  readonly voices: readonly BenchVoice[];
  /** Every `of`-th stretch from the `at`-th on: the share of one process among several. */
  readonly shard: { readonly at: number; readonly of: number };
}

const STRETCH_S = 30;

/** The same however they are divided among processes. */
export function* stretches({ minutes, seed, voices, shard }: StretchSettings): Generator<Stretch> {
  const rounds = Math.round((minutes * 60) / STRETCH_S);
  const beds = bedsByKind(voices);
  for (const kind of ['noise', 'talk'] as const) {
    for (let number = 0; number < rounds; number += 1) {
      const [name, make] = beds[kind][number % beds[kind].length] ?? [];
      const voice = voices[Math.floor(number / beds[kind].length) % voices.length];
      if (number % shard.of !== shard.at || !name || !make || !voice) continue;
      yield { kind, number, bed: name, sound: () => make(1000 * seed + number, voice) };
    }
  }
}

type Make = (seed: number, voice: BenchVoice) => Float32Array;
type Named = readonly (readonly [name: string, make: Make])[];

const FAR = 'far talk beside a fan';

function bedsByKind(voices: readonly BenchVoice[]): Readonly<Record<Stretch['kind'], Named>> {
  const beds = Object.entries(bedsOf(voices)).map(
    ([name, bed]) => [name, (seed: number) => toPeak(bed(STRETCH_S, seed))] as const,
  );
  const near = [...CONDITIONS, ...TOO_LOUD.slice(0, 1)].filter(({ bandKhz }) => bandKhz === 16);
  return {
    noise: beds.filter(([name]) => name !== FAR),
    talk: [
      ...near.map((where): Named[number] => [
        `talk, ${nameOf(where)}`,
        (seed, voice) => nearTalk(voice, where, seed),
      ]),
      ...beds.filter(([name]) => name === FAR),
    ],
  };
}

/** Between the sentences of people who talk with each other. */
const PAUSE_S = { least: 0.3, most: 2.3 };

/** Somebody talks with somebody else close to the microphone, one sentence after the other. */
function nearTalk(voice: BenchVoice, where: Condition, seed: number): Float32Array {
  const random = seeded(seed);
  const talk = new Float32Array(STRETCH_S * RATE_HZ);
  for (let at = 0; at < talk.length;) {
    const said = voice.say(STRAY_TALK[Math.floor(random() * STRAY_TALK.length)] ?? '');
    talk.set(said.subarray(0, talk.length - at), at);
    const pause = PAUSE_S.least + random() * (PAUSE_S.most - PAUSE_S.least);
    at += said.length + Math.round(pause * RATE_HZ);
  }
  return staged(talk, where, seed);
}
