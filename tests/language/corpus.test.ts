import { describe, expect, it } from 'vitest';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';
import { shortForm } from '../corpus/short-form.ts';

const corpus = readCorpus();

describe('the corpus of said and understood', () => {
  it('holds over a thousand sentences that mean something and of those that must not, each once in its context', () => {
    const empty = corpus.filter(({ meant }) =>
      /^(NOTHING|UNCLAIMED [-\d.]+(;UNCLAIMED [-\d.]+)*)$/.test(meant),
    );
    expect(corpus.length - empty.length).toBeGreaterThan(1200);
    expect(empty.length).toBeGreaterThanOrEqual(250);
    const keys = corpus.map((line) => JSON.stringify([line.said, line.context]));
    const twice = keys.filter((key, index) => keys.indexOf(key) !== index);
    expect(twice).toEqual([]);
  });

  it.each(corpus)('$where: $said', ({ said, meant, context }) => {
    const understood = understand(said, context);
    expect(shortForm(understood)).toBe(meant);
    expect(understood.text).toBe(said);
  });
});
