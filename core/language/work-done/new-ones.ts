import type { PartId } from '../../terms/names.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, tagsIn } from '../slots.ts';
import { nameGoesOn } from '../findings/part-lists.ts';
import type { Work } from '../utterance.ts';
import { isNotDone } from '../words/not-done.ts';
import { wordBefore, wordBehind } from '../words/clause-start.ts';
import { settledFan } from '../words/fans.ts';

/** What was taken out last, else what was found bad or is to be replaced, and was not since: of one of these there is a new one. */
function wantedAnew({ context: { told, foundBad, toReplace } }: Frame): PartId | null {
  const removed = told.find((each) => each?.told.of === 'work' && each.told.work.did === 'remove');
  return removed?.told.of === 'work' ? removed.told.work.part : (foundBad ?? toReplace);
}

/** "Put the new one in": of a part that is named in the same sentence, else of the one that waits for it. */
const newOneIn: Means = (tags, frame) => {
  if (isNotDone(frame) || STOWED.test(wordBehind(frame))) return remark(tags, frame);
  const words = frame.wordsOf(frame.span);
  const replaced = (part: PartId): Meaning => ({
    work: [{ did: 'replace', part: settledFan(part, frame.context), words }],
  });
  const wanted = wantedAnew(frame);
  const otherwise = wanted === null ? remark(tags, frame) : replaced(wanted);
  return { ofIt: { means: replaced, inSentence: true, ...(otherwise && { otherwise }) } };
};
/** "Got the new one in the truck" */
const STOWED = /^(?:the|my|a|stock|hand|order)$/;

/** "Did the other fan's capacitor too": what wears is done by a new one, and what gets dirty is cleaned. */
const didPart: Means = (tags, frame) => {
  const parts = [partId(tags['part']), partId(tagsIn(tags['second'])?.['part'])];
  if (isNotDone(frame) || nameGoesOn(frame)) return null;
  const words = frame.wordsOf(frame.span);
  const work = parts.flatMap((part): readonly Work[] => {
    const named = part === null ? null : settledFan(part, frame.context);
    if (named === null) return [];
    if (GET_DIRTY.has(named)) return [{ did: 'clean', part: named, words }];
    return WEAR.has(named) ? [{ did: 'replace', part: named, words }] : [];
  });
  return work.length === parts.filter((part) => part !== null).length ? { work } : null;
};
const GET_DIRTY: ReadonlySet<PartId> = new Set<PartId>(['condenser', 'evaporator', 'drainLine']);
const WEAR: ReadonlySet<PartId> = new Set<PartId>([
  ...(['runCapacitor', 'startCapacitor', 'contactor', 'filterDrier', 'doorGasket'] as const),
  ...(['startRelay', 'condenserFanMotor', 'evaporatorFanMotor', 'fuse', 'accessFitting'] as const),
]);

/** "Set the new compressor": nobody adjusts what is new. */
const newPartSet: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const behind = wordBehind(frame);
  if (part === null || isNotDone(frame) || STOWED.test(behind) || SET_AT.test(behind)) return null;
  const words = frame.wordsOf(frame.span);
  return { work: [{ did: 'replace', part: settledFan(part, frame.context), words }] };
};

/** "Set the new control at twenty" */
const SET_AT = /^(?:to|at|for|about|around|aside)$/;

/** "Cut the old one out": of the part that a new one is to come for. */
const oldOneOut: Means = (tags, frame) => {
  const { foundBad, toReplace } = frame.context;
  const part = foundBad ?? toReplace;
  if (isNotDone(frame)) return remark(tags, frame);
  const words = frame.wordsOf(frame.span);
  const removed = (of: PartId): Meaning => ({
    work: [{ did: 'remove', part: settledFan(of, frame.context), words }],
  });
  const otherwise = part === null ? remark(tags, frame) : removed(part);
  return { ofIt: { means: removed, inSentence: true, ...(otherwise && { otherwise }) } };
};

/**
 * "Brazed it in" is of the new one while it waits: of what was taken out as bad, or is agreed to be replaced. Of what is in
 * already nothing new is told, and what was only taken off to get at something goes back as it was.
 */
