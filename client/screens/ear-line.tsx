import { isTooLoud } from '../../core/hearing/earshot.ts';
import { earOf, type Session } from '../state/session.ts';
import { earshotWords } from './words.ts';

interface EarLineProps {
  readonly session: Session;
  readonly onKeys: () => void;
}

/** Along the field's foot: how far the voice stands above the noise, and the keys where that is too little. */
export function EarLine({ session, onKeys }: EarLineProps) {
  const { earshot, tab } = session;
  const ear = earOf(session.mode).kind;
  const words = ear === 'open' ? earshotWords(earshot) : null;
  const offersKeys = tab !== 'keys' && (ear === 'deaf' || (ear === 'open' && isTooLoud(earshot)));
  if (words === null && !offersKeys) return null;
  return (
    <div class="ear-line" data-standing={earshot.standing}>
      {words !== null && <p data-testid="earshot">{words}</p>}
      {offersKeys && (
        <button type="button" data-testid="open-keys" onClick={onKeys}>
          enter by keys
        </button>
      )}
    </div>
  );
}
