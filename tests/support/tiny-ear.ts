import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

import { PHONES } from '../../core/hearing/garbage.ts';
import { attribute, FLOAT, floats, INT64, integers, node, onnxFile, shaped } from './onnx-parts.ts';

/**
 * An acoustic model of a few kilobytes with the port of a trained one: the mean of each 20 ms says the phone,
 * and what comes out is 40 ms late, which takes a state. So a sentence can be "spoken" exactly.
 */
const STEP = 640;
const FRAME = 320;
const DELAY = 640;
const CLASSES = PHONES.length + 1;
/** Levels of neighbouring phones lie this far apart, and such a step is worth eight nats. */
const APART = 0.02;
const SHARPNESS = 8 / APART ** 2;

const levelOf = (phone: number): number => phone * APART;

function tinyEar(): Uint8Array {
  const levels = Array.from({ length: CLASSES }, (_, phone) => levelOf(phone));
  return onnxFile({
    nodes: [
      node('Concat', ['late', 'samples'], 'heard', attribute('axis', 1)),
      node('Slice', ['heard', 'first', 'delay_back', 'axis'], 'due'),
      node('Slice', ['heard', 'delay_back', 'last', 'axis'], 'late_after'),
      node('Reshape', ['due', 'in_frames'], 'framed'),
      node('MatMul', ['framed', 'slopes'], 'sloped'),
      node('Add', ['sloped', 'offsets'], 'scores'),
      node('LogSoftmax', ['scores'], 'log_probabilities', attribute('axis', 2)),
      // What it is sure of is its inner layer, too: so a voice can be taught to it.
      node('Exp', ['log_probabilities'], 'inner'),
    ],
    tensors: [
      integers('first', [0]),
      integers('delay_back', [-DELAY]),
      integers('last', [2 ** 31]),
      integers('axis', [1]),
      integers('in_frames', [1, -1, FRAME]),
      floats(
        'slopes',
        [FRAME, CLASSES],
        Array.from({ length: FRAME }, () =>
          levels.map((level) => (2 * SHARPNESS * level) / FRAME),
        ).flat(),
      ),
      floats(
        'offsets',
        [CLASSES],
        levels.map((level) => -SHARPNESS * level ** 2),
      ),
    ],
    inputs: [shaped('samples', FLOAT, [1, 'samples']), shaped('late', FLOAT, [1, DELAY])],
    outputs: [
      shaped('log_probabilities', FLOAT, [1, 'frames', CLASSES]),
      shaped('inner', FLOAT, [1, 'frames', CLASSES]),
      shaped('late_after', FLOAT, [1, DELAY]),
    ],
  });
}

const DESCRIPTION = {
  edition: 'tiny',
  innerSize: CLASSES,
  phones: PHONES,
  sampleRate: 16_000,
  samplesPerStep: STEP,
  frameSamples: FRAME,
  delaySamples: DELAY,
  state: { late: [1, DELAY] },
};

/** A voice detector of a kilobyte with the port of the trained one: the loudest sample is the chance. */
export function tinyVoiceDetector(): Uint8Array<ArrayBuffer> {
  return new Uint8Array(
    onnxFile({
      nodes: [
        node('Identity', ['state'], 'stateN'),
        node('ReduceMax', ['input'], 'output', attribute('keepdims', 1)),
      ],
      tensors: [],
      inputs: [
        shaped('input', FLOAT, [1, 'samples']),
        shaped('state', FLOAT, [2, 1, 128]),
        shaped('sr', INT64, [1]),
      ],
      outputs: [shaped('output', FLOAT, [1, 1]), shaped('stateN', FLOAT, [2, 1, 128])],
    }),
  );
}

/** Writes it as the neural engine's folder holds its model. */
export async function writeTinyEar(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'model.onnx'), tinyEar());
  await writeFile(join(folder, 'model.json'), JSON.stringify(DESCRIPTION));
}

const FRAMES_A_PHONE = 3;

/** What the tiny ear hears as these phones ("F AO R"), a rest after each and around them all. */
export function sayPhones(phones: string): Float32Array {
  const indices = phones.split(' ').map((name) => PHONES.findIndex((each) => each === name) + 1);
  const frames = [
    0,
    0,
    ...indices.flatMap((phone) => [...Array<number>(FRAMES_A_PHONE).fill(phone), 0]),
    0,
    0,
  ];
  return Float32Array.from(frames.flatMap((phone) => Array<number>(FRAME).fill(levelOf(phone))));
}
