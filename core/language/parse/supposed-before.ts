import type { Token } from '../../grammar/tokens.ts';
import { ARTICLES, FINITE } from '../words/clause-tokens.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { WordSet } from '../words/word-set.ts';

const BE = new WordSet('be been');
const MAY = new WordSet('may might could would should');

/** Whether what begins there is only supposed: "there may have been a crack in the coil", "could be a bad relay". */
export function isSupposedBefore(tokens: readonly Token[], start: number): boolean {
  const be = tokens[start - 1];
  if (be === undefined || !BE.has(be) || tokens[start]?.pause === true) return false;
  return MAY.hasAny(tokens, Math.max(0, start - 4), start - 1);
}

/** "Hardly any frost on the coil", "zero frost": what begins there is told not to be. */
export function isDeniedBefore(tokens: readonly Token[], start: number, end: number): boolean {
  const before = tokens[start - 1];
  if (before === undefined || tokens[start]?.pause === true) return false;
  return NONE.has(before) || (NO.has(before) && !FINITE.hasAny(tokens, start, end));
}
/** "No burnt terminals"; but "no, the fan is dead" puts something right. */
const NO = new WordSet('no');
const NONE = new WordSet('zero any hardly barely without');

/** "Keep the lids shut": how it is to be, and not how it was found. */
export function isOrderedBefore(tokens: readonly Token[], start: number): boolean {
  const article = tokens[start - 1];
  const at = article !== undefined && ARTICLES.has(article) ? start - 2 : start - 1;
  const [order, before] = [tokens[at], tokens[at - 1]];
  if (order === undefined || !KEEP.has(order)) return false;
  return before === undefined || order.pause || ASKS.has(before);
}
const KEEP = new WordSet('keep');
const ASKS = new WordSet('to please you should must always and or just gotta');

/** "Compressor's running one sixty" tells how hot it runs, or how much of what, and not that it turns. */
export function runsAt(tokens: readonly Token[], end: number): boolean {
  if (tokens[end - 1]?.text !== 'running') return false;
  let at = end;
  for (let word = tokens[at]; word !== undefined && HEDGES.has(word); word = tokens[at]) {
    if (word.pause) return false;
    at += 1;
  }
  const next = tokens[at];
  if (next === undefined || next.pause) return false;
  return next.value !== null || FIGURES.has(next);
}
const HEDGES = new WordSet('about around roughly like maybe right at just almost nearly close to');
const FIGURES = new WordSet([...ONES, ...TEENS, ...TENS]);

const STOCK = new WordSet('truck van shelf stock');

/** "The defrost clock was off by six hours" is not off, "two heaters off the truck" are used, and "hoses are down to five pounds" finds none of them down. */
export function isOffBy(tokens: readonly Token[], end: number): boolean {
  const next = tokens[end];
  if (next === undefined || next.pause) return false;
  const last = tokens[end - 1]?.text;
  if (last === 'down') return next.text === 'to';
  if (last !== 'off') return false;
  return next.text === 'by' || STOCK.hasAny(tokens, end + 1, end + 2);
}
