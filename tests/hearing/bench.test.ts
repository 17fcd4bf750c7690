import { join } from 'node:path';

import { describe, expect, it } from 'vitest';

import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { accepts } from './bench/accepts.ts';
import { signTest } from './bench/enrol/report-enrolment.ts';
import { type Job, jobs } from './bench/jobs.ts';
import { stretches } from './bench/listen/stretches.ts';
import { appendRows, readRows, type Row } from './bench/rows.ts';
import { sampleHeard } from './bench/sentences.ts';
import { isActedOn, isTaken, verdictOn } from './bench/verdict.ts';
import { wilson } from './bench/wilson.ts';

const heard = (...words: readonly string[]) => ({
  alternatives: words.map((each) => ({ words: each, confidence: 0.98, wordConfidences: [] })),
});

describe('the hearing benchmark', () => {
  it('counts an interval as published (Newcombe, Statistics in Medicine 17, 1998, table I, method 3)', () => {
    const published = [
      [81, 263, 0.2553, 0.3662],
      [15, 148, 0.0624, 0.1605],
      [0, 20, 0, 0.1611],
      [1, 29, 0.0061, 0.1718],
    ] as const;
    for (const [hits, of, low, high] of published) {
      expect(wilson(hits, of)[0]).toBeCloseTo(low, 4);
      expect(wilson(hits, of)[1]).toBeCloseTo(high, 4);
    }
  });

  it('tells gains from luck as a coin does', () => {
    // Of ten tosses, one or fewer heads or tails: 2 (1 + 10) / 1024.
    expect(signTest(9, 1)).toBeCloseTo(22 / 1024, 10);
    expect(signTest(1, 9)).toBeCloseTo(22 / 1024, 10);
    expect(signTest(0, 0)).toBe(1);
    expect(signTest(3, 3)).toBe(1);
  });

  it('samples the same sentences from the same seed, every other one a reading', () => {
    const sentences = sampleHeard(8, 3);
    expect(sampleHeard(8, 3)).toEqual(sentences);
    expect(sampleHeard(8, 4)).not.toEqual(sentences);
    for (const reading of sentences.filter((_, index) => index % 2 === 0)) {
      expect(isTaken(heard(reading))).toBe(true);
    }
  });

  it('tells which sentences a grammar holds', () => {
    const grammar = parseJsgf(
      '#JSGF V1.0;\ngrammar g;\n<n> = one | two;\npublic <g> = (head [is] <n>+ | no*) [<g>] | <VOID>;',
    );
    if (grammar.kind === 'malformed') throw new Error(grammar.message);
    const says = (text: string): boolean => accepts(grammar, text.split(' '));
    const held = ['head one', 'head is two one', 'no no head two no', 'head one head is two'];
    expect(held.filter((text) => !says(text))).toEqual([]);
    expect(['head', 'head is', 'one', 'head no', 'head one is'].filter(says)).toEqual([]);
  });

  const voices = ['one', 'other'].map((name) => ({
    name,
    heldOut: true,
    say: () => new Float32Array(320).fill(0.5),
  }));
  const jobsOf = (at: number, of: number): readonly Job[] => [
    ...jobs({ sentences: 9, minutes: 0.5, seed: 3, condition: '10 dB', voices, shard: { at, of } }),
  ];
  const nameOf = ({ kind, number, said, voice, condition }: Job): string =>
    [kind, number, said, voice, condition].join();

  it('hears the same whether in one process or divided among several', () => {
    const whole = jobsOf(0, 1).map(nameOf);
    const divided = [0, 1, 2].flatMap((at) => jobsOf(at, 3).map(nameOf));
    expect(divided.toSorted()).toEqual(whole.toSorted());
    expect(new Set(whole).size).toBe(whole.length);
    expect(whole.filter((name) => name.startsWith('ours'))).toHaveLength(18);
  });

  it('makes the same sound again, talk and noise alike', () => {
    const energies = (): readonly number[] =>
      jobsOf(0, 3).map(({ sound }) => sound().reduce((sum, sample) => sum + sample ** 2, 0));
    const found = energies();
    expect(energies()).toEqual(found);
    expect(found.every((energy) => energy > 0 && Number.isFinite(energy))).toBe(true);
  });

  it('keeps what was heard to a thousandth, run after run', async () => {
    const folder = await createScratchFolder();
    const row: Row = {
      ...{ kind: 'ours', number: 3, said: 'head', voice: 'one', heldOut: true, condition: 'clean' },
      ...{ seconds: 1.23456, cpuSeconds: { neural: 0.1, opinion: 0, embedded: 0.2 }, snrDb: null },
      ranking: { hypotheses: [], opinion: null, asked: true, peak: 0.5, voiced: true },
      embedded: { alternatives: [] },
    };
    const file = join(folder.path, 'rows.gz');
    appendRows(file, [row]);
    appendRows(file, [{ ...row, number: 4 }]);
    expect(readRows([file])).toEqual([3, 4].map((number) => ({ ...row, number, seconds: 1.235 })));
    await folder.discard();
  });

  it('listens to the same noise and talk whether in one process or divided among several', () => {
    const namesOf = (at: number, of: number): readonly string[] =>
      [...stretches({ minutes: 8, seed: 3, voices, shard: { at, of } })].map(
        ({ kind, number, bed }) => [kind, number, bed].join(),
      );
    const whole = namesOf(0, 1);
    const divided = [0, 1, 2].flatMap((at) => namesOf(at, 3));
    expect(divided.toSorted()).toEqual(whole.toSorted());
    expect(new Set(whole).size).toBe(32);
    for (const [kind, bed] of [
      ['noise', 'compressor and hum'],
      ['talk', 'far talk beside a fan'],
      ['talk', 'talk, 0 dB, 16 kHz'],
    ]) {
      expect(
        whole.filter((name) => name.startsWith(`${kind},`) && name.endsWith(`,${bed}`)),
      ).not.toEqual([]);
    }
  });

  it('makes half a minute of each, never silent', () => {
    for (const { sound } of stretches({ minutes: 0.5, seed: 3, voices, shard: { at: 0, of: 1 } })) {
      const samples = sound();
      expect(samples.length / 16_000).toBeGreaterThanOrEqual(30);
      expect(samples.reduce((sum, sample) => sum + sample ** 2, 0)).toBeGreaterThan(1);
    }
  });

  it('tells what would be acted on from what would not', () => {
    expect(isActedOn(heard('head one ninety two'))).toBe(true);
    expect(isActedOn(heard('what should head be'))).toBe(true);
    expect(isActedOn({ ...heard('head one ninety two'), rejected: 'unsure' })).toBe(false);
    expect(isActedOn(heard())).toBe(false);
  });

  it('judges by what was meant', () => {
    expect(verdictOn('head one ninety two', heard('head is one hundred ninety two'))).toBe('exact');
    expect(verdictOn('head one ninety two', heard('head one ninety three'))).toBe('wrong');
    expect(verdictOn('suction fourteen', heard('suction nine hundred'))).toBe('asked');
    expect(verdictOn('suction fourteen', { ...heard('suction ten'), rejected: 'unsure' })).toBe(
      'rejected',
    );
    expect(verdictOn('suction fourteen', heard())).toBe('rejected');
  });
});
