import { replacedPart } from './told-of-work.ts';
import { settledFan } from '../words/fans.ts';
import type { PartId } from '../../terms/names.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, partId, tagsIn, workId } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import { todo } from '../recommendations/recommendations.ts';
import { nothing, remark } from '../plain-means.ts';
import { startsClause } from '../words/clause-start.ts';

/** Common practice: a drier is named by its cubic inches, and behind them its connection in eighths of an inch: 303, 163, 052. */
const CUBIC_INCHES: ReadonlySet<number> = new Set([3, 5, 8, 16, 30, 41, 60, 75]);
const [LEAST_EIGHTHS, TEN] = [2, 10];

function isDrier(tags: Tags): boolean {
  const code = numberIn(tagsIn(tags['code'])?.['number']);
  if (code === null || !Number.isInteger(code) || partId(tags['part']) !== 'filterDrier')
    return false;
  return CUBIC_INCHES.has(Math.trunc(code / TEN)) && code % TEN >= LEAST_EIGHTHS;
}

/** "Put in a three oh three drier": the words keep which. */
const done: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const part = partId(tags['part']);
  if (did === null || part === null || !isDrier(tags)) return null;
  const words = frame.wordsOf(frame.span);
  return { work: [{ did, part: settledFan(part, frame.context), words }] };
};

const newOne: Means = (tags, frame) =>
  isDrier(tags) && startsClause(frame) ? replacedPart(tags, frame) : null;

/** "Put in a new one, a zero eight three": of the drier that was spoken of. */
const newOneOfIt: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning | null =>
    isDrier({ ...tags, part }) ? { work: [{ did: 'replace', part, words }] } : null;
  return { ofIt: { means, inSentence: false, otherwise: { remarks: [words] } } };
};

const needed: Means = (tags, frame) => (isDrier(tags) ? todo(tags, frame) : null);

const named: Means = (tags, frame) =>
  isDrier(tags) && startsClause(frame) && frame.endsAtPause
    ? { remarks: [frame.wordsOf(frame.span)], names: 'filterDrier' }
    : null;

/** "Cap the other two": which, and not how many of anything that a meter shows. */
const capped: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return isDone(frame) ? { work: [{ did: 'restore', part: 'caps', words }] } : { remarks: [words] };
};
const isDone = (frame: Frame): boolean => /\bcapped\b/i.test(frame.wordsOf(frame.span));

const I =
  '[(i|we|just|i just|have|i have|we have|went ahead and|i went ahead and|also|i also|and|then)]';
const A = '[(a|an|the|another|my)]';
const NEW = '[(new|brand new|replacement|bigger|smaller)]';
const CODE = '[(number|size|model)] [(oh|zero)] <number:code> [(s|f|sweat|flare|solder)]';

/** Driers by what stands on them, and what is told apart by "the other". */
export const DESIGNATED_RULES: readonly Rule[] = [
  rule('[(a|an)] <number> (cubic inch|cubic inches|c i|cu in) <part>', remark, {
    unheard: true,
    apart: true,
    examples: ['a sixteen cubic inch dryer'],
  }),
  rule('<pause> [(a|it is a)] <fraction> [(inch|sweat|flare|solder|o d|line|lines)]', nothing, {
    unheard: true,
    only: ({ endsAtPause }) => endsAtPause,
    examples: [],
  }),
  rule(
    '[(i|we)] [(have|just)] (valved|blanked) ((it|the pump|her|~~the rig) off|off (it|the pump))',
    nothing,
    {
      unheard: true,
      apart: true,
      examples: ['valved it off'],
    },
  ),
  rule('[(i|we)] valved off', nothing, { unheard: true, alone: true, examples: ['valved off'] }),
  rule(
    '[(the|that|my|new|old)] [<part>] part (number|numbers) [(on (it|that|this)|for (it|that|this))] [(is|was|says|reads)] <clause>',
    remark,
    {
      unheard: true,
      apart: true,
      examples: ['fan motor part number is five one five four one two'],
    },
  ),
  rule(`${I} <done> ${A} ${NEW} ${CODE} ${NEW} <part>`, done, {
    unheard: true,
    examples: ['put in a three oh three dryer'],
  }),
  rule(
    `${I} <done> <the> ${NEW} <part> [<pause>] [(with|for|it is|to)] ${A} ${NEW} ${CODE}`,
    done,
    {
      unheard: true,
      examples: ['replaced the dryer with a three oh three'],
    },
  ),
  rule(`[(a|and|and a|with a)] (new|brand new) <part> [<pause>] [(it is|a|size)] ${CODE}`, newOne, {
    unheard: true,
    examples: ['new dryer three oh three'],
  }),
  rule(
    `${I} (put in|put|installed|stuck in|brazed in|hung) (a|the) (new|other|another) one [in] [<pause>] [(it is|with|and it is|that is)] ${A} ${CODE}`,
    newOneOfIt,
    { unheard: true, alone: true, examples: [] },
  ),
  rule(`[(a|and|and a|with a)] (new|brand new) ${CODE} <part>`, newOne, {
    unheard: true,
    examples: ['new three oh three dryer'],
  }),
  rule(
    `${I} (put|stuck|brazed|sweated|got) ${A} ${NEW} ${CODE} ${NEW} <part> [back] (in|on)`,
    done,
    {
      unheard: true,
      tags: { work: 'add' },
      examples: ['put a zero eight two filter dryer in'],
    },
  ),
  rule(
    `[(it|they|this|this one|the unit)] (needs|need|could use|wants|is due for) ${A} ${NEW} (${CODE} <part>|<part> [<pause>] ${A} ${CODE})`,
    needed,
    { unheard: true, tags: { work: 'replace' }, examples: ['needs a three oh three dryer'] },
  ),
  rule(`<the> <part> [(is|was)] ${A} ${CODE}`, named, {
    unheard: true,
    examples: ['filter dryer three oh three'],
  }),
  rule(`[(it is|that is|it has|it has got|there is|this is)] ${A} ${CODE} <part>`, named, {
    unheard: true,
    examples: ['one sixty three dryer'],
  }),
  rule(
    `${I} (cap|capped|cap off|capped off) (the|those|all the|my) other [(one|two|three|four|couple|few)] [(valves|ports|schraders|fittings|service valves|taps)] [(off|up|too)]`,
    capped,
    { unheard: true, examples: ['cap the other two'] },
  ),
];
