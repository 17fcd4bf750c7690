import type { Token } from '../../grammar/tokens.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';

type Phrase = readonly string[];

/** More ways than these no name is called by: what several numbers could be said as is cut there. */
const MOST_WAYS = 12;

/** How a name with figures in it is said: "012" is "zero one two", "oh one two" and as it is written. */
export function saidWays(tokens: readonly Token[]): readonly Phrase[] {
  return tokens.reduce<readonly Phrase[]>(
    (before, { text }) =>
      before.flatMap((start) => waysOf(text).map((way) => [...start, ...way])).slice(0, MOST_WAYS),
    [[]],
  );
}

function waysOf(text: string): readonly Phrase[] {
  return /^\d+$/.test(text) ? [...figureWays(text), [text]] : [[text]];
}

/** Figure by figure, and in pairs as years are said; the likeliest first. */
function figureWays(figures: string): readonly Phrase[] {
  const spelled = ['zero', 'oh'].map((nought) =>
    figures.split('').map((one) => figure(one, nought)),
  );
  const inPairs = figures.length > 1 ? pairsOf(figures) : null;
  const ways = inPairs === null ? spelled : [...spelled, inPairs];
  return ways.filter((way, at) => ways.findIndex((other) => other.join() === way.join()) === at);
}

const figure = (one: string, nought: string): string => (one === '0' ? nought : ones(Number(one)));
const ones = (value: number): string => ONES[value - 1] ?? '';

/** "1240" as "twelve forty", "112" as "one twelve"; none where a pair begins with nought. */
function pairsOf(figures: string): Phrase | null {
  const lead = figures.length % 2 === 0 ? '' : figures.slice(0, 1);
  const pairs = figures.slice(lead.length).match(/\d\d/g) ?? [];
  if (lead === '0' || pairs.some((pair) => pair.startsWith('0'))) return null;
  return [...(lead === '' ? [] : [ones(Number(lead))]), ...pairs.flatMap(pairWords)];
}

function pairWords(pair: string): Phrase {
  const value = Number(pair);
  if (value < 20) return [TEENS[value - 10] ?? ''];
  const ten = TENS[Math.floor(value / 10) - 2] ?? '';
  return value % 10 === 0 ? [ten] : [ten, ones(value % 10)];
}
