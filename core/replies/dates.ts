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
