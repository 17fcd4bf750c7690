import type { DecoderPort } from '../../../core/hearing/decoder-port.ts';
import { opinionOn } from '../../../core/hearing/second-opinion.ts';
import { NOTHING, toHearing, toPartial } from '../../../core/hearing/to-hearing.ts';
import type { AfterLoad, FromEngine } from '../worker/protocol.ts';
import type { DecoderPool } from './decoder-pool.ts';
import { faultText } from '../fault-text.ts';

type Choice = Extract<AfterLoad, { kind: 'choose' }>;

/** The worker's side of the protocol, without the worker: one utterance at a time. */
export class EngineDesk {
  readonly #pool: DecoderPool;
  readonly #send: (message: FromEngine) => void;
  #decoder: DecoderPort | null = null;
  #open: number | null = null;

  constructor(pool: DecoderPool, send: (message: FromEngine) => void) {
    this.#pool = pool;
    this.#send = send;
  }

  async answer(message: AfterLoad): Promise<void> {
    switch (message.kind) {
      case 'setGrammar':
        return this.#setGrammar(message.request, message.jsgf);
      case 'warm':
        return this.#warm(message.jsgf);
      case 'accept': {
        this.#guarded(message.utterance, () => this.#accept(message.utterance, message.samples));
        return;
      }
      case 'finish': {
        this.#guarded(message.utterance, () => this.#finish(message.utterance));
        return;
      }
      case 'reset': {
        this.#abandon();
        return;
      }
      case 'choose':
        return this.#choose(message);
      // It hears by itself, and every voice alike.
      case 'opinion':
      case 'lesson':
        return;
    }
  }

  async #setGrammar(request: number, jsgf: string): Promise<void> {
    try {
      this.#abandon();
      const taken = await this.#pool.take(jsgf);
      if (taken.kind === 'unknownWords') {
        const message = `No pronunciation is known for: ${taken.words.join(', ')}.`;
        this.#send({ kind: 'grammarFailed', request, message });
        return;
      }
      this.#decoder = taken.decoder;
      this.#send({ kind: 'grammarSet', request });
    } catch (error) {
      this.#send({ kind: 'grammarFailed', request, message: faultText(error) });
    }
  }

  /** What is wrong with a grammar is told when it is wanted. */
  async #warm(jsgf: string): Promise<void> {
    await this.#pool.warm(jsgf).catch(() => undefined);
  }

  /** By a decoder apart: what is open goes on. */
  async #choose({ request, samples, wordings }: Choice): Promise<void> {
    try {
      const opinion = opinionOn(await this.#pool.chooser(), samples, wordings);
      this.#send({ kind: 'chosen', request, opinion });
    } catch (error) {
      this.#send({ kind: 'decodeFailed', utterance: this.#open ?? 0, message: faultText(error) });
    }
  }

  #accept(utterance: number, samples: Float32Array): void {
    if (this.#decoder === null) return;
    if (this.#open !== utterance) {
      this.#abandon();
      this.#decoder.start();
      this.#open = utterance;
    }
    this.#decoder.accept(samples);
    this.#send({
      kind: 'partial',
      utterance,
      words: toPartial(this.#decoder.text()),
      standing: null,
    });
  }

  #finish(utterance: number): void {
    const decoder = this.#open === utterance ? this.#decoder : null;
    this.#abandon();
    const hearing = decoder === null ? NOTHING : toHearing(decoder.words());
    this.#send({ kind: 'heard', utterance, hearing, pace: null });
  }

  /** Ends what was left open. */
  #abandon(): void {
    if (this.#open !== null) this.#decoder?.stop();
    this.#open = null;
  }

  #guarded(utterance: number, work: () => void): void {
    try {
      work();
    } catch (error) {
      this.#open = null;
      this.#send({ kind: 'decodeFailed', utterance, message: faultText(error) });
    }
  }
}
