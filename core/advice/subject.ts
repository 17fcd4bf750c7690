import type { AnswerableId } from '../terms/quantities.ts';
import type { VisitState } from '../visit/state.ts';
import type { Known } from './verdict.ts';

/**
 * What "that" may mean, the likeliest first: what was read since the last question, what was last answered,
 * what was last read. The event of the question being answered is already the newest in the history.
 */
export function spokenOf(state: VisitState, lastAnswer: Known | null): readonly AnswerableId[] {
  const answered = aboutOf(lastAnswer);
  const read = state.lastQuantity;
  const order = readSinceLastQuestion(state) ? [read, answered] : [answered, read];
  return order.filter((about) => about !== null);
}

function readSinceLastQuestion({ history }: VisitState): boolean {
  const kinds = history.map(({ type }) => type);
  const earlier = kinds.at(-1) === 'questionAsked' ? kinds.slice(0, -1) : kinds;
  return earlier.lastIndexOf('readingTaken') > earlier.lastIndexOf('questionAsked');
}

/** After a margin it is the pressure that is spoken of, not its cut-out. */
function aboutOf(known: Known | null): AnswerableId | null {
  if (!known || !('about' in known)) return null;
  if (known.answer !== 'margin') return known.about;
  return known.about === 'highCutoutPressure' ? 'headPressure' : 'suctionPressure';
}
