import { type Correction, correctFrame } from './correct-frame.ts';
import { minimise, type Slope } from './minimise.ts';
import { occupancy } from './occupancy.ts';
import type { SoundLattice } from './sound-lattice.ts';

/** One sentence that is known, as the network heard it. */
export interface Lesson {
  readonly frames: readonly Float32Array[];
  /** What the network's last inner layer held, frame by frame. */
  readonly inners: readonly Float32Array[];
  readonly lattice: SoundLattice;
}

export interface FitSettings {
  /** Pulls the correction back to none, for each inner weight and for each constant. */
  readonly restraint: number;
  readonly restraintOfConstants: number;
  /** How often it is worked out anew where each sound lies; and the steps downhill each time. */
  readonly rounds: number;
  readonly steps: number;
}

const LEAST_GAIN = 1e-4;
/** Chances closer than this to what they should be teach nothing worth the time. */
const NEAR = 1e-4;

/**
 * The correction under which the known sentences are likeliest, held back from leaving what it was: expectation (where
 * each sound lies under the correction so far) and maximisation in turns. Each maximisation is a convex problem.
 */
export function fitCorrection(
  lessons: readonly Lesson[],
  size: Pick<Correction, 'sounds' | 'inner'>,
  settings: FitSettings,
): Correction {
  let weights = new Float64Array(size.sounds * (size.inner + 1));
  for (let round = 0; round < settings.rounds; round += 1) {
    const targets = lessons.map((lesson) => chancesOf(lesson, { ...size, weights }));
    const slope = slopeOf(lessons, targets, { ...size, ...settings });
    const found = minimise(slope, weights, { steps: settings.steps, least: LEAST_GAIN });
    weights = new Float64Array(found);
  }
  return { ...size, weights };
}

/** Log chance of the known sentences together, nats: 0 if the network was sure of all of them. */
export function logChanceOf(lessons: readonly Lesson[], correction: Correction | null): number {
  return lessons.reduce((sum, lesson) => {
    const frames = correction === null ? lesson.frames : corrected(lesson, correction);
    return sum + occupancy(frames, lesson.lattice).logChance;
  }, 0);
}

const corrected = ({ frames, inners }: Lesson, correction: Correction): readonly Float32Array[] =>
  frames.map((frame, at) => correctFrame(correction, frame, inners[at] ?? new Float32Array(0)));

const chancesOf = (lesson: Lesson, correction: Correction): readonly Float64Array[] =>
  occupancy(corrected(lesson, correction), lesson.lattice).chances;

type Sizes = Pick<Correction, 'sounds' | 'inner'> & FitSettings;

/** Cross entropy of the corrected posteriors against the targets, and the restraint. */
function slopeOf(
  lessons: readonly Lesson[],
  targets: readonly (readonly Float64Array[])[],
  sizes: Sizes,
): Slope {
  return (weights) => {
    const gradient = new Float64Array(weights.length);
    let value = restrained(weights, gradient, sizes);
    for (const [number, { frames, inners }] of lessons.entries()) {
      for (const [at, frame] of frames.entries()) {
        const [inner, target] = [inners[at], targets[number]?.[at]];
        if (!inner || !target) continue;
        const now = correctFrame({ ...sizes, weights }, frame, inner);
        value += learn({ now, inner, target }, gradient);
      }
    }
    return { value, gradient };
  };
}

interface FrameLesson {
  readonly now: Float32Array;
  readonly inner: Float32Array;
  readonly target: Float64Array;
}

/** Adds one frame's gradient; gives its cross entropy. */
function learn({ now, inner, target }: FrameLesson, gradient: Float64Array): number {
  const row = inner.length + 1;
  let entropy = 0;
  for (let sound = 0; sound < now.length; sound += 1) {
    const wanted = target[sound] ?? 0;
    const log = now[sound] ?? 0;
    if (wanted > 0) entropy -= wanted * log;
    const over = Math.exp(log) - wanted;
    if (Math.abs(over) < NEAR) continue;
    const from = sound * row;
    for (let at = 0; at < inner.length; at += 1) {
      gradient[from + at] = (gradient[from + at] ?? 0) + over * (inner[at] ?? 0);
    }
    gradient[from + inner.length] = (gradient[from + inner.length] ?? 0) + over;
  }
  return entropy;
}

function restrained(weights: Float64Array, gradient: Float64Array, sizes: Sizes): number {
  const row = sizes.inner + 1;
  return weights.reduce((sum, weight, at) => {
    const isConstant = at % row === sizes.inner;
    const restraint = isConstant ? sizes.restraintOfConstants : sizes.restraint;
    gradient[at] = restraint * weight;
    return sum + (restraint * weight * weight) / 2;
  }, 0);
}
