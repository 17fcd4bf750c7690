import { describe, expect, it } from 'vitest';
import { last } from '../support/last-turn.ts';

const WAYS = ['is that good', 'that good?', 'that ok', 'is that any good', 'we good?', 'good?'];

const verdictOf = (first: string, ...more: readonly string[]): unknown =>
  last(first, ...more).verdicts;

describe('whether it is good', () => {
  it.each(WAYS)('is asked of the rise of a vacuum: %s', (asked) => {
    const said = ['down to three eighty microns', 'valved off, five minutes in, four twenty'];
    expect(JSON.stringify(verdictOf('r one thirty four a', ...said, asked))).toContain(
      '"answer":"vacuumHold"',
    );
  });

  it.each(WAYS)('is asked of what a heater draws, and not of the compressor: %s', (asked) => {
    const said = ['heater reads twenty one ohms', 'heater is pulling ten amps'];
    expect(JSON.stringify(verdictOf('two ten at the heater terminals', ...said, asked))).toContain(
      '"finding":"asExpected"',
    );
  });

  it.each(WAYS)('is asked of a test that stands: %s', (asked) => {
    expect(JSON.stringify(verdictOf('nitrogen test at one fifty', asked))).toContain(
      'testPressure',
    );
  });
});
