import { readFile } from 'node:fs/promises';
import { afterWords, heardThere, UNMEASURED } from '../../core/hearing/earshot.ts';
import type { Hearing, Rejection } from '../../core/hearing/hearing.ts';
import { measureRecording, type NoiseMeasure } from '../../core/hearing/noise-meter.ts';
import type { VoiceProfile } from '../../core/hearing/voice/voice-profile.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import {
  ENGINE_CHOICES,
  type EngineChoice,
  type HearerOutcome,
  openHearer,
} from '../hearing/open-hearer.ts';
import { openTransformersHearer } from '../hearing/transformers-hearer.ts';
import { readWav } from '../hearing/read-wav.ts';

/** What a recording gave, or why it gave nothing. */
export type Recording =
  | {
      readonly kind: 'heard';
      /** Best first; none when nothing was heard. */
      readonly alternatives: readonly Alternative[];
      /** Set when what was heard may not be acted on. */
      readonly rejected: Rejection | null;
      readonly noise: NoiseMeasure;
    }
  | { readonly kind: 'unreadable'; readonly why: string };

/** Plays recordings to the page's recogniser, with the grammar of what the dialogue expects. */
export interface Player {
  play(file: string, expects: Expectation): Promise<Recording>;
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

/** Loads the engine at the first recording, once for each grammar. */
export function createPlayer(options: PlayerOptions = {}): Player {
  const outcomes = new Map<Expectation, HearerOutcome>();
  const hearerFor = async (expects: Expectation): Promise<HearerOutcome> => {
    const outcome = outcomes.get(expects) ?? (await open(expects, options));
    outcomes.set(expects, outcome);
    return outcome;
  };
  return {
    play: async (file, expects) => {
      const sound = await readSound(file);
      if (sound.kind === 'unreadable') return sound;
      const outcome = await hearerFor(expects);
      if (outcome.kind === 'unavailable') return { kind: 'unreadable', why: outcome.message };
      return toRecording(await outcome.hearer.hear(sound.samples), sound.samples);
    },
    close: () => {
      for (const each of outcomes.values()) if (each.kind === 'opened') each.hearer.dispose();
    },
  };
}

function open(expects: Expectation, options: PlayerOptions): Promise<HearerOutcome> {
  const { engine = DEFAULT_ENGINE, model, voice = null, onProgress = () => undefined } = options;
  if (engine === 'transformers') return openTransformersHearer(model, { onProgress });
  const grammar = recogniserGrammar(expects);
  const pronunciations = PRONUNCIATIONS;
  return openHearer(engine, { grammar, pronunciations, modelFolder: model, voice });
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
    return { kind: 'unreadable', why: `cannot read the file (${why})` };
  }
  const wav = readWav(bytes);
  return wav.kind === 'sound' ? wav : { kind: 'unreadable', why: wav.message };
}

const toRecording = ({ alternatives, rejected }: Hearing, samples: Float32Array): Recording => ({
  kind: 'heard',
  alternatives: alternatives.map(({ words, confidence }) => ({ words, confidence })),
  rejected: rejected ?? null,
  noise: measureRecording(samples),
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
