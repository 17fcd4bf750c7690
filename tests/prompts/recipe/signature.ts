import type { CorpusLine } from '../../../prompts/corpus/corpus-line.ts';
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
 * not met is measured. Each line that could be said of it is learnt with another: only the combination is new.
 * What is told of one thing alone, a capacitor that is weak, is not a combination, and nothing else teaches it;
 * nor is a plain reading, with no field or one, which is asked for most.
 */
export function heldOutOf(linesOf: ReadonlyMap<string, readonly CorpusLine[]>): readonly string[] {
  const chosen = [...linesOf.keys()].filter(
    (signature) => signature.split(' +').length > 2 && hash(signature) % 3 === 0,
  );
  const heldOut: string[] = [];
  for (const signature of chosen) {
    const others = [...linesOf].filter(([one]) => one !== signature && !heldOut.includes(one));
    const learnt = new Set(others.flatMap(([, lines]) => lines));
    const own = linesOf.get(signature) ?? [];
    if (own.length > 0 && own.every((line) => learnt.has(line))) heldOut.push(signature);
  }
  return heldOut;
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let state = 0x811c9dc5;
  for (const character of text) {
    state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return (state ^ (state >>> 15)) >>> 0;
}
