import type { RejectedValue } from '../language/choose-understanding.ts';
import type { Reading, Utterance } from '../language/utterance.ts';
import type { Acknowledgement } from '../visit/acknowledgement.ts';
import type { Memory } from './turn.ts';

/** The values that these acknowledgements say were taken back, replaced or left out. */
function rejectedIn(acknowledgements: readonly Acknowledgement[]): readonly RejectedValue[] {
  return acknowledgements.flatMap((said): readonly RejectedValue[] => {
    switch (said.kind) {
      case 'takenBack':
        return said.what.of === 'reading' ? valuesOf(said.what.reading) : [];
      case 'amended':
        return said.from.value === said.to.value ? [] : valuesOf(said.from);
      case 'doubtDropped':
        return [...valuesOf(said.doubt), ...valuesOf({ ...said.doubt, value: said.doubt.or })];
      case 'leftOverDropped':
        return said.digits.split(', ').map((each) => ({ quantity: null, value: Number(each) }));
      default:
        return [];
    }
  });
}

const valuesOf = ({
  quantity,
  value,
}: Pick<Reading, 'quantity'> & {
  readonly value?: number | undefined;
}): readonly RejectedValue[] => (value === undefined ? [] : [{ quantity, value }]);

/**
 * What must not be offered again after this turn: what was said no to just now; nothing any more once a value
 * was kept, or once the rejected one was heard again, so that whoever insists is believed.
 */
export function rejectedAfter(
  before: readonly RejectedValue[],
  acknowledgements: readonly Acknowledgement[],
): readonly RejectedValue[] {
  const fresh = rejectedIn(acknowledgements);
  if (fresh.length > 0) return [...before, ...fresh];
  const isOver = acknowledgements.some(({ kind }) => kind === 'reading' || kind === 'heardAgain');
  return isOver ? [] : before;
}

const ASKS: ReadonlySet<Acknowledgement['kind']> = new Set<Acknowledgement['kind']>([
  'doubt',
  'leftOver',
  'legsLeftOver',
  'putBackAsked',
]);

/** The readings that this reply says back and that "no" would be about; none where it asks something. */
export function readBackIn(acknowledgements: readonly Acknowledgement[]): readonly Reading[] {
  if (acknowledgements.some(({ kind }) => ASKS.has(kind))) return [];
  return acknowledgements.flatMap((said) => {
    if (said.kind === 'amended') return [said.to];
    return said.kind === 'reading' ? [said.reading] : [];
  });
}

export type Refusal =
  { readonly kind: 'heeded'; readonly utterance: Utterance } | { readonly kind: 'whichOne' };

/** "No" right behind "Head 150." takes that back; behind several readings it must be asked which. */
export function heedRefusal(utterance: Utterance, memory: Memory): Refusal {
  const [only, ...more] = memory.readBack;
  const [command] = utterance.commands;
  if (command?.do !== 'no' || only === undefined) return { kind: 'heeded', utterance };
  if (more.length > 0) return { kind: 'whichOne' };
  const { quantity, value } = only;
  const undo = { do: 'undo', quantity, ...(value === undefined ? {} : { value }) } as const;
  return { kind: 'heeded', utterance: { ...utterance, commands: [undo] } };
}
