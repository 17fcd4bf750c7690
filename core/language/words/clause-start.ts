import { spelledOut } from './own-reading.ts';
import type { Frame } from '../rule.ts';
import { FILLERS } from './fillers.ts';

/** Whether nothing at all stands before it in its sentence. */
export const opensSentence = ({ span }: Frame): boolean => span.from === 0;

const BREAK = /[,.;:!?…—()]/;

/** Whether nothing but fillers stands before it in its clause: "can somebody move this" tells nothing of somebody. */
export const startsClause = (frame: Frame): boolean =>
  frame.startsAtPause === true || startsInWords(frame);

/** The same where only a comma tells of a pause, and none that was found. */
export function startsInWords(frame: Frame): boolean {
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

/** "I'm shutting the breaker off", "ran the fan on high": somebody does it, and nothing was found. */
export const isSwitched = (frame: Frame): boolean => {
  const { from } = frame.span;
  return SWITCHES_IT.test(frame.wordsOf({ from: Math.max(0, from - 2), to: from }));
};
const SWITCHES_IT =
  /(?:^| )(?:shutting|turning|switching|flipping|cutting|killing|pulling|throwing|opening|closing|ran|keep|keeping|turn|shut|switch|flip|kick|kicking|throw)(?: (?:the|that|this|my|them|both|a|an))?$/i;

/** What stands behind it in the sentence, up to so many words. */
export function wordsBehind(frame: Frame, most: number): string {
  const { to } = frame.span;
  for (let end = to + most; end > to; end -= 1) {
    const words = frame.wordsOf({ from: to, to: end });
    if (words !== '') return words;
  }
  return '';
}

const SUBJECT = '(?:i|we|you|they|it|she|he|this|that)';
const OPENS_WITH_NEED = /^(?:need|want)\b/i;
const DO_BEFORE = /\b(?:do|does|did)(?: (?:the|my|this|that))?$/i;
const DO_AND_SUBJECT = new RegExp(`\\b(?:do|does|did) ${SUBJECT}$`, 'i');

/** "Do I need a bigger breaker" asks; "it does need one" does not. */
export function isAskedWithDo(frame: Frame): boolean {
  const { from } = frame.span;
  const before = frame.wordsOf({ from: Math.max(0, from - 2), to: from });
  const asks = OPENS_WITH_NEED.test(frame.wordsOf(frame.span)) ? DO_AND_SUBJECT : DO_BEFORE;
  return asks.test(before);
}

/** What stands before it in its clause, up to a comma or the like. */
export function clauseBefore(frame: Frame): string {
  const words = frame.wordsOf({ from: 0, to: frame.span.from });
  if (
    words === '' ||
    BREAK.test(frame.wordsOf({ from: frame.span.from - 1, to: frame.span.from + 1 }))
  )
    return '';
  return words.split(BREAK).at(-1)?.trim() ?? '';
}

/** Not the second of "gaskets on the walk-in and the undercounter", which is told of more units than this one. */
export const isLone = (frame: Frame): boolean =>
  !JOINED_TO_OTHER.test(frame.wordsOf({ from: 0, to: frame.span.from }));
const JOINED_TO_OTHER =
  /\b(?:on|for|in|at) (?:the|a|an|their|both) \S+(?: \S+)? and(?: the| a| an| their)?$/i;
