import type { PhraseRecord } from '../../../prompts/record/phrase-record.ts';
import type { Told } from './told.ts';

/** All that a model is told of a record: two with one signature differ in their numbers and names alone. */
export function signatureOf({ kind, fields, slots }: PhraseRecord): string {
  const roles = Object.entries(slots).map(([role, { required }]) => (required ? `${role}!` : role));
  return [kind, ...fields.map((field) => `+${field}`), ...roles].join(' ');
}

/** A few of each signature, to hold a sentence against. */
export function bySignature(all: readonly Told[], each: number): ReadonlyMap<string, Told[]> {
  const found = new Map<string, Told[]>();
  for (const told of all) {
    const signature = signatureOf(told.record);
    const alike = found.get(signature) ?? [];
    if (alike.length < each) found.set(signature, [...alike, told]);
  }
  return found;
}

/**
 * About one in eight signatures is never trained on, so that what the model makes of a combination that it
 * has not seen is measured, and stays so whenever it is trained anew. A kind with one signature keeps it.
 */
export function isHeldOut(signature: string): boolean {
  return hash(signature) % 8 === 0 && signature.includes('+');
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let state = 0x811c9dc5;
  for (const character of text) {
    state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return (state ^ (state >>> 15)) >>> 0;
}
