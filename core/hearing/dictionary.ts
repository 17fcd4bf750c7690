/** How words sound: ARPABET phones separated by spaces, most usual first. */
export type Pronunciations = Readonly<Record<string, readonly string[]>>;

const ENTRY = /^(\S+?)(\(\d+\))?\s+(\S.*)$/;

/** Reads a CMU dictionary (one `word PH ON ES` a line, variants as `word(2)`, comments after `;;`). */
export function parseDictionary(text: string, wanted?: ReadonlySet<string>): Pronunciations {
  const words = new Map<string, string[]>();
  for (const line of text.split('\n')) {
    const entry = line.startsWith(';;') ? null : ENTRY.exec(line.trim());
    const [, word, , phones] = entry ?? [];
    if (word === undefined || phones === undefined || wanted?.has(word) === false) continue;
    words.set(word, [...(words.get(word) ?? []), phones]);
  }
  return Object.fromEntries(words);
}

/** How each word sounds, and the words that nobody knows how to say. */
export interface Sounded {
  readonly pronunciations: Pronunciations;
  readonly missing: readonly string[];
}

const POSSESSIVE = "'s";

/**
 * Finds how the words sound: in the extra table first, then in the dictionary's text, then, for the
 * `'s` forms that a dictionary mostly lacks ("condenser's plugged"), from the word before the `'s`.
 */
export function soundWords(
  words: readonly string[],
  dictionary: string,
  extra: Pronunciations,
): Sounded {
  const bases = words.filter((word) => word.endsWith(POSSESSIVE)).map(withoutPossessive);
  const known = { ...parseDictionary(dictionary, new Set([...words, ...bases])), ...extra };
  const found = new Map<string, readonly string[]>();
  const missing: string[] = [];
  for (const word of words) {
    const sounds = known[word] ?? (word.endsWith(POSSESSIVE) ? addPossessive(known, word) : null);
    if (sounds === null || sounds === undefined) missing.push(word);
    else found.set(word, sounds);
  }
  return { pronunciations: Object.fromEntries(found), missing };
}

function addPossessive(known: Pronunciations, word: string): readonly string[] | undefined {
  return known[withoutPossessive(word)]?.map((phones) => `${phones} ${possessiveSound(phones)}`);
}

const withoutPossessive = (word: string): string => word.slice(0, -POSSESSIVE.length);

/** English: IH Z after a hiss, S after another voiceless sound, Z after a voiced one. */
function possessiveSound(phones: string): string {
  const last = phones.split(' ').at(-1) ?? '';
  if (['S', 'Z', 'SH', 'ZH', 'CH', 'JH'].includes(last)) return 'IH Z';
  return ['P', 'T', 'K', 'F', 'TH'].includes(last) ? 'S' : 'Z';
}

/** A dictionary's text with these words only: the whole of 3.3 MB costs 0.4 s of start-up. */
export function printDictionary(pronunciations: Pronunciations): string {
  const lines = Object.entries(pronunciations).flatMap(([word, sounds]) => variants(word, sounds));
  return lines.map(([name, phones]) => `${name} ${phones}\n`).join('');
}

/** Pairs as an engine takes them: the second way to say a word is called `word(2)`. */
export function variants(
  word: string,
  sounds: readonly string[],
): readonly (readonly [string, string])[] {
  return sounds.map((phones, index) => [index === 0 ? word : `${word}(${index + 1})`, phones]);
}
