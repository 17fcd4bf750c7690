import type { Told } from './told.ts';

/** All that a model is told of a record: two with one signature differ in their numbers and names alone. */
export function signatureOf({ record, registers }: Told): string {
  const { kind, fields, slots } = record;
  const roles = Object.entries(slots).map(([role, { required }]) => (required ? `${role}!` : role));
  const manners = registers.map((register) => `%${register}`);
  return [kind, ...manners, ...fields.map((field) => `+${field}`), ...roles].join(' ');
}

/** A few of each signature, to hold a sentence against. */
export function bySignature(all: readonly Told[], each: number): ReadonlyMap<string, Told[]> {
  const found = new Map<string, Told[]>();
  for (const told of all) {
    const signature = signatureOf(told);
    const alike = found.get(signature) ?? [];
    if (alike.length < each) found.set(signature, [...alike, told]);
  }
  return found;
}

/**
 * About one signature in eight is never trained on, so that what the model makes of a combination that it has
 * not seen is measured. Every field and role of it is met in another of its kind: a word that was never learnt
 * says nothing of combining.
 */
export function heldOutOf(signatures: readonly string[]): readonly string[] {
  const chosen = new Set(signatures.filter((signature) => hash(signature) % 8 === 0));
  const trained = signatures.filter((signature) => !chosen.has(signature));
  return [...chosen].filter((signature) => {
    const [kind, ...parts] = signature.split(' ');
    const alike = trained.map((other) => other.split(' ')).filter(([first]) => first === kind);
    return alike.length > 0 && parts.every((part) => alike.some((other) => other.includes(part)));
  });
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let state = 0x811c9dc5;
  for (const character of text) {
    state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return (state ^ (state >>> 15)) >>> 0;
}
