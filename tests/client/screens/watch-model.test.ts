import { describe, expect, it } from 'vitest';
import { clockText, shownTimers, shownTrends } from '../../../client/screens/watch-model.ts';
import { timedVisit, type TimedLine } from '../../support/timed-visit.ts';

type Lines = readonly TimedLine[];

/** What the field shows so many minutes after the last sentence. */
function timersAt(later: number, ...lines: Lines): readonly string[] {
  const { state } = timedVisit(...lines).last;
  const now = (state.history.at(-1)?.at ?? 0) + later * 60_000;
  return shownTimers(state, now).map(({ left, name }) => `${left} ${name}`);
}

const trendsOf = (...lines: Lines): readonly string[] =>
  shownTrends(timedVisit(...lines).last.state);

describe('timers on the field', () => {
  it('count a second begun as left, with hours once there are any', () => {
    expect([0, 1, 1000, 59_001, 599_000, 3_600_000, 3_905_000].map(clockText)).toEqual([
      '0:00',
      '0:01',
      '0:01',
      '1:00',
      '9:59',
      '1:00:00',
      '1:05:05',
    ]);
  });

  it('stand the next to ring first, by their names', () => {
    expect(
      timersAt(1, [0, 'twenty minutes for the defrost'], [2, 'ten minutes on the vacuum hold']),
    ).toEqual(['9:00 vacuum hold', '17:00 defrost']);
  });

  it('are no more than three, and the nearest of them', () => {
    const shown = timersAt(
      0,
      [0, 'forty minutes for the defrost'],
      [0, 'ten minutes on the vacuum hold'],
      [0, 'thirty minutes on the pressure test'],
      [0, 'twenty minutes on the pull down'],
    );
    expect(shown.map((each) => each.split(' ')[0])).toEqual(['10:00', '20:00', '30:00']);
  });

  it('say that one is up until something is read after it', () => {
    const held = [
      [0, 'four hundred microns'],
      [0, 'ten minutes on the vacuum hold'],
      [11, null],
    ] as const;
    expect(timersAt(3, ...held)).toEqual(['up vacuum hold']);
    expect(timersAt(0, ...held, [12, 'four thirty'])).toEqual([]);
  });

  it('are up by the clock before they have rung, as in the tab that does not ring', () => {
    expect(timersAt(11, [0, 'ten minutes on the vacuum hold'])).toEqual(['up vacuum hold']);
  });

  it('are gone when stopped and on a finished visit', () => {
    const started = [0, 'ten minutes on the vacuum hold'] as const;
    expect(timersAt(0, started, [1, 'cancel the timer'])).toEqual([]);
    expect(timersAt(0, started, [1, 'finish'])).toEqual([]);
  });
});

describe('trends on the field', () => {
  const CHANGED = [
    [0, "it's a reach in on one thirty four a"],
    [1, 'head two fifty, suction twenty four'],
    [2, 'i brushed the condenser'],
  ] as const;

  it('tell what moved between the last two readings, what holds, and what is steady', () => {
    expect(trendsOf(...CHANGED, [8, 'head one eighty'], [14, 'head one seventy'])).toEqual([
      'head down 10 psi in 6 min',
    ]);
    expect(trendsOf(...CHANGED, [8, 'head one seventy'], [14, 'head one seventy'])).toEqual([
      'head holding 6 min',
    ]);
    expect(
      trendsOf(
        ...CHANGED,
        [8, 'head one seventy'],
        [14, 'head one seventy'],
        [20, 'head one seventy one'],
      ),
    ).toEqual(['head steady 12 min']);
  });

  it('need a change and two readings after it', () => {
    expect(trendsOf(...CHANGED, [8, 'head one eighty'])).toEqual([]);
    expect(trendsOf([0, 'head one eighty'], [6, 'head one seventy'])).toEqual([]);
  });

  it('are gone on a finished visit', () => {
    const two = [...CHANGED, [8, 'head one eighty'], [14, 'head one seventy']] as const;
    expect(trendsOf(...two, [15, 'finish'])).toEqual([]);
  });
});
