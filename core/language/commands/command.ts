import type { Command } from '../utterance.ts';

export const command = (found: Command): { readonly commands: readonly Command[] } => ({
  commands: [found],
});
