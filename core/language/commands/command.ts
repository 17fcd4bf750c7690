import type { Means } from '../rule.ts';
import type { Command, PlainCommand } from '../utterance.ts';

export const command = (found: Command): { readonly commands: readonly Command[] } => ({
  commands: [found],
});

/** A command of which nothing more is told. */
export const plain =
  (kind: PlainCommand): Means =>
  () =>
    command({ do: kind });

/** "Copy that" answers only where something was asked. */
export const answer =
  (kind: 'yes' | 'no'): Means =>
  (_tags, frame) =>
    frame.context.asksYes ? command({ do: kind }) : null;
