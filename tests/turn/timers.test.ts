import { describe, expect, it } from 'vitest';
import { applyEvents } from '../../core/visit/apply.ts';
import { runningTimers } from '../../core/visit/timers.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { timedVisit } from '../support/timed-visit.ts';

const textOf = (visit: ReturnType<typeof timedVisit>): string => visit.last.reply.text;
const rungText = (visit: ReturnType<typeof timedVisit>): readonly string[] =>
  visit.rung.map(({ reply }) => reply.text);

describe('work by the clock', () => {
  it('rings at its minute, says what for, and takes the bare number that it asks for', () => {
    const visit = timedVisit(
      [0, 'four hundred microns'],
      [1, 'ten minutes on the vacuum hold'],
      [12, 'four thirty'],
    );
    expect(rungText(visit)).toEqual(['10 min up: vacuum hold. Tell me the vacuum in microns.']);
    expect(visit.rung[0]?.reply.earcon).toBe('timeUp');
    expect(visit.rung[0]?.expects).toBe('number');
    expect(visit.last.state.readings.at(-1)?.reading).toMatchObject({
      quantity: 'vacuum',
      value: 430,
    });
    expect(textOf(visit)).toContain('400 micron to 430 micron in 11 min. It held: tight.');
  });

  it('rings once, and not before', () => {
    const early = timedVisit([0, 'set a ten minute timer'], [9, null]);
    const late = timedVisit([0, 'set a ten minute timer'], [10, null], [30, null]);
    expect([early.rung.length, late.rung.length]).toEqual([0, 1]);
  });

  it('runs several at once, each by its name', () => {
    const visit = timedVisit(
      [0, 'twenty minutes for the defrost'],
      [2, 'ten minutes on the vacuum hold'],
      [4, 'how long left'],
      [30, null],
    );
    expect(visit.turns[2]?.reply.text).toBe(
      '8 min left on the vacuum hold. 16 min left on the defrost.',
    );
    expect(rungText(visit)).toEqual([
      '10 min up: vacuum hold. Tell me the vacuum in microns.',
      '20 min up: defrost. Look at the coil: go on once it is clear of ice.',
    ]);
  });

  it('gives one more time, before it rings and after', () => {
    const before = timedVisit(
      [0, 'ten minutes on the pressure test'],
      [5, 'add five minutes'],
      [14, null],
    );
    expect(before.rung).toEqual([]);
    const after = timedVisit(
      [0, 'ten minutes on the pressure test'],
      [12, 'five more minutes'],
      [16, 'how long left'],
      [17, null],
    );
    expect(after.turns.at(-2)?.reply.text).toBe('1 min left on the pressure test.');
    expect(after.rung).toHaveLength(2);
  });

  it('stops the one that is named, and says when there is none', () => {
    const visit = timedVisit(
      [0, 'twenty minutes for the defrost'],
      [1, 'ten minutes on the vacuum hold'],
      [2, 'cancel the defrost timer'],
      [40, null],
    );
    expect(visit.turns[2]?.reply.text).toBe('Stopped: the defrost timer.');
    expect(rungText(visit)).toHaveLength(1);
    expect(textOf(timedVisit([0, 'cancel the timer']))).toContain('No timer is running.');
    expect(timedVisit([0, 'how long left']).last.verdicts).toMatchObject([{ reason: 'noTimer' }]);
  });

  it('waits no longer for the reading of one that was stopped', () => {
    const stopped = timedVisit([0, 'ten minutes on the vacuum hold'], [1, 'cancel the timer']);
    expect(stopped.turns[0]?.state.wanted).toBe('vacuum');
    expect(stopped.last.state.wanted).toBeNull();
    const others = timedVisit(
      [0, 'ten minutes on the vacuum hold'],
      [1, 'twenty minutes for the defrost'],
      [2, 'cancel the defrost timer'],
    );
    expect(others.last.state.wanted).toBe('vacuum');
    const two = timedVisit(
      [0, 'twenty minutes on the vacuum'],
      [1, 'ten minutes on the vacuum hold'],
      [2, 'cancel the timer'],
    );
    expect(two.last.state.wanted).toBe('vacuum');
  });

  it('is taken back like anything else that was said', () => {
    const visit = timedVisit(
      [0, 'ten minutes on the vacuum hold'],
      [1, 'take that back'],
      [20, null],
    );
    expect(textOf(visit)).toBe('Taken back: the vacuum hold timer.');
    expect(visit.rung).toEqual([]);
  });

  it('lives in the events: read again from the log they run on', () => {
    const { last } = timedVisit([0, 'ten minutes on the vacuum hold'], [2, 'add five minutes']);
    const [timer] = runningTimers(applyEvents(last.state.history));
    expect(timer).toMatchObject({ about: 'vacuum hold', work: 'vacuumHold', minutes: 15 });
    expect(timer && timer.endsAt - timer.at).toBe(15 * 60_000);
  });

  it('does not ring on a finished visit', () => {
    const visit = timedVisit([0, 'set a ten minute timer'], [1, "that's it, finish"], [20, null]);
    expect(visit.rung).toEqual([]);
  });
});

