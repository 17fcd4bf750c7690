import { SMEAR_MS } from './loudness.ts';
import type { Standing } from './standing.ts';

export interface EndpointerSettings {
  /** How long a rest ends the sentence, by what may follow the words so far. */
  readonly waitMs: Readonly<Record<Standing | 'unknown', number>>;
  readonly longestSpeechMs: number;
  readonly noSpeechMs: number;
  /** Chances of a voice. */
  readonly voice: Threshold & { readonly softerDb: number };
  /** dB above the room. */
  readonly energy: Threshold;
}

/** Speech begins once `on` is passed for so long, and lasts while `off` is. */
interface Threshold {
  readonly on: number;
  readonly off: number;
  readonly leastMs: number;
}

export const ENDPOINTER_SETTINGS: EndpointerSettings = {
  waitMs: {
    // Only another sentence can follow. The neural engine is 0.4 s behind the sound and hears it in pieces of 0.16 s:
    // before 0.6 s are over nobody knows whether the last word was the last.
    closed: 600,
    // Callers pause between the digits of a reading: 0.5 s, as browsers wait, cuts "one forty … six" in two.
    extendable: 900,
    // "Head is …", and the eyes go to the gauge. Of 30 readings with a rest before the value 1200 cut 14 in two at a rest
    // of 1.2 s, 29 at 1.3 and 30 at 1.4; 1500 none of them.
    incomplete: 1500,
    // As where it could go on: the embedded engine tells nothing, nor does anybody before the first word.
    unknown: 900,
  },
  longestSpeechMs: 15_000,
  // Chromium's own wait.
  noSpeechMs: 8_000,
  // Beginnings of 64 ms let a radio's tune beside a fan pass for a voice twice a minute, of 96 ms once. What is 12 dB
  // softer than the sentence was is somebody else: talk 20 dB below it kept the ear open for as long as it went on.
  voice: { on: 0.5, off: 0.35, leastMs: 96, softerDb: 12 },
  // Shorter sounds are clicks and knocks; a tenth of a second is the shortest vowel of a number.
  energy: { on: 7.5, off: 5, leastMs: 60 + SMEAR_MS },
};

/**
 * By energy the endpointer is sure 0.2–0.5 s after the first sound (1 s at 10 dB), by the detector's word 0.2 s: the
 * engine gets what came before.
 */
export const KEPT_BEFORE_MS = 1000;
