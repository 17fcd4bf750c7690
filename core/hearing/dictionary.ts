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

/** A regular ending: what a word may have been without it, and how it sounds behind the last sound of that. */
interface Ending {
  readonly spelt: RegExp;
  readonly bases: (stem: string) => readonly string[];
  readonly sound: (last: string) => string;
}

const HISSES = ['S', 'Z', 'SH', 'ZH', 'CH', 'JH'];
const VOICELESS = [
  'P',
  'T',
  'K',
  'F',
  'TH',
  ...HISSES.filter((phone) => !/^(Z|ZH|JH)$/.test(phone)),
];

/** English: IH Z after a hiss, S after another voiceless sound, Z after a voiced one. */
const hiss = (last: string): string =>
  HISSES.includes(last) ? 'IH Z' : VOICELESS.includes(last) ? 'S' : 'Z';
/** AH D after T or D, T after another voiceless sound, D after a voiced one. */
const past = (last: string): string =>
  ['T', 'D'].includes(last) ? 'AH D' : VOICELESS.includes(last) ? 'T' : 'D';

/** "vibrate" and "shim" of the stems "vibrat" and "shimm". */
const verbs = (stem: string): readonly string[] => [
  stem,
  `${stem}e`,
  ...(/([^aeiou])\1$/.test(stem) ? [stem.slice(0, -1)] : []),
  ...(stem.endsWith('i') ? [`${stem.slice(0, -1)}y`] : []),
];

/** Forms that a dictionary of 130,000 words mostly has, and of rarer words often lacks. */
const ENDINGS: readonly Ending[] = [
  { spelt: /'s$/, bases: (stem) => [stem], sound: hiss },
  { spelt: /s$/, bases: (stem) => [stem, stem.replace(/e$/, '')], sound: hiss },
  { spelt: /ed$/, bases: verbs, sound: past },
  { spelt: /ing$/, bases: verbs, sound: () => 'IH NG' },
];

/** The words that it may be a form of, each with its ending; whoever writes a dictionary needs these too. */
const formsOf = (word: string) =>
  ENDINGS.filter(({ spelt }) => spelt.test(word)).flatMap(({ spelt, bases, sound }) =>
    bases(word.replace(spelt, '')).map((base) => ({ base, sound })),
  );

/**
 * Finds how the words sound: in the extra table first, then in the dictionary's text, then, for regular forms
 * ("condenser's plugged", "vibrated"), from the word without its ending.
 */
export function soundWords(
  words: readonly string[],
  dictionary: string,
  extra: Pronunciations,
): Sounded {
  const bases = words.flatMap((word) => formsOf(word).map(({ base }) => base));
  const known = { ...parseDictionary(dictionary, new Set([...words, ...bases])), ...extra };
  const found = new Map<string, readonly string[]>();
  const missing: string[] = [];
  for (const word of words) {
    const sounds = known[word] ?? addEnding(known, word);
    if (sounds === null) missing.push(word);
    else found.set(word, sounds);
  }
  return { pronunciations: Object.fromEntries(found), missing };
}

function addEnding(known: Pronunciations, word: string): readonly string[] | null {
  const form = formsOf(word).find(({ base }) => Object.hasOwn(known, base));
  if (form === undefined) return null;
  return (known[form.base] ?? []).map(
    (phones) => `${phones} ${form.sound(phones.split(' ').at(-1) ?? '')}`,
  );
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
