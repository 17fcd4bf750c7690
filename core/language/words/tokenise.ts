import { changed, type Token } from '../../grammar/tokens.ts';
import { isShortening, mendInches } from './abbreviations.ts';
import { addFigures, type Place, wordToken } from '../numbers/figures.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { MISSPELT } from '../vocabulary/misspelt.ts';
import { WordTable } from './word-table.ts';

const TWO_FIGURES = [...TEENS, ...TENS].join('|');
const FIGURE = ONES.join('|');

/**
 * Numbers, signs of degrees, ohms and the like, words with an apostrophe inside, and punctuation, in that order. "4 .2" and
 * "4,2" are one number, "-four" is one below zero, and an ending may stand apart from its word: "head 's".
 */
const SCANNER = new RegExp(
  [
    String.raw`(\d{1,2}:\d\d|(?<![\w.])-?\d+\/\d+|\d+\/\d+|[½¼¾⅓⅔⅛⅜⅝⅞])`,
    String.raw`((?<![\w.])[-–−]?\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|(?<![\w.,])[-–−]?\d{1,3},\d(?![\d]|[.,]\d)|` +
      String.raw`(?<![\w.])[-–−]?\d+(?: ?\.\d+)?|\d+(?:\.\d+)?|(?<![\w.])[-–−]?\.\d+)`,
    String.raw`(°|º|m?ω|[µμ]f|[µμ]|[%&]|(?<=\d)["#]|#(?=\d)|(?<![a-z])['’‘ʼ](?:s|re|m|ll|ve|d)\b|` +
      String.raw`(?<![\w.])[-–−](?=(?:${FIGURE}|${TWO_FIGURES})\b))`,
    String.raw`([a-z]+(?:['’‘ʼ][a-z]+)?)`,
    String.raw`([,.;:!?…—=()|]|\s[-–]\s)`,
  ].join('|'),
  'g',
);

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
  mω: 'megohms',
  µf: 'microfarad',
  μf: 'microfarad',
  '%': 'percent',
  '"': 'inches',
  '&': 'and',
  '-': 'minus',
  '–': 'minus',
  '−': 'minus',
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
  ...Object.entries(MISSPELT).map(([word, meant]): [string, string[]] => [word, [meant]]),
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
    highside: ['high', 'side'],
    lowside: ['low', 'side'],
    sightglass: ['sight', 'glass'],
    walkin: ['walk', 'in'],
    reachin: ['reach', 'in'],
    drier: ['dryer'],
    driers: ['dryers'],
    gauge: ['gage'],
    gauges: ['gages'],
    captube: ['cap', 'tube'],
    // As typed in a hurry, or as recognisers spell them.
    lb: ['pounds'],
    lbs: ['pounds'],
    oz: ['ounce'],
    deg: ['degrees'],
    min: ['minute'],
    mins: ['minutes'],
    uf: ['microfarad'],
    mf: ['microfarad'],
    mfd: ['microfarad'],
    mfds: ['microfarads'],
    hr: ['hour'],
    hrs: ['hours'],
    secs: ['seconds'],
    cond: ['condenser'],
    comp: ['compressor'],
    sst: ['s', 's', 't'],
    sct: ['s', 'c', 't'],
    gonna: ['going', 'to'],
    tryna: ['trying', 'to'],
    dunno: ['do', 'not', 'know'],
    til: ['till'],
    owt: ['anything'],
    summat: ['something'],
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
      hasNoise = addWord(tokens, known, { start, end: at, pause, text }) || hasNoise;
      pause = false;
    } else {
      lowered ??= loweredInPlace(text);
      SCANNER.lastIndex = at;
      const found = SCANNER.exec(lowered);
      if (found === null) break;
      at = SCANNER.lastIndex;
      pause = addScanned(tokens, found, { text, lowered, pause });
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
  return !BEHIND_NUMBER.has(word) &&
    !AMPS.has(word) &&
    tokens.length === 1 &&
    tokens[0]?.text === word
    ? 'itself'
    : tokens;
}

/** What a word is split into are words, too. */
function numbered(token: Token): Token {
  const known = WORDS.numberAt(token.text, 0);
  return known >= 0 && WORDS.end === token.text.length ? changed(token, { known }) : token;
}

interface Scanned {
  readonly text: string;
  readonly lowered: string;
  readonly pause: boolean;
}

