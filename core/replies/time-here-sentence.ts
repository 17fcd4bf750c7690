import type { Members } from '../advice/by-kind.ts';
import type { Known } from '../advice/verdict.ts';
import { line, plain, type Said } from './said.ts';

const MINUTES_AN_HOUR = 60;
const HALF_A_DAY = 12;

/** "2 h 5 min on this visit, since 9:10." */
export function timeHereSaid({ minutes, since }: Members<Known, 'answer'>['timeHere']): Said {
  const span = hoursSaid(minutes);
  return since === null
    ? line`${span} on this visit.`
    : line`${span} on this visit, since ${clock(since)}.`;
}

/** "2 h 5 min" */
export function hoursSaid(minutes: number): Said {
  const [hours, rest] = [Math.floor(minutes / MINUTES_AN_HOUR), minutes % MINUTES_AN_HOUR];
  if (hours === 0) return counted(rest, 'min', 'minute');
  const whole = counted(hours, 'h', 'hour');
  return rest === 0 ? whole : line`${whole} ${counted(rest, 'min', 'minute')}`;
}

const counted = (count: number, unit: string, name: string): Said => ({
  text: `${count} ${unit}`,
  spoken: `${count} ${name}${count === 1 ? '' : 's'}`,
});

/** As a clock on the wall shows it. */
function clock(minuteOfDay: number): Said {
  const [hour, minute] = [Math.floor(minuteOfDay / MINUTES_AN_HOUR), minuteOfDay % MINUTES_AN_HOUR];
  const shown = `${hour % HALF_A_DAY === 0 ? HALF_A_DAY : hour % HALF_A_DAY}`;
  return plain(`${shown}:${String(minute).padStart(2, '0')}`);
}
