/** Which engines hear: both, the neural one deciding; or one of them alone. */
export type EngineAlone = 'neural' | 'embedded';
export type EngineUse = 'both' | EngineAlone;

/** What was chosen by hand; automatic leaves it to what the device affords. */
export const ENGINE_WISHES = ['automatic', 'both', 'neural', 'embedded'] as const;
export type EngineWish = (typeof ENGINE_WISHES)[number];

/** What there is to hear with. Browsers other than Chromium do not tell the memory. */
export interface Device {
  readonly cores: number;
  readonly memoryGb: number | null;
}

/**
 * The second engine takes 50 MB, and all its time (0.02 of the sound's, where the neural one takes 0.16) between the end of
 * a sentence and its words: a device whose own engine is already at a third of the sound's time has none to spare.
 */
const SPARE = { cores: 2, memoryGb: 2, pace: 0.33 } as const;

/** By what the device is and how fast it heard, never by what it is called. Too slow for one is too slow for both. */
export function affordedUse(device: Device, pace: number | null): EngineUse {
  const { cores, memoryGb } = device;
  const spare =
    cores >= SPARE.cores &&
    (memoryGb === null || memoryGb >= SPARE.memoryGb) &&
    pace !== null &&
    pace <= SPARE.pace;
  return spare ? 'both' : 'neural';
}
