import type { PartId } from '../terms/names.ts';
import { settledFan } from './fans.ts';
import type { Frame, Means } from './rule.ts';
import type { Finding } from './utterance.ts';

/** What was found at a part; of an unnamed fan or coil, at the one that is meant. */
export function finding(part: PartId, state: Finding['state'], frame: Frame): Finding {
  const words = frame.wordsOf(frame.span);
  const settled = settledFan(coilThatIces(part, { state, words }), frame.context);
  return settled === 'fan'
    ? { part, state, unresolved: true, words }
    : { part: settled, state, words };
}

/** An unnamed coil is the condenser's, but the one that ices is the evaporator's. */
function coilThatIces(part: PartId, { state, words }: Pick<Finding, 'state' | 'words'>): PartId {
  const isUnnamed = part === 'condenser' && !/cond|outdoor/i.test(words);
  const isIce = state === 'iced' || /\bice\b/i.test(words);
  return isUnnamed && isIce ? 'evaporator' : part;
}

/** What only one part of the unit does, so that it need not be named. */
export const onlyOf =
  (part: PartId, state: Finding['state']): Means =>
  (_tags, frame) => ({ findings: [finding(part, state, frame)] });
