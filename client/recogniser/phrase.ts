import { toDomString, toFloat } from './web-idl/conversions.ts';
import { exposeInterface } from './web-idl/expose-interface.ts';

const LARGEST_BOOST = 10;

/** A hint of what is likely: `boost` is about the natural logarithm of how many times likelier. */
export class SpeechRecognitionPhrase {
  readonly #phrase: string;
  readonly #boost: number;

  /** Throws a SyntaxError for a boost beyond 0…10. */
  constructor(phrase: string, boost = 1) {
    // A page may write `undefined` as a phrase, but not leave it out: only the count tells these apart.
    if (arguments.length === 0) throw new TypeError('A phrase is required.');
    this.#phrase = toDomString(phrase);
    this.#boost = toFloat(boost);
    if (this.#boost < 0 || this.#boost > LARGEST_BOOST) {
      throw new DOMException(`boost must lie between 0 and ${LARGEST_BOOST}`, 'SyntaxError');
    }
  }

  get phrase(): string {
    return this.#phrase;
  }

  get boost(): number {
    return this.#boost;
  }
}

exposeInterface(SpeechRecognitionPhrase, 'SpeechRecognitionPhrase');
