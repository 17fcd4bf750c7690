import type { Token } from '../grammar/tokens.ts';
import { ONES, TEENS, TENS } from './number-words.ts';
import { holdsReading } from './own-reading.ts';
import { WordSet } from './word-set.ts';

const NUMBERS = new WordSet([...ONES, ...TEENS, ...TENS, 'hundred', 'zero', 'half']);
const NAMING_UNITS = new WordSet('amps amp amperage volts ohms microns');
const OF = new WordSet('on at of for in to draw');

/** "It's seventy, amps on the compressor twenty nine": the unit behind the comma names what is told next. */
export function namesNext(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from + 1; at < to; at += 1) {
    const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]];
    if (token?.pause !== true || before === undefined || next === undefined) continue;
    if (!NAMING_UNITS.has(token) || next.pause || !OF.has(next)) continue;
    if (before.value !== null || NUMBERS.has(before)) return true;
  }
  return false;
}

/** "Is that good. High side reads ninety three": talk ends where its sentence does. */
export function readsBehindStop(words: string): boolean {
  const stop = words.search(/[.?!]\s/);
  return stop !== -1 && holdsReading(words.slice(stop + 1));
}
