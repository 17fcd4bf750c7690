import type { AnswerableId, QuantityId } from '../terms/quantities.ts';
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

/** In the order said: of "head one ninety two, suction fourteen, box forty four" head was put first. */
function readSinceLastQuestion({ history }: VisitState): readonly QuantityId[] {
  const earlier = history.at(-1)?.type === 'questionAsked' ? history.slice(0, -1) : history;
  const asked = earlier.findLastIndex(({ type }) => type === 'questionAsked');
  return earlier
    .slice(asked + 1)
    .flatMap((event) => (event.type === 'readingTaken' ? [event.reading.quantity] : []));
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
