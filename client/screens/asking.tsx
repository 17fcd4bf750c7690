import type { OpenQuestion } from '../../core/visit/views.ts';

interface AskingProps {
  readonly question: OpenQuestion;
  readonly onAnswer: (words: 'yes' | 'no') => void;
  readonly onLeave: () => void;
}

/** Two halves to press. A number that belongs to nothing yet cannot be kept by a press: it is said again. */
export function Asking({ question, onAnswer, onLeave }: AskingProps) {
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
