import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const visit = (...words: readonly string[]): ReturnType<typeof timedVisit> =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said]));

const worked = (...words: readonly string[]): readonly string[] =>
  visit(...words).last.state.work.map(({ work: { did, part } }) => `${did} ${part ?? ''}`);

describe('work that was told and not done', () => {
  it.each([
    "no wait i didn't",
    "no i didn't",
    "no wait i didn't i left that one it's fine",
    "actually no i didn't i left the old one in",
    "well no i didn't get to that",
    "sorry no i didn't do that one",
    'no i take that back',
  ])('is taken back: %s', (said) => {
    expect(worked('replaced the contactor', said)).toEqual([]);
  });

  it('keeps what is told behind it', () => {
    const { state } = visit('replaced the contactor', "no wait i didn't i left that one").last;
    expect(state.memos.map(({ memo }) => memo)).toEqual(['i left that one']);
  });

  it('takes the words that are kept with it along', () => {
    const { state } = visit(
      "there's a pinhole in the cap tube",
      'cut the bad spot out and brazed a new piece of cap tube in',
      'uh no i take that back i sleeved it with a coupling',
    ).last;
    expect(state.work.map(({ work }) => work.words)).toEqual(['i sleeved it']);
    expect(state.memos).toEqual([]);
  });

  it('is no reading', () => {
    const { state } = visit('replaced the contactor', 'head two ten', "no wait i didn't").last;
    expect(state.readings).toHaveLength(1);
    expect(state.work).toHaveLength(1);
  });
});
