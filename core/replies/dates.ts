import { MONTHS, WEEKDAYS } from '../terms/calendar.ts';
import { type CivilDate, weekdayOf } from '../units/civil-date.ts';

const MONTH_NAMES = Object.values(MONTHS);
const WEEKDAY_NAMES = Object.values(WEEKDAYS);

/** "August 3"; with its year where that is not the year of `today`, or where there is no today, as on paper. */
export function dateWords({ year, month, day }: CivilDate, today: CivilDate | null = null): string {
  const name = `${MONTH_NAMES[month - 1] ?? ''} ${day}`;
  return today?.year === year ? name : `${name}, ${year}`;
}

/** "Tuesday, December 8" */
export function dayWords(date: CivilDate, today: CivilDate | null = null): string {
  return `${WEEKDAY_NAMES[weekdayOf(date)] ?? ''}, ${dateWords(date, today)}`;
}

const MINUTES_A_DAY = 1440;

/** "3:05 pm", by the clock of the device that it was said to. */
export function clockWords(at: number, utcOffset: number): string {
  const minutes = Math.floor(at / 60_000) + utcOffset;
  const ofDay = ((minutes % MINUTES_A_DAY) + MINUTES_A_DAY) % MINUTES_A_DAY;
  const [hours, rest] = [Math.trunc(ofDay / 60), ofDay % 60];
  return `${String(hours % 12 || 12)}:${String(rest).padStart(2, '0')} ${hours < 12 ? 'am' : 'pm'}`;
}
