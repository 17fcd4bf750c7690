import { SENSED, SIDE, SWITCHED } from '../../terms/which-one.ts';
import type { PartId } from '../../terms/names.ts';
import type { Finding } from '../utterance.ts';

const ENDS_IN_SIDE = new RegExp(`\\b${SIDE}\\s+$`, 'i');
const ENDS_IN_KIND: Partial<Record<PartId, RegExp>> = {
  sensor: new RegExp(`\\b${SENSED}\\s+$`, 'i'),
  contactor: new RegExp(`\\b${SWITCHED}\\s+$`, 'i'),
};

/** "Left condenser fan is dead", "air probe's off": no rule reads which, and it tells which one was found so. */
export function withSide(finding: Finding, text: string): Finding {
  const at = text.indexOf(finding.words);
  if (at < 1) return finding;
  const before = text.slice(0, at);
  const side = (ENDS_IN_KIND[finding.part]?.exec(before) ?? ENDS_IN_SIDE.exec(before))?.[0];
  return side === undefined ? finding : { ...finding, words: side + finding.words };
}
