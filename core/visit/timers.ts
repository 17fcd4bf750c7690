import type { Command } from '../language/utterance.ts';
import { TIMED_WORK, timedWorkOf, type TimedWorkId } from '../terms/timed-work.ts';
import type { VisitEvent } from './events.ts';
import type { Keeping } from './keeping.ts';
import type { Timer, VisitState } from './state.ts';

const MINUTE_MS = 60_000;

export type TimerEntry = VisitState['timers'][number];
type TimerEvent = Extract<
  VisitEvent,
  { type: 'timerStarted' | 'timerExtended' | 'timerStopped' | 'timerRang' }
>;

export function applyTimer(timers: VisitState['timers'], event: TimerEvent): VisitState['timers'] {
  switch (event.type) {
    case 'timerStarted':
      return [...timers, started(event)];
    case 'timerExtended':
      return timers.map((each) => (each.id === event.target ? extended(each, event) : each));
    case 'timerStopped':
      return timers.filter(({ id }) => id !== event.target);
    case 'timerRang':
      return timers.map((each) =>
        each.id === event.target ? { ...each, rangAt: event.at } : each,
      );
  }
}

function started(event: Extract<TimerEvent, { type: 'timerStarted' }>): TimerEntry {
  const { id, at, about, minutes } = event;
  const work = about === null ? null : timedWorkOf(about);
  return { id, at, about, work, minutes, endsAt: at + minutes * MINUTE_MS, rangAt: null };
}

/** More time for one that has rung begins now, not when it rang. */
function extended(
  timer: TimerEntry,
  { at, minutes }: Extract<TimerEvent, { type: 'timerExtended' }>,
): TimerEntry {
  const from = timer.rangAt === null ? timer.endsAt : at;
  return {
    ...timer,
    minutes: timer.minutes + minutes,
    endsAt: from + minutes * MINUTE_MS,
    rangAt: null,
  };
}

type Wanted = Pick<VisitState, 'wanted' | 'wantedPlace'>;

/** What a stopped timer would have asked for is not waited for either, unless another one that counts asks for it. */
export function wantedWithout(
  { timers, wanted, wantedPlace }: VisitState,
  { target }: Extract<TimerEvent, { type: 'timerStopped' }>,
): Wanted {
  const asking = timers.filter(({ work }) => work !== null && TIMED_WORK[work].asks === wanted);
  const isItsOwn = asking.some(({ id }) => id === target);
  const isAnothers = asking.some(({ id, rangAt }) => id !== target && rangAt === null);
  return isItsOwn && !isAnothers ? { wanted: null, wantedPlace: null } : { wanted, wantedPlace };
}

/** Those that still count, the next to ring first; nothing rings on a finished visit. */
export function runningTimers({ timers, finishedAt }: VisitState): readonly TimerEntry[] {
  if (finishedAt !== null) return [];
  return timers.filter(({ rangAt }) => rangAt === null).toSorted((a, b) => a.endsAt - b.endsAt);
}

export function dueTimers(state: VisitState, now: number): readonly TimerEntry[] {
  return runningTimers(state).filter(({ endsAt }) => endsAt <= now);
}

/** The newest timer of that work, rung or running: its series is judged when its reading comes. */
export function timerOf({ timers }: VisitState, work: TimedWorkId): TimerEntry | null {
  return timers.findLast((each) => each.work === work) ?? null;
}

type TimerCommand = Extract<Command, { do: 'timer' | 'extendTimer' | 'stopTimer' }>;

export function keepTimer(command: TimerCommand, state: VisitState): Keeping {
  if (command.do === 'timer') {
    const { minutes, about } = command;
    const work = about === null ? null : timedWorkOf(about);
    return {
      bodies: [{ type: 'timerStarted', v: 1, minutes, about }],
      acknowledgement: { kind: 'timerStarted', timer: { about, work }, minutes },
    };
  }
  const meant = meantTimer(command, state);
  if (!meant) return { bodies: [], acknowledgement: { kind: 'noTimer' } };
  if (command.do === 'stopTimer') return stopTimers([meant]);
  const { id: target, about, work } = meant;
  const { minutes } = command;
  return {
    bodies: [{ type: 'timerExtended', v: 1, target, minutes }],
    acknowledgement: { kind: 'timerExtended', timer: { about, work }, minutes },
  };
}

export function stopTimers(timers: readonly TimerEntry[]): Keeping {
  if (timers.length === 0) return { bodies: [], acknowledgement: null };
  return {
    bodies: timers.map(({ id }) => ({ type: 'timerStopped', v: 1, target: id })),
    acknowledgement: {
      kind: 'timerStopped',
      timers: timers.map(({ about, work }) => ({ about, work })),
    },
  };
}

/** The one named, or the newest; more time may be given to one that has just rung. */
function meantTimer(
  { about, ...command }: Exclude<TimerCommand, { do: 'timer' }>,
  state: VisitState,
): TimerEntry | null {
  const running = state.timers.filter(({ rangAt }) => rangAt === null);
  const among = running.length > 0 || command.do === 'stopTimer' ? running : state.timers;
  if (about === null) return among.at(-1) ?? null;
  return among.findLast((timer) => isOf(timer, about)) ?? null;
}

function isOf(timer: Timer, words: string): boolean {
  const work = timedWorkOf(words);
  if (work !== null && timer.work === work) return true;
  // "The vacuum timer" is the one on its hold.
  if (work === 'evacuation' && timer.work === 'vacuumHold') return true;
  return timer.about?.toLowerCase().includes(words.toLowerCase()) ?? false;
}
