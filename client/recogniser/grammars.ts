import type { WeightedGrammar } from '../../core/hearing/jsgf.ts';
import { isObject, toDomString, toFloat, toUnsignedLong } from './web-idl/conversions.ts';
import { exposeInterface, walkAsArray } from './web-idl/expose-interface.ts';
import { indexed } from './web-idl/indexed.ts';

/**
 * The published IDL gives it no constructor, the published tests and every browser that has it make one with
 * `new`: pages written for browsers go before the text here.
 */
export class SpeechGrammar {
  #src = '';
  #weight = 1;

  get src(): string {
    return this.#src;
  }

  set src(value: string) {
    this.#src = toDomString(value);
  }

  get weight(): number {
    return this.#weight;
  }

  set weight(value: number) {
    this.#weight = toFloat(value);
  }
}

const AS_DATA = 'data:application/jsgf,';

/** By the object that pages hold, which stands before the one that was made. */
const lists = new WeakMap<object, SpeechGrammar[]>();

/** The standard's list of grammars. Here, unlike in browsers, it decides what can be heard. */
export class SpeechGrammarList {
  readonly [index: number]: SpeechGrammar;
  declare readonly [Symbol.iterator]: () => ArrayIterator<SpeechGrammar>;

  constructor() {
    const grammars: SpeechGrammar[] = [];
    const seen = indexed(this, () => grammars);
    lists.set(seen, grammars);
    return seen;
  }

  get length(): number {
    return grammarsIn(this).length;
  }

  item(index: number): SpeechGrammar | null {
    return grammarsIn(this)[toUnsignedLong(index)] ?? null;
  }

  addFromUri(src: string, weight = 1): void {
    add(this, toDomString(src), weight);
  }

  /** JSGF text with at least one public rule. */
  addFromString(string: string, weight = 1): void {
    add(this, AS_DATA + encodeURIComponent(toDomString(string)), weight);
  }
}

function add(list: object, src: string, weight: number): void {
  const grammars = grammarsIn(list);
  const grammar = new SpeechGrammar();
  grammar.src = src;
  grammar.weight = weight;
  grammars.push(grammar);
}

function grammarsIn(list: object): SpeechGrammar[] {
  const grammars = lists.get(list);
  if (grammars === undefined) throw new TypeError('Illegal invocation');
  return grammars;
}

export const isGrammarList = (value: unknown): value is SpeechGrammarList =>
  isObject(value) && lists.has(value);

exposeInterface(SpeechGrammar, 'SpeechGrammar');
exposeInterface(SpeechGrammarList, 'SpeechGrammarList');
walkAsArray(SpeechGrammarList.prototype);

/** The text of every grammar; rejects where an address does not answer. */
export function readGrammars(
  grammars: readonly SpeechGrammar[],
  fetchText: (address: string) => Promise<string>,
): Promise<readonly WeightedGrammar[]> {
  return Promise.all(
    grammars.map(async ({ src, weight }) => ({
      text: src.startsWith(AS_DATA) ? textIn(src) : await fetchText(src),
      weight,
    })),
  );
}

/** Whoever switches between grammars asks for the same few with every sentence. */
const MOST_TEXTS = 8;
const texts = new Map<string, string>();

function textIn(src: string): string {
  const known = texts.get(src);
  if (known !== undefined) return known;
  const text = decodeURIComponent(src.slice(AS_DATA.length));
  const [oldest] = texts.keys();
  if (texts.size >= MOST_TEXTS && oldest !== undefined) texts.delete(oldest);
  texts.set(src, text);
  return text;
}
