/** A finite-state decoder, whatever it is made of: one utterance between `start` and `stop`. */
export interface DecoderPort {
  /** Words of the grammar without a pronunciation, sorted; when there are any, the grammar is not set. */
  readonly setGrammar: (jsgf: string) => readonly string[];
  readonly start: () => void;
  /** Mono samples in −1..1 at 16 kHz, in any portions. */
  readonly accept: (samples: Float32Array) => void;
  /** One utterance at once: its whole mean is known before the search starts. */
  readonly acceptWhole: (samples: Float32Array) => void;
  readonly stop: () => void;
  /** The best words so far, markers included. */
  readonly text: () => string;
  readonly words: () => readonly DecodedWord[];
  readonly dispose: () => void;
}

/** One word as the decoder times and scores it. */
export interface DecodedWord {
  readonly word: string;
  readonly startSeconds: number;
  readonly durationSeconds: number;
  /** About P^(1/1024): a word of probability P reads very near to 1. */
  readonly probability: number;
}
