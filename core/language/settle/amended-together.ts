import type { Context } from '../context.ts';
import type { Reading, Utterance } from '../utterance.ts';
import { takenLeadOf } from './fragments.ts';
import { nothingSaid } from './told.ts';

/**
 * "Make that two point one" is of what was told last; "make that two point one and two point four" is of no one thing, and
 * each number is asked about rather than the first put in the place of another.
 */
export function amendsOne(said: Utterance): Utterance {
  const { commands, unclaimed } = said;
  const [only, ...more] = commands;
  if (unclaimed.length === 0 || more.length > 0) return said;
  if (only?.do !== 'amend' || only.quantity !== null || only.unit !== undefined) return said;
  return { ...said, commands: [], unclaimed: [String(only.value), ...unclaimed] };
}

/** "No, make that two point one and two point four", of two figures told in one breath: each gets the one in its place. */
export function bothPutRight(said: Utterance, { told }: Context): Utterance | null {
  const { text, unclaimed } = said;
  const isPair = unclaimed.length === 2 && takenLeadOf(text) !== '' && tellsOnlyNumbers(said);
  if (!isPair) return null;
  const [second, first, before] = told.flatMap((each, ago) =>
    each?.told.of === 'reading' ? [{ ago, was: each.told.reading }] : [],
  );
  if (second === undefined || first === undefined) return null;
  const isTogether = [first.was.words, before?.was.words].map((each) => each === second.was.words);
  if (!isTogether[0] || isTogether[1] || first.was.quantity !== second.was.quantity) return null;
  return {
    ...nothingSaid(text),
    commands: [first, second].map(({ ago }) => ({ do: 'undo', earlier: true, ago })),
    readings: [first, second].map(({ was }, at) => valued(was, Number(unclaimed[at]))),
  };
}

/** A range, a hedge or an over-limit mark belonged to the old value. */
function valued({ low, high, hedged, overlimit, ...was }: Reading, value: number): Reading {
  return { ...was, value };
}

const tellsOnlyNumbers = ({ text: _text, unclaimed: _unclaimed, ...said }: Utterance): boolean =>
  Object.values(said).every((list) => list.length === 0);
