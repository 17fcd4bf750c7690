import { useState } from 'preact/hooks';
import { type WordingChoice, WORDINGS } from '../phraser/wording.ts';

export interface WordingFormProps {
  readonly chosen: () => WordingChoice;
  readonly choose: (choice: WordingChoice) => void;
}

const WORDING_WORDS: Record<WordingChoice, string> = {
  varied: 'varied',
  plain: 'always alike',
};

/** Whether the small language model may word the answers; what they say is the same either way. */
export function WordingForm({ chosen, choose }: WordingFormProps) {
  const [shown, setShown] = useState(chosen);
  const press = (next: WordingChoice): void => {
    choose(next);
    setShown(next);
  };
  return (
    <section aria-label="How answers are worded">
      <h2>how answers are worded</h2>
      <div class="choices" role="group" aria-label="How answers are worded">
        {WORDINGS.map((each) => (
          <button
            key={each}
            type="button"
            data-testid={`wording-${each}`}
            aria-pressed={each === shown}
            onClick={() => press(each)}
          >
            {WORDING_WORDS[each]}
          </button>
        ))}
      </div>
    </section>
  );
}
