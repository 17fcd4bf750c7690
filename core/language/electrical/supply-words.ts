/** What stands between the panel and the unit, and what makes the control voltage: no place of ours has its name. */
export const FEED =
  '((circuit|main) breaker|breaker|breakers|breaker panel|isolator|fused spur|spur|main panel|electrical panel|load center|disconnect [switch]|contactor|fuse [(block|holder)]|fuses|terminal (strip|block|board)|junction box|j box|power block|[control] transformer)';
/** The same but for the contactor, which is a place. */
export const UNPLACED = FEED.replace('|contactor|', '|');

/** A side of such a thing. */
export const SIDES =
  '((line|load|top|bottom|primary|secondary|high|low|line in|load out|(twenty four|24|one twenty|120|two forty|240|two oh eight|208|two thirty|230|control|line) volt) side|primary|secondary|top|bottom)';
