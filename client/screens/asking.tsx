import { formatNumber } from '../../core/units/format-amount.ts';
import type { OpenQuestion } from '../../core/visit/views.ts';

interface AskingProps {
  readonly question: OpenQuestion;
  readonly onAnswer: (words: string) => void;
  readonly onLeave: () => void;
}

/** Two halves to press. A number that belongs to nothing yet cannot be kept by a press: it is said again. */
export function Asking({ question, onAnswer, onLeave }: AskingProps) {
  const choice = choiceOf(question);
  if (choice) {
    return (
      <div class="halves">
        {choice.map((value) => (
          <button type="button" data-testid="choose" onClick={() => onAnswer(String(value))}>
            {formatNumber(value, 6)}
          </button>
        ))}
      </div>
    );
  }
  return (
    <div class="halves">
      {question.kind === 'doubt' ? (
        <button type="button" data-testid="keep-it" onClick={() => onAnswer('yes')}>
          keep it
        </button>
      ) : (
        <button type="button" data-testid="leave-it" onClick={onLeave}>
          leave it open
        </button>
      )}
      <button type="button" data-testid="drop-it" onClick={() => onAnswer('no')}>
        drop it
      </button>
    </div>
  );
}

/** The two values of "fifteen, or fifty?". */
function choiceOf(question: OpenQuestion): readonly [number, number] | null {
  if (question.kind !== 'doubt') return null;
  const { value, or } = question.of.doubt;
  return value === undefined || or === undefined ? null : [value, or];
}
