import type { VisitState } from '../../core/visit/state.ts';

const DAY_AND_TIME = new Intl.DateTimeFormat(undefined, {
  dateStyle: 'medium',
  timeStyle: 'short',
});

/** When the visit was, by the device's clock and its owner's habits of writing dates. */
export function visitDate({ openedAt, finishedAt }: VisitState): string {
  if (openedAt === null) return '';
  return finishedAt === null
    ? DAY_AND_TIME.format(openedAt)
    : DAY_AND_TIME.formatRange(openedAt, finishedAt);
}

/** The note's text has no clock of its own: the date goes under its title. */
export function withDate(text: string, date: string): string {
  return date === '' ? text : text.replace('\n\n', `\n${date}\n\n`);
}
