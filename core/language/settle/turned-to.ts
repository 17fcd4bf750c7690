import { PARTS } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { isWhollyRead, type Item, type Parse } from '../parse/parse.ts';
import type { Command, Utterance } from '../utterance.ts';
import { WordSet } from '../words/word-set.ts';
import type { Reads } from './reads.ts';
import type { DraftUtterance } from './told.ts';

/**
 * "Checked the run capacitor", "head pressure": what was named and nothing told of is what the next sentence tells of.
 * "Replaced the" is half a sentence, and the next one the other half.
 */
export function turnTo(all: DraftUtterance, parsed: Pick<Parse, 'tokens' | 'items'>): void {
  if (told(all) + open(all) > 0) return;
  const isHalf = isUnfinished(parsed) && all.remarks.every((words) => words === all.text);
  if (isHalf) all.remarks = [];
  const named = isWhollyRead(parsed.tokens, parsed.items)
    ? parsed.items.findLast(isNaming)?.meaning
    : undefined;
  // "Discharged the cap": done to what is metered next.
  const isDoneToIt = named?.speaksAt !== undefined && named.remarks !== undefined;
  if ((all.remarks.length > 0 && !isDoneToIt) || (named === undefined && !isHalf)) return;
  const { names: part = null, speaksOf: quantity = null, speaksAt: place = null } = named ?? {};
  const turn: Command = { do: 'turnTo', part, quantity, place, words: all.text };
  all.commands = [turn];
}

const isNaming = ({ meaning }: Item): boolean =>
  meaning.names !== undefined || meaning.speaksOf !== undefined;

/** Whether more must come: nobody ends with an article, or with what was done and to nothing. */
function isUnfinished({ tokens, items }: Pick<Parse, 'tokens' | 'items'>): boolean {
  const last = tokens.at(-1);
  if (last === undefined || tokens.length > LONGEST_HALF || !items.every(isNaming)) return false;
  return LEADS_ON.has(last) || (tokens.length < 3 && DID.has(last));
}
/** Ours: longer ones are told whole, or talk. */
const LONGEST_HALF = 4;
const LEADS_ON = new WordSet(
  'the my is are was has got getting reading reads drawing pulling draws measures measured shows showing says',
);
const DID = new WordSet(
  'replaced cleaned swapped changed installed added adding recovered weighed',
);

/**
 * "Run capacitor." "Reads twenty two.": behind what was named in a sentence of its own, this one is said once more with
 * the name before it, or in the place of "it"; behind half a sentence, with that half.
 *
 * @returns `null` where nothing was named just before, or no more is understood so.
 */
export function ofNamed(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { turnedTo } = context;
  if (turnedTo === null) return null;
  const { words, part } = turnedTo;
  const called = part === null ? words : PARTS[part];
  const text = said.text.replace(LEAD, '');
  if (text === '') return null;
  const together = `${words} ${text}`;
  const ways = IT.test(text)
    ? [text.replace(IT, called), `${words}, ${text}`]
    : [...(part === null ? [together] : []), `${words}, ${text}`, `${called} ${text}`];
  const least =
    part === null ? said : reads(said.text, { ...context, lastPart: null, lastPlace: null });
  for (const way of ways) {
    const again = reads(way, context);
    if (tellsMore(again, said) || (isNoLess(again, said) && told(again) > told(least)))
      return { ...again, text: said.text };
  }
  return null;
}
/** "Okay, burnt" behind a part's name tells nothing good of it. */
const LEAD =
  /^(?:(?:ok|okay|alright|all right|right|so|and|well|uh|um|yeah|yep|now|then|anyway)\b[,.\s]*)*/i;
const IT =
  /^(?:it|that|this|she)(?=['’]s |['’]re | (?:is|was|reads?|should|shows|has|looks|measures|ohms) )/i;

function tellsMore(one: Utterance, other: Utterance): boolean {
  if (!isNoLess(one, other)) return false;
  // Which of two it was, of a number that has a name.
  const isNamed = one.unclaimed.length < other.unclaimed.length;
  return (
    isNamed || told(one) > told(other) || open(one) < open(other) || places(one) > places(other)
  );
}

const isNoLess = (one: Utterance, other: Utterance): boolean =>
  told(one) >= told(other) &&
  open(one) <= open(other) &&
  one.remarks.length <= other.remarks.length;

/** How many readings tell where they were taken. */
const places = ({ readings }: Utterance): number =>
  readings.filter(({ place }) => place !== null).length;

const told = ({ readings, facts, findings, work, recommendations, ...more }: Utterance): number =>
  readings.length +
  facts.length +
  findings.length +
  work.length +
  recommendations.length +
  more.questions.length +
  more.commands.filter((command) => command.do !== 'turnTo').length +
  more.memos.length;

const open = ({ unclaimed, doubts }: Utterance): number => unclaimed.length + doubts.length;
