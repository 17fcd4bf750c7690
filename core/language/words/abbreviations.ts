import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';

/** Written with a point that ends no sentence. */
const ABBREVIATED: ReadonlySet<string> = new Set(
  (
    'lb lbs oz psi psig deg comp cond evap min mins hr hrs sec secs approx temp temps amp amps v vac ft mfd uf press suct ' +
    'disch amb liq'
  ).split(' '),
);
/** The same in small letters as "in" and "no", which are mostly something else. */
const [INCHES, NUMBER] = ['in', 'no'];

/**
 * Whether a point only shortens the word before it: "2 lbs. 4 oz.", "evap. fan", "T.X.V.". Behind "4 in." and "No. 2" the
 * word is told by it, and is put right.
 */
export function isShortening(tokens: Token[], text: string, at: number): boolean {
  const last = tokens.at(-1);
  if (last === undefined || last.end !== at || !goesOn(text, at + 1)) return false;
  const before = tokens.at(-2);
  const written = text.slice(last.start, at).toLowerCase();
  if (written === INCHES && isNumber(before)) return becomes(tokens, last, 'inches');
  if (written === NUMBER && before !== undefined && /^ ?[1-9]\b/.test(text.slice(at + 1))) {
    return becomes(tokens, last, 'number');
  }
  if (ABBREVIATED.has(written)) return true;
  return written.length === 1 && (isLetter(text[at + 1]) || isSpelled(before, last));
}

/** "4 in." at the end of what is said. */
export function mendInches(tokens: Token[], at: number): void {
  const last = tokens.at(-1);
  if (last?.end === at && last.text === INCHES && isNumber(tokens.at(-2))) {
    becomes(tokens, last, 'inches');
  }
}

function becomes(tokens: Token[], last: Token, text: string): true {
  tokens[tokens.length - 1] = changed(last, { text, known: UNKNOWN });
  return true;
}

/** Behind what ends a sentence, the next begins with a capital. */
const goesOn = (text: string, from: number): boolean =>
  /^(?:[a-z]|[A-Z](?:\.|$)| [^A-Z\s])/.test(text.slice(from, from + 2));

const isLetter = (letter: string | undefined): boolean =>
  letter !== undefined && /[a-z]/i.test(letter);

const isNumber = (token: Token | undefined): boolean => token?.value != null;

/** The "v" of "t.x.v." */
const isSpelled = (before: Token | undefined, { start }: Token): boolean =>
  before !== undefined &&
  before.end + 1 === start &&
  before.end - before.start === 1 &&
  !before.pause;
