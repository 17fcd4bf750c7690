const LARGEST_BOOST = 10;

/** A hint of what is likely. Accepted as the standard asks; the grammar already says what is possible. */
export class SpeechRecognitionPhrase {
  readonly phrase: string;
  readonly boost: number;

  constructor(phrase: string, boost = 1) {
    if (!(boost >= 0 && boost <= LARGEST_BOOST)) {
      throw new DOMException(`boost must lie between 0 and ${LARGEST_BOOST}`, 'SyntaxError');
    }
    this.phrase = phrase;
    this.boost = boost;
  }
}
