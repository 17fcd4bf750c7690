import { changed, type Token, UNKNOWN } from '../../grammar/tokens.ts';
import { ONES, TEENS, TENS } from './number-words.ts';

// Numbers as they are written: some as words, so that whatever may be said may be written.

export interface Place {
  readonly start: number;
  readonly end: number;
}

/** What a scanner found of a number. */
export interface Figures {
  /** A time of day, one number over another, or a fraction. */
  readonly fraction: string | undefined;
  readonly number: string | undefined;
  readonly place: Place;
}

const NO_CLASSES: readonly string[] = [];

export function wordToken(text: string, place: Place): Token {
  return {
    text,
    known: UNKNOWN,
    start: place.start,
    end: place.end,
    pause: false,
    value: null,
    classes: NO_CLASSES,
  };
}

/** Adds a number to the tokens before it, in a text in small letters. */
export function addFigures(tokens: Token[], { fraction, number, place }: Figures, text: string) {
  if (number !== undefined) addNumber(tokens, number, { ...place, text });
  else if (fraction?.includes(':') === true) addClock(tokens, fraction, { ...place, text });
  else if (fraction !== undefined) tokens.push(...slashed(fraction, place));
}

interface InText extends Place {
  readonly text: string;
}

function addNumber(tokens: Token[], written: string, place: InText): void {
  const before = tokens.at(-1);
  const gap = before === undefined ? '' : place.text.slice(before.end, place.start);
  const gapped = { ...place, gap };
  if (before !== undefined && gap === ' ' && endsThreeFigures(tokens, written, gapped)) {
    addSpelled(tokens, written, place);
    return;
  }
  const hundreds = hundredsBefore(tokens, written, gapped);
  if (before !== undefined && hundreds !== null) {
    const { pause } = before;
    const whole = worded([...hundreds, ...wordsOf(written)], { ...place, start: before.start });
    tokens.splice(
      -1,
      1,
      ...whole.map((token, at) => (at === 0 ? changed(token, { pause }) : token)),
    );
    return;
  }
  if (before?.value != null && before.end < place.start && DASH.test(gap)) {
    // "190-200" is a range: the dash is a word there, not a sign.
    tokens.push(wordToken('to', { start: before.end, end: place.start }));
  }
  const cents = CENTS.exec(written);
  if (cents !== null && place.text[place.start - 1] === '$') {
    tokens.push(...worded([...wordsOf(cents[1]), ...wordsOf(cents[2])], place));
  } else {
    tokens.push(numberToken(written, place));
  }
}

const DASH = /^\s*[-–]\s*$/;
/** "One forty six" as a recogniser may write it that knows of prices: "$1.46", where "$1.00" was said otherwise. */
const CENTS = /^([1-9]\d?)\.(0[1-9]|[1-9]\d)$/;

interface Gapped extends InText {
  readonly gap: string;
}

const FIGURES: ReadonlySet<string> = new Set(ONES);
/** Two figures, with a nought before the second or anything behind a point. */
const TWO = /^(?:0[1-9]|[1-9]\d)(?:\.\d+)?$/;
const ONE = /^[1-9](?:\.\d+)?$/;

/**
 * The words for all but the last figures of a number that was written in two parts, "1 46", "one 46", "1-46", "100 46"
 * or "140 6", as they would be said together; `null` where they are two numbers.
 */
function hundredsBefore(
  tokens: readonly Token[],
  written: string,
  { gap, text, end }: Gapped,
): readonly string[] | null {
  const before = tokens.at(-1);
  if (before === undefined) return null;
  if (gap === ' ' && before.classes.includes('hundreds')) {
    const first = figureWord(before.text[0]);
    return ONE.test(written) ? [first, 'oh'] : TWO.test(written) ? [first] : null;
  }
  if (gap === ' ' && before.classes.includes('tensOfHundred')) {
    return ONE.test(written)
      ? [figureWord(before.text[0]), ...wordsOf(before.text.slice(1))]
      : null;
  }
  if (!FIGURES.has(before.text) || !TWO.test(written)) return null;
  if (isWhich(tokens, before)) return null;
  const isDashed = gap === '-' && isNoRange(before, written) && !/[-/]/.test(text[end] ?? '');
  return gap === ' ' || isDashed ? [before.text] : null;
}

