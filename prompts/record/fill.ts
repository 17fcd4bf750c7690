import { capitalised, join, plain, type Said } from '../../core/replies/said.ts';
import type { PhraseRecord, PhraseSlot } from './phrase-record.ts';

/** A slot as it stands in a sentence. */
export const SLOT = /\{([a-zA-Z]+)\}/g;

/**
 * The sentence with its slots filled, in both forms, a capital at the start of each sentence; null where it
 * has a slot that the record has not. A unit is said once: "21 psi over: 192, should be 171".
 */
export function fill(sentence: string, { slots, tail }: PhraseRecord): Said | null {
  const pieces = sentence.split(SLOT);
  const saidUnits = new Set<string>();
  const filled = pieces.map((piece, index) => {
    if (index % 2 === 0) return plain(piece);
    const slot = slots[piece];
    return slot ? slotSaid(slot, saidUnits) : null;
  });
  const whole = filled.filter((piece) => piece !== null);
  if (whole.length < filled.length) return null;
  const said = withCapitals(whole);
  return tail ? join([said, tail], ' ') : said;
}

function slotSaid(slot: PhraseSlot, saidUnits: Set<string>): Said {
  const { bare } = slot;
  if (!bare) return slot;
  if (saidUnits.has(bare.unit)) return bare;
  saidUnits.add(bare.unit);
  return slot;
}

/** Piece by piece, as only the whole tells where a sentence starts: not after the point in "2.5". */
function withCapitals(pieces: readonly Said[]): Said {
  let startsSentence = true;
  const all = pieces.map((piece) => {
    const { text, spoken } = piece;
    const inner = { text: capitalsIn(text), spoken: capitalsIn(spoken) };
    const told = startsSentence ? capitalised(inner) : inner;
    if (text !== '') startsSentence = /[.!?] ?$/.test(text);
    return told;
  });
  return join(all, '');
}

const capitalsIn = (words: string): string =>
  words.replace(/([.!?] )([a-z])/g, (_, end: string, letter: string) => end + letter.toUpperCase());

/** The roles of a sentence, in its order. */
export function rolesIn(sentence: string): readonly string[] {
  return Array.from(sentence.matchAll(SLOT), ([, role]) => role ?? '');
}

/** Whether the sentence writes each required slot once, and none twice or that the record has not. */
export function fits(sentence: string, { slots }: PhraseRecord): boolean {
  const roles = rolesIn(sentence);
  const isOwn = roles.every((role) => role in slots);
  const required = Object.keys(slots).filter((role) => slots[role]?.required);
  return (
    isOwn && new Set(roles).size === roles.length && required.every((role) => roles.includes(role))
  );
}
