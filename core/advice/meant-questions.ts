import type { Question } from '../language/utterance.ts';
import type { PlaceId } from '../terms/names.ts';
import type { VisitState } from '../visit/state.ts';

const WINDINGS: ReadonlySet<PlaceId | null> = new Set<PlaceId | null>([
  ...(['commonRun', 'commonStart', 'runStart'] as const),
]);

/**
 * What a question comes to by what was read: whether a compressor is good is told by the ohms of its windings and those to
 * ground where it was measured dead, and not by voltages that it has none of then.
 */
export function meantQuestions(question: Question, { readings }: VisitState): readonly Question[] {
  if (question.ask !== 'switch' || question.about !== 'compressor') return [question];
  const last = readings.findLast(
    ({ reading: { quantity, place } }) =>
      WINDINGS.has(place) ||
      quantity === 'insulationResistance' ||
      (quantity === 'voltage' && place === 'compressor'),
  );
  return last === undefined || last.reading.quantity === 'voltage'
    ? [question]
    : [
        { ask: 'judge', about: 'windings' },
        { ask: 'judge', about: 'insulation' },
      ];
}