/** "1 4 6", of three figures and no more; but "1 2 3" are three of something. */
function endsThreeFigures(
  tokens: readonly Token[],
  written: string,
  { text, end }: Gapped,
): boolean {
  const [third, second, first] = [tokens.at(-3), tokens.at(-2), tokens.at(-1)];
  if (!/^\d$/.test(written) || !isFigure(first) || !isFigure(second) || second.value === 0)
    return false;
  if (first.pause || second.end + 1 !== first.start || /^[ .:-]?\d/.test(text.slice(end)))
    return false;
  if (second.start > 0 && /\S/.test(text[second.start - 1] ?? '')) return false;
  if (third !== undefined && third.end + 1 === second.start && third.value !== null) return false;
  return !(first.value === second.value + 1 && Number(written) === first.value + 1);
}

interface Figure extends Token {
  readonly value: number;
}

const isFigure = (token: Token | undefined): token is Figure =>
  token !== undefined && token.value !== null && token.classes.length === 0;

function addSpelled(tokens: Token[], written: string, place: Place): void {
  const [first, second] = tokens.splice(-2, 2);
  if (first === undefined || second === undefined) return;
  const rest = `${second.value ?? 0}${written}`;
  const words = rest === '00' ? ['hundred'] : wordsOf(rest);
  const whole = worded([first.text, ...words], { start: first.start, end: place.end });
  tokens.push(
    ...whole.map((token, at) => (at === 0 ? changed(token, { pause: first.pause }) : token)),
  );
}

/** "L2 24", "comp 2 18.9": the figure tells which of several. */
function isWhich(tokens: readonly Token[], { start, pause }: Token): boolean {
  const named = tokens.at(-2);
  return named !== undefined && !pause && (named.end === start || NUMBERED.has(named.text));
}

const NUMBERED: ReadonlySet<string> = new Set(
  (
    'number l line leg phase terminal comp compressor fan motor evap evaporator unit case box cooler freezer rack circuit ' +
    'stage winding cap probe zone system'
  ).split(' '),
);

/** "8-12" and "1-10" are ranges; nobody tells one from 1 to 46, or up to 08. */
function isNoRange({ text }: Token, written: string): boolean {
  return written.startsWith('0') || Number(written) > (ONES.indexOf(text) + 1) * FAR_APART;
}
const FAR_APART = 10;

/** "1:46" for "one forty six". */
function addClock(tokens: Token[], written: string, place: InText): void {
  const [hours = '', minutes = ''] = written.split(':');
  const isMeasured = MEASURED.test(place.text.slice(place.end));
  if (Number(hours) === 0 || minutes === '00' || (!isMeasured && isTime(tokens, Number(minutes)))) {
    tokens.push(changed(wordToken(written, place), { classes: ['clock'] }));
  } else {
    tokens.push(...worded([...wordsOf(hours), ...wordsOf(minutes)], place));
  }
}

/** Behind these "at" leads to a figure: "head's at 1:46"; behind others to a time. */
const FIGURE_AT: ReadonlySet<string> = new Set(
  (
    'is are was am set held equal equalized opened sitting running reading holding steady down up right now still back good pressure side line head ' +
    'suction discharge ambient temp vacuum volts amps'
  ).split(' '),
);
const LEADS_TO_TIME: ReadonlySet<string> = new Set(
  'by until till til before since around about after from past'.split(' '),
);
const MEASURED = /^ ?(?:psi|volts?|amps?|ohms?|degrees?|microns?|pounds?|watts?)\b/;
const MINUTES_AN_HOUR = 60;

