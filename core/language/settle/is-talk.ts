import type { Context } from '../context.ts';
import { parse } from '../parse/parse.ts';
import type { Meaning } from '../rule.ts';
import { quantityNamedIn, startsWithPart } from '../questions/named-in.ts';
import { FILLERS } from '../words/fillers.ts';
import { isSaidToOneself } from '../words/self-talk.ts';

/** What was said of other things, or of what might be. */
export const isOfTalk = (meaning: Meaning): boolean =>
  meaning.supposed === true || Object.keys(meaning).length === 0;

/** "Is that it" holds nothing but fillers and waits for an answer, and so does what asks of a part or a quantity. */
function asksUs(words: string): boolean {
  if (IS_THAT.test(words)) return true;
  const asked = words.replace(ASKS, ' ');
  if (asked === words) return false;
  return quantityNamedIn(`${asked} `) !== null || startsWithPart(`${asked} `);
}
const IS_THAT = /^(?:(?:so|and|ok|well|then) )*is (?:that|it|there|this)(?: it| all)?$/;
const ASKS =
  /^(?:(?:so|and|ok|well|then|but) )*(?:is|are|was|am i|does|do i|do you think|should i|could|what is)(?: (?:the|a|my|have|going to|be))* /;

/**
 * Whether a sentence that meant nothing was not for us: most of its words are declared talk, or carry nothing. Of
 * "crates stood against every housing until it holds" only the end is talk, and "no voltage at the heater" has none:
 * those were not understood, and are asked for again.
 */
export function isTalk(text: string, context: Context): boolean {
  const { items, unclaimed, tokens } = parse(text, context);
  if (asksUs(tokens.map((token) => token.text).join(' '))) return false;
  if (
    items.every(({ meaning }) => isOfTalk(meaning)) &&
    unclaimed.length === 0 &&
    isSaidToOneself(tokens)
  )
    return true;
  const talk = items.filter(({ meaning }) => isOfTalk(meaning));
  const words = tokens.map((token, at) => ({ token, at }));
  const passed = words.filter(
    ({ token, at }) => FILLERS.has(token) || talk.some(({ start, end }) => start <= at && at < end),
  );
  const least = talk.length > 0 ? Math.floor(words.length / 2) + 1 : Math.max(words.length, 1);
  return unclaimed.length === 0 && passed.length >= least;
}
