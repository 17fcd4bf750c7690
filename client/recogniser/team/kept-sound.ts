/** The sound of the utterance that grows, for an engine that has to begin anew. */
export interface KeptSound {
  readonly keep: (samples: Float32Array) => void;
  readonly all: () => readonly Float32Array[];
  readonly forget: () => void;
}

/** A minute at 16 kHz, 4 MB: twice the longest sentence. */
const MOST_SAMPLES = 960_000;

export function createKeptSound(): KeptSound {
  let parts: Float32Array[] = [];
  let samples = 0;
  return {
    keep: (part) => {
      if (samples + part.length > MOST_SAMPLES) return;
      samples += part.length;
      parts.push(part.slice());
    },
    all: () => parts,
    forget: () => {
      parts = [];
      samples = 0;
    },
  };
}
