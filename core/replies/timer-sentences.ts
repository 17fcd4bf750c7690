import type { TimeLeftAnswer, TimeUpAnswer } from '../advice/settling/settling-verdict.ts';
import { TIMED_WORK, type TimedWorkId } from '../terms/timed-work.ts';
import type { TimerName } from '../visit/acknowledgement.ts';
import { figure } from './amounts.ts';
import { line, plain, sentences, type Said } from './said.ts';

export const minutesSaid = (minutes: number): Said => figure({ value: minutes, unit: 'min' });

/** Time that passed, to the minute: nobody hears tenths. */
export const spanSaid = (minutes: number): Said => minutesSaid(Math.max(1, Math.round(minutes)));

/** What a timer is for, as two people on the job would call it. */
export function timerName({ about, work }: TimerName): string {
  return work === null ? (about ?? 'timer') : TIMED_WORK[work].name;
}

/** "The vacuum hold timer", "the timer". */
export function timerTitle(timer: TimerName): string {
  return timer.about === null ? 'the timer' : `the ${timerName(timer)} timer`;
}

export const timerTitles = (timers: readonly TimerName[]): string =>
  timers.map(timerTitle).join(' and ');

export const NO_TIMER = 'No timer is running. Say, for example: ten minutes on the vacuum hold.';

/** "10 minutes on the vacuum hold", "10 minutes for: call the office", "10 minutes". */
export function timerSaid(timer: TimerName, minutes: number): Said {
  const { about, work } = timer;
  if (about === null) return minutesSaid(minutes);
  return work === null
    ? line`${minutesSaid(minutes)} for: ${about}`
    : line`${minutesSaid(minutes)} on the ${timerName(timer)}`;
}

/** What is read, or looked at, when the time is up. */
const TIME_UP: Record<TimedWorkId, string> = {
  pressureTest: 'Tell me the test pressure and the gas temperature.',
  vacuumHold: 'Tell me the vacuum in microns.',
  evacuation: 'Tell me the vacuum in microns.',
  pumpDown: 'Tell me the suction pressure.',
  defrost: 'Look at the coil: go on once it is clear of ice.',
  pullDown: 'Tell me the box temperature.',
  superheat: 'Tell me the suction line temperature, at the bulb.',
  head: 'Tell me the head pressure.',
  suction: 'Tell me the suction pressure.',
  settling: 'Read head, suction and box again.',
};

/** A reading for each timer would be too much in one breath: the last one's is asked for. */
export function timeUpSaid({ timers }: TimeUpAnswer): Said {
  return sentences([...timers.slice(0, 1).map(upSaid), timeUpTail({ timers })]);
}

/** The other timers, and what is read or looked at. */
export function timeUpTail({ timers }: Pick<TimeUpAnswer, 'timers'>): Said {
  const last = timers.at(-1)?.timer.work ?? null;
  const others = timers.slice(1).map(upSaid);
  return sentences([...others, plain(last === null ? '' : TIME_UP[last])]);
}

function upSaid({ timer, minutes }: TimeUpAnswer['timers'][number]): Said {
  const time = minutesSaid(minutes);
  return timer.about === null ? line`${time}: time is up.` : line`${time} up: ${timerName(timer)}.`;
}

export function timeLeftSaid({ timers }: TimeLeftAnswer): Said {
  return sentences(timers.map(leftSaid));
}

export const otherTimersLeft = ({ timers }: Pick<TimeLeftAnswer, 'timers'>): Said =>
  sentences(timers.slice(1).map(leftSaid));

function leftSaid({ timer, minutes }: TimeLeftAnswer['timers'][number]): Said {
  const on = timer.about === null ? '' : ` on the ${timerName(timer)}`;
  return minutes < 1
    ? plain(`Under a minute left${on}.`)
    : line`${minutesSaid(Math.ceil(minutes))} left${on}.`;
}
