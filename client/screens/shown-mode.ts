import type { Mode, Session } from '../state/session.ts';

/** What the page may claim to be doing: it listens only once sound reaches the recogniser. */
export function shownMode({ mode, hearing }: Session): Mode['kind'] {
  return mode.kind === 'listening' && !hearing ? 'opening' : mode.kind;
}
