import { ONES, TEENS, TENS } from '../numbers/number-words.ts';

export const FIGURE = `(?:-?\\d[\\d.]*|${[...ONES, ...TEENS, ...TENS, 'zero', 'hundred'].join('|')})`;
const READ =
  '(?:head|suction|superheat|subcooling|ambient|box|discharge|liquid line|suction line|set point|vacuum|high side|low side)';
const HOLDS_READING = new RegExp(
  `\\b(?:${READ}(?:'s)?(?: (?!${FIGURE}\\b)[\\w']+){0,3}|i(?:'m|'ve| am| have)? (?:got|have|see|seeing|getting|reading)) ${FIGURE}\\b`,
  'i',
);
/** Somebody else's values are told with these. */
const TOLD = /\b(?:had|set|kept|left|turned|put|wants?|wanted|likes?)\b/i;

/** "He left it open and the box is at fifty": what was read must not vanish in what is kept as words. */
export const holdsReading = (words: string): boolean =>
  HOLDS_READING.test(words) && !TOLD.test(words);

const NAMES_READING = new RegExp(
  `\\b(?:${READ}|sub ?cool|outdoor|ambient|return|supply|voltage|amp draw|set ?point|vacuum|product|discharge|liquid|evap temp|condensing|tank weight|pounds|psi|degrees|amps|volts|ohms|microns|meg(?:s|ohms)|microfarads|mfd|watts|bar|kpa|kilopascals?|celsius|kelvin|grams|kilos|freezer|evaporating|cut ?(?:in|out)|nitrogen|test pressure|water|refrigerant added|(?:common|start|run) to|contactor|compressor|windings?|(?:line|load) side)\\b`,
  'i',
);

/** Whether it would be a reading, had anybody read it. */
export const namesReading = (words: string): boolean =>
  holdsNumber(words) && NAMES_READING.test(words);

const SHORTENED: readonly (readonly [RegExp, string])[] = [
  [/n['’]t\b/gi, ' not'],
  [/['’]s\b/gi, ' is'],
  [/['’]re\b/gi, ' are'],
  [/['’]ve\b/gi, ' have'],
  [/['’]d\b/gi, ' had'],
  [/['’]ll\b/gi, ' will'],
];

/** A meter past its limit shows a value, too. */
const ANY_FIGURE = new RegExp(`\\b(?:${FIGURE}|infinite|infinity|o ?l|over limit)\\b`, 'i');

/** Whether any number stands there, "one" apart but for "one point one". */
export const holdsNumber = (words: string): boolean =>
  ANY_FIGURE.test(words.replace(/(?<!\bpoint )\bone\b(?! (?:point|oh)\b)/gi, ''));

/** Whether any number stands there, "one" as well. */
export const holdsFigure = (words: string): boolean => ANY_FIGURE.test(words);

const ONLY_FIGURES = new RegExp(`^(?:${FIGURE}(?:[\\s-]+|$))+$`, 'i');

/** "THIRTY FOUR", and nothing beside. */
export const isOnlyNumber = (words: string): boolean => ONLY_FIGURES.test(words);

/** As the rules write words: "he'd tossed" is told like "he had tossed". */
export const spelledOut = (words: string): string =>
  /['’]/.test(words)
    ? SHORTENED.reduce((so, [short, long]) => so.replace(short, long), words).trim()
    : words.trim();

/** "It's leaking, head one ninety": nobody's number before the pause, and a reading behind it that is not of the past. */
export function goesOnMeasured(told: string): boolean {
  const [first = '', ...more] = told.split(/[,.;:?!…—]\s/);
  const [next = ''] = more;
  return !holdsNumber(first) && holdsReading(next) && !OF_OTHERS.test(spelledOut(next));
}
const OF_OTHERS = /\b(?:was|were|been|used to|he|she|they|when|if)\b/i;
