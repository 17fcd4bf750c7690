import type { VisitState } from '../../core/visit/state.ts';
import type { Happening } from '../state/happenings.ts';
import { OpenQuestions } from './open-questions.tsx';
import { ledgerLines, type Judge } from './sheet-model.ts';
import { Sheet } from './sheet.tsx';
import { Steps } from './steps.tsx';

interface SheetTabProps {
  readonly visit: VisitState;
  readonly judge: (visit: VisitState) => Judge;
  readonly send: (happening: Happening) => void;
  readonly onWords: (said: string) => void;
}

/** The job that is gone through, what is still open, and every reading in its place. */
export function SheetTab({ visit, judge, send, onWords }: SheetTabProps) {
  return (
    <>
      {visit.steps && <Steps steps={visit.steps} onWords={onWords} />}
      <OpenQuestions visit={visit} onTakeUp={() => send({ kind: 'questionTakenUp' })} />
      <h2 class="unseen">Readings</h2>
      <Sheet
        lines={ledgerLines(visit, judge(visit))}
        questions={visit.doubts.length + visit.leftOver.length}
        onBlank={(quantity) => send({ kind: 'readingWanted', quantity })}
      />
      <button
        type="button"
        class="wide"
        data-testid="sheet-keys"
        onClick={() => send({ kind: 'tabChosen', tab: 'keys' })}
      >
        enter readings by keys
      </button>
    </>
  );
}
