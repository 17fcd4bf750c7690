import type { AnswerableId, QuantityId } from '../terms/quantities.ts';
import { ONE_BREATH_MS } from '../visit/one-breath.ts';
import type { VisitState } from '../visit/state.ts';
import type { Known } from './verdict.ts';

/**
 * What "that" may mean, the likeliest first: what was read since the last question, what was last answered,
 * what was last read. The event of the question being answered is already the newest in the history.
 */
export function spokenOf(state: VisitState, lastAnswer: Known | null): readonly AnswerableId[] {
  const answered = aboutOf(lastAnswer);
  const last = answered === null ? [] : [answered];
  const read = readSinceLastQuestion(state);
  const before = state.lastQuantity === null ? [] : [state.lastQuantity];
  return read.length > 0 ? [...read, ...last] : [...last, ...before];
}

/** What was read in the last breath in which anything was, or in which that quantity was. */
export function readTogether(
  { history }: VisitState,
  about: AnswerableId | null = null,
): readonly QuantityId[] {
  const read = history.flatMap((event) => (event.type === 'readingTaken' ? [event] : []));
  const last = read.findLast(({ reading: { quantity } }) => about === null || quantity === about);
  if (last === undefined) return [];
  const breath = read.filter(({ at }) => Math.abs(last.at - at) < ONE_BREATH_MS);
  return [...new Set(breath.map(({ reading }) => reading.quantity))];
}

/** The last sentence first, each in the order said: of "head one ninety two, suction fourteen" head was put first. */
function readSinceLastQuestion({ history }: VisitState): readonly QuantityId[] {
  const earlier = history.at(-1)?.type === 'questionAsked' ? history.slice(0, -1) : history;
  const asked = earlier.findLastIndex(({ type }) => type === 'questionAsked');
  const breaths: { readonly at: number; readonly read: QuantityId[] }[] = [];
  for (const event of earlier.slice(asked + 1)) {
    if (event.type !== 'readingTaken') continue;
    const last = breaths.at(-1);
    const { quantity } = event.reading;
    if (last && event.at - last.at < ONE_BREATH_MS) last.read.push(quantity);
    else breaths.push({ at: event.at, read: [quantity] });
  }
  return breaths.toReversed().flatMap(({ read }) => read);
}

/** After a margin it is the pressure that is spoken of, not its cut-out; a part judged is no quantity. */
function aboutOf(known: Known | null): AnswerableId | null {
  switch (known?.answer) {
    case 'target':
    case 'value':
    case 'compare':
      return known.about;
    case 'margin':
      return known.about === 'highCutoutPressure' ? 'headPressure' : 'suctionPressure';
    case 'hottestDay':
      return 'headPressure';
    default:
      return null;
  }
}
