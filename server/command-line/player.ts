import { readFile } from 'node:fs/promises';
import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import { SAMPLE_RATE_HZ } from '../../core/hearing/engine-parameters.ts';
import { afterWords, heardThere, UNMEASURED } from '../../core/hearing/earshot.ts';
import type { Hearing, Rejection } from '../../core/hearing/hearing.ts';
import {
  MEASURED_MS,
  measureRecording,
  type NoiseMeasure,
} from '../../core/hearing/noise-meter.ts';
import type { VoiceDetector } from '../../core/hearing/voice-detector.ts';
import type { VoiceProfile } from '../../core/hearing/voice/voice-profile.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import { heardGrammars } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import {
  ENGINE_CHOICES,
  type EngineChoice,
  type HearerOutcome,
  openHearer,
} from '../hearing/open-hearer.ts';
import { openTransformersHearer } from '../hearing/transformers-hearer.ts';
import { readWav } from '../hearing/read-wav.ts';
import { type Endpointing, type FoundSentence, sentencesIn } from '../hearing/sentences-in.ts';
import { openVoiceDetector } from '../hearing/voice-model.ts';

/** What a recording gave, or why it gave nothing. */
export type Recording =
  | {
      readonly kind: 'heard';
      /** Best first; none when nothing was heard. */
      readonly alternatives: readonly Alternative[];
      /** Set when what was heard may not be acted on. */
      readonly rejected: Rejection | null;
      readonly noise: NoiseMeasure;
      /** Where in the file the sentence is; left out where the file was heard whole. */
      readonly span?: Pick<FoundSentence, 'noticedMs' | 'toMs'>;
    }
  | { readonly kind: 'unreadable'; readonly why: string };

/** Plays recordings to the page's recogniser, with the grammar of what the dialogue expects. */
export interface Player {
  /** The whole file as one sentence. */
  play(file: string, expects: Expectation): Promise<Recording>;
  /**
   * Sentence by sentence, found as the page finds them; at least one recording. A file no longer than a sentence may be
   * in which none is found is heard whole. What is expected is asked before each.
   */
  playSentences(file: string, expects: () => Expectation): AsyncIterable<Recording>;
  close(): void;
}

/**
 * Of 30 sentences by five voices, clean to 5 dB, the neural engine heard 30 and the embedded one 19; on real people's
 * digits a trial's two engines together beat either.
 */
export const DEFAULT_ENGINE: EngineChoice = 'both';

/** transformers: a model that writes whatever is said, and heeds no grammar. */
export const PLAYER_ENGINES = [...ENGINE_CHOICES, 'transformers'] as const;
export type PlayerEngine = (typeof PLAYER_ENGINES)[number];

export interface PlayerOptions {
  readonly engine?: PlayerEngine;
  /** Where the neural engine's model is, its own folder when left out; or the other model's folder or name. */
  readonly model?: string | undefined;
  /** What was learnt of the voice that speaks, for the neural engine. */
  readonly voice?: VoiceProfile | null;
  readonly onProgress?: (line: string) => void;
}

