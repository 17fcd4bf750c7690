import { changed, type Token, UNKNOWN } from '../grammar/tokens.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import { WordTable } from './word-table.ts';

/** Numbers, degree and ohm signs, words with an apostrophe inside, and punctuation, in that order. */
const SCANNER =
  /(\d{1,2}:\d\d|(?<![\w.])-?\d+\/\d+|\d+\/\d+)|((?<![\w.])[-–−]?\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|(?<![\w.])[-–−]?\d+(?:\.\d+)?|\d+(?:\.\d+)?|(?<![\w.])[-–−]?\.\d+)|(°|º|ω|[µμ]f|[µμ]|%|(?<=\d)["#])|([a-z]+(?:['’‘ʼ][a-z]+)?)|([,.;:!?…—=()|]|\s[-–]\s)/g;
const DASH_BETWEEN_NUMBERS = /^\s*[-–]\s*$/;

const TWO_FIGURES = [...TEENS, ...TENS].join('|');
const FIGURE = ONES.join('|');
/**
 * The comma of "two thousand, three hundred" is that of 2,300 and no pause; "a thousand, one ninety" is two
 * numbers.
 */
const GROUP_COMMA = new RegExp(
  `^,\\s+(?:and\\s+)?(?:(?:${TWO_FIGURES})|(?:${FIGURE})(?!\\s+(?:oh|${FIGURE}|${TWO_FIGURES})))\\b`,
);
const GROUP_NAMES: ReadonlySet<string> = new Set(['thousand', 'million', 'billion']);

const SIGNS: Readonly<Record<string, string>> = {
  '°': 'degrees',
  º: 'degrees',
  ω: 'ohms',
  µf: 'microfarads',
  μf: 'microfarads',
  '%': 'percent',
  '"': 'inches',
  '#': 'pounds',
};

/** Endings that are words of their own; a possessive reads like "is" and no rule minds. */
const ENDINGS: Readonly<Record<string, string>> = {
  "'s": 'is',
  "'re": 'are',
  "'m": 'am',
  "'ll": 'will',
  "'ve": 'have',
  "'d": 'would',
};

/** "Comin", "pullin'": as they are said, and as many write them. */
const CLIPPED =
  'com go pull feed read runn gett look show sitt draw leak freez blow work turn spinn tripp hold buzz humm mak start try be do noth someth fix dropp climb hunt short cycl cool hitt keep put think giv charg flash bubbl sweat ris fall';

/** Written as one word, understood as several; recognisers drop apostrophes. */
const WHOLE: ReadonlyMap<string, readonly string[]> = new Map([
  ...CLIPPED.split(' ').map((stem): [string, readonly string[]] => [`${stem}in`, [`${stem}ing`]]),
  ...Object.entries({
    its: ['it', 'is'],
    whats: ['what', 'is'],
    thats: ['that', 'is'],
    wheres: ['where', 'is'],
    hows: ['how', 'is'],
    im: ['i', 'am'],
    ive: ['i', 'have'],
    ill: ['i', 'will'],
    id: ['i', 'would'],
    youd: ['you', 'would'],
    theyd: ['they', 'would'],
    isnt: ['is', 'not'],
    arent: ['are', 'not'],
    wasnt: ['was', 'not'],
    werent: ['were', 'not'],
    didnt: ['did', 'not'],
    hasnt: ['has', 'not'],
    havent: ['have', 'not'],
    hadnt: ['had', 'not'],
    wont: ['will', 'not'],
    wouldnt: ['would', 'not'],
    couldnt: ['could', 'not'],
    shouldnt: ['should', 'not'],
    aint: ['is', 'not'],
    theyre: ['they', 'are'],
    youre: ['you', 'are'],
    theyve: ['they', 'have'],
    weve: ['we', 'have'],
    youve: ['you', 'have'],
    theres: ['there', 'is'],
    heres: ['here', 'is'],
    whos: ['who', 'is'],
    whens: ['when', 'is'],
    whys: ['why', 'is'],
    hes: ['he', 'is'],
    shes: ['she', 'is'],
    itll: ['it', 'will'],
    thatll: ['that', 'will'],
    whatd: ['what', 'would'],
    thatd: ['that', 'would'],
    howd: ['how', 'would'],
    whered: ['where', 'would'],
    wouldve: ['would', 'have'],
    couldve: ['could', 'have'],
    shouldve: ['should', 'have'],
    lets: ['let', 'us'],
    itd: ['it', 'would'],
    theyll: ['they', 'will'],
    dont: ['do', 'not'],
    doesnt: ['does', 'not'],
    "won't": ['will', 'not'],
    "can't": ['can', 'not'],
    "meg'd": ['megged'],
    cant: ['can', 'not'],
    cannot: ['can', 'not'],
    "ain't": ['is', 'not'],
    okay: ['ok'],
    "o'clock": ['oclock'],
    cutout: ['cut', 'out'],
    cutin: ['cut', 'in'],
    setpoint: ['set', 'point'],
    tstat: ['thermostat'],
    walkin: ['walk', 'in'],
    reachin: ['reach', 'in'],
    drier: ['dryer'],
    driers: ['dryers'],
    gauge: ['gage'],
    gauges: ['gages'],
    captube: ['cap', 'tube'],
    // As typed in a hurry, or as recognisers spell them.
    cond: ['condenser'],
    condensor: ['condenser'],
    comp: ['compressor'],
    contacter: ['contactor'],
    guage: ['gage'],
    sst: ['s', 's', 't'],
    sct: ['s', 'c', 't'],
    gonna: ['going', 'to'],
    gotta: ['got', 'to'],
    wanna: ['want', 'to'],
    backseated: ['back', 'seated'],
    frontseated: ['front', 'seated'],
    oughta: ['ought', 'to'],
    em: ['them'],
    gimme: ['give', 'me'],
    lemme: ['let', 'me'],
    kinda: ['kind', 'of'],
    outta: ['out', 'of'],
    shoulda: ['should', 'have'],
    coulda: ['could', 'have'],
    woulda: ['would', 'have'],
  }),
]);

export function tokenise(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let pause = false;
  let hasNoise = false;
  let lowered: string | null = null;
  for (let at = 0; at < text.length;) {
    const start = text.charCodeAt(at) === SPACE ? at + 1 : at;
    const known = WORDS.numberAt(text, start);
    if (known >= 0) {
      at = WORDS.end;
      hasNoise = addWord(tokens, known, { start, end: at, pause }) || hasNoise;
      pause = false;
    } else {
      lowered ??= loweredInPlace(text);
      SCANNER.lastIndex = at;
      const found = SCANNER.exec(lowered);
      if (found === null) break;
      at = SCANNER.lastIndex;
      pause = addScanned(tokens, found, { lowered, pause });
      hasNoise ||= isNoise(tokens.at(-1));
    }
  }
  return hasNoise ? withoutNoise(tokens) : tokens;
}

/** In small letters, each where it stood: a few letters of other scripts come to two. */
function loweredInPlace(text: string): string {
  const lowered = text.toLowerCase();
  if (lowered.length === text.length) return lowered;
  return Array.from({ length: text.length }, (_, at) => text.charAt(at))
    .map((letter) => (letter.toLowerCase().length === 1 ? letter.toLowerCase() : letter))
    .join('');
}

const SPACE = 32;
/** Signs that are written for an apostrophe. */
const APOSTROPHES = /[’‘ʼ]/g;

const WORDS = new WordTable();
/** Of each word of the table: what it comes to. */
const TURNS_INTO: (Turned | undefined)[] = [];

/** Most words are one token as they stand. */
type Turned = 'itself' | 'noise' | readonly Token[];

function turned(known: number): Turned {
  return (TURNS_INTO[known] ??= freshlyTurned(WORDS.words[known] ?? ''));
}

function freshlyTurned(word: string): Turned {
  if (NOISE.has(word)) return 'noise';
  const tokens = splitWord(word, { start: 0, end: word.length }).map(numbered);
  return word !== 'a' && tokens.length === 1 && tokens[0]?.text === word ? 'itself' : tokens;
}

/** What a word is split into are words, too. */
function numbered(token: Token): Token {
  const known = WORDS.numberAt(token.text, 0);
  return known >= 0 && WORDS.end === token.text.length ? changed(token, { known }) : token;
}

interface Scanned {
  readonly lowered: string;
  readonly pause: boolean;
}

/** Whether a pause stands before the next token. */
function addScanned(tokens: Token[], found: RegExpExecArray, { lowered, pause }: Scanned): boolean {
  const [whole, fraction, number, sign, word] = found;
  const place = { start: found.index, end: found.index + whole.length };
  if ((fraction ?? number ?? sign ?? word) === undefined) {
    return pause || !isInsideNumber(lowered, tokens, place);
  }
  if (number !== undefined) addRangeDash(lowered, tokens, place);
  if (word !== undefined)
    addTokens(tokens, splitWord(word.replace(APOSTROPHES, "'"), place), pause);
  else addTokens(tokens, figuresOf(found, place), pause);
  return false;
}

interface WordPlace extends Place {
  readonly pause: boolean;
}

/** Whether it is noise. */
function addWord(tokens: Token[], known: number, place: WordPlace): boolean {
  const into = turned(known);
  if (into === 'itself' && isSaidAgain(known, tokens.at(-1))) return false;
  if (into === 'itself' || into === 'noise') tokens.push(knownToken(known, place));
  else addSplit(tokens, into, place);
  return into === 'noise';
}

/** "The the head": a little word said twice was stumbled over; "two two" was not, and rules may tell "is" and "at" twice. */
function isSaidAgain(known: number, before: Token | undefined): boolean {
  return before?.known === known && STUMBLES.has(before.text);
}

const STUMBLES: ReadonlySet<string> = new Set(
  'the and we i are was got my of what how on'.split(' '),
);

function addSplit(tokens: Token[], parts: readonly Token[], place: WordPlace): void {
  if (parts[0]?.text === 'a' && isAmpsOf(tokens.at(-1), place)) {
    addTokens(tokens, [wordToken('amps', place)], place.pause);
    return;
  }
  let { pause } = place;
  for (const { text, known, start, end } of parts) {
    tokens.push({
      text,
      known,
      start: start + place.start,
      end: end + place.start,
      pause,
      value: null,
      classes: NO_CLASSES,
    });
    pause = false;
  }
}

const NOISE: ReadonlySet<string> = new Set(['uh', 'um', 'erm', 'hm', 'hmm', 'ah']);

/** "Suction's, uh, twelve" breaks off nowhere; but "uh huh" and "uh uh" are answers. */
function withoutNoise(tokens: readonly Token[]): readonly Token[] {
  const isAnswer = tokens.length === 2 && tokens[0]?.text === 'uh';
  if (isAnswer || !tokens.some(isNoise)) return tokens;
  const kept: Token[] = [];
  let pause = false;
  for (const token of tokens) {
    pause ||= token.pause;
    if (isNoise(token)) continue;
    kept.push(pause === token.pause ? token : changed(token, { pause }));
    pause = false;
  }
  return kept;
}

const isNoise = (token: Token | undefined): boolean => token !== undefined && NOISE.has(token.text);

interface Place {
  readonly start: number;
  readonly end: number;
}

function isInsideNumber(text: string, tokens: readonly Token[], { start }: Place): boolean {
  return GROUP_NAMES.has(tokens.at(-1)?.text ?? '') && GROUP_COMMA.test(text.slice(start));
}

/** "0.6A" is a current, "134a" a refrigerant: none of two figures has a letter behind it. */
function isAmpsOf(before: Token | undefined, place: Place): boolean {
  return before?.value != null && before.value < 100 && before.end === place.start;
}

/** "190-200" is a range: the dash is a word there, not a sign. */
function addRangeDash(text: string, tokens: Token[], place: Place): void {
  const before = tokens.at(-1);
  if (before?.value == null || before.end === place.start) return;
  if (!DASH_BETWEEN_NUMBERS.test(text.slice(before.end, place.start))) return;
  tokens.push(wordToken('to', { start: before.end, end: place.start }));
}

/** The pause stands before the first of them. */
function addTokens(tokens: Token[], fresh: readonly Token[], pause: boolean): void {
  for (const [index, token] of fresh.entries()) {
    tokens.push(pause && index === 0 ? changed(token, { pause }) : token);
  }
}

function figuresOf(found: RegExpExecArray, place: Place): readonly Token[] {
  const [, fraction, number, sign] = found;
  if (fraction !== undefined) return slashed(fraction, place);
  if (number !== undefined) return [numberToken(number, place)];
  return sign === undefined ? [] : [wordToken(SIGNS[sign] ?? sign, place)];
}

const NO_CLASSES: readonly string[] = [];

function wordToken(text: string, place: Place): Token {
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

/** "Thirtyish" */
const ABOUT = new RegExp(`^(${[...ONES, ...TEENS, ...TENS].join('|')}|hundred)ish$`);

function knownToken(known: number, { start, end, pause }: WordPlace): Token {
  const text = WORDS.words[known] ?? '';
  return { text, known, start, end, pause, value: null, classes: NO_CLASSES };
}

function splitWord(word: string, place: Place): readonly Token[] {
  const about = word.endsWith('ish') ? ABOUT.exec(word)?.[1] : undefined;
  if (about !== undefined) return [about, 'ish'].map((text) => wordToken(text, place));
  const whole = WHOLE.get(word);
  if (whole !== undefined) return whole.map((text) => wordToken(text, place));
  const at = word.indexOf("'");
  if (at === -1) return [wordToken(word, place)];
  const cut = place.start + at;
  if (word.endsWith("n't")) {
    return [word.slice(0, -3), 'not'].map((text) => wordToken(text, place));
  }
  const root = word.slice(0, at);
  const head = { start: place.start, end: cut };
  const ending = ENDINGS[word.slice(at)];
  return ending === undefined
    ? [wordToken(root, place)]
    : [...splitWord(root, head), wordToken(ending, { start: cut, end: place.end })];
}

/** A time of day, "190/12" (one pressure over another) or a fraction. */
function slashed(text: string, place: Place): readonly Token[] {
  if (text.includes(':')) return [changed(wordToken(text, place), { classes: ['clock'] })];
  const [over = '', under = ''] = text.split('/');
  // "208/230" are two voltages: no drill or flare is measured in hundredths.
  const isFraction =
    over.length < 3 && (under.length > over.length || Number(over) < Number(under));
  if (isFraction) return [fractionToken(text, place)];
  const cut = place.start + over.length;
  return [
    numberToken(over, { start: place.start, end: cut }),
    wordToken('over', { start: cut, end: cut + 1 }),
    numberToken(under, { start: cut + 1, end: place.end }),
  ];
}

function fractionToken(text: string, place: Place): Token {
  const [over = '0', under = '1'] = text.split('/');
  const value = Number(under) === 0 ? 0 : Number(over) / Number(under);
  return changed(wordToken(text, place), { value, classes: ['fraction'] });
}

function numberToken(text: string, place: Place): Token {
  const plain = text.replace(/,/g, '').replace(/^[–−]/, '-');
  return changed(wordToken(plain, place), { value: Number(plain), classes: numberClasses(plain) });
}

/** What a run of digits can be part of: "1 46" is 146 and "190 2" is 192, but "14 6" is two numbers. */
function numberClasses(digits: string): readonly string[] {
  const classes = ['number', digits.includes('.') ? 'decimal' : 'integer'];
  if (/^[1-9]$/.test(digits)) classes.push('digit');
  if (digits === '0') classes.push('nought');
  if (/^1\d$/.test(digits)) classes.push('teen');
  if (/^[2-9]0$/.test(digits)) classes.push('tens');
  if (/^\d\d$/.test(digits)) classes.push('pair');
  if (/^[1-9]\d?0$/.test(digits) && digits !== '10') classes.push('round');
  return classes;
}
