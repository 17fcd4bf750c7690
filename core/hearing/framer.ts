import { FRAME_SAMPLES } from './frame.ts';

/** Cuts portions of any length into whole frames; what is left waits for the next portion. */
export function createFramer(): (samples: Float32Array) => readonly Float32Array[] {
  let frame = new Float32Array(FRAME_SAMPLES);
  let filled = 0;
  return (samples) => {
    const frames: Float32Array[] = [];
    for (const sample of samples) {
      frame[filled] = sample;
      filled += 1;
      if (filled < FRAME_SAMPLES) continue;
      frames.push(frame);
      frame = new Float32Array(FRAME_SAMPLES);
      filled = 0;
    }
    return frames;
  };
}
