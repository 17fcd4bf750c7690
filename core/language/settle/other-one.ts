import { isPowerPart, PARTS, type PartId } from '../../terms/names.ts';
import { NUMBER, SIDE } from '../../terms/which-one.ts';
import type { Context } from '../context.ts';
import { partNamedIn, placeNamedIn } from '../questions/named-in.ts';
import { partId } from '../slots.ts';
import type { Utterance } from '../utterance.ts';
import type { Reads } from './reads.ts';
import { spokenOfLast } from './spoken-last.ts';
import { isStuckFan } from '../words/state-at.ts';

const TELLS =
  "(?:'s|\\s+(?:is|isn't|was|wasn't|reads|read|does|doesn't|won't|will|keeps|has|looks|ohms|ohmed|measures|pulls|pulling|draws|running|runs|not|dead|bad|open|closed|burnt|burned|shorted|tripped|spins|turns|turning|works|weak|fine|good|okay|ok)\\b)";
/** Behind these "the left one" goes on with the clause. */
const GOES_ON =
  '(?:on|of|at|for|to|in|into|from|with|than|like|by|off|across|is|was|are|were|did|replaced|changed|cleaned|checked|swapped|and|but|so)';
/** "The right one is", "two is", where a clause begins: "there's two fans the left one's dead" pauses nowhere. */
const ANOTHER = new RegExp(
  `(^|[,;:.]\\s+|\\b(?:and|but|so)\\s+|(?<!\\b${GOES_ON})\\s+(?=the\\s))(?:the\\s+)?(?:(${SIDE})\\s+one|(?:number\\s+)?(${NUMBER}))(?=${TELLS})`,
  'gi',
);
/** One glance, as most sentences hold none. */
const HAS_NUMBER = new RegExp(`\\b${NUMBER}\\b`, 'i');
const MAY_BE = new RegExp(`\\b(?:${SIDE}\\s+one|${NUMBER})${TELLS}`, 'i');
/** "Fan one's running": behind it a bare number is another fan. */
const IS_NUMBERED = new RegExp(`[a-z]\\s+(?:number\\s+)?${NUMBER}(?=${TELLS})`, 'i');

/**
 * "Left condenser fan's running, right one is dead", "fan one's running, two is dead": what is told of another one of the
 * part that was named before it is said once more with the part in it.
 *
 * @returns `null` where no other one is told of, or nothing more is understood so.
 */
export function ofOtherOne(said: Utterance, context: Context, reads: Reads): Utterance | null {
  if (!HAS_NUMBER.test(said.text) || !MAY_BE.test(said.text)) return null;
  const { text } = said;
  let meant = '';
  let from = 0;
  let isNamedHere = false;
  for (const found of text.matchAll(ANOTHER)) {
    const [all, lead = '', side, number] = found;
    const before = text.slice(0, found.index);
    if (number !== undefined && !IS_NUMBERED.test(before)) continue;
    const part = partIn(before, context, reads);
    // A unit has one disconnect, whatever was told last: the third one is of something else.
    if (part === null || part === 'disconnect' || isStuckFan(part, text.slice(found.index)))
      continue;
    isNamedHere ||= partNamedIn(spaced(before)) === part;
    const named = side === undefined ? `${PARTS[part]} ${number}` : `${side} ${PARTS[part]}`;
    const pause = /^\s+$/.test(lead) ? ', ' : lead;
    meant += text.slice(from, found.index) + pause + named;
    from = found.index + all.length;
  }
  if (from === 0) return null;
  const again = reads(meant + text.slice(from), context);
  const isBetter = isNamedHere && isOfBefore(said) && tellsNoLess(again, said);
  return tellsMore(again, said) || isBetter ? { ...again, text } : null;
}

/** Of a part that nobody named in this sentence. */
const isOfBefore = ({ findings }: Utterance): boolean =>
  findings.every(({ words }) => partNamedIn(spaced(words)) === null);

/** What was named last: in the words before, or in the sentence before. */
function partIn(before: string, context: Context, reads: Reads): PartId | null {
  const { findings, readings } = reads(before, context);
  const place = readings.at(-1)?.place ?? placeNamedIn(spaced(before));
  const found = findings.at(-1);
  // "Evap fans, left one's spinning": of the one that is named, not of what was spoken of before.
  const isUnnamed = found !== undefined && partNamedIn(spaced(found.words)) === null;
  const named = partNamedIn(spaced(before));
  return (
    (isUnnamed ? named : null) ??
    found?.part ??
    partId(place ?? undefined) ??
    named ??
    notSwitchedOff(context)
  );
}

/** "Killed it and ohmed them. First one's forty nine.": of what was metered, and not of what was switched off for it. */
function notSwitchedOff(context: Context): PartId | null {
  const last = spokenOfLast(context);
  const isOff = context.powerIsOff && last !== null && isPowerPart(last);
  return isOff ? (partId(context.lastPlace ?? undefined) ?? last) : last;
}

const spaced = (words: string): string => ` ${words.toLowerCase().replace(/[^a-z0-9']+/g, ' ')} `;

const tellsMore = (one: Utterance, other: Utterance): boolean =>
  told(one) > told(other) && tellsNoLess(one, other);

const told = ({ findings, readings }: Utterance): number => findings.length + readings.length;

const tellsNoLess = (one: Utterance, other: Utterance): boolean =>
  told(one) >= told(other) &&
  one.unclaimed.length <= other.unclaimed.length &&
  one.doubts.length <= other.doubts.length;
