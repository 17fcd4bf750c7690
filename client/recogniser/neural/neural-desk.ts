import type { NeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import type { Opinion } from '../../../core/hearing/second-opinion.ts';
import { NOTHING } from '../../../core/hearing/to-hearing.ts';
import type { AfterLoad, FromEngine } from '../worker/protocol.ts';
import { LessonDesk } from './lesson-desk.ts';
import { joined } from '../../../core/hearing/joined.ts';

/**
 * 160 ms: the network took 0.11 of the sound's time in such pieces and 0.37 in pieces of 40 ms, and words that show
 * a sixth of a second later are still as they come.
 */
export const PORTION_SAMPLES = 2560;
export const SAMPLES_A_MS = 16;

type Given = Opinion | null | undefined;
type Answer = (opinion: Given) => void;

/** The worker's side of the protocol, without the worker: one message after the other. */
export class NeuralDesk {
  readonly #decoder: NeuralDecoder;
  readonly #lessons: LessonDesk;
  readonly #send: (message: FromEngine) => void;
  #queue: Promise<void> = Promise.resolve();
  #hasGrammar = false;
  #open: number | null = null;
  #waiting: Float32Array[] = [];
  #told = '';
  #spentMs = 0;
  #heardMs = 0;
  /** Utterances before this one are not worth a step of the network any more. */
  #wantedFrom = 0;
  /** Whoever waits for an opinion on this utterance. */
  #asking: { readonly utterance: number; readonly answer: Answer } | null = null;

  constructor(decoder: NeuralDecoder, send: (message: FromEngine) => void) {
    this.#decoder = decoder;
    this.#lessons = new LessonDesk(decoder);
    this.#send = send;
  }

  /** Settles once the message is answered. */
  answer(message: AfterLoad): Promise<void> {
    if (message.kind === 'opinion') {
      if (this.#asking?.utterance === message.utterance) this.#asking.answer(message.opinion);
      return Promise.resolve();
    }
    if (message.kind === 'reset') this.#wantedFrom = message.utterance;
    this.#queue = this.#queue.then(() => this.#inTurn(message));
    return this.#queue;
  }

  async #inTurn(message: Exclude<AfterLoad, { kind: 'opinion' }>): Promise<void> {
    switch (message.kind) {
      case 'lesson': {
        const { request, lesson } = message;
        this.#send({ kind: 'lessonAnswered', request, answer: await this.#lessons.answer(lesson) });
        return;
      }
      // It finds wordings; another engine chooses among them.
      case 'choose':
        return;
      case 'setGrammar': {
        this.#setGrammar(message.request, message.jsgf);
        return;
      }
      case 'warm': {
        this.#decoder.warm(message.jsgf);
        return;
      }
      case 'accept':
        return this.#guarded(message.utterance, () =>
          this.#accept(message.utterance, message.samples),
        );
      case 'finish':
        return this.#guarded(message.utterance, () =>
          this.#finish(message.utterance, message.awaitsOpinion),
        );
      case 'reset': {
        this.#abandon();
        return;
      }
    }
  }

  #setGrammar(request: number, jsgf: string): void {
    this.#abandon();
    const set = this.#decoder.setGrammar(jsgf);
    if (set.kind === 'set') {
      this.#hasGrammar = true;
      this.#send({ kind: 'grammarSet', request });
      return;
    }
    const message =
      set.kind === 'malformed'
        ? set.message
        : `No pronunciation is known for: ${set.words.join(', ')}.`;
    this.#send({ kind: 'grammarFailed', request, message });
  }

  async #accept(utterance: number, samples: Float32Array): Promise<void> {
    if (!this.#hasGrammar || utterance < this.#wantedFrom) return;
    if (this.#open !== utterance) this.#begin(utterance);
    this.#waiting.push(samples);
    this.#lessons.overhear(utterance, samples);
    if (lengthOf(this.#waiting) < PORTION_SAMPLES) return;
    await this.#hearWaiting();
    this.#tellWords(utterance);
  }

  #begin(utterance: number): void {
    this.#abandon();
    this.#decoder.start();
    this.#open = utterance;
  }

  async #hearWaiting(): Promise<void> {
    const portion = joined(this.#waiting);
    this.#waiting = [];
    if (portion.length === 0) return;
    const begin = performance.now();
    await this.#decoder.accept(portion);
    this.#spentMs += performance.now() - begin;
    this.#heardMs += portion.length / SAMPLES_A_MS;
  }

  #tellWords(utterance: number): void {
    const words = this.#decoder.words();
    const standing = words === '' ? null : this.#decoder.standing();
    const told = `${words} ${standing}`;
    if (told === this.#told) return;
    this.#told = told;
    this.#send({ kind: 'partial', utterance, words, standing });
  }

  async #finish(utterance: number, awaitsOpinion: boolean): Promise<void> {
    if (this.#open !== utterance) {
      this.#send({ kind: 'heard', utterance, hearing: NOTHING, pace: null });
      return;
    }
    await this.#hearWaiting();
    const wordings = await this.#decoder.close();
    const isAsked = awaitsOpinion && wordings.length > 0;
    const opinion = isAsked ? await this.#opinionOn(utterance, wordings) : undefined;
    const hearing = await this.#decoder.finish(opinion);
    const pace = this.#heardMs > 0 ? this.#spentMs / this.#heardMs : null;
    this.#abandon();
    this.#send({ kind: 'heard', utterance, hearing, pace });
  }

  #opinionOn(utterance: number, wordings: readonly string[]): Promise<Given> {
    return new Promise((answer) => {
      this.#asking = { utterance, answer };
      this.#send({ kind: 'wordings', utterance, wordings });
    });
  }

  /** Forgets what was left open. */
  #abandon(): void {
    this.#open = null;
    this.#waiting = [];
    this.#told = '';
    this.#spentMs = 0;
    this.#heardMs = 0;
  }

  async #guarded(utterance: number, work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.#abandon();
      const message = error instanceof Error ? error.message : String(error);
      this.#send({ kind: 'decodeFailed', utterance, message });
    }
  }
}

const lengthOf = (parts: readonly Float32Array[]): number =>
  parts.reduce((sum, part) => sum + part.length, 0);
