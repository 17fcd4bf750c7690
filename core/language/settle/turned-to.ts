import { PARTS } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import type { Item } from '../parse/parse.ts';
import type { Command, Utterance } from '../utterance.ts';
import type { Reads } from './reads.ts';
import type { DraftUtterance } from './told.ts';

/** "Checked the run capacitor", "head pressure": what was named and nothing told of is what the next sentence tells of. */
export function turnTo(all: DraftUtterance, items: readonly Item[]): void {
  const named = items.findLast(
    ({ meaning }) => meaning.names !== undefined || meaning.speaksOf !== undefined,
  )?.meaning;
  if (named === undefined || told(all) + open(all) + all.remarks.length > 0) return;
  const { names: part = null, speaksOf: quantity = null, speaksAt: place = null } = named;
  const turn: Command = { do: 'turnTo', part, quantity, place, words: all.text };
  all.commands = [turn];
}

/**
 * "Run capacitor." "Reads twenty two.": behind what was named in a sentence of its own, this one is said once more with
 * the name before it, or in the place of "it".
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
  const ways = IT.test(text)
    ? [text.replace(IT, called), `${words}, ${text}`]
    : [`${words}, ${text}`, `${called} ${text}`];
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
  return told(one) > told(other) || open(one) < open(other) || places(one) > places(other);
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
