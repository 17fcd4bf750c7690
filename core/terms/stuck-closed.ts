const STUCK_CLOSED = /\b(?:welded|stuck (?:closed|shut|in|on|made|energized))\b/i;

/** Whether words tell of a switch that no longer opens. */
export const saysStuckClosed = (words: string): boolean => STUCK_CLOSED.test(words);