describe('a vacuum with the pump off', () => {
  const held = (...microns: readonly (readonly [number, string])[]): string =>
    textOf(
      timedVisit([0, 'three hundred microns'], [0, 'ten minutes on the vacuum hold'], ...microns),
    );

  it('asks where it begins when that was not read', () => {
    expect(textOf(timedVisit([0, 'ten minutes on the vacuum hold']))).toContain(
      'Tell me the vacuum in microns.',
    );
    const begun = timedVisit([0, 'ten minutes on the vacuum hold'], [1, 'three hundred']);
    expect(begun.last.state.readings.at(-1)?.reading).toMatchObject({ quantity: 'vacuum' });
    expect(begun.last.verdicts).toEqual([]);
  });

  it('calls a rise that does not slow a leak', () => {
    expect(held([5, 'one thousand microns'], [10, 'seventeen hundred microns'])).toContain(
      'It rises without slowing: a leak.',
    );
  });

  it('calls one that levels off moisture or oil', () => {
    expect(held([5, 'twelve hundred microns'], [10, 'thirteen hundred microns'])).toContain(
      'It levelled off',
    );
  });

  it('does not tell where a rise comes from by its ends alone', () => {
    expect(held([11, 'nine hundred microns'])).toContain('does not tell a leak from moisture yet');
  });

  it('takes the minutes that were said over those of the clock', () => {
    expect(held([12, 'four hundred microns, ten minutes in'])).toContain('in 10 min');
  });

  it('is in the note', () => {
    const { last } = timedVisit(
      [0, 'three hundred microns'],
      [0, 'ten minutes on the vacuum hold'],
      [10, 'three fifty'],
    );
    expect(noteText(draftNote(last.state)).replace(/\s+/g, ' ')).toContain(
      'Vacuum hold: reached 300 micron, 350 micron after 10 min with the pump off; it held.',
    );
  });
});

describe('a standing pressure test', () => {
  const START = [
    [0, 'one fifty of nitrogen at eighty degrees'],
    [1, 'thirty minutes on the pressure test'],
  ] as const;

  it('takes off what the gas lost by cooling: 150 psi at 80 °F is 146.9 at 70 °F by the equation of state', () => {
    const visit = timedVisit(...START, [32, 'one forty seven of nitrogen at seventy degrees']);
    expect(textOf(visit)).toContain('150 psi at 80 °F to 147 psi at 70 °F in 32 min.');
    expect(textOf(visit)).toContain('It should be 147 psi by the temperature. It held.');
  });

  it('finds the leak that the same drop is at a steady temperature', () => {
    const visit = timedVisit(...START, [32, 'one forty of nitrogen at eighty degrees']);
    expect(textOf(visit)).toContain('10 psi lost beyond the temperature: a leak.');
  });

  it('proves nothing without the gas temperatures, and says how to say them', () => {
    const visit = timedVisit(...START, [32, 'test pressure one forty eight']);
    expect(textOf(visit)).toContain('Without the gas temperatures that proves nothing');
  });

  it('says nothing of it before its time', () => {
    const visit = timedVisit(...START, [10, 'one forty nine of nitrogen at eighty degrees']);
    expect(textOf(visit)).not.toContain('held');
  });
});
