import { useState } from 'preact/hooks';
import { EAR_CHOICES, type EarChoice } from '../ear/native/chosen-ear.ts';
import { ENGINE_WISHES, type EngineUse, type EngineWish } from '../recogniser/team/engine-use.ts';
import { EAR_CHOICE_SENTENCES, EAR_CHOICE_WORDS, listeningWords, WISH_WORDS } from './words.ts';

export interface ListeningFormProps {
  /** What hears now. */
  readonly use: () => EngineUse | null;
  readonly wish: () => EngineWish;
  readonly choose: (wish: EngineWish) => void;
  readonly ear: () => EarChoice;
  readonly chooseEar: (choice: EarChoice) => void;
  /** The speech model's name on the hub. */
  readonly model: () => string;
  readonly chooseModel: (name: string) => void;
}

/** What listens: left to the device, or chosen. */
export function ListeningForm(props: ListeningFormProps) {
  const { use, wish, choose } = props;
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
      <EarForm {...props} />
    </section>
  );
}

/** Whose ear, and where what is said goes by it: said plainly, as a voice that was sent cannot be called back. */
function EarForm({ ear, chooseEar, model, chooseModel }: Omit<ListeningFormProps, 'use'>) {
  const [chosen, setChosen] = useState(ear);
  const press = (next: EarChoice): void => {
    chooseEar(next);
    setChosen(next);
  };
  return (
    <>
      <div class="choices" role="group" aria-label="Whose ear">
        {EAR_CHOICES.map((each) => (
          <button
            key={each}
            type="button"
            data-testid={`ear-${each}`}
            aria-pressed={each === chosen}
            onClick={() => press(each)}
          >
            {EAR_CHOICE_WORDS[each]}
          </button>
        ))}
      </div>
      {chosen === 'ownWithModel' && <ModelName model={model} chooseModel={chooseModel} />}
      <p data-testid="ear-choice">{EAR_CHOICE_SENTENCES[chosen]} It counts from the next press.</p>
    </>
  );
}

/** What is being typed is kept here: the page is drawn anew at every change, and would put the old name back. */
function ModelName({ model, chooseModel }: Pick<ListeningFormProps, 'model' | 'chooseModel'>) {
  const [typed, setTyped] = useState(model);
  return (
    <input
      class="ear-model"
      data-testid="ear-model"
      aria-label="Its name on the hub"
      placeholder="organisation/model"
      value={typed}
      onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      onChange={({ currentTarget }) => chooseModel(currentTarget.value.trim())}
    />
  );
}
