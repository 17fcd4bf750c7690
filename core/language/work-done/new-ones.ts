import type { PartId } from '../../terms/names.ts';
import { remark } from '../plain-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { isNotDone } from '../words/not-done.ts';
import { wordBehind } from '../words/clause-start.ts';
import { settledFan } from '../words/fans.ts';

/** What was taken out last, else what was found bad and not replaced since: only of one of these there is a new one to put in. */
function wantedAnew({ context: { told, foundBad } }: Frame): PartId | null {
  const removed = told.find((each) => each?.told.of === 'work' && each.told.work.did === 'remove');
  return removed?.told.of === 'work' ? removed.told.work.part : foundBad;
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

const I = '<byUs>';
const PUT =
  '(put|stuck|dropped|brazed|wired|bolted|screwed|set|threw|slid|popped|sweated|installed|mounted|hung|soldered|landed)';
const IN = '(in|on|up|back|back in|in place|down)';

/** A new one of what was taken out or found bad. */
export const NEW_ONE_RULES: readonly Rule[] = [
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
    `${I} (set|dropped [in]|landed|mounted|bolted [in]) (the|a|my|that) (new|replacement) <part> [${IN}]`,
    newPartSet,
    { unheard: true, examples: ['set the new compressor'] },
  ),
];
