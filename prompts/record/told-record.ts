import type { Known } from '../../core/advice/verdict.ts';
import { requiredRoles } from '../../core/replies/guard/told/required-roles.ts';
import { toldOf } from '../../core/replies/guard/told/told-of.ts';
import type { Recorded } from './number-records.ts';
import type { PhraseSlot } from './phrase-record.ts';

/** What is told by statements has its fields and slots there; required are those that no wording leaves out. */
export function toldRecord(known: Known): Recorded | null {
  const told = toldOf(known);
  if (told === null) return null;
  const required = requiredRoles(told);
  const slots: Record<string, PhraseSlot> = {};
  for (const [role, { text, spoken }] of Object.entries(told.slots)) {
    slots[role] = { text, spoken, required: required.has(role) };
  }
  return { fields: told.fields, slots, ...(told.tail && { tail: told.tail }) };
}
