import { fan, RATE_HZ, rms } from '../signals.ts';

/** Where a sentence is said. */
export interface Condition {
  /** Speech above the fan in dB; null without one. */
  readonly snrDb: number | null;
  /** What the microphone passes on: 8 is a telephone's or an old headset's. */
  readonly bandKhz: 16 | 8;
}

export const CONDITIONS: readonly Condition[] = ([16, 8] as const).flatMap((bandKhz) =>
  [null, 20, 15, 10, 5].map((snrDb) => ({ snrDb, bandKhz })),
);

/** Louder than the product works in: heard only when asked for by name, to see where it must say so. */
export const TOO_LOUD: readonly Condition[] = [0, -5].map((snrDb) => ({ snrDb, bandKhz: 16 }));

export const nameOf = ({ snrDb, bandKhz }: Condition): string =>
  `${snrDb === null ? 'clean' : `${snrDb} dB`}, ${bandKhz} kHz`;

/** Room before and after the sentence, as the page's endpointer leaves it. */
const BEFORE_S = 0.5;
const AFTER_S = 0.7;
/** A room is never digitally silent. */
const CLEAN_SNR_DB = 50;
const PEAK = 0.4;

/** The sentence as it comes from the microphone. */
export function staged(speech: Float32Array, { snrDb, bandKhz }: Condition, seed: number) {
  const noise = fan(BEFORE_S + AFTER_S + speech.length / RATE_HZ, seed);
  const gain = rms(speech) / rms(noise) / 10 ** ((snrDb ?? CLEAN_SNR_DB) / 20);
  const start = Math.round(BEFORE_S * RATE_HZ);
  const mixed = noise.map((sample, index) => sample * gain + (speech[index - start] ?? 0));
  return toPeak(bandKhz === 8 ? narrow(mixed) : mixed);
}

/** As loud as a recorder makes it. */
export function toPeak(samples: Float32Array): Float32Array {
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 1e-6);
  return samples.map((sample) => (sample / peak) * PEAK);
}

const TAPS = 127;
const CUTOFF_HZ = 3600;

/** What an 8 kHz microphone leaves: a windowed-sinc low pass (Hamming), 6 dB down at 3.6 kHz. */
function narrow(samples: Float32Array): Float32Array {
  const middle = (TAPS - 1) / 2;
  const taps = Array.from({ length: TAPS }, (_, tap) => {
    const turn = (2 * Math.PI * CUTOFF_HZ * (tap - middle)) / RATE_HZ;
    const sinc = tap === middle ? 1 : Math.sin(turn) / turn;
    const hamming = 0.54 - 0.46 * Math.cos((2 * Math.PI * tap) / (TAPS - 1));
    return (2 * CUTOFF_HZ * sinc * hamming) / RATE_HZ;
  });
  return samples.map((_, index) =>
    taps.reduce((sum, tap, at) => sum + tap * (samples[index + at - middle] ?? 0), 0),
  );
}
