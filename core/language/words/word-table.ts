/** More than the grammar's words and a day's talk; what comes later is told by none. */
const MOST_WORDS = 4096;
/** Two to a word: most are found at the first. */
const PLACES = MOST_WORDS * 2;

/** A letter takes five bits, so that six fill a number; a word of more than three such numbers is told by none. */
const LETTER_BITS = 5;
const [FIRST_LETTERS, MORE_LETTERS, MOST_LETTERS] = [6, 12, 18];
/** What a place holds: three numbers of letters, and the word's. */
const EACH = 4;
const NONE = -1;

const [BEFORE_LETTERS, AFTER_LETTERS, APOSTROPHE, LAST_PLAIN] = [96, 123, 39, 127];
const [BEFORE_CAPITALS, AFTER_CAPITALS, TO_SMALL, SPACE] = [64, 91, 32, 32];
const APOSTROPHE_BITS = 27;
const isLetter = (code: number): boolean => code > BEFORE_LETTERS && code < AFTER_LETTERS;

/**
 * Numbers the words met so far, by their letters where they stand in a text, in one flat table: with each word cut out,
 * and looked up by the copy, most of a tokeniser's time went to fetching strings.
 */
export class WordTable {
  /** Where the word found last ends. */
  end = 0;
  readonly words: string[] = [];
  private readonly places = new Int32Array(PLACES * EACH).fill(NONE);

  /**
   * The number of the word from `start` on: letters from a to z, capitals told from them by nothing, with those behind one apostrophe. Below zero where no
   * such word stands there, or one in another script, or a longer one than are numbered.
   */
  numberAt(text: string, start: number): number {
    const { length } = text;
    let end = start;
    let first = 0;
    let second = 0;
    let third = 0;
    let mayJoin = false;
    let code = SPACE;
    // Never asked for a letter behind the last one: the engine makes slow code of what did so once.
    for (; end < length; end += 1) {
      code = letterAt(text, end);
      if (!isLetter(code) && !(mayJoin && isJoined(text, end, code))) break;
      const bits = code === APOSTROPHE ? APOSTROPHE_BITS : code - BEFORE_LETTERS;
      if (end - start < FIRST_LETTERS) first = (first << LETTER_BITS) | bits;
      else if (end - start < MORE_LETTERS) second = (second << LETTER_BITS) | bits;
      else third = (third << LETTER_BITS) | bits;
      mayJoin = code !== APOSTROPHE && (mayJoin || end === start);
    }
    this.end = end;
    if (end === start || end - start > MOST_LETTERS || (end < length && code > LAST_PLAIN)) {
      return NONE;
    }
    const { places } = this;
    let place = placeOf(first, second, third);
    for (; (places[place] ?? NONE) !== NONE; place = (place + EACH) & (PLACES * EACH - 1)) {
      if (places[place] === first && places[place + 1] === second && places[place + 2] === third) {
        return places[place + 3] ?? NONE;
      }
    }
    return this.learn(text.slice(start, end).toLowerCase(), place, [first, second, third]);
  }

  private learn(word: string, place: number, letters: readonly number[]): number {
    if (this.words.length === MOST_WORDS) return NONE;
    const number = this.words.push(word) - 1;
    this.places.set([...letters, number], place);
    return number;
  }
}

/** A capital is its small letter. */
function letterAt(text: string, at: number): number {
  const code = text.charCodeAt(at);
  return code > BEFORE_CAPITALS && code < AFTER_CAPITALS ? code + TO_SMALL : code;
}

const isJoined = (text: string, at: number, code: number): boolean =>
  code === APOSTROPHE && at + 1 < text.length && isLetter(letterAt(text, at + 1));

/** Spreads words that differ little over the table. */
function placeOf(first: number, second: number, third: number): number {
  const mixed = Math.imul(
    first ^ Math.imul(second, 0x85ebca6b) ^ Math.imul(third, 0xc2b2ae35),
    0x9e3779b1,
  );
  return ((mixed ^ (mixed >>> 15)) & (PLACES - 1)) * EACH;
}
