import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';

export class SpeechGrammar {
  src: string;
  weight: number;

  constructor(src: string, weight: number) {
    this.src = src;
    this.weight = weight;
  }
}

const AS_DATA = 'data:application/jsgf,';

/** The standard's list of grammars. Here, unlike in browsers, it decides what can be heard. */
export class SpeechGrammarList {
  readonly #grammars: SpeechGrammar[] = [];

  get length(): number {
    return this.#grammars.length;
  }

  item(index: number): SpeechGrammar | null {
    return this.#grammars[index] ?? null;
  }

  addFromUri(src: string, weight = 1): void {
    this.#grammars.push(new SpeechGrammar(src, weight));
  }

  /** JSGF text with at least one public rule. */
  addFromString(text: string, weight = 1): void {
    this.addFromUri(AS_DATA + encodeURIComponent(text), weight);
  }

  [Symbol.iterator](): Iterator<SpeechGrammar> {
    return this.#grammars[Symbol.iterator]();
  }
}

/** The text of every grammar; rejects where an address does not answer. */
export function readGrammars(
  grammars: readonly SpeechGrammar[],
  fetchText: (address: string) => Promise<string>,
): Promise<readonly WeightedGrammar[]> {
  return Promise.all(
    grammars.map(async ({ src, weight }) => ({
      text: src.startsWith(AS_DATA)
        ? decodeURIComponent(src.slice(AS_DATA.length))
        : await fetchText(src),
      weight,
    })),
  );
}
