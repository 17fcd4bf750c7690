import { useState } from 'preact/hooks';
import { ENGINE_WISHES, type EngineUse, type EngineWish } from '../recogniser/team/engine-use.ts';
import { listeningWords, WISH_WORDS } from './words.ts';

export interface ListeningFormProps {
  /** What hears now. */
  readonly use: () => EngineUse | null;
  readonly wish: () => EngineWish;
  readonly choose: (wish: EngineWish) => void;
}

/** What listens: left to the device, or chosen. */
export function ListeningForm({ use, wish, choose }: ListeningFormProps) {
  const [chosen, setChosen] = useState(wish);
  const press = (next: EngineWish): void => {
    choose(next);
    setChosen(next);
  };
  return (
    <section aria-label="What listens">
      <h2>what listens</h2>
      <div class="choices" role="group" aria-label="What listens">
        {ENGINE_WISHES.map((each) => (
          <button
            key={each}
            type="button"
            data-testid={`listens-${each}`}
            aria-pressed={each === chosen}
            onClick={() => press(each)}
          >
            {WISH_WORDS[each]}
          </button>
        ))}
      </div>
      <p data-testid="listening" data-use={use() ?? 'none'}>
        {listeningWords(use())}. A change counts from the next sentence.
      </p>
    </section>
  );
}
