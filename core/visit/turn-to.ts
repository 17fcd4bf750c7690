import type { Command } from '../language/utterance.ts';
import type { TurnedTo } from './events.ts';
import type { Keeping } from './keeping.ts';
import type { VisitState } from './state.ts';
import { latestReading } from './views.ts';

type TurnTo = Extract<Command, { do: 'turnTo' }>;

/** Half a sentence names nothing yet. */
export const isHalf = ({ part, quantity }: TurnedTo): boolean => part === null && quantity === null;

/** What is named is waited for, with what it was read at before; half a sentence alone opens no visit. */
export function turnTo({ do: _do, ...to }: TurnTo, state: VisitState): Keeping {
  if (isHalf(to) && state.visit === null) return { bodies: [], acknowledgement: null };
  const was = to.quantity === null ? null : latestReading(state, to.quantity, { place: to.place });
  return {
    bodies: [{ type: 'turnedTo', v: 1, ...to }],
    acknowledgement: { kind: 'turnedTo', to, was: was && was.reading },
  };
}
