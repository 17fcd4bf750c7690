import { SIDE } from '../../terms/which-one.ts';
import type { Finding } from '../utterance.ts';

const ENDS_IN_SIDE = new RegExp(`\\b${SIDE}\\s+$`, 'i');

/** "Left condenser fan is dead": no rule reads the side, and it tells which one was found so. */
export function withSide(finding: Finding, text: string): Finding {
  const at = text.indexOf(finding.words);
  const side = at < 1 ? undefined : ENDS_IN_SIDE.exec(text.slice(0, at))?.[0];
  return side === undefined ? finding : { ...finding, words: side + finding.words };
}
