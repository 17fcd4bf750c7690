import type { Token } from '../../grammar/tokens.ts';

export type Phrase = readonly string[];

/** Whether those words stand there. */
export const standAt = (tokens: readonly Token[], at: number, words: Phrase): boolean =>
  words.every((word, index) => tokens[at + index]?.text === word);

/** Phrases by their first words, so that of many only those that may stand at a place are looked at. */
export class Phrases {
  private readonly byFirst = new Map<string, Phrase[]>();

  /** Each in words that stand apart; the earlier is found before the later. */
  constructor(phrases: readonly string[]) {
    for (const phrase of phrases) {
      const words = phrase.split(' ');
      const [first = ''] = words;
      const others = this.byFirst.get(first);
      if (others === undefined) this.byFirst.set(first, [words]);
      else others.push(words);
    }
  }

  get firstWords(): Iterable<string> {
    return this.byFirst.keys();
  }

  /** The first of them that stands there, and of which that is so. */
  at(
    tokens: readonly Token[],
    place: number,
    isSo: (length: number) => boolean = always,
  ): Phrase | null {
    const first = tokens[place];
    const phrases = first === undefined ? undefined : this.byFirst.get(first.text);
    if (phrases === undefined) return null;
    for (const words of phrases) {
      if (standAt(tokens, place, words) && isSo(words.length)) return words;
    }
    return null;
  }
}

const always = (): boolean => true;
