import type { PhraseRecord, Register } from '../record/phrase-record.ts';

/** Which words a kind of answer may be worded with, made of the corpus with the model and kept beside it. */
export interface Lexicon {
  /** Every token in the order of its id. */
  readonly tokens: readonly string[];
  readonly groups: readonly WordGroup[];
  /** By a token's id, the ids that some sentence has right behind it; by [SAY]'s, those that one begins with. */
  readonly follows: readonly (readonly number[])[];
}

/** Words that lines of one kind and register use, where all of `needs` holds. Words are ids of tokens. */
export interface WordGroup {
  readonly kind: string;
  readonly register: Register;
  readonly needs: readonly string[];
  readonly words: readonly number[];
}

/** "Over" is not among the words for what is under: no line that may be said of it has it. */
export function wordsFor(
  { groups }: Lexicon,
  { kind, fields }: PhraseRecord,
  register: Register,
): readonly number[] {
  const own = groups.filter(
    (group) =>
      group.kind === kind &&
      group.register === register &&
      group.needs.every((field) => fields.includes(field)),
  );
  return [...new Set(own.flatMap(({ words }) => words))];
}

export function parseLexicon(text: string): Lexicon | null {
  try {
    const read: unknown = JSON.parse(text);
    return isLexicon(read) ? read : null;
  } catch {
    return null;
  }
}

function isLexicon(read: unknown): read is Lexicon {
  if (typeof read !== 'object' || read === null) return false;
  if (!('tokens' in read && 'groups' in read && 'follows' in read)) return false;
  const { tokens, groups, follows } = read;
  return (
    isListOf(tokens, (token) => typeof token === 'string') &&
    isListOf(groups, isWordGroup) &&
    isListOf(follows, (ids) => isListOf(ids, Number.isInteger))
  );
}

const isListOf = (list: unknown, isOne: (one: unknown) => boolean): boolean =>
  Array.isArray(list) && list.every(isOne);

function isWordGroup(one: unknown): boolean {
  if (typeof one !== 'object' || one === null) return false;
  if (!('kind' in one && 'register' in one && 'needs' in one && 'words' in one)) return false;
  return (
    typeof one.kind === 'string' &&
    typeof one.register === 'string' &&
    isListOf(one.needs, (need) => typeof need === 'string') &&
    isListOf(one.words, Number.isInteger)
  );
}
