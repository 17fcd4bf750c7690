import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { readTable } from '../corpus/corpus.ts';
import { shortForm } from '../corpus/short-form.ts';

// Beside the corpus, of which a share must be heard: these rules are only understood, and no ear listens for them.

const LINES = readTable('seldom/told.tsv');

describe('what is seldom said', () => {
  it.each(LINES)('is understood all the same: $said', ({ said, meant, context }) => {
    expect(shortForm(understand(said, context))).toBe(meant);
  });
});

const NAMES = ['head', 'suction', 'superheat', 'subcooling', 'box', 'liquid line', 'product'];
const PRESSURES: readonly string[] = ['head', 'suction'];
const STEPS = [
  ...['{name} dropped six {unit}', "{name}'s down six {unit}", '{name} came up six {unit}'],
  ...[
    '{name} went up by six {unit}',
    '{name} is up six {unit}',
    '{name} fell six {unit} in an hour',
  ],
  ...['{name} climbed six {unit} since i started', '{name} has come down six {unit}'],
  ...["{name}'s six {unit} high", '{name} is six {unit} lower', '{name} is six {unit} over target'],
  ...['brought the {name} up six {unit}', 'lost six {unit} of {name}', '{name} is six {unit} off'],
];

describe('by how much something moved', () => {
  it.each(STEPS)('is no value of it: %s', (frame) => {
    const read = NAMES.flatMap((name) => {
      const unit = PRESSURES.includes(name) ? 'pounds' : 'degrees';
      const said = frame.replace('{name}', name).replace('{unit}', unit);
      const { readings, remarks } = understand(said, EMPTY_CONTEXT);
      return readings.length === 0 && remarks.length === 1 ? [] : [said];
    });
    expect(read).toEqual([]);
  });
});
