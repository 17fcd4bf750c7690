import { SAMPLE_RATE_HZ } from './engine-parameters.ts';

/** Sound is looked at in pieces of this length. */
export const FRAME_MS = 20;
export const FRAME_SAMPLES = (SAMPLE_RATE_HZ * FRAME_MS) / 1000;
