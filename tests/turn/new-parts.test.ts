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

it('what was only taken off goes back as it was: a new part goes in for the bad one alone', () => {
  expect(workAfter(UNIT, 'pulled the evap fan motor out', 'bolted it in')).toEqual([
    'remove evaporatorFanMotor',
  ]);
  expect(
    workAfter(UNIT, "evap fan motor's seized", 'pulled the motor out', 'bolted it in'),
  ).toContain('replace evaporatorFanMotor');
  const agreed = [UNIT, 'here to change the compressor', 'pulled the panel off'] as const;
  expect(workAfter(...agreed, 'bolted it in')).toEqual([]);
  expect(workAfter(...agreed, 'cut the old one out', 'bolted it down')).toEqual([
    'remove compressor',
    'replace compressor',
  ]);
});
