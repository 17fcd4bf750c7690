import { CONDITIONS, type Condition, nameOf, staged, TOO_LOUD, toPeak } from './conditions.ts';
import { NOISES } from './noises.ts';
import type { Kind } from './rows.ts';
import { drawRare } from './corpus-sentences.ts';
import { sampleHeard } from './sentences.ts';
import { STRAY_TALK } from './stray-talk.ts';
import type { BenchVoice } from './voices.ts';

/** Something to hear. */
export interface Job {
  readonly kind: Kind;
  readonly number: number;
  readonly said: string;
  readonly voice: string;
  readonly heldOut: boolean;
  readonly condition: string;
  readonly sound: () => Float32Array;
}

export interface JobSettings {
  /** Sentences a condition. */
  readonly sentences: number;
  /** Of noise, and as much of talk. */
  readonly minutes: number;
  readonly seed: number;
  /** Only conditions whose name holds it, or one of several divided by "|". */
  readonly condition: string;
  /** Lines of the corpus that the likely grammar does not hold, in place of sentences that it does. */
  readonly rare?: boolean;
  readonly voices: readonly BenchVoice[];
  /** Every `of`-th sentence from the `at`-th on: the share of one process among several. */
  readonly shard: { readonly at: number; readonly of: number };
}

const NOISE_SECONDS = 4;
/** What a stray sentence takes with the room around it. */
const TALK_SECONDS = 3.3;

/** Everything to hear, the same however it is divided among processes. */
export function* jobs(settings: JobSettings): Generator<Job> {
  const conditions = conditionsNamed(settings.condition);
  const isMine = (number: number): boolean => number % settings.shard.of === settings.shard.at;
  const draw = settings.rare ? drawRare : sampleHeard;
  for (const [number, said] of draw(settings.sentences, settings.seed).entries()) {
    // Kinds of sentences take turns by four: voices by four too would each have their own kind.
    const voice = settings.voices[Math.floor(number / 4) % settings.voices.length];
    if (isMine(number) && voice) yield* spoken({ kind: 'ours', number, said, voice }, conditions);
  }
  const rounds = Math.round((settings.minutes * 60) / TALK_SECONDS);
  for (let number = 0; number < rounds; number += 1) {
    const said = STRAY_TALK[number % STRAY_TALK.length] ?? '';
    const voice = settings.voices[Math.floor(number / STRAY_TALK.length) % settings.voices.length];
    const condition =
      CONDITIONS[(number + Math.floor(number / 10) + settings.seed) % CONDITIONS.length];
    if (!isMine(number) || !voice || !condition) continue;
    yield* spoken({ kind: 'talk', number, said, voice }, [condition]);
  }
  yield* noises(settings, isMine);
}

function conditionsNamed(condition: string): readonly Condition[] {
  if (condition === '') return CONDITIONS;
  const wanted = condition.split('|');
  return [
    ...CONDITIONS.filter((each) => wanted.some((name) => ` ${nameOf(each)}`.includes(` ${name}`))),
    ...TOO_LOUD.filter((each) => wanted.some((name) => nameOf(each).startsWith(name))),
  ];
}

interface Speech {
  readonly kind: 'ours' | 'talk';
  readonly number: number;
  readonly said: string;
  readonly voice: BenchVoice;
}

/** Spoken once, heard in each condition. */
function* spoken(speech: Speech, conditions: readonly Condition[]): Generator<Job> {
  const { kind, number, said, voice } = speech;
  const spokenSound = voice.say(said);
  const { name, heldOut } = voice;
  for (const condition of conditions) {
    yield {
      ...{ kind, number, said, voice: name, heldOut, condition: nameOf(condition) },
      sound: () => staged(spokenSound, condition, number + 1),
    };
  }
}

function* noises(
  { minutes, seed }: JobSettings,
  isMine: (number: number) => boolean,
): Generator<Job> {
  const names = Object.keys(NOISES);
  const rounds = Math.round((minutes * 60) / NOISE_SECONDS);
  for (let number = 0; number < rounds; number += 1) {
    const name = names[number % names.length] ?? '';
    if (!isMine(number)) continue;
    yield {
      ...{ kind: 'noise', number, said: '', voice: name, heldOut: true, condition: 'alone' },
      sound: () =>
        toPeak(NOISES[name]?.(NOISE_SECONDS, 1000 * seed + number) ?? new Float32Array(0)),
    };
  }
}
