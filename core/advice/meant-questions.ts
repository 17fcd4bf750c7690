import type { Question } from '../language/utterance.ts';
import type { PlaceId } from '../terms/names.ts';
import type { GuideId } from '../terms/guides.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import type { VisitState } from '../visit/state.ts';
import { compared } from './compare.ts';
import { readTogether } from './subject.ts';

const WINDINGS: ReadonlySet<PlaceId | null> = new Set<PlaceId | null>([
  ...(['commonRun', 'commonStart', 'runStart'] as const),
]);

/** Asked in general, and so of this unit, too, once it was read to be so. */
const OFF: Partial<Record<GuideId, readonly [AnswerableId, 'over' | 'under']>> = {
  highHead: ['headPressure', 'over'],
  lowSuction: ['suctionPressure', 'under'],
};

function isOfThisUnit(guide: GuideId, state: VisitState): boolean {
  const [about, direction] = OFF[guide] ?? [];
  if (about === undefined) return false;
  const found = compared(about, state);
  return found.kind === 'known' && found.value.direction === direction;
}

/**
 * What a question comes to by what was read: whether a compressor is good is told by the ohms of its windings and those to
 * ground where it was measured dead, and not by voltages that it has none of then.
 */
export function meantQuestions(question: Question, state: VisitState): readonly Question[] {
  const { readings } = state;
  if (question.ask === 'guide' && isOfThisUnit(question.about, state)) return [{ ask: 'causes' }];
  if ('each' in question && question.about === null) return ofEach(question, state);
  if (question.ask === 'compare' && question.about === null) return [judgedLast(state) ?? question];
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

/** "What should those be": a question each, of what was told in one breath and has a target of its own. */
function ofEach(question: OfThat, state: VisitState): readonly Question[] {
  const aimed = readTogether(state).filter((about) => compared(about, state).kind !== 'refused');
  const { each, ...one } = question;
  return aimed.length < 2 ? [one] : aimed.map((about) => ({ ...one, about }));
}
type OfThat = Extract<Question, { readonly ask: 'target' | 'value' | 'compare' }>;

/** "Is that good", right behind what is judged by more than what it should be: a test that holds, amps at a heater. */
function judgedLast({ history }: VisitState): Question | null {
  const last = history.findLast(({ type }) => type !== 'questionAsked');
  if (last?.type !== 'readingTaken') return null;
  const { quantity, place } = last.reading;
  if (quantity === 'testPressure') return { ask: 'judge', about: 'pressureTest' };
  if (quantity === 'vacuum') return { ask: 'trend', about: 'vacuum' };
  const isHeaters = quantity === 'current' || quantity === 'resistance';
  return isHeaters && (place === 'defrostHeater' || place === 'doorHeater')
    ? { ask: 'judge', about: place }
    : null;
}
