import { spelledOut } from './own-reading.ts';
import type { Frame } from './rule.ts';
import { FILLERS } from './talk.ts';

/** Whether nothing at all stands before it in its sentence. */
export const opensSentence = ({ span }: Frame): boolean => span.from === 0;

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

/** The word before what the rule read; empty where there is none. */
export function wordBefore(frame: Frame): string {
  const { from } = frame.span;
  return from === 0 ? '' : frame.wordsOf({ from: from - 1, to: from });
}

/** The word that stands behind it in the same breath, as the rules write words; '' at a pause and at the end. */
export function wordBehind(frame: Frame): string {
  const { to } = frame.span;
  const [next = ''] = spelledOut(frame.wordsOf({ from: to, to: to + 1 })).split(' ');
  return frame.endsAtPause ? '' : next.toLowerCase();
}
