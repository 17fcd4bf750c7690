import { expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const workAfter = (...words: readonly string[]): readonly (string | null)[] =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said])).last.state.work.map(
    ({ work: { did, part } }) => `${did} ${part ?? ''}`,
  );

const UNIT = "it's a reach in on one thirty four a with a txv";

it('a new part that is named alone was put in, once the before is marked or work was begun', () => {
  expect(workAfter(UNIT, 'new filter drier')).toEqual([]);
  expect(workAfter(UNIT, 'head two thirty', "that's my before", 'new filter drier')).toEqual([
    'replace filterDrier',
  ]);
  expect(workAfter(UNIT, 'replaced the contactor', 'new start relay.')).toEqual([
    'replace contactor',
    'replace startRelay',
  ]);
  expect(workAfter(UNIT, 'replaced the contactor', 'needs a new start relay')).toHaveLength(1);
});
