import { describe, expect, it } from 'vitest';

import { readWav, type WavProblem } from '../../server/hearing/read-wav.ts';

interface Shape {
  readonly rateHz?: number;
  readonly channels?: number;
  readonly bits?: number;
  readonly coding?: number;
  /** A chunk before the sound, as recorders write them. */
  readonly before?: Buffer;
  readonly told?: number;
}

function wav(values: readonly number[], shape: Shape = {}): Buffer {
  const { rateHz = 16_000, channels = 1, bits = 16, coding = 1 } = shape;
  const data = Buffer.alloc(values.length * 2);
  values.forEach((value, index) => data.writeInt16LE(value, index * 2));
  const fmt = Buffer.alloc(24);
  fmt.write('fmt ', 0);
  fmt.writeUInt32LE(16, 4);
  fmt.writeUInt16LE(coding, 8);
  fmt.writeUInt16LE(channels, 10);
  fmt.writeUInt32LE(rateHz, 12);
  fmt.writeUInt32LE((rateHz * channels * bits) / 8, 16);
  fmt.writeUInt16LE((channels * bits) / 8, 20);
  fmt.writeUInt16LE(bits, 22);
  const head = Buffer.alloc(8);
  head.write('data', 0);
  head.writeUInt32LE(shape.told ?? data.length, 4);
  const body = Buffer.concat([fmt, shape.before ?? Buffer.alloc(0), head, data]);
  const riff = Buffer.alloc(12);
  riff.write('RIFF', 0);
  riff.writeUInt32LE(body.length + 4, 4);
  riff.write('WAVE', 8);
  return Buffer.concat([riff, body]);
}

const samplesOf = (bytes: Buffer): readonly number[] => {
  const outcome = readWav(bytes);
  if (outcome.kind === 'unreadable') throw new Error(outcome.message);
  return [...outcome.samples];
};

describe('readWav', () => {
  it('scales 16-bit samples to −1..1', () => {
    expect(samplesOf(wav([0, 16_384, -32_768]))).toEqual([0, 0.5, -1]);
  });

  it('takes the mean of the channels', () => {
    expect(samplesOf(wav([16_384, 0, -16_384, -16_384], { channels: 2 }))).toEqual([0.25, -0.5]);
  });

  it.each([8_000, 22_050, 48_000])('brings %i Hz to 16 kHz', (rateHz) => {
    const second = Array.from({ length: rateHz }, () => 8_192);
    const samples = samplesOf(wav(second, { rateHz }));
    expect(Math.abs(samples.length - 16_000)).toBeLessThan(4);
    expect(samples.every((sample) => Math.abs(sample - 0.25) < 1e-6)).toBe(true);
  });

  it('skips other chunks, the odd-sized with their padding byte', () => {
    const note = Buffer.from('LIST\u0003\u0000\u0000\u0000abc\u0000', 'latin1');
    expect(samplesOf(wav([16_384], { before: note }))).toEqual([0.5]);
  });

  it('reads to the end where a stream could not tell its length', () => {
    expect(samplesOf(wav([16_384, 0], { told: 0xffff_ffff }))).toEqual([0.5, 0]);
  });

  const WRONG: readonly {
    readonly what: string;
    readonly bytes: Buffer;
    readonly reason: WavProblem;
    readonly advice: RegExp;
  }[] = [
    { what: 'no bytes', bytes: Buffer.alloc(0), reason: 'empty', advice: /record it again/ },
    { what: 'text', bytes: Buffer.from('head one ninety'), reason: 'notWav', advice: /as WAV/ },
    { what: '8-bit', bytes: wav([0], { bits: 8 }), reason: 'notPcm16', advice: /16-bit PCM/ },
    { what: 'MP3', bytes: wav([0], { coding: 0x55 }), reason: 'notPcm16', advice: /16-bit PCM/ },
    { what: 'no sound', bytes: wav([]), reason: 'empty', advice: /holds no sound/ },
    {
      what: 'a file cut in its sound',
      bytes: wav([1, 2, 3, 4]).subarray(0, -3),
      reason: 'truncated',
      advice: /cut off/,
    },
    {
      what: 'a file cut in its header',
      bytes: wav([1]).subarray(0, 30),
      reason: 'truncated',
      advice: /cut off/,
    },
  ];
  it.each(WRONG)('refuses $what and says what to do', ({ bytes, reason, advice }) => {
    const outcome = readWav(bytes);
    expect(outcome).toMatchObject({ kind: 'unreadable', reason });
    expect(outcome.kind === 'unreadable' && outcome.message).toMatch(advice);
  });
});
