import { PARTS, type PartId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import type { Finding, Utterance } from '../utterance.ts';
import { takenLeadOf, placesTakenBack } from './fragments.ts';
import { meaningOf } from './meaning.ts';
import { nothingSaid } from './told.ts';
import type { Reads } from './reads.ts';

/** "No, the overload is fine", of what was found open before: only what it is now was found. */
export function restatedBefore(said: Utterance, { told, asksYes }: Context): Utterance | null {
  const [found, ...more] = said.findings;
  if (found === undefined || more.length > 0 || asksYes) return null;
  if (takenLeadOf(said.text) === '' || !tellsOnly(said)) return null;
  const worked = told.findIndex(
    (each) => each?.told.of === 'work' && each.told.work.part === found.part,
  );
  const ago = told.findIndex((each, at) => {
    if (each === null || (worked !== -1 && at > worked)) return false;
    return each.told.of === 'finding' && isOther(each.told.finding, found);
  });
  return ago === -1 ? null : { ...said, commands: [{ do: 'undo', earlier: true, ago }] };
}

const isOther = (one: Finding, other: Finding): boolean =>
  one.part === other.part && one.state !== other.state;

/** Findings, and words that were kept. */
const tellsOnly = ({ text, ...said }: Utterance): boolean =>
  meaningOf({ text, ...said, findings: [], remarks: [] }) === meaningOf(nothingSaid(text));

/** "Evaporator fan's not turning, no it's turning but slow": what is said of it last was found. */
export function restatedWithin(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  for (const place of placesTakenBack(text).toReversed()) {
    const behind = text.slice(place);
    const before = reads(text.slice(0, place), context);
    const last = before.findings.at(-1);
    const part = last?.part;
    const rest = whole(behind.slice(takenLeadOf(behind).length), last);
    if (part === undefined || !IT.test(rest)) continue;
    const again = ofPart(rest, part, { context, reads });
    const isOfIt = again.findings.some((each) => each.part === part);
    if (!isOfIt) continue;
    const findings = before.findings.filter((each) => each.part !== part);
    return {
      ...before,
      text,
      findings: [...findings, ...again.findings],
      remarks: [...before.remarks, ...again.remarks, ...inWords(rest, part)],
    };
  }
  return null;
}

const IT = /^(?:it|it's|it is|they|they're|they are|that|that's)\b/i;

/** "The fan isn't running, no, it is" */
const whole = (words: string, last: Finding | undefined): string =>
  last?.state === 'notRunning'
    ? words.replace(/^(it|they) (?:is|are|does|do)[.!]?$/i, 'it is running')
    : words;

interface Reading {
  readonly context: Context;
  readonly reads: Reads;
}

/** Said of "it", which is the part. */
function ofPart(words: string, part: PartId, { context, reads }: Reading): Utterance {
  const of = reads(words, { ...context, lastPart: part });
  if (of.findings.length > 0) return of;
  return reads(named(words, part), context);
}

const named = (words: string, part: PartId): string =>
  words.replace(IT, (it) => `${PARTS[part]} ${/s$|are$|is$/i.test(it) ? 'is' : ''}`.trim());

/** How it does it is no state, and told all the same: "turning but slow". */
const HOW = /\b(?:slow|slowly|barely|hardly|rough|backwards|the wrong way|weak|weakly|hot|loud)\b/i;
const inWords = (words: string, part: PartId): readonly string[] =>
  HOW.test(words) ? [named(words, part).toLowerCase()] : [];
