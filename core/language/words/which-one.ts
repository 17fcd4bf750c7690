import { SENSED, SIDE } from '../../terms/which-one.ts';
import type { Finding } from '../utterance.ts';

const ENDS_IN_SIDE = new RegExp(`\\b${SIDE}\\s+$`, 'i');
const ENDS_IN_SENSED = new RegExp(`\\b${SENSED}\\s+$`, 'i');

/** "Left condenser fan is dead", "air probe's off": no rule reads which, and it tells which one was found so. */
export function withSide(finding: Finding, text: string): Finding {
  const at = text.indexOf(finding.words);
  const which = finding.part === 'sensor' ? ENDS_IN_SENSED : ENDS_IN_SIDE;
  const side = at < 1 ? undefined : which.exec(text.slice(0, at))?.[0];
  return side === undefined ? finding : { ...finding, words: side + finding.words };
}
