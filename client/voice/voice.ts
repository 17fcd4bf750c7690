/** The page's mouth. */
export interface Voice {
  /** False where the browser has no voice: the reply is then only shown. */
  canSpeak(): boolean;
  /** Resolves when it is said, cut off, failed or overdue: always, so that the ear reopens. */
  speak(spoken: string): Promise<void>;
  hush(): void;
  /** Some browsers speak only after a first utterance started by a press. */
  unlock(): void;
}

/** Where the browser has no voice: the page's own is fetched, or replies are shown only. */
export const SPARE_VOICE_CHOICES = ['fetched', 'onScreen'] as const;
export type SpareVoiceChoice = (typeof SPARE_VOICE_CHOICES)[number];

export type EarconId = 'listening' | 'kept' | 'again' | 'timeUp';

export interface Earcons {
  /** Resolves when the tone is over, or at once where there is no sound. */
  play(which: EarconId): Promise<void>;
  /** Sound may start only after a press. */
  unlock(): void;
}
