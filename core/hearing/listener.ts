import type { AcousticDescription, OnnxModule, OnnxSession, OnnxTensor } from './acoustic-model.ts';
import { joined } from './joined.ts';

/** The acoustic model hearing a stream: what it remembers between two portions is kept here. One call at a time. */
export interface Listener {
  /** Mono samples in −1..1 at 16 kHz in any portions; gives the frames that are known by now. */
  readonly accept: (samples: Float32Array) => Promise<readonly Float32Array[]>;
  /** The frames still inside; the samples after it begin a new utterance. */
  readonly flush: () => Promise<readonly Float32Array[]>;
  /** Forgets what was heard, but not how loud it was: the same voice goes on in the same room. */
  readonly reset: () => void;
  /** Forgets all, as when nothing was heard yet. */
  readonly forget: () => void;
  /** From the next portion on each frame goes through this, with what the inner layer held; null ends that. */
  readonly through: (change: FrameChange | null) => void;
}

/** Makes another frame of log posteriors of one and of what the network's last inner layer held then. */
export type FrameChange = (frame: Float32Array, inner: Float32Array) => Float32Array;

export interface AcousticModel {
  readonly onnx: OnnxModule;
  readonly session: OnnxSession;
  readonly description: AcousticDescription;
}

const SAMPLES = 'samples';
const FRAMES = 'log_probabilities';
const INNER = 'inner';
/** The state that says how loud the loudest was lately, in dB above silence. */
const LEVEL = 'level';
/**
 * From one utterance to the next: the next may be said more softly. A voice's faint first breath, heard at no level,
 * became a word too many ("undo liquid line at twenty eight") in 2 of 50 readings without a room around them, and in
 * 1 of 50 at 0, 6 and 12 dB below the utterance's own level.
 */
const LEVEL_LESS_DB = 6;
const after = (name: string): string => `${name}_after`;
/** 2 s at once: the network's inner maps of more would only fill the memory. */
const LONGEST_PORTION = 32_000;

export function createListener(model: AcousticModel): Listener {
  return new StreamListener(model);
}

class StreamListener implements Listener {
  readonly #model: AcousticModel;
  #state: Readonly<Record<string, OnnxTensor>>;
  #waiting = new Float32Array(0);
  /** Frames that speak of the time before the first sample. */
  #early: number;
  #change: FrameChange | null = null;

  constructor(model: AcousticModel) {
    this.#model = model;
    this.#state = this.#freshState();
    this.#early = this.#delayFrames();
  }

  readonly accept = async (samples: Float32Array): Promise<readonly Float32Array[]> => {
    const { samplesPerStep } = this.#model.description;
    const sound = joined([this.#waiting, samples]);
    const whole = sound.length - (sound.length % samplesPerStep);
    this.#waiting = sound.slice(whole);
    const longest = LONGEST_PORTION - (LONGEST_PORTION % samplesPerStep);
    const frames: Float32Array[] = [];
    for (let at = 0; at < whole; at += longest) {
      frames.push(...(await this.#run(sound.slice(at, Math.min(at + longest, whole)))));
    }
    return frames;
  };

  readonly flush = async (): Promise<readonly Float32Array[]> => {
    const { samplesPerStep, delaySamples } = this.#model.description;
    const missing = (samplesPerStep - (this.#waiting.length % samplesPerStep)) % samplesPerStep;
    const frames = await this.accept(new Float32Array(missing + delaySamples));
    this.reset();
    return frames;
  };

  readonly reset = (): void => {
    const level = this.#levelKept();
    this.forget();
    if (level !== null) this.#state = { ...this.#state, [LEVEL]: level };
  };

  readonly forget = (): void => {
    this.#state = this.#freshState();
    this.#waiting = new Float32Array(0);
    this.#early = this.#delayFrames();
  };

  readonly through = (change: FrameChange | null): void => {
    this.#change = change;
  };

  async #run(samples: Float32Array): Promise<readonly Float32Array[]> {
    const { onnx, session, description } = this.#model;
    const sound = new onnx.Tensor('float32', samples, [1, samples.length]);
    const outputs = await session.run({ [SAMPLES]: sound, ...this.#state });
    this.#state = Object.fromEntries(
      Object.keys(description.state).map((name) => [name, output(outputs, after(name))]),
    );
    const frames = cut(output(outputs, FRAMES).data, description.phones.length);
    const changed = this.#changed(frames, outputs);
    const early = Math.min(this.#early, changed.length);
    this.#early -= early;
    return changed.slice(early);
  }

  #changed(
    frames: readonly Float32Array[],
    outputs: Readonly<Record<string, OnnxTensor>>,
  ): readonly Float32Array[] {
    const [change, size] = [this.#change, this.#model.description.innerSize];
    if (change === null || size === 0) return frames;
    const inners = cut(output(outputs, INNER).data, size);
    return frames.map((frame, at) => change(frame, inners[at] ?? new Float32Array(size)));
  }

  #levelKept(): OnnxTensor | null {
    const { onnx, description } = this.#model;
    const level = this.#state[LEVEL]?.data;
    const shape = description.state[LEVEL];
    if (!(level instanceof Float32Array) || shape === undefined) return null;
    const less = level.map((each) => Math.max(0, each - LEVEL_LESS_DB));
    return new onnx.Tensor('float32', less, shape);
  }

  #freshState(): Readonly<Record<string, OnnxTensor>> {
    const { onnx, description } = this.#model;
    const zeros = (shape: readonly number[]): Float32Array =>
      new Float32Array(shape.reduce((product, size) => product * size, 1));
    return Object.fromEntries(
      Object.entries(description.state).map(([name, shape]) => [
        name,
        new onnx.Tensor('float32', zeros(shape), shape),
      ]),
    );
  }

  #delayFrames(): number {
    const { delaySamples, frameSamples } = this.#model.description;
    return delaySamples / frameSamples;
  }
}

function output(outputs: Readonly<Record<string, OnnxTensor>>, name: string): OnnxTensor {
  const tensor = outputs[name];
  if (tensor === undefined) throw new Error(`The acoustic model has no output named ${name}.`);
  return tensor;
}

function cut(data: unknown, classes: number): readonly Float32Array[] {
  if (!(data instanceof Float32Array)) throw new Error('The acoustic model gives no numbers.');
  return Array.from({ length: data.length / classes }, (_, frame) =>
    data.slice(frame * classes, (frame + 1) * classes),
  );
}
