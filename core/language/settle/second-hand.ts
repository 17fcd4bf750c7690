import { type Item, parse } from '../parse/parse.ts';
import type { Sentence } from '../parse/sentence.ts';
import type { Doubt, Reading } from '../utterance.ts';

interface SecondHand {
  readonly memos: readonly string[];
  /** What we read ourselves, told behind it. */
  readonly readings: readonly Reading[];
  readonly doubts: readonly Doubt[];
  readonly unclaimed: readonly string[];
}

/** "Last guy said head was three ten, but I'm reading two forty" */
const READING =
  /^(?:i'm|i am|we're|we are|i've|we've|i|we) (?:only )?(?:reading|getting|seeing|read|got|get|see|have)\s+/i;
const BUT_WE_READ =
  /,? but (?:now )?(?=(?:i'm|i am|we're|we are) (?:reading|getting|seeing|only)\b|(?:i|we|i've|we've) (?:read|got|get|see|have|only)\b|my (?:meter|gauges?|probe|thermometer)\b)/i;

/** Somebody else's numbers are never readings: doubted where a quantity is named, else kept as words. */
export function secondHand({ start, end, meaning }: Item, sentence: Sentence): SecondHand {
  const { context } = sentence;
  const words = sentence.wordsOf({ from: start, to: end });
  const [told = '', ours] = (meaning.hearsay ?? '').split(BUT_WE_READ);
  const { items, unclaimed } = parse(told, { ...context, asked: null });
  const theirs = items.flatMap((item) => item.meaning.readings ?? []);
  const lastQuantity = theirs.at(-1)?.quantity ?? context.lastQuantity;
  const read =
    ours === undefined
      ? { items: [], unclaimed: [] }
      : parse(ours.replace(READING, ''), { ...context, asked: lastQuantity, lastQuantity });
  const readings = read.items.flatMap((item) => item.meaning.readings ?? []);
  if (theirs.length === 0)
    return { memos: [words], readings, doubts: [], unclaimed: read.unclaimed };
  const doubts = theirs.map((reading): Doubt => ({ ...reading, words, why: 'hearsay' }));
  return { memos: [], readings, doubts, unclaimed: [...unclaimed, ...read.unclaimed] };
}
