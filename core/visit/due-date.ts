import type { Due, Recommendation, TimeSpan } from '../language/utterance.ts';
import { MONTHS, WEEKDAYS } from '../terms/calendar.ts';
import {
  addDays,
  addMonths,
  type CivilDate,
  dateAt,
  daysInMonth,
  daysOf,
  weekdayOf,
} from '../units/civil-date.ts';
import type { Envelope } from './events.ts';

/** The day of an event where its device was; by UTC where that was not kept. */
export function dayOf({ at, utcOffset = 0 }: Pick<Envelope, 'at' | 'utcOffset'>): CivilDate {
  return dateAt(at, utcOffset);
}

/**
 * The day that a recommendation made today is to be done on, or by; for the first time, where it is to be done over
 * and over. `null` where no day was said.
 */
export function dueDate({ by, every }: Recommendation, today: CivilDate): CivilDate | null {
  if (by !== undefined) return dayMeant(by, today);
  return every === undefined ? null : after(every, today);
}

function dayMeant(due: Due, today: CivilDate): CivilDate | null {
  switch (due.kind) {
    case 'in':
      return after(due, today);
    case 'weekday':
      return onWeekday(due, today);
    case 'dayOfMonth':
      return onDayOfMonth(due.day, today);
    case 'date':
      return onDate(Object.keys(MONTHS).indexOf(due.month) + 1, due.day, today);
    case 'words':
      return null;
  }
}

function after({ amount, unit }: TimeSpan, today: CivilDate): CivilDate {
  switch (unit) {
    case 'day':
      return addDays(today, amount);
    case 'week':
      return addDays(today, amount * 7);
    case 'month':
      return addMonths(today, amount);
    case 'year':
      return addMonths(today, amount * 12);
  }
}

/** The first after today, whose own name nobody says for today; "next" is the week's that begins on Monday. */
function onWeekday(
  { weekday, next }: Extract<Due, { kind: 'weekday' }>,
  today: CivilDate,
): CivilDate {
  const wanted = Object.keys(WEEKDAYS).indexOf(weekday);
  const monday = addDays(today, 7 - weekdayOf(today));
  if (next) return addDays(monday, wanted);
  const ahead = (wanted - weekdayOf(today) + 7) % 7;
  return addDays(today, ahead === 0 ? 7 : ahead);
}

/** The first such day after today: a month that has no thirty-first is passed over. */
function onDayOfMonth(day: number, today: CivilDate): CivilDate | null {
  for (let months = 0; months <= 2; months += 1) {
    const { year, month } = addMonths({ ...today, day: 1 }, months);
    const date = { year, month, day };
    if (day <= daysInMonth(year, month) && daysOf(date) > daysOf(today)) return date;
  }
  return null;
}

/** The twenty-ninth of February is the last of it in a year that has none. */
function onDate(month: number, day: number, today: CivilDate): CivilDate {
  const inYear = (year: number): CivilDate => ({
    year,
    month,
    day: Math.min(day, daysInMonth(year, month)),
  });
  const thisYear = inYear(today.year);
  return daysOf(thisYear) > daysOf(today) ? thisYear : inYear(today.year + 1);
}
