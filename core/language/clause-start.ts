import type { Frame } from './rule.ts';
import { FILLERS } from './talk.ts';

const BREAK = /[,.;:!?…—()]/;

/** Whether nothing but fillers stands before it in its clause: "can somebody move this" tells nothing of somebody. */
export function startsClause(frame: Frame): boolean {
  const { from } = frame.span;
  if (from === 0 || BREAK.test(frame.wordsOf({ from: from - 1, to: from + 1 }))) return true;
  return frame
    .wordsOf({ from: 0, to: from })
    .toLowerCase()
    .split(/[^a-z]+/)
    .every((word) => word === '' || (FILLERS.hasWord(word) && word !== 'think'));
}
