import { describe, expect, it } from 'vitest';
import { createAlarm } from '../../../client/state/alarm.ts';
import { sleepingSession, type Session } from '../../../client/state/session.ts';
import { timedVisit } from '../../support/timed-visit.ts';
import { handClock } from '../scripted.ts';

const MINUTE = 60_000;

function alarmed(writes = true) {
  const clock = handClock();
  const rung: number[] = [];
  const ours = { writes };
  const alarm = createAlarm({ clock, writes: () => ours.writes }, () => rung.push(clock.now()));
  return { clock, rung, ours, alarm, start: clock.now() };
}

/** A session whose timers end so many minutes from the clock's now. */
function counting(now: number, ...minutes: readonly number[]): Session {
  const { state } = timedVisit([0, 'set a ten minute timer']).last;
  const [timer] = state.timers;
  if (!timer) throw new Error('no timer was set');
  const timers = minutes.map((each, index) => ({
    ...timer,
    id: `timer ${index}`,
    endsAt: now + each * MINUTE,
  }));
  return sleepingSession({ ...state, timers });
}

const speaking = (session: Session): Session => ({
  ...session,
  mode: { kind: 'speaking', number: 1, ear: { kind: 'asleep' }, then: null, asked: null },
});

describe('the alarm', () => {
  it('rings once, when the first timer is up', () => {
    const { alarm, clock, rung, start } = alarmed();
    alarm.watch(counting(start, 20, 10));
    clock.advance(10 * MINUTE - 1);
    expect(rung).toEqual([]);
    clock.advance(1);
    clock.advance(MINUTE);
    expect(rung).toEqual([start + 10 * MINUTE]);
  });

  it('is set once for however many sessions it is told of', () => {
    const { alarm, clock, rung, start } = alarmed();
    for (const session of [counting(start, 10), counting(start, 10)]) alarm.watch(session);
    clock.advance(10 * MINUTE);
    expect(rung).toHaveLength(1);
  });

  it('follows a timer that was given more time, and is off when it was stopped', () => {
    const { alarm, clock, rung, start } = alarmed();
    alarm.watch(counting(start, 10));
    alarm.watch(counting(start, 15));
    clock.advance(14 * MINUTE);
    expect(rung).toEqual([]);
    alarm.watch(counting(start));
    clock.advance(5 * MINUTE);
    expect(rung).toEqual([]);
  });

  it('rings at once for what was up while the page was gone or the phone slept', () => {
    const { alarm, clock, rung, start } = alarmed();
    alarm.watch(counting(start, -30));
    clock.advance(0);
    expect(rung).toHaveLength(1);
  });

  it('waits while something is kept or said, and rings after it', () => {
    const { alarm, clock, rung, start } = alarmed();
    const session = counting(start, 10);
    alarm.watch(session);
    alarm.watch(speaking(session));
    clock.advance(11 * MINUTE);
    expect(rung).toEqual([]);
    alarm.watch(session);
    clock.advance(0);
    expect(rung).toHaveLength(1);
  });

  it('is the business of the tab that writes: the other one rings once it has become that', () => {
    const { alarm, clock, rung, ours, start } = alarmed(false);
    const session = counting(start, 10);
    alarm.watch(session);
    clock.advance(11 * MINUTE);
    expect(rung).toEqual([]);
    ours.writes = true;
    alarm.watch(session);
    clock.advance(0);
    expect(rung).toHaveLength(1);
  });
});
