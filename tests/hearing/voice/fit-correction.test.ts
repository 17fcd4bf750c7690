import { describe, expect, it } from 'vitest';

import { correctFrame } from '../../../core/hearing/voice/correct-frame.ts';
import {
  fitCorrection,
  type Lesson,
  logChanceOf,
} from '../../../core/hearing/voice/fit-correction.ts';
import { soundLattice } from '../../../core/hearing/voice/sound-lattice.ts';

const PHONES = ['', 'A', 'B', 'C'];
const PRONUNCIATIONS = { ab: ['A B'], ac: ['A C'], b: ['B'], c: ['C'] };
const UNRESTRAINED = { restraint: 1e-9, restraintOfConstants: 1e-9, rounds: 3, steps: 60 };

/** A frame a sound: there is one way only for the sounds to lie. */
function lesson(sentence: string, frames: readonly Float32Array[], inners: readonly number[]) {
  const sounds = { pronunciations: PRONUNCIATIONS, phones: PHONES };
  const lattice = soundLattice(sentence.split(' '), sounds);
  if (lattice === null) throw new Error('no lattice');
  return { frames, lattice, inners: inners.map((each) => Float32Array.of(each)) } satisfies Lesson;
}

const sure = (sound: number, chance = 0.9): Float32Array =>
  Float32Array.from(PHONES, (_, at) =>
    Math.log(at === sound ? chance : (1 - chance) / (PHONES.length - 1)),
  );
/** One frame of the sound, or of nothing said. */
function ofOneSound(phone: string, frame: Float32Array): Lesson {
  const sounds = { pronunciations: { one: [phone] }, phones: PHONES };
  const lattice = soundLattice(phone === '' ? [] : ['one'], sounds);
  if (lattice === null) throw new Error('no lattice');
  return { frames: [frame], inners: [Float32Array.of(0)], lattice };
}

function biased(frame: Float32Array, bias: readonly number[]): Float32Array {
  const raw = frame.map((log, at) => log + (bias[at] ?? 0));
  const norm = Math.log(raw.reduce((sum, each) => sum + Math.exp(each), 0));
  return raw.map((log) => log - norm);
}

const UNIFORM = Float32Array.from(PHONES, () => Math.log(1 / PHONES.length));
const SIZE = { sounds: PHONES.length, inner: 1 };

describe('correctFrame', () => {
  it('is the softmax of the scores with what was added to them', () => {
    const weights = Float32Array.of(0, 0, 1, 0.5, 0, 0, -2, 0);
    const corrected = correctFrame({ weights, ...SIZE }, sure(1), Float32Array.of(3));
    // Of the first sound 0 × 3 + 0, of the second 1 × 3 + 0.5, and so on.
    const wanted = biased(sure(1), [0, 3.5, 0, -6]);
    corrected.forEach((log, at) => expect(log).toBeCloseTo(wanted[at] ?? NaN, 5));
  });
});

describe('fitCorrection', () => {
  it('finds the constants that a voice lacks: of a network that knows nothing, the logarithms of how often', () => {
    // Three A, two B and one C: of all constants these shares are the likeliest.
    const lessons = ['ab', 'ac', 'ab'].map((said) => lesson(said, [UNIFORM, UNIFORM], [0, 0]));
    const correction = fitCorrection(lessons, SIZE, UNRESTRAINED);
    const shares = [...correctFrame(correction, UNIFORM, Float32Array.of(0))].map(Math.exp);
    [0, 3 / 6, 2 / 6, 1 / 6].forEach((share, at) => expect(shares[at]).toBeCloseTo(share, 2));
  });

  it('finds a known bias: what the network hears too much and too little of a voice', () => {
    const bias = [0, 1.5, -1, 0.5];
    const heard = PHONES.map((_, sound) => biased(sure(sound), bias));
    // Of thirty frames of each, as many are each sound as the posteriors without the bias say.
    const lessons = heard.flatMap((frame, sound) =>
      PHONES.flatMap((phone, other) =>
        Array.from({ length: other === sound ? 27 : 1 }, () => ofOneSound(phone, frame)),
      ),
    );
    const { weights } = fitCorrection(lessons, SIZE, UNRESTRAINED);
    const constants = PHONES.map((_, sound) => weights[2 * sound + 1] ?? NaN);
    constants.forEach((constant, sound) =>
      expect(constant - (constants[0] ?? NaN)).toBeCloseTo(-(bias[sound] ?? NaN), 2),
    );
  });

  it('learns what the inner layer tells: a voice whose B sounds like C to the network', () => {
    const heardAsC = lesson('ab', [sure(1), sure(3)], [0, 1]);
    const realC = lesson('ac', [sure(1), sure(3)], [0, -1]);
    const settings = { ...UNRESTRAINED, restraint: 0.01 };
    const correction = fitCorrection([heardAsC, realC], SIZE, settings);
    const likeliest = (inner: number): number => {
      const frame = correctFrame(correction, sure(3), Float32Array.of(inner));
      return frame.indexOf(Math.max(...frame));
    };
    expect([likeliest(1), likeliest(-1)]).toEqual([2, 3]);
    expect(logChanceOf([heardAsC, realC], correction)).toBeGreaterThan(
      logChanceOf([heardAsC, realC], null),
    );
  });

  it('leaves everything as it was when it may not move', () => {
    const held = { ...UNRESTRAINED, restraint: 1e9, restraintOfConstants: 1e9 };
    const { weights } = fitCorrection([lesson('ab', [sure(1), sure(3)], [0, 1])], SIZE, held);
    expect(Math.max(...weights.map(Math.abs))).toBeLessThan(1e-6);
  });
});
