/** What was heard in one stretch of speech, best first. Both hosts of an engine deliver this. */
export interface Hearing {
  readonly alternatives: readonly Alternative[];
  /** Present when nothing heard may be acted on; `unsure` still carries its alternatives. */
  readonly rejected?: Rejection;
}

export interface Alternative {
  readonly words: string;
  /** Chance that these very words were said, 0..1: see judgement.ts, and confidence.ts of the embedded engine. */
  readonly confidence: number;
  readonly wordConfidences: readonly WordConfidence[];
}

export interface WordConfidence {
  readonly word: string;
  readonly confidence: number;
  readonly startMs: number;
  readonly endMs: number;
}

/** nothing: no word. notForUs: the phone loop explained the sound better. unsure: too poor a fit. */
export type Rejection = 'nothing' | 'notForUs' | 'unsure';
