import type { Amounted } from '../numbers/measure.ts';
import type { Frame } from '../rule.ts';

/** What stands between the panel and the unit, and what makes the control voltage: no place of ours has its name. */
export const FEED =
  '((circuit|main) breaker|breaker|breakers|breaker panel|isolator|fused spur|spur|main panel|electrical panel|load center|disconnect [switch]|contactor|fuse [(block|holder)]|fuses|terminal (strip|block|board)|junction box|j box|power block|[control] transformer)';
/** The same but for the contactor, which is a place. */
export const UNPLACED = FEED.replace('|contactor|', '|');

/** A side of such a thing. */
export const SIDES =
  '((line|load|top|bottom|primary|secondary|high|low|line in|load out|(twenty four|24|one twenty|120|two forty|240|two oh eight|208|two thirty|230|control|line) volt) side|primary|secondary|top|bottom)';

/** "She's got forty six on the wall in there": a thermometer's, where no outlet gives so little. */
export const isOnWall = ({ value }: Amounted, frame: Frame): boolean =>
  value !== null &&
  value !== 0 &&
  value < LEAST_MAINS &&
  /\bwall$/i.test(frame.wordsOf(frame.span));
/** Ours: less is no outlet's. */
const LEAST_MAINS = 90;
