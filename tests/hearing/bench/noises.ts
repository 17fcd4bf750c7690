import { createNoise, fan, RATE_HZ, rms } from '../signals.ts';

/** Sounds of a kitchen and a roof that nobody speaks in. */
export const NOISES: Readonly<Record<string, (seconds: number, seed: number) => Float32Array>> = {
  fan,
  'fan that starts': (seconds, seed) => faded(fan(seconds, seed), (share) => share * 2 - 0.4),
  'fan that stops': (seconds, seed) => faded(fan(seconds, seed), (share) => 1.4 - share * 2),
  'compressor and hum': hum,
  clatter,
  melody,
  'melody beside a fan': (seconds, seed) => mixed(melody(seconds, seed), fan(seconds, seed + 1)),
  'clatter beside a fan': (seconds, seed) => mixed(clatter(seconds, seed), fan(seconds, seed + 1)),
};

/** As loud as `gain` says of each share of its length, between a whisper and full. */
function faded(sound: Float32Array, gain: (share: number) => number): Float32Array {
  return sound.map(
    (sample, index) => sample * Math.min(1, Math.max(0.01, gain(index / sound.length))),
  );
}

function mixed(one: Float32Array, other: Float32Array): Float32Array {
  const gain = rms(one) / rms(other);
  return one.map((sample, index) => sample + gain * (other[index] ?? 0));
}

/** Mains hum with its harmonics, each of its own loudness, beating a little. */
function hum(seconds: number, seed: number): Float32Array {
  const noise = createNoise(seed);
  const harmonics = Array.from({ length: 12 }, (_, at) => ({
    hertz: 60 * (at + 1) * (1 + 0.001 * noise()),
    gain: (0.5 + 0.5 * Math.abs(noise())) / (at + 1),
  }));
  return Float32Array.from({ length: Math.round(seconds * RATE_HZ) }, (_, index) => {
    const turn = (2 * Math.PI * index) / RATE_HZ;
    const sum = harmonics.reduce((all, { hertz, gain }) => all + gain * Math.sin(hertz * turn), 0);
    return 0.2 * sum + 0.02 * noise();
  });
}

/** Pans, wrenches and panels: knocks that ring at a few pitches and die away, some a second. */
function clatter(seconds: number, seed: number): Float32Array {
  const noise = createNoise(seed);
  const sound = new Float32Array(Math.round(seconds * RATE_HZ)).map(() => 0.002 * noise());
  for (
    let at = 0;
    at < sound.length;
    at += Math.round(RATE_HZ * (0.15 + 0.4 * Math.abs(noise())))
  ) {
    const pitches = [0, 1, 2].map(() => 300 + 3000 * Math.abs(noise()));
    const fall = 0.02 + 0.2 * Math.abs(noise());
    for (let index = 0; index < fall * 5 * RATE_HZ && at + index < sound.length; index += 1) {
      const time = index / RATE_HZ;
      const ring = pitches.reduce(
        (sum, hertz) => sum + Math.sin(2 * Math.PI * hertz * time),
        noise(),
      );
      sound[at + index] = (sound[at + index] ?? 0) + 0.15 * ring * Math.exp(-time / fall);
    }
  }
  return sound;
}

/** A radio's tune: notes of a scale with overtones, two at a time. */
function melody(seconds: number, seed: number): Float32Array {
  const noise = createNoise(seed);
  const sound = new Float32Array(Math.round(seconds * RATE_HZ));
  for (const octave of [130.8, 261.6]) {
    for (let at = 0; at < sound.length;) {
      const length = Math.round(RATE_HZ * (0.12 + 0.4 * Math.abs(noise())));
      const hertz = octave * 2 ** (Math.round(8 * noise()) / 12);
      for (let index = 0; index < length && at + index < sound.length; index += 1) {
        const turn = (2 * Math.PI * hertz * index) / RATE_HZ;
        const note = Math.sin(turn) + 0.5 * Math.sin(2 * turn) + 0.3 * Math.sin(3 * turn);
        sound[at + index] =
          (sound[at + index] ?? 0) + 0.15 * note * Math.exp((-3 * index) / length);
      }
      at += length;
    }
  }
  return sound;
}