function isTime(tokens: readonly Token[], minutes: number): boolean {
  if (minutes >= MINUTES_AN_HOUR) return false;
  const [before, last] = [tokens.at(-2)?.text ?? '', tokens.at(-1)?.text ?? ''];
  return last === 'at' ? !FIGURE_AT.has(before) : LEADS_TO_TIME.has(last) && !FIGURE_AT.has(before);
}

const figureWord = (figure: string | undefined): string => ONES[Number(figure) - 1] ?? 'zero';

/** Under a hundred, in words: "46.5" is "forty six point five". */
function wordsOf(written = ''): readonly string[] {
  const [whole = '', behind] = written.split('.');
  const [tens = '', ones] = whole;
  const words = ones === undefined ? [figureWord(tens)] : twoFigures(tens, ones);
  return behind === undefined ? words : [...words, 'point', ...Array.from(behind, figureWord)];
}

function twoFigures(tens: string, ones: string): readonly string[] {
  if (tens === '0') return ['oh', figureWord(ones)];
  if (tens === '1') return [TEENS[Number(ones)] ?? ''];
  const round = TENS[Number(tens) - 2] ?? '';
  return ones === '0' ? [round] : [round, figureWord(ones)];
}

/** Words in the place of figures: they stand where those stood, one behind another. */
function worded(words: readonly string[], { start, end }: Place): readonly Token[] {
  const at = (index: number): number => Math.min(start + index, end - 1);
  return words.map((text, index) =>
    wordToken(text, {
      start: at(index),
      end: index === words.length - 1 ? end : Math.max(at(index), at(index + 1)),
    }),
  );
}

/** "190/12" (one pressure over another) or a fraction. */
function slashed(text: string, place: Place): readonly Token[] {
  const sign = PARTS[text];
  if (sign !== undefined) return [fractionToken(text, sign, place)];
  const [over = '', under = ''] = text.split('/');
  // "208/230" are two voltages: no drill or flare is measured in hundredths.
  const isFraction =
    over.length < 3 && (under.length > over.length || Number(over) < Number(under));
  if (isFraction) {
    const value = Number(under) === 0 ? 0 : Number(over) / Number(under);
    return [fractionToken(text, value, place)];
  }
  const cut = place.start + over.length;
  return [
    numberToken(over, { start: place.start, end: cut }),
    wordToken('over', { start: cut, end: cut + 1 }),
    numberToken(under, { start: cut + 1, end: place.end }),
  ];
}

const PARTS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const fractionToken = (text: string, value: number, place: Place): Token =>
  changed(wordToken(text, place), { value, classes: ['fraction'] });

/** "2" is the word of it, which rules may name: "line 2", "all 3 legs". */
function numberToken(text: string, place: Place): Token {
  const plain = text.replace(/[, ]/g, (sign) => (sign === ',' && isPoint(text) ? '.' : ''));
  const digits = plain.replace(/^[–−]/, '-');
  const value = Math.max(-MOST, Math.min(MOST, Number(digits)));
  return /^\d$/.test(digits)
    ? changed(wordToken(figureWord(digits), place), { value })
    : changed(wordToken(digits, place), { value, classes: numberClasses(digits) });
}

/** A key that is stuck writes more figures than a number can have; nothing here counts so far. */
const MOST = 1e15;

/** "4,2", where "1,200" has its thousands told apart. */
const isPoint = (text: string): boolean => /^[-–−]?\d+,\d$/.test(text);

/** What a run of digits can be part of: "190 2" is 192, but "14 6" is two numbers. */
function numberClasses(digits: string): readonly string[] {
  const classes = ['number', digits.includes('.') ? 'decimal' : 'integer'];
  if (/^1\d$/.test(digits)) classes.push('teen');
  if (/^[2-9]0$/.test(digits)) classes.push('tens');
  if (/^\d\d$/.test(digits)) classes.push('pair');
  if (/^[1-9]\d?0$/.test(digits) && digits !== '10') classes.push('round');
  if (/^[1-9]00$/.test(digits)) classes.push('hundreds');
  if (/^[1-9][2-9]0$/.test(digits)) classes.push('tensOfHundred');
  return classes;
}
