import { isObject, toUnsignedLong } from './web-idl/conversions.ts';
import { exposeInterface, walkAsArray } from './web-idl/expose-interface.ts';
import { KEY, requireKey } from './web-idl/illegal-constructor.ts';
import { indexed } from './web-idl/indexed.ts';

/** The result interfaces of the Web Speech API: immutable, indexed, iterable, made by the recogniser alone. */
export class SpeechRecognitionAlternative {
  readonly #transcript: string;
  readonly #confidence: number;

  constructor(...[key, transcript = '', confidence = 0]: readonly [symbol?, string?, number?]) {
    requireKey(key);
    this.#transcript = transcript;
    // The standard's confidence is a float.
    this.#confidence = Math.fround(confidence);
  }

  get transcript(): string {
    return this.#transcript;
  }

  get confidence(): number {
    return this.#confidence;
  }
}

type ResultParts = readonly [
  key?: symbol,
  alternatives?: readonly SpeechRecognitionAlternative[],
  isFinal?: boolean,
];

interface ResultState {
  readonly items: readonly SpeechRecognitionAlternative[];
  readonly isFinal: boolean;
}

/** By the object that pages hold, which stands before the one that was made. */
const results = new WeakMap<object, ResultState>();

export class SpeechRecognitionResult {
  readonly [index: number]: SpeechRecognitionAlternative;
  declare readonly [Symbol.iterator]: () => ArrayIterator<SpeechRecognitionAlternative>;

  constructor(...[key, alternatives = [], isFinal = false]: ResultParts) {
    requireKey(key);
    const items = [...alternatives];
    const seen = indexed(this, () => items);
    results.set(seen, { items, isFinal });
    return seen;
  }

  get length(): number {
    return stateIn(results, this).items.length;
  }

  get isFinal(): boolean {
    return stateIn(results, this).isFinal;
  }

  item(index: number): SpeechRecognitionAlternative | null {
    return stateIn(results, this).items[toUnsignedLong(index)] ?? null;
  }
}

type ListParts = readonly [key?: symbol, results?: readonly SpeechRecognitionResult[]];

const lists = new WeakMap<object, { readonly items: readonly SpeechRecognitionResult[] }>();

export class SpeechRecognitionResultList {
  readonly [index: number]: SpeechRecognitionResult;
  declare readonly [Symbol.iterator]: () => ArrayIterator<SpeechRecognitionResult>;

  constructor(...[key, given = []]: ListParts) {
    requireKey(key);
    const items = [...given];
    const seen = indexed(this, () => items);
    lists.set(seen, { items });
    return seen;
  }

  get length(): number {
    return stateIn(lists, this).items.length;
  }

  item(index: number): SpeechRecognitionResult | null {
    return stateIn(lists, this).items[toUnsignedLong(index)] ?? null;
  }
}

export const isResultList = (value: unknown): value is SpeechRecognitionResultList =>
  isObject(value) && lists.has(value);

export const makeAlternative = (
  transcript: string,
  confidence: number,
): SpeechRecognitionAlternative => new SpeechRecognitionAlternative(KEY, transcript, confidence);

export const makeResult = (
  alternatives: readonly SpeechRecognitionAlternative[],
  isFinal: boolean,
): SpeechRecognitionResult => new SpeechRecognitionResult(KEY, alternatives, isFinal);

export const makeResultList = (
  items: readonly SpeechRecognitionResult[],
): SpeechRecognitionResultList => new SpeechRecognitionResultList(KEY, items);

function stateIn<State>(states: WeakMap<object, State>, object: object): State {
  const state = states.get(object);
  if (state === undefined) throw new TypeError('Illegal invocation');
  return state;
}

exposeInterface(SpeechRecognitionAlternative, 'SpeechRecognitionAlternative');
exposeInterface(SpeechRecognitionResult, 'SpeechRecognitionResult');
exposeInterface(SpeechRecognitionResultList, 'SpeechRecognitionResultList');
walkAsArray(SpeechRecognitionResult.prototype);
walkAsArray(SpeechRecognitionResultList.prototype);