const itIsSetIn: Means = (_tags, frame) => {
  const { told, foundBad, toReplace } = frame.context;
  const last = told.find((each) => each?.told.of === 'work')?.told;
  const removed = last?.of === 'work' && last.work.did === 'remove' ? last.work.part : null;
  const words = frame.wordsOf(frame.span);
  const isJoined = removed === null && /\b(?:brazed|sweated|soldered)\b/i.test(words);
  const isBad = removed === foundBad || removed === toReplace;
  const waits = isJoined ? toReplace : isBad ? removed : null;
  if (waits === null || isNotDone(frame) || STOWED.test(wordBehind(frame))) return null;
  return {
    work: [{ did: 'replace', part: settledFan(waits, frame.context), words }],
    ...(/\bnitrogen\b/i.test(words) && { remarks: [words] }),
  };
};

/** Ours: nobody takes these off and puts the same one back on. */
const WORN: ReadonlySet<PartId> = new Set<PartId>(['doorGasket', 'filterDrier']);

/** "Put the gasket on": a new one, where it was found bad or is one that only goes on new. */
const putOn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || isNotDone(frame) || isPlanned(frame)) return null;
  const { foundBad, toReplace } = frame.context;
  if (!WORN.has(part) && part !== foundBad && part !== toReplace) return null;
  return { work: [{ did: 'replace', part, words: frame.wordsOf(frame.span) }] };
};

/** "Gonna put the gasket on" */
const isPlanned = (frame: Frame): boolean =>
  /^(?:to|will|gonna|let|can|should|ll)$/i.test(wordBefore(frame));

const I = '<byUs>';
const PUT =
  '(put|stuck|dropped|brazed|wired|bolted|screwed|set|threw|slid|popped|sweated|installed|mounted|hung|soldered|landed)';
const IN = '(in|on|up|back|back in|in place|down)';

const OUT = '(out|off|loose|down|out of there|out of it)';
const TOOK =
  '(cut|pulled|took|got|unsweated|unbrazed|sweated|unbolted|yanked|ripped|dropped|popped|lifted|hauled|unscrewed|slid|disconnected and pulled)';

/** The old one out, and a new one of what was taken out, found bad or agreed on in. */
export const NEW_ONE_RULES: readonly Rule[] = [
  rule(
    `${I} ${TOOK} [${OUT}] (the|that) (old|bad|dead|failed|burnt) (one|ones) [${OUT}]`,
    oldOneOut,
    {
      unheard: true,
      examples: ['cut the old one out'],
    },
  ),
  rule(
    `[(and|ok|so)] [(the|that)] (old|bad|dead|failed|burnt) (one|ones) (is|are) [(all|now|finally)] (out|off|out of there|on the floor|on the ground) [now]`,
    oldOneOut,
    { unheard: true, apart: true, examples: ['old one is out'] },
  ),
  rule(
    `${I} [(all|got)] (brazed|sweated|soldered|bolted|wired|screwed|mounted|set|dropped|installed) (it|her|that|them) [all] (in|up|down|in place) [with nitrogen] [now]`,
    itIsSetIn,
    { unheard: true, apart: true, examples: [] },
  ),
  rule(`${I} ${PUT} [${IN}] the (new|replacement) (one|ones) [${IN}]`, newOneIn, {
    unheard: true,
    examples: ['put the new one in'],
  }),
  rule(
    `[(and|ok|so)] [(the|my)] (new|replacement) (one|ones) (is|are) [(all|now|back)] (in|on|mounted|installed|wired [(in|up)]|bolted [(in|down)]|brazed in|in place|hung) [now]`,
    newOneIn,
    { unheard: true, apart: true, examples: ['new one is in'] },
  ),
  rule(
    `${I} (put|stuck|threw|snapped|pressed|slid|popped) (the|that|my) <part> (in|on) [it]`,
    putOn,
    {
      unheard: true,
      apart: true,
      examples: ['put the gasket on'],
    },
  ),
  rule(
    `${I} did <the> [other] <part> [and <the> <part:second>] [(on|for) (the|that) (other|good|second|left|right|bad) (one|fan|motor|unit|side)] [(too|also|as well)] [while i (was|am) (at it|here|up here|in there|in here|there)]`,
    didPart,
    {
      unheard: true,
      only: (frame) => frame.endsAtPause,
      examples: ['did the contactor too'],
    },
  ),
  rule(
    `${I} (set|dropped [in]|landed|mounted|bolted [in]) (the|a|my|that) (new|replacement) <part> [${IN}]`,
    newPartSet,
    { unheard: true, examples: ['set the new compressor'] },
  ),
];
