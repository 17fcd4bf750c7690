import { hearFreeText, type Transcribe } from '../../../core/hearing/free-text.ts';
import { NOTHING } from '../../../core/hearing/to-hearing.ts';
import type { LoadProgress } from '../engine.ts';
import type { AfterLoad, FromEngine, ToEngine } from '../worker/protocol.ts';
import { joined } from '../../../core/hearing/joined.ts';
import { faultText } from '../fault-text.ts';

export interface FreeTextFiles {
  /** Its name on the hub, as org/name. */
  readonly model: string;
  /** Folder of ONNX Runtime's files. */
  readonly runtimeUrl: string;
}

export interface FreeTextPorts {
  readonly send: (message: FromEngine) => void;
  /** Rejects, saying why, when the model does not come. */
  readonly load: (
    files: FreeTextFiles,
    onProgress: (progress: LoadProgress) => void,
  ) => Promise<Transcribe>;
}

/** Everything that the worker does but being one: one message after the other. */
export function serveFreeText(
  ports: FreeTextPorts,
): (message: ToEngine<FreeTextFiles>) => Promise<void> {
  let desk: FreeTextDesk | null = null;
  let queue: Promise<void> = Promise.resolve();
  const answer = async (message: ToEngine<FreeTextFiles>): Promise<void> => {
    // It has no detector.
    if (message.kind === 'watch') return;
    if (message.kind !== 'load') return desk?.answer(message);
    try {
      const onProgress = (progress: LoadProgress): void =>
        ports.send({ kind: 'progress', ...progress });
      desk = new FreeTextDesk(await ports.load(message.files, onProgress), ports.send);
      ports.send({ kind: 'loaded', pace: null });
    } catch (error) {
      ports.send({ kind: 'loadFailed', message: faultText(error) });
    }
  };
  return (message) => {
    queue = queue.then(() => answer(message));
    return queue;
  };
}

/** Such a model takes a whole utterance, and no grammar: what is set is taken note of and heeded by nobody. */
class FreeTextDesk {
  readonly #transcribe: Transcribe;
  readonly #send: (message: FromEngine) => void;
  #open: number | null = null;
  #sound: Float32Array[] = [];

  constructor(transcribe: Transcribe, send: (message: FromEngine) => void) {
    this.#transcribe = transcribe;
    this.#send = send;
  }

  async answer(message: AfterLoad): Promise<void> {
    switch (message.kind) {
      case 'setGrammar': {
        this.#abandon();
        this.#send({ kind: 'grammarSet', request: message.request });
        return;
      }
      case 'accept': {
        if (this.#open !== message.utterance) this.#abandon();
        this.#open = message.utterance;
        this.#sound.push(message.samples);
        return;
      }
      case 'finish':
        return this.#finish(message.utterance);
      case 'reset': {
        this.#abandon();
        return;
      }
      case 'choose':
        this.#send({ kind: 'chosen', request: message.request, opinion: null });
        return;
      case 'warm':
      case 'opinion':
      case 'lesson':
        return;
    }
  }

  async #finish(utterance: number): Promise<void> {
    const sound = this.#open === utterance ? joined(this.#sound) : null;
    this.#abandon();
    try {
      const hearing = sound === null ? NOTHING : await hearFreeText(sound, this.#transcribe);
      this.#send({ kind: 'heard', utterance, hearing, pace: null });
    } catch (error) {
      this.#send({ kind: 'decodeFailed', utterance, message: faultText(error) });
    }
  }

  #abandon(): void {
    this.#open = null;
    this.#sound = [];
  }
}
