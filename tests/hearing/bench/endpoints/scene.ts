import { RATE_HZ, rms } from '../../signals.ts';
import { toPeak } from '../conditions.ts';
import type { Bed } from './beds.ts';

/** One sentence in the middle of a bed, and where its voice really begins and ends. */
export interface Scene {
  readonly sound: Float32Array;
  readonly beginMs: number;
  readonly endMs: number;
}

const AROUND_S = 3;
const CLEAN_SNR_DB = 50;

export interface Staging {
  readonly bed: Bed;
  /** Voice above the bed; null without one to speak of. */
  readonly snrDb: number | null;
  readonly seed: number;
}

export function sceneOf(speech: Float32Array, { bed, snrDb, seed }: Staging): Scene {
  const before = AROUND_S * RATE_HZ;
  const around = bed(2 * AROUND_S + speech.length / RATE_HZ, seed);
  const level = rms(speech) / rms(around) / 10 ** ((snrDb ?? CLEAN_SNR_DB) / 20);
  const sound = around.map((sample, at) => sample * level + (speech[at - before] ?? 0));
  const { first, last } = voiced(speech);
  const toMs = (sample: number): number => ((before + sample) * 1000) / RATE_HZ;
  return { sound: toPeak(sound), beginMs: toMs(first), endMs: toMs(last) };
}

const PIECE = 160;
/** 30 dB below the loudest 10 ms is a synthesiser's silence. */
const SILENT = 10 ** (-30 / 20);

function voiced(speech: Float32Array): { readonly first: number; readonly last: number } {
  const levels = Array.from({ length: Math.floor(speech.length / PIECE) }, (_, piece) =>
    rms(speech.subarray(piece * PIECE, (piece + 1) * PIECE)),
  );
  const least = Math.max(...levels) * SILENT;
  const isVoiced = (level: number): boolean => level > least;
  return {
    first: levels.findIndex(isVoiced) * PIECE,
    last: (levels.findLastIndex(isVoiced) + 1) * PIECE,
  };
}
