import { wordBefore, wordBehind } from '../words/clause-start.ts';
import { holdsNumber } from '../words/own-reading.ts';
import type { Frame } from '../rule.ts';

/** "Target head please": but "target head is ninety two" tells. */
export const standsByItself = (frame: Frame): boolean =>
  (frame.span.from === 0 || !LEADS_TO_TARGET.test(wordBefore(frame))) && isNotTold(frame);
const LEADS_TO_TARGET =
  /^(?:the|a|an|my|our|your|their|of|to|at|from|above|below|under|over|on|near|off|is|was|no|not|that|this|than|for|with|what|[a-z]+['’]s)$/i;

/** "What's the split and superheat came down to eight": the second is told. */
export const isNotTold = (frame: Frame): boolean => {
  const next = wordBehind(frame);
  return !TOLD_BEHIND.test(next) && (!holdsNumber(next) || holdsNumber(frame.wordsOf(frame.span)));
};
const TOLD_BEHIND =
  /^(?:is|was|are|came|comes|dropped|went|reads|reading|says|shows|sits|at|about|around|holding|looks|needs|minus)$/i;
