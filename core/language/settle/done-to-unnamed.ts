import { HOLES } from '../holes.ts';
import type { Item } from '../parse/read-rules.ts';
import { GRAMMAR, type Sentence } from '../parse/sentence.ts';
import type { Meaning, Span } from '../rule.ts';
import { ARTICLES } from '../words/clause-tokens.ts';
import { WordSet } from '../words/word-set.ts';

const PART = HOLES['part'];
const PARTS = PART === undefined ? null : GRAMMAR.compile(PART);

/** What hands do to a thing before they do more to it. */
const TAKEN = new WordSet(
  'cut pulled pinched crimped squeezed removed took unsweated unsoldered unbolted unscrewed snipped sawed ' +
    'drilled ripped tore yanked popped broke chopped',
);
const THESE = new WordSet('that this those these its both all');
const PARTICLES = new WordSet('out off down up away loose back');
const SAID_OF_MANY = /\b(?:them|'?em|those|new ones)\b/i;
/** Where a thing was taken is not the thing. */
const ENDS_NAME = new WordSet(
  'on of in at for from to off out by with and so then because where that which it',
);

const isOnlyKept = (meaning: Meaning): boolean =>
  Object.keys(meaning).every((part) => part === 'remarks');

/** Any part tells whether it is work at "it". */
export function doesToIt({ ofIt }: Meaning): boolean {
  const done = ofIt?.means('condenser');
  return done?.work !== undefined || done?.recommendations !== undefined;
}

/**
 * "Cut out the u bend and put a new one in": a new one of what was cut out, and not of the part that was spoken of before.
 * Where no rule knows what that was, all of it is left to be kept in its words.
 */
export function withoutUnnamed(sentence: Sentence, items: readonly Item[]): readonly Item[] {
  if (!items.some(({ meaning }) => doesToIt(meaning))) return items;
  const left: Item[] = [];
  let from = 0;
  for (const item of items) {
    const { start, end } = item;
    const isLeft = !(doesToIt(item.meaning) && isOfUnnamed(sentence, item, from));
    if (isLeft) left.push(item);
    // What is done to it once more is done to the same, and what is only kept names nothing.
    if (isLeft && !isOnlyKept(item.meaning)) from = end;
    else from = Math.min(from, start);
  }
  return left.length === items.length ? items : left;
}

/** Whether something was taken out or worked on in the words before it that no rule reads, and is what it is done to. */
function isOfUnnamed(sentence: Sentence, { start, end }: Item, from: number): boolean {
  const name = thingTaken(sentence, { from, to: start });
  if (name === null) return false;
  const isMany = SAID_OF_MANY.test(sentence.wordsOf({ from: start, to: end }));
  return isMany === /[^s]s$/.test(name);
}

/** The last word of its name. */
function thingTaken({ tokens, matcher }: Sentence, { from, to }: Span): string | null {
  let at = from;
  while (at < to && !isIn(TAKEN, at)) at += 1;
  for (at += 1; at < to && isIn(PARTICLES, at); at += 1);
  if (at >= to || !(isIn(ARTICLES, at) || isIn(THESE, at))) return null;
  let name: string | null = null;
  for (at += 1; at < to && tokens[at]?.pause !== true && !isIn(ENDS_NAME, at); at += 1) {
    if (PARTS !== null && matcher.run(PARTS, at).length > 0) return null;
    name = tokens[at]?.text ?? name;
  }
  return name;

  function isIn(words: WordSet, place: number): boolean {
    const token = tokens[place];
    return token !== undefined && words.has(token);
  }
}