/** Whether a pause stands before the next token. */
function addScanned(tokens: Token[], found: RegExpExecArray, scanned: Scanned): boolean {
  const { text, lowered, pause } = scanned;
  const [whole, fraction, number, sign, word] = found;
  const place = { start: found.index, end: found.index + whole.length };
  if ((fraction ?? number ?? sign ?? word) === undefined) {
    if (whole === '.' && isShortening(tokens, text, place.start)) return pause;
    if (whole === '.') mendInches(tokens, place.start);
    return pause || !isInsideNumber(lowered, tokens, place);
  }
  if (word !== undefined)
    addTokens(tokens, splitWord(word.replace(APOSTROPHES, "'"), place), pause);
  else if (sign !== undefined)
    addTokens(tokens, [wordToken(signWord(sign, lowered, place), place)], pause);
  else {
    const from = tokens.length;
    addFigures(tokens, { fraction, number, place }, lowered);
    const first = tokens[from];
    if (pause && first !== undefined) tokens[from] = changed(first, { pause });
  }
  return false;
}

/** "12#" are pounds, "#2" is one of several. */
function signWord(sign: string, lowered: string, { end }: Place): string {
  if (sign === '#') return /\d/.test(lowered[end] ?? '') ? 'number' : 'pounds';
  return SIGNS[sign] ?? ENDINGS[sign.replace(APOSTROPHES, "'")] ?? sign;
}

interface WordPlace extends Place {
  readonly pause: boolean;
  readonly text: string;
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

/** "It's seventy, amps on the compressor twenty nine": behind a comma they are of the number that follows. */
const NAMES_NEXT = new RegExp(
  `^(?: draw)?(?: (?:on|at|of|for|in|is|are|was|were)\\b[^,.;?!]*)? (?:\\d|(?:${FIGURE}|${TWO_FIGURES})\\b)`,
);
const isFigure = (token: Token | undefined): boolean =>
  token !== undefined && (token.value !== null || FIGURES.has(token.text));
const FIGURES: ReadonlySet<string> = new Set([...ONES, ...TEENS, ...TENS, 'hundred', 'zero']);
function isOfNext(tokens: readonly Token[], { pause, text, end }: WordPlace): boolean {
  const last = tokens.at(-1);
  // "Minus one, uh, amps on the compressor nine"
  const isNoisy = last?.pause === true && isNoise(last);
  const isApart = (pause || isNoisy) && isFigure(isNoisy ? tokens.at(-2) : last);
  return isApart && NAMES_NEXT.test(text.slice(end).toLowerCase());
}

function addSplit(tokens: Token[], parts: readonly Token[], place: WordPlace): void {
  if (AMPS.has(parts[0]?.text ?? '') && isOfNext(tokens, place)) {
    const [, ...behind] = parts;
    addParts(tokens, [AMPERAGE, ...behind], place);
    return;
  }
  const unit = BEHIND_NUMBER.get(parts[0]?.text ?? '');
  if (unit !== undefined && isUnitOf(tokens.at(-1), unit, place)) {
    addTokens(tokens, [wordToken(unit, place)], place.pause);
    return;
  }
  addParts(tokens, parts, place);
}

function addParts(tokens: Token[], parts: readonly Token[], place: WordPlace): void {
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

const AMPERAGE = numbered(wordToken('amperage', { start: 0, end: 4 }));
const AMPS: ReadonlySet<string> = new Set(['amp', 'amps']);

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

function isInsideNumber(text: string, tokens: readonly Token[], { start }: Place): boolean {
  return GROUP_NAMES.has(tokens.at(-1)?.text ?? '') && GROUP_COMMA.test(text.slice(start));
}

/** "0.6A" is a current, "134a" a refrigerant: none of two figures has a letter behind it. */
function isUnitOf(before: Token | undefined, unit: string, place: WordPlace): boolean {
  if (before?.value == null || place.pause) return false;
  if (unit !== 'amp') return before.end + 1 >= place.start;
  if (before.value >= 100) return false;
  return before.end === place.start || isAmpereSign(before, place);
}

/** The pause stands before the first of them. */
function addTokens(tokens: Token[], fresh: readonly Token[], pause: boolean): void {
  for (const [index, token] of fresh.entries()) {
    tokens.push(pause && index === 0 ? changed(token, { pause }) : token);
  }
}

/** "8.3 A on the compressor"; but "8.3 a side", and in capitals "A" may be any. */
function isAmpereSign(before: Token, { start, end, text }: WordPlace): boolean {
  if (before.end + 1 !== start) return false;
  if (text[start] === 'A') return /[a-z]/.test(text);
  return before.classes.includes('decimal') && AMPERES.test(text.slice(end));
}

const AMPERES = /^(?:$|[.,;]| (?:on|at|across|from|in|to|and|the|it)\b)/;

const NO_CLASSES: readonly string[] = [];

/** Units behind a number and letters elsewhere; in the form that stands before a thing as well: "a 20A breaker". */
const BEHIND_NUMBER: ReadonlyMap<string, string> = new Map([
  ['a', 'amp'],
  ['v', 'volt'],
  ['vac', 'volt'],
  ['vdc', 'volt'],
]);

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
