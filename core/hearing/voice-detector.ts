import type { OnnxModule, OnnxSession, OnnxTensor } from './acoustic-model.ts';

/** Tells speech from every other sound, whatever is said. One call at a time. */
export interface VoiceDetector {
  /** Mono samples in −1..1 at 16 kHz in any portions; gives each window's chance of a voice that is known by now. */
  readonly accept: (samples: Float32Array) => Promise<readonly number[]>;
  /** Forgets what was heard. */
  readonly reset: () => void;
}

/** As much of the Silero model as is run; versions 5 and 6 are called alike. */
export interface VoiceModel {
  readonly onnx: OnnxModule;
  readonly session: OnnxSession;
}

export const WINDOW_SAMPLES = 512;
export const WINDOW_MS = 32;
/** The end of one window is heard again before the next (`OnnxWrapper` of silero-vad's utils_vad.py). */
const CONTEXT_SAMPLES = 64;
const STATE_SHAPE = [2, 1, 128];
const STATE_SIZE = 256;
const RATE_HZ = 16_000n;

export function createVoiceDetector(model: VoiceModel): VoiceDetector {
  return new WindowDetector(model);
}

class WindowDetector implements VoiceDetector {
  readonly #model: VoiceModel;
  readonly #rate: OnnxTensor;
  #state: OnnxTensor;
  /** The context, and what is there of the window after it. */
  #heard = new Float32Array(CONTEXT_SAMPLES + WINDOW_SAMPLES);
  #filled = CONTEXT_SAMPLES;

  constructor(model: VoiceModel) {
    this.#model = model;
    this.#rate = new model.onnx.Tensor('int64', BigInt64Array.of(RATE_HZ), [1]);
    this.#state = this.#freshState();
  }

  readonly accept = async (samples: Float32Array): Promise<readonly number[]> => {
    const chances: number[] = [];
    for (let at = 0; at < samples.length;) {
      const part = samples.subarray(at, at + this.#heard.length - this.#filled);
      this.#heard.set(part, this.#filled);
      this.#filled += part.length;
      at += part.length;
      if (this.#filled === this.#heard.length) chances.push(await this.#hearWindow());
    }
    return chances;
  };

  readonly reset = (): void => {
    this.#state = this.#freshState();
    this.#heard = new Float32Array(CONTEXT_SAMPLES + WINDOW_SAMPLES);
    this.#filled = CONTEXT_SAMPLES;
  };

  async #hearWindow(): Promise<number> {
    const { onnx, session } = this.#model;
    const window = this.#heard;
    this.#heard = new Float32Array(window.length);
    this.#heard.set(window.subarray(WINDOW_SAMPLES));
    this.#filled = CONTEXT_SAMPLES;
    const input = new onnx.Tensor('float32', window, [1, window.length]);
    const outputs = await session.run({ input, state: this.#state, sr: this.#rate });
    const { output, stateN } = outputs;
    if (output === undefined || stateN === undefined) throw new Error(UNUSABLE);
    this.#state = stateN;
    return chanceIn(output);
  }

  #freshState(): OnnxTensor {
    return new this.#model.onnx.Tensor('float32', new Float32Array(STATE_SIZE), STATE_SHAPE);
  }
}

const UNUSABLE = 'The voice detector’s model gives no chance of a voice.';

function chanceIn({ data }: OnnxTensor): number {
  const chance = data instanceof Float32Array ? data[0] : undefined;
  if (chance === undefined) throw new Error(UNUSABLE);
  return chance;
}
