/** A day by the calendar (Gregorian, carried on into the past), without a time of day or a zone. */
export interface CivilDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

const MS_A_DAY = 86_400_000;
const MS_A_MINUTE = 60_000;
/** From 1 March of the year 0 to 1 January 1970. */
const DAYS_TO_1970 = 719_468;

/**
 * A year that begins in March has its odd day last, so that the days before each of its months follow one line:
 * five months of 153 days, over and over.
 */
const daysBeforeMonth = (fromMarch: number): number => Math.floor((153 * fromMarch + 2) / 5);
const daysBeforeYear = (year: number): number =>
  365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);

/** Days since 1 January 1970; negative before it. */
export function daysOf({ year, month, day }: CivilDate): number {
  const marchYear = month < 3 ? year - 1 : year;
  return daysBeforeYear(marchYear) + daysBeforeMonth((month + 9) % 12) + day - 1 - DAYS_TO_1970;
}

/** The day that lies so many days after 1 January 1970. */
export function dateOfDays(days: number): CivilDate {
  const since = days + DAYS_TO_1970;
  // Four hundred years hold 146 097 days; the estimate is a year off at most, around the first of March.
  const estimate = Math.floor((since * 400) / 146_097);
  const year =
    [estimate + 1, estimate].find((each) => daysBeforeYear(each) <= since) ?? estimate - 1;
  const inYear = since - daysBeforeYear(year);
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  return {
    year: fromMarch < 10 ? year : year + 1,
    month: ((fromMarch + 2) % 12) + 1,
    day: inYear - daysBeforeMonth(fromMarch) + 1,
  };
}

/** The day it is at a place: `at` in milliseconds since 1970, the place's clock so many minutes ahead of UTC. */
export function dateAt(at: number, utcOffsetMinutes: number): CivilDate {
  return dateOfDays(Math.floor((at + utcOffsetMinutes * MS_A_MINUTE) / MS_A_DAY));
}

/** 0 is Monday, as ISO 8601 counts. */
export function weekdayOf(date: CivilDate): number {
  // 1 January 1970 was a Thursday.
  return (((daysOf(date) + 3) % 7) + 7) % 7;
}

export function addDays(date: CivilDate, days: number): CivilDate {
  return dateOfDays(daysOf(date) + days);
}

export function daysInMonth(year: number, month: number): number {
  const next = month === 12 ? { year: year + 1, month: 1 } : { year, month: month + 1 };
  return daysOf({ ...next, day: 1 }) - daysOf({ year, month, day: 1 });
}

/** A month after 31 January is the last of February. */
export function addMonths(date: CivilDate, months: number): CivilDate {
  const count = date.year * 12 + date.month - 1 + months;
  const year = Math.floor(count / 12);
  const month = count - year * 12 + 1;
  return { year, month, day: Math.min(date.day, daysInMonth(year, month)) };
}

/** "2026-12-08" */
export function isoDate({ year, month, day }: CivilDate): string {
  return [String(year).padStart(4, '0'), two(month), two(day)].join('-');
}

const two = (number: number): string => String(number).padStart(2, '0');

/** Reads what `isoDate` wrote; `null` for anything else, and for a day that no calendar has. */
export function parseIsoDate(text: string): CivilDate | null {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === undefined || month === undefined || day === undefined) return null;
  const date = { year: Number(year), month: Number(month), day: Number(day) };
  return isoDate(dateOfDays(daysOf(date))) === text ? date : null;
}
