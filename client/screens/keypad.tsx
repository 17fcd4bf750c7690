import { useState } from 'preact/hooks';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { VisitState } from '../../core/visit/state.ts';
import {
  afterKey,
  isNumber,
  keyedQuantities,
  KEYS,
  nameOf,
  unitShown,
  wordsOf,
} from './keypad-model.ts';

interface KeypadProps {
  readonly visit: VisitState;
  /** What was entered, as it would be said. */
  readonly onWords: (words: string) => void;
  readonly onDone: () => void;
}

/** Readings by large keys, where nothing can be heard: which one, then its number, and then again which one. */
export function Keypad({ visit, onWords, onDone }: KeypadProps) {
  const [chosen, setChosen] = useState<QuantityId | null>(null);
  const [picks, setPicks] = useState(false);
  const quantity = chosen ?? (picks ? null : visit.wanted);
  const choose = (next: QuantityId | null): void => {
    setChosen(next);
    setPicks(next === null);
  };
  if (quantity === null) return <Pick visit={visit} onPick={choose} onDone={onDone} />;
  return (
    <Keys
      key={quantity}
      visit={visit}
      quantity={quantity}
      onPick={() => choose(null)}
      onEntered={(words) => {
        setChosen(null);
        setPicks(false);
        onWords(words);
      }}
      onDone={onDone}
    />
  );
}

interface PickProps {
  readonly visit: VisitState;
  readonly onPick: (quantity: QuantityId) => void;
  readonly onDone: () => void;
}

function Pick({ visit, onPick, onDone }: PickProps) {
  return (
    <div class="keypad" data-testid="keypad-pick">
      <div class="keypad-head">
        <p>Which reading?</p>
        <Done onDone={onDone} />
      </div>
      <div class="picks">
        {keyedQuantities(visit).map(({ quantity, name, last }) => (
          <button
            key={quantity}
            type="button"
            data-testid={`pick-${quantity}`}
            onClick={() => onPick(quantity)}
          >
            {name} <span class="unit-symbol">{last}</span>
          </button>
        ))}
      </div>
    </div>
  );
}

interface KeysProps {
  readonly visit: VisitState;
  readonly quantity: QuantityId;
  readonly onPick: () => void;
  readonly onEntered: (words: string) => void;
  readonly onDone: () => void;
}

function Keys({ visit, quantity, onPick, onEntered, onDone }: KeysProps) {
  const [entered, setEntered] = useState('');
  const unit = unitShown(visit, quantity);
  return (
    <div class="keypad" data-testid="keypad">
      <div class="keypad-head">
        <button type="button" class="keyed" data-testid="keyed" onClick={onPick}>
          <span>{nameOf(quantity)}</span> <b>{entered.replace('-', '−')}</b> <span>{unit}</span>
        </button>
        <Done onDone={onDone} />
      </div>
      <div class="keys">
        {KEYS.map((key) => (
          <button
            key={key}
            type="button"
            data-testid={`key-${key}`}
            onClick={() => setEntered(afterKey(entered, key))}
          >
            {key}
          </button>
        ))}
        <button
          type="button"
          class="rub-out"
          data-testid="key-back"
          onClick={() => setEntered(entered.slice(0, -1))}
        >
          back
        </button>
        <button
          type="button"
          class="enter"
          data-testid="key-enter"
          disabled={!isNumber(entered)}
          onClick={() => onEntered(wordsOf(visit, quantity, entered))}
        >
          keep
        </button>
      </div>
    </div>
  );
}

function Done({ onDone }: { onDone: () => void }) {
  return (
    <button type="button" class="done" data-testid="keys-done" onClick={onDone}>
      done
    </button>
  );
}
