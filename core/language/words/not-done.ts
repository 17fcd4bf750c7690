import type { Frame } from '../rule.ts';

/** "I almost swapped it out", "should have cleaned it", "he blew it out". */
export const isNotDone = (frame: Frame): boolean => {
  const { from } = frame.span;
  return from > 0 && NOT_DONE.test(frame.wordsOf({ from: Math.max(0, from - 2), to: from }));
};
const NOT_DONE =
  /\b(?:almost|nearly|should|could|would|might|must|thought|wish|wished|hoped|supposed to|he|she|they|somebody|someone|guy|tech|customer|owner|manager|cook)(?: (?:i|we|just|already|even|have))*(?:['’]d)?$|\bi['’]d$|(?:\bnot|\bnever|n['’]t|\bto have)(?: (?:yet|even))?$/i;
