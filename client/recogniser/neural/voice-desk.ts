import { type VoiceDetector, WINDOW_SAMPLES } from '../../../core/hearing/voice-detector.ts';
import type { FromEngine, Watch } from '../worker/protocol.ts';

/**
 * Looks for a voice in what the page sends, one portion after the other. Without a detector, or once it broke, it
 * answers nothing: the page then goes by the loudness.
 */
export class VoiceDesk {
  readonly #send: (message: FromEngine) => void;
  #detector: VoiceDetector | null = null;
  #queue: Promise<void> = Promise.resolve();
  #watch = 0;
  /** Where the next window of this watch begins. */
  #atSample = 0;

  constructor(send: (message: FromEngine) => void) {
    this.#send = send;
  }

  useDetector(detector: VoiceDetector): void {
    this.#detector = detector;
    this.#watch = 0;
  }

  /** Settles once the portion is heard. */
  answer(message: Watch): Promise<void> {
    this.#queue = this.#queue.then(() => this.#hear(message));
    return this.#queue;
  }

  async #hear({ watch, fromSample, samples }: Watch): Promise<void> {
    if (this.#detector === null) return;
    if (watch !== this.#watch) {
      this.#detector.reset();
      this.#watch = watch;
      this.#atSample = fromSample;
    }
    try {
      const chances = await this.#detector.accept(samples);
      this.#atSample += chances.length * WINDOW_SAMPLES;
      this.#send({ kind: 'voice', watch, chances, untilSample: this.#atSample });
    } catch {
      this.#detector = null;
    }
  }
}
