import type { VisitState } from '../../core/visit/state.ts';
import { isNewer, type OpenQuestion } from '../../core/visit/views.ts';
import { questionLine } from './question-line.ts';

interface OpenQuestionsProps {
  readonly visit: VisitState;
  readonly onTakeUp: () => void;
}

/** What was heard and not settled, newest first: the newest is pressed and answered, then the next one is it. */
export function OpenQuestions({ visit, onTakeUp }: OpenQuestionsProps) {
  const [newest, ...older] = openQuestions(visit).map(questionLine);
  if (newest === undefined) return null;
  return (
    <section aria-label="Still open">
      <h2 class="unseen">Still open</h2>
      <div class="open-questions">
        <button type="button" class="wide" data-testid="open-question" onClick={onTakeUp}>
          still open: {newest}
        </button>
        {older.map((line, index) => (
          <p key={index}>then: {line}</p>
        ))}
      </div>
    </section>
  );
}

function openQuestions(visit: VisitState): readonly OpenQuestion[] {
  const doubts = visit.doubts.map((of): OpenQuestion => ({ kind: 'doubt', of }));
  const leftOver = visit.leftOver.map((of): OpenQuestion => ({ kind: 'leftOver', of }));
  return [...doubts, ...leftOver].toSorted((a, b) => (isNewer(visit, a.of.id, b.of.id) ? -1 : 1));
}
