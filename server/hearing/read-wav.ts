import { createResampler } from '../../core/hearing/resample.ts';

/** The sound of a file as the engine takes it, or what is wrong with the file and what to do. */
export type WavOutcome =
  | { readonly kind: 'sound'; readonly samples: Float32Array; readonly seconds: number }
  | { readonly kind: 'unreadable'; readonly reason: WavProblem; readonly message: string };

export type WavProblem = 'notWav' | 'notPcm16' | 'truncated' | 'empty';

const ADVICE: Readonly<Record<WavProblem, string>> = {
  notWav: 'This is not a WAV file: save the sound as WAV, 16-bit PCM.',
  notPcm16: 'This WAV file is not 16-bit PCM: save it again as 16-bit PCM.',
  truncated: 'This WAV file is cut off: copy or record it again.',
  empty: 'This WAV file holds no sound: record it again.',
};

interface Format {
  readonly channels: number;
  readonly rateHz: number;
}

const PCM = 1;
/** WAVE_FORMAT_EXTENSIBLE keeps the true format in the first two bytes of its sub-format. */
const EXTENSIBLE = 0xfffe;
const SUB_FORMAT_AT = 24;
const CHUNK_HEADER_BYTES = 8;
const BYTES_PER_SAMPLE = 2;
/** A stream writes its header before it knows its length, and then leaves this (as sox and ffmpeg do). */
const UNKNOWN_LENGTH = 0xffff_ff00;

/**
 * Reads a RIFF/WAVE file of 16-bit PCM at any rate with any number of channels: their mean, at
 * 16 kHz in −1..1 (Multimedia Programming Interface 1.0, IBM and Microsoft, 1991).
 */
export function readWav(bytes: Uint8Array): WavOutcome {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length === 0) return unreadable('empty');
  if (tag(view, 0) !== 'RIFF' || tag(view, 8) !== 'WAVE') return unreadable('notWav');
  let format: Format | null = null;
  let at = 12;
  while (at + CHUNK_HEADER_BYTES <= view.byteLength) {
    const name = tag(view, at);
    const length = view.getUint32(at + 4, true);
    const body = at + CHUNK_HEADER_BYTES;
    if (name === 'data')
      return format === null ? unreadable('notWav') : readData(view, body, format);
    if (body + length > view.byteLength) return unreadable('truncated');
    if (name === 'fmt ') {
      format = readFormat(view, body, length);
      if (format === null) return unreadable('notPcm16');
    }
    at = body + length + (length % 2);
  }
  return unreadable('truncated');
}

function readFormat(view: DataView, at: number, length: number): Format | null {
  if (length < 16) return null;
  const coded = view.getUint16(at, true);
  const extended = coded === EXTENSIBLE && length >= SUB_FORMAT_AT + 2;
  const coding = extended ? view.getUint16(at + SUB_FORMAT_AT, true) : coded;
  const channels = view.getUint16(at + 2, true);
  const rateHz = view.getUint32(at + 4, true);
  const bits = view.getUint16(at + 14, true);
  return coding === PCM && bits === 16 && channels > 0 && rateHz > 0 ? { channels, rateHz } : null;
}

function readData(view: DataView, at: number, format: Format): WavOutcome {
  const told = view.getUint32(at - 4, true);
  const there = view.byteLength - at;
  if (told > there && told < UNKNOWN_LENGTH) return unreadable('truncated');
  const frameBytes = format.channels * BYTES_PER_SAMPLE;
  const frames = Math.floor(Math.min(told, there) / frameBytes);
  if (frames === 0) return unreadable('empty');
  const mono = Float32Array.from({ length: frames }, (_, frame) =>
    meanOfChannels(view, at + frame * frameBytes, format.channels),
  );
  const samples = createResampler(format.rateHz)(mono);
  return samples.length === 0
    ? unreadable('empty')
    : { kind: 'sound', samples, seconds: frames / format.rateHz };
}

function meanOfChannels(view: DataView, at: number, channels: number): number {
  let sum = 0;
  for (let channel = 0; channel < channels; channel += 1) {
    sum += view.getInt16(at + channel * BYTES_PER_SAMPLE, true);
  }
  return sum / channels / 0x8000;
}

function tag(view: DataView, at: number): string {
  if (at + 4 > view.byteLength) return '';
  return String.fromCharCode(...[0, 1, 2, 3].map((offset) => view.getUint8(at + offset)));
}

const unreadable = (reason: WavProblem): WavOutcome => ({
  kind: 'unreadable',
  reason,
  message: ADVICE[reason],
});
