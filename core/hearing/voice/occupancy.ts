import type { SoundLattice } from './sound-lattice.ts';

/** How a known sentence lies in the frames. */
export interface Occupancy {
  /** Chance of each sound in each frame, given that the sentence was said; frame by frame. */
  readonly chances: readonly Float64Array[];
  /** Log chance that the sounds of the sentence were said, nats; -Infinity where the frames are too few. */
  readonly logChance: number;
}

/** Forward and backward over the lattice (Graves et al., ICML 2006, eq. 5–16); frames are log posteriors. */
export function occupancy(frames: readonly Float32Array[], lattice: SoundLattice): Occupancy {
  const forward = forwards(frames, lattice);
  const last = forward.at(-1);
  const logChance = logSum(lattice.ends.map((state) => last?.[state] ?? -Infinity));
  if (!Number.isFinite(logChance)) return { chances: [], logChance: -Infinity };
  const backward = backwards(frames, lattice);
  const chances = frames.map((frame, at) => {
    const inFrame = new Float64Array(frame.length);
    lattice.sounds.forEach((sound, state) => {
      const log = (forward[at]?.[state] ?? -Infinity) + (backward[at]?.[state] ?? -Infinity);
      inFrame[sound] = (inFrame[sound] ?? 0) + Math.exp(log - logChance);
    });
    return inFrame;
  });
  return { chances, logChance };
}

/** Log chance of the frames up to each, ending in each state, that frame counted. */
function forwards(
  frames: readonly Float32Array[],
  { sounds, before, starts }: SoundLattice,
): readonly Float64Array[] {
  const rows: Float64Array[] = [];
  let known: Float64Array | null = null;
  for (const frame of frames) {
    const row = new Float64Array(sounds.length).fill(-Infinity);
    const earlier: Float64Array | null = known;
    for (const [state, sound] of sounds.entries()) {
      const come = earlier
        ? logSum((before[state] ?? []).map((from) => earlier[from] ?? -Infinity))
        : starts.includes(state)
          ? 0
          : -Infinity;
      row[state] = come + (frame[sound] ?? -Infinity);
    }
    rows.push(row);
    known = row;
  }
  return rows;
}

/** Log chance of the frames after each, beginning in each state. */
function backwards(
  frames: readonly Float32Array[],
  { sounds, before, ends }: SoundLattice,
): readonly Float64Array[] {
  const rows: Float64Array[] = [];
  let row = new Float64Array(sounds.length).fill(-Infinity);
  for (const end of ends) row[end] = 0;
  for (let at = frames.length - 1; at >= 0; at -= 1) {
    rows[at] = row;
    const earlier = new Float64Array(sounds.length).fill(-Infinity);
    for (const [state, sound] of sounds.entries()) {
      const go = (row[state] ?? -Infinity) + (frames[at]?.[sound] ?? -Infinity);
      for (const from of before[state] ?? []) {
        earlier[from] = logSum([earlier[from] ?? -Infinity, go]);
      }
    }
    row = earlier;
  }
  return rows;
}

export function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs);
  if (!Number.isFinite(most)) return -Infinity;
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}
