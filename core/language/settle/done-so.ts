import type { Context } from '../context.ts';
import type { Utterance } from '../utterance.ts';
import { meaningOf } from './meaning.ts';
import { nothingSaid } from './told.ts';
import type { Reads } from './reads.ts';

const SO_WE = /[\s,]so (?=(?:i|we) [a-z])/i;

/** "Somebody put a tap on it so I put my gauges on": why is kept in words, and what we did for it is done. */
export function doneSo(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text, remarks } = said;
  const found = SO_WE.exec(text);
  if (found === null || found.index === 0 || remarks.length === 0) return null;
  if (meaningOf({ ...said, remarks: [] }) !== meaningOf(nothingSaid(text))) return null;
  const { work } = reads(text.slice(found.index + found[0].length), context);
  return work.length === 0 ? null : { ...said, work };
}
