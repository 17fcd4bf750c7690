import type { Sounds } from '../sound-graph.ts';

/**
 * Every way to sound a known sentence, as states in the order of time: each is in a sound or on the blank, and may stay.
 * The same sound twice needs a blank between (connectionist temporal classification: Graves et al., ICML 2006).
 */
export interface SoundLattice {
  /** Index into the acoustic model's phones, by state; 0 is its blank. */
  readonly sounds: readonly number[];
  /** States that may come before each, itself among them. */
  readonly before: readonly (readonly number[])[];
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

const BLANK = 0;

/** Null where a word has no pronunciation, or one with a sound that the model does not know. */
export function soundLattice(words: readonly string[], sounds: Sounds): SoundLattice | null {
  const indices = new Map(sounds.phones.map((phone, index) => [phone, index]));
  const states: number[] = [BLANK];
  const before: number[][] = [[0]];
  const add = (sound: number, from: readonly number[]): number => {
    const state = states.push(sound) - 1;
    before.push([state, ...from]);
    return state;
  };
  /** What may follow `from`: the sound, and a rest after it. */
  const say = (from: readonly number[], sound: number): readonly number[] => {
    const state = add(
      sound,
      from.filter((each) => states[each] !== sound),
    );
    return [state, add(BLANK, [state])];
  };
  let ends: readonly number[] = [0];
  for (const word of words) {
    const variants = variantsOf(word, sounds, indices);
    if (variants === null) return null;
    const from = ends;
    ends = variants.flatMap((variant) => variant.reduce(say, from));
  }
  const starts = before.flatMap((from, state) =>
    state === 0 || (from.includes(0) && states[state] !== BLANK) ? [state] : [],
  );
  return { sounds: states, before, starts, ends };
}

function variantsOf(
  word: string,
  { pronunciations }: Sounds,
  indices: ReadonlyMap<string, number>,
): readonly (readonly number[])[] | null {
  const variants = Object.hasOwn(pronunciations, word) ? (pronunciations[word] ?? []) : [];
  const numbered = [...new Set(variants)].map((variant) =>
    variant.split(' ').flatMap((phone) => indices.get(phone) ?? []),
  );
  const isWhole = numbered.every(
    (phones, at) => phones.length === [...new Set(variants)][at]?.split(' ').length,
  );
  return numbered.length > 0 && isWhole ? numbered : null;
}
