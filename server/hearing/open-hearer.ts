import type { Hearing } from '../../core/hearing/hearing.ts';
import type { VoiceProfile } from '../../core/hearing/voice/voice-profile.ts';
import { createNeuralHearing } from './neural-hearing.ts';
import { openNeuralModel } from './neural-model.ts';
import { createNodeHearing, type NodeHearing, type NodeHearingOptions } from './node-hearing.ts';
import type { Follower } from './sentences-in.ts';

/** both: the neural one, the embedded one choosing among the wordings that it found. */
export const ENGINE_CHOICES = ['neural', 'embedded', 'both'] as const;
export type EngineChoice = (typeof ENGINE_CHOICES)[number];

/** What hears recordings, whichever engine it is made of. */
export interface Hearer {
  /** One utterance: mono samples at 16 kHz in −1..1. */
  readonly hear: (samples: Float32Array) => Promise<Hearing>;
  /** Tells what may follow while a sentence is being said; null where the engine does not know. */
  readonly follower: Follower | null;
  readonly dispose: () => void;
}

export interface HearerOptions extends NodeHearingOptions {
  /** Where the neural engine's model is; its own folder when left out. */
  readonly modelFolder?: string | undefined;
  /** What was learnt of the voice: the neural engine hears by it. */
  readonly voice?: VoiceProfile | null;
}

export type HearerOutcome =
  | { readonly kind: 'opened'; readonly hearer: Hearer }
  | { readonly kind: 'unavailable'; readonly message: string };

/** Tells when the neural engine's model cannot be read; rejects when the grammar cannot be heard. */
export async function openHearer(
  choice: EngineChoice,
  options: HearerOptions,
): Promise<HearerOutcome> {
  switch (choice) {
    case 'embedded':
      return embeddedHearer(await createNodeHearing(options));
    case 'neural':
      return neuralHearer(options, null);
    case 'both':
      return neuralHearer(options, await createNodeHearing(options));
  }
}

const VOICE_UNFIT: HearerOutcome = {
  kind: 'unavailable',
  message: 'the voice was learnt by another model: make it again with gloveside enrol',
};

const opened = (hearer: Hearer): HearerOutcome => ({ kind: 'opened', hearer });

const embeddedHearer = (embedded: NodeHearing): HearerOutcome =>
  opened({
    hear: (samples) => Promise.resolve(embedded.hear(samples)),
    follower: null,
    dispose: embedded.dispose,
  });

async function neuralHearer(
  options: HearerOptions,
  second: NodeHearing | null,
): Promise<HearerOutcome> {
  const outcome = await openNeuralModel(options.modelFolder);
  if (outcome.kind === 'unavailable') return outcome;
  const neural = await createNeuralHearing(outcome.model, options);
  if (!neural.suit(options.voice ?? null)) {
    second?.dispose();
    return VOICE_UNFIT;
  }
  return opened({
    hear: (samples) => neural.hear(samples, second?.choose),
    follower: neural.follower,
    dispose: () => second?.dispose(),
  });
}