/** Loads the engine at the first recording, once for each grammar, and the voice detector where one is needed. */
export function createPlayer(options: PlayerOptions = {}): Player {
  const outcomes = new Map<Expectation, Promise<HearerOutcome>>();
  let detector: Promise<VoiceDetector | null> | null = null;
  const hearerFor = (expects: Expectation): Promise<HearerOutcome> => {
    const outcome = outcomes.get(expects) ?? open(expects, options);
    outcomes.set(expects, outcome);
    return outcome;
  };
  const hear = async (
    samples: Float32Array,
    expects: Expectation,
    room = samples,
  ): Promise<Recording> => {
    const outcome = await hearerFor(expects);
    if (outcome.kind === 'unavailable') return { kind: 'unreadable', why: outcome.message };
    return toRecording(await outcome.hearer.hear(samples), room);
  };
  const endpointing = async (): Promise<Endpointing> => {
    const outcome = await hearerFor('anything');
    detector ??= openVoiceDetector();
    const decoder = outcome.kind === 'opened' ? outcome.hearer.follower : null;
    return { detector: await detector, decoder };
  };
  return {
    play: async (file, expects) => {
      const sound = await readSound(file);
      return sound.kind === 'unreadable' ? sound : hear(sound.samples, expects);
    },
    playSentences: async function* (file, expects) {
      const sound = await readSound(file);
      if (sound.kind === 'unreadable') {
        yield sound;
        return;
      }
      const { samples } = sound;
      let found = false;
      for await (const span of sentencesIn(samples, await endpointing())) {
        found = true;
        const room = cut(samples, Math.max(0, span.toMs - MEASURED_MS), span.toMs);
        const recording = await hear(cut(samples, span.fromMs, span.toMs), expects(), room);
        yield recording.kind === 'heard' ? { ...recording, span } : recording;
        if (recording.kind === 'unreadable') return;
      }
      if (!found) yield isOneSentence(samples) ? await hear(samples, expects()) : nobody(samples);
    },
    close: () => {
      for (const each of outcomes.values()) void each.then(dispose);
    },
  };
}

const dispose = (outcome: HearerOutcome): void => {
  if (outcome.kind === 'opened') outcome.hearer.dispose();
};

const SAMPLES_PER_MS = SAMPLE_RATE_HZ / 1000;

const cut = (samples: Float32Array, fromMs: number, toMs: number): Float32Array =>
  samples.slice(fromMs * SAMPLES_PER_MS, toMs * SAMPLES_PER_MS);

const isOneSentence = ({ length }: Float32Array): boolean =>
  length <= ENDPOINTER_SETTINGS.longestSpeechMs * SAMPLES_PER_MS;

const nobody = ({ length }: Float32Array): Recording => ({
  kind: 'unreadable',
  why: `no voice was found in its ${(length / SAMPLE_RATE_HZ).toFixed(0)} seconds: record it again closer to the mouth, or hear it as one sentence with --whole`,
});

function open(expects: Expectation, options: PlayerOptions): Promise<HearerOutcome> {
  const { engine = DEFAULT_ENGINE, model, voice = null, onProgress = () => undefined } = options;
  if (engine === 'transformers') return openTransformersHearer(model, { onProgress });
  const grammars = heardGrammars(expects);
  const pronunciations = PRONUNCIATIONS;
  return openHearer(engine, { grammars, pronunciations, modelFolder: model, voice });
}

async function readSound(
  file: string,
): Promise<
  | { readonly kind: 'sound'; readonly samples: Float32Array }
  | { readonly kind: 'unreadable'; readonly why: string }
> {
  const bytes = await readFile(file).catch((fault: unknown) => fault);
  if (!(bytes instanceof Uint8Array)) {
    const why = bytes instanceof Error ? bytes.message : String(bytes);
    return { kind: 'unreadable', why: `cannot read the file (${why}): check its name` };
  }
  const wav = readWav(bytes);
  return wav.kind === 'sound' ? wav : { kind: 'unreadable', why: wav.message };
}

const toRecording = ({ alternatives, rejected }: Hearing, room: Float32Array): Recording => ({
  kind: 'heard',
  alternatives: alternatives.map(({ words, confidence }) => ({ words, confidence })),
  rejected: rejected ?? null,
  noise: measureRecording(room),
});

/** What may be acted on, as sure as it can be in that noise; nothing when what was heard may not be. */
export function alternativesToActOn({
  alternatives,
  rejected,
  noise,
}: Extract<Recording, { kind: 'heard' }>): readonly Alternative[] {
  if (rejected !== null) return [];
  const confidence = alternatives[0]?.confidence ?? 0;
  return heardThere(afterWords({ ...UNMEASURED, sentence: noise }, confidence), alternatives);
}
