/** The result interfaces of the Web Speech API: immutable, indexed, iterable. */
export class SpeechRecognitionAlternative {
  readonly transcript: string;
  readonly confidence: number;

  constructor(transcript: string, confidence: number) {
    this.transcript = transcript;
    this.confidence = confidence;
  }
}

/** Numbered properties as the standard's indexed getters give them. */
class IndexedList<Item> implements Iterable<Item> {
  readonly [index: number]: Item;
  readonly #items: readonly Item[];

  constructor(items: readonly Item[]) {
    this.#items = [...items];
    this.#items.forEach((value, index) =>
      Object.defineProperty(this, index, { value, enumerable: true }),
    );
  }

  get length(): number {
    return this.#items.length;
  }

  item(index: number): Item | null {
    return this.#items[index] ?? null;
  }

  [Symbol.iterator](): Iterator<Item> {
    return this.#items[Symbol.iterator]();
  }
}

export class SpeechRecognitionResult extends IndexedList<SpeechRecognitionAlternative> {
  readonly isFinal: boolean;

  constructor(alternatives: readonly SpeechRecognitionAlternative[], isFinal: boolean) {
    super(alternatives);
    this.isFinal = isFinal;
  }
}

export class SpeechRecognitionResultList extends IndexedList<SpeechRecognitionResult> {}
