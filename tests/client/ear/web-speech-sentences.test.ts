import { describe, expect, it } from 'vitest';
import type { RecogniserReport } from '../../../client/ear/sentence-recogniser.ts';
import { createSentences } from '../../../client/ear/web-speech-sentences.ts';
import { createBench, GRAMMAR, loud, quiet } from '../../recogniser/harness.ts';
import { SilentTrack } from './silent-track.ts';

const alternatives = ['one', 'two', 'three', 'four', 'five', 'six'].map((word, rank) => ({
  words: `head ${word}`,
  confidence: 0.9 - rank / 10,
  wordConfidences: [],
}));

describe('a sentence through the standard’s interface', () => {
  it('brings every alternative that the choice can use, likeliest first, with its confidence', async () => {
    const bench = createBench({ hearings: [{ alternatives }] });
    const sentences = createSentences(bench.SpeechRecognition);
    const reports: RecogniserReport[] = [];
    sentences.start({
      track: new SilentTrack(),
      grammars: [{ text: GRAMMAR, weight: 1 }],
      report: (report) => reports.push(report),
    });
    await bench.settle();
    await bench.sound(quiet(1000), loud(1000), quiet(1500));
    expect(reports).toContainEqual({
      kind: 'words',
      alternatives: alternatives
        .slice(0, 5)
        .map(({ words, confidence }) => ({ words, confidence: Math.fround(confidence) })),
    });
  });

  it('brings what the sentence is taken for while it is said', async () => {
    const bench = createBench({ hearings: [{ alternatives }] });
    const sentences = createSentences(bench.SpeechRecognition);
    const reports: RecogniserReport[] = [];
    sentences.start({
      track: new SilentTrack(),
      grammars: [{ text: GRAMMAR, weight: 1 }],
      report: (report) => reports.push(report),
    });
    await bench.settle();
    await bench.sound(quiet(1000), loud(1000));
    bench.engine.guess('head');
    bench.engine.guess('head one');
    await bench.settle();
    await bench.sound(quiet(1500));
    const told = reports.filter(({ kind }) => kind === 'guess' || kind === 'words');
    expect(told.slice(0, 2)).toEqual([
      { kind: 'guess', words: 'head' },
      { kind: 'guess', words: 'head one' },
    ]);
    expect(told.map(({ kind }) => kind)).toEqual(['guess', 'guess', 'words']);
  });
});
