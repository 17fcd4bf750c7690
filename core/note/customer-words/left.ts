import type { LeftAs } from '../../visit/left-open.ts';

/** How a part was left, behind "is". */
export const PLAIN_LEFT: Record<LeftAs, string> = {
  closed: 'closed',
  isolated: 'shut off',
  lockedOut: 'locked off',
  removed: 'off',
  bypassed: 'bypassed',
  disabled: 'disconnected',
  open: 'open',
  connected: 'still connected',
  setForTest: 'set away for a test',
};
