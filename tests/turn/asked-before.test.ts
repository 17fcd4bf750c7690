import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const reply = (...words: readonly string[]): string =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said])).last.reply.text;

const VISIT = [
  "it's a reach in on one thirty four a with a txv",
  'head two thirty, suction nine',
  "that's my before",
  'brushed the condenser',
  'head one ninety, suction fifteen',
];

describe('what it was before the work', () => {
  it.each([
    'what was the suction before',
    'what did i have for suction before',
    'what did the suction start at',
  ])('is told of the one reading that was asked for: %s', (question) => {
    expect(reply(...VISIT, question)).toMatch(/^Before: suction 9 psi\.?$/);
  });

  it('is told of all where none is named', () => {
    expect(reply(...VISIT, 'what was it before')).toMatch(/230 psi.*9 psi/);
  });

  it('tells what was read where that one was not', () => {
    expect(reply(...VISIT, 'what was the superheat before')).toMatch(/^Before: head 230 psi/);
  });
});
