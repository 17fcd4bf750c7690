/** Days and months by their names, in the order that they are counted in. */

export const WEEKDAYS = {
  monday: 'Monday',
  tuesday: 'Tuesday',
  wednesday: 'Wednesday',
  thursday: 'Thursday',
  friday: 'Friday',
  saturday: 'Saturday',
  sunday: 'Sunday',
} as const;
/** Their names as a choice, for a shape or a pattern. */
export const ANY_WEEKDAY = Object.keys(WEEKDAYS).join('|');
export type WeekdayId = keyof typeof WEEKDAYS;

export const MONTHS = {
  january: 'January',
  february: 'February',
  march: 'March',
  april: 'April',
  may: 'May',
  june: 'June',
  july: 'July',
  august: 'August',
  september: 'September',
  october: 'October',
  november: 'November',
  december: 'December',
} as const;
export type MonthId = keyof typeof MONTHS;

export const PERIODS = { day: 'day', week: 'week', month: 'month', year: 'year' } as const;
export type PeriodId = keyof typeof PERIODS;
