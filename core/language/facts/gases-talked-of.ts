import { saysItsName } from './refrigerant-said.ts';
import type { Frame } from '../rule.ts';

/** "They don't make R-12 anymore", "everything's going to propane": told of a gas, and not of what is in here. */
const OF_GASES =
  /\b(?:make|makes|made|sell|sells|sold|buy|bought|carry|carries|price of|cost of|going to|went to|switch(?:ed|ing)? to|(?:chang|convert)(?:e|ed|ing) to|jug of|love|hate|miss|about|than|like|(?:work|works|worked|working|trained|certified)(?: on)?)$/i;

/** Whether a gas that is named there is the one in this unit. */
export function isOfThisUnit(frame: Frame): boolean {
  const { from } = frame.span;
  return !OF_GASES.test(frame.wordsOf({ from: Math.max(0, from - 2), to: from }));
}

/** Said alone, "two ninety" may as well be a pressure. */
export function isSaidByName(frame: Frame): boolean {
  const isAsked = frame.context.asked !== null;
  return !isAsked && saysItsName(frame.wordsOf(frame.span), frame) && isOfThisUnit(frame);
}
