import type { TimeSpan } from '../language/utterance.ts';
import { PERIODS } from '../terms/calendar.ts';
import type { CivilDate } from '../units/civil-date.ts';
import type { VisitState } from '../visit/state.ts';
import { dateWords, dayWords } from './dates.ts';
import { plain, type Said } from './said.ts';
import { workTodoAt } from './work-words.ts';

/** A recommendation, and the day that it came to. */
export type Made = Pick<VisitState['recommendations'][number], 'recommendation' | 'due'>;

/** How much gas it will take, which stands where others have their reason. */
export const isCharge = ({ recommendation }: Pick<Made, 'recommendation'>): boolean =>
  recommendation.do === 'add' && recommendation.part === null;

/** Said back with its day: "next Tuesday" has been taken for the wrong one before now. */
export function recommendationSaid(made: Made, today: CivilDate): Said {
  const words = recommended(made, today);
  const { do: kind } = made.recommendation;
  return plain(kind === 'comeBack' ? `${words}.` : `To recommend: ${words}.`);
}

/** "Replace the condenser fan motor by Friday, December 25, it's noisy"; without a today its year comes along. */
export function recommended({ recommendation, due }: Made, today: CivilDate | null = null): string {
  const { reason } = recommendation;
  const when = whenWords({ recommendation, due }, today);
  const what = [workTodoAt(recommendation), when].filter((words) => words !== '').join(' ');
  if (reason === undefined) return what;
  const isOneClause = isCharge({ recommendation }) || /^(to|with) /.test(reason);
  return isOneClause && due === null ? `${what} ${reason}` : `${what}, ${reason}`;
}

/** "By Friday, December 25", "every 3 months, first by April 5"; empty where no time was given. */
export function whenWords(
  { recommendation: { by, every }, due }: Made,
  today: CivilDate | null,
): string {
  const day = due === null ? '' : dayWords(due, today);
  const often = every === undefined ? '' : everyWords(every);
  if (by?.kind === 'words') return [by.words, often].filter((words) => words !== '').join(', ');
  if (by === undefined) {
    return every === undefined || due === null ? '' : `${often}, first by ${dateWords(due, today)}`;
  }
  const once = by.said === 'by' ? `by ${day}` : day;
  return often === '' ? once : `${often}, first ${once}`;
}

function everyWords({ amount, unit }: TimeSpan): string {
  return amount === 1 ? `every ${PERIODS[unit]}` : `every ${amount} ${PERIODS[unit]}s`;
}
