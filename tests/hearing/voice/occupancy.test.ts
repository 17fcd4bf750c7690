import { describe, expect, it } from 'vitest';

import { occupancy } from '../../../core/hearing/voice/occupancy.ts';
import { type SoundLattice, soundLattice } from '../../../core/hearing/voice/sound-lattice.ts';
import { seeded } from '../../language/random.ts';

const PHONES = ['', 'A', 'B', 'C'];
const PRONUNCIATIONS = { ab: ['A B'], b: ['B'], either: ['A', 'B C'], odd: ['A Q'] };

function latticeOf(sentence: string): SoundLattice {
  const sounds = { pronunciations: PRONUNCIATIONS, phones: PHONES };
  const lattice = soundLattice(sentence.split(' '), sounds);
  if (lattice === null) throw new Error('no lattice');
  return lattice;
}

function frames(count: number, seed: number): readonly Float32Array[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const raw = PHONES.map(() => random() + 0.05);
    const sum = raw.reduce((total, each) => total + each, 0);
    return Float32Array.from(raw, (each) => Math.log(each / sum));
  });
}

/** Every row of labels that the frames could have, said once while they last, blanks left out. */
function byHand(rows: readonly Float32Array[], wanted: readonly string[]) {
  const collapse = (labels: readonly number[]): string =>
    labels
      .filter((label, at) => label !== 0 && label !== labels[at - 1])
      .map((label) => PHONES[label])
      .join(' ');
  const chances = rows.map((row) => Array.from(row, () => 0));
  let sum = 0;
  const visit = (labels: readonly number[]): void => {
    if (labels.length < rows.length) {
      for (const label of PHONES.keys()) visit([...labels, label]);
      return;
    }
    if (!wanted.includes(collapse(labels))) return;
    const log = labels.reduce((total, label, at) => total + (rows[at]?.[label] ?? 0), 0);
    sum += Math.exp(log);
    labels.forEach((label, at) => {
      const row = chances[at];
      if (row) row[label] = (row[label] ?? 0) + Math.exp(log);
    });
  };
  visit([]);
  return { chance: sum, chances: chances.map((row) => row.map((each) => each / sum)) };
}

describe('where the sounds of a known sentence lie', () => {
  it.each([
    ['ab', ['A B']],
    ['b b', ['B B']],
    ['ab b', ['A B B']],
    ['either b', ['A B', 'B C B']],
  ] as const)('is as every row of labels has it: %s', (sentence, wanted) => {
    const rows = frames(5, sentence.length);
    const truth = byHand(rows, wanted);
    const { logChance, chances } = occupancy(rows, latticeOf(sentence));
    expect(Math.exp(logChance)).toBeCloseTo(truth.chance, 6);
    chances.forEach((row, at) =>
      row.forEach((each, sound) => expect(each).toBeCloseTo(truth.chances[at]?.[sound] ?? NaN, 6)),
    );
  });

  it('is nowhere in too few frames', () => {
    expect(occupancy(frames(2, 1), latticeOf('ab b'))).toEqual({
      chances: [],
      logChance: -Infinity,
    });
  });

  it('is unknown of a word that nobody can sound', () => {
    const sounds = { pronunciations: PRONUNCIATIONS, phones: PHONES };
    expect(soundLattice(['ab', 'unheard'], sounds)).toBeNull();
    expect(soundLattice(['odd'], sounds)).toBeNull();
  });
});
