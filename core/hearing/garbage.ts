/**
 * Talk that is not for the product is caught by a loop over single phones beside the grammar:
 * whatever the grammar explains badly, the loop explains better.
 */

/** The phones of the engine's American-English model (ARPABET without stress). */
export const PHONES = [
  'AA', 'AE', 'AH', 'AO', 'AW', 'AY', 'B', 'CH', 'D', 'DH', 'EH', 'ER', 'EY', 'F', 'G', 'HH', 'IH',
  'IY', 'JH', 'K', 'L', 'M', 'N', 'NG', 'OW', 'OY', 'P', 'R', 'S', 'SH', 'T', 'TH', 'UH', 'UW', 'V',
  'W', 'Y', 'Z', 'ZH',
] as const; // prettier-ignore

const PREFIX = 'ph_';

const garbageWord = (phone: string): string => PREFIX + phone.toLowerCase();

export const isGarbage = (word: string): boolean => word.startsWith(PREFIX);

/** One word per phone, for the engine's dictionary. */
export const GARBAGE_PRONUNCIATIONS: Readonly<Record<string, readonly string[]>> =
  Object.fromEntries(PHONES.map((phone) => [garbageWord(phone), [phone]]));

/** A rule that any speech at all matches. */
export const GARBAGE_RULE = `<not_for_us> = ( ${PHONES.map(garbageWord).join(' | ')} )+ ;`;

/**
 * The weight of the phone loop against the grammar. Swept with a small visit grammar, three
 * synthetic voices made from people, 36 stray sentences and 33 of the grammar: 1e-10 rejects 34 and
 * loses one of ours, 1e-20 rejects 31 and loses none, 1e-30 rejects none. With the whole grammar and
 * two voices, 1e-15 loses 2 of 28 of ours, 1e-20 one; both let none of 14 stray sentences through.
 */
export const GARBAGE_WEIGHT = 1e-20;
