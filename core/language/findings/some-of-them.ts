import type { PartId } from '../../terms/names.ts';
import { type Amounted, amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, placeId, tagsIn } from '../slots.ts';
import { LIFELESS } from '../vocabulary/state-names.ts';
import { startsClause } from '../words/clause-start.ts';
import { lifeless } from './lifeless.ts';
import { ofThose } from './one-of-several.ts';
import { stateOf } from './state-of.ts';

/** What is read in ohms by itself. */
const HEATERS: ReadonlySet<PartId> = new Set<PartId>([
  ...(['defrostHeater', 'doorHeater', 'drainHeater', 'crankcaseHeater'] as const),
]);

/** Ohms of a part, where leads can lie on it. */
const ohmsOf =
  (amount: Amounted, frame: Frame) =>
  (part: PartId): Meaning | null => {
    const place = placeId(part);
    const found =
      place === null ? null : readingOf('resistance', { ...amount, unit: 'ohm' }, { place, frame });
    return found === null ? null : { readings: [found] };
  };

/** Ohms of the heater that was spoken of; nothing of anything else. */
export const ohmsAt =
  (amount: Amounted, frame: Frame) =>
  (part: PartId): Meaning | null =>
    HEATERS.has(part) ? ohmsOf(amount, frame)(part) : null;

/** "Ohmed it, O L": of the part that was spoken of. */
const ohmedIt: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== 'ohm' && amount.unit !== null) return null;
  const otherwise = amount.value === null ? {} : { unclaimed: [String(amount.value)] };
  return { ofIt: { means: ohmsOf(amount, frame), inSentence: false, otherwise } };
};

/** "New ones read twenty one each", "heaters read seventeen, seventeen and a half": of the heaters that were spoken of. */
const ohmsOfThose: Means = (tags, frame) => {
  const amounts = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].flatMap((each) =>
    each === null ? [] : [amountIn(each)],
  );
  if (amounts.some(({ unit }) => unit !== 'ohm' && unit !== null)) return null;
  const means = (part: PartId): Meaning | null => {
    const readings = amounts.flatMap((each) => ohmsAt(each, frame)(part)?.readings ?? []);
    return readings.length === amounts.length ? { readings } : null;
  };
  const unclaimed = amounts.flatMap(({ value }) => (value === null ? [] : [String(value)]));
  const isNamed = NAMES_HEATERS.test(frame.wordsOf(frame.span));
  const otherwise = (isNamed ? means('defrostHeater') : null) ?? { unclaimed };
  return { ofIt: { means: (part) => means(part) ?? otherwise, inSentence: false, otherwise } };
};
const NAMES_HEATERS = /\b(?:heaters|elements)\b/i;

/** What is in once it was put in, and never stood there before that to be told of. */
const FITTED: ReadonlySet<PartId> = new Set<PartId>([
  ...(['defrostHeater', 'doorHeater', 'compressor', 'condenserFanMotor'] as const),
  ...(['evaporatorFanMotor', 'filterDrier', 'contactor', 'expansionValve'] as const),
  ...(['drainHeater', 'runCapacitor', 'startCapacitor'] as const),
]);

/** "Heaters are in": a clause of its own. */
const fitted: Means = (tags, frame: Frame) => {
  const part = partId(tags['part']);
  if (part === null || !FITTED.has(part) || !frame.endsAtPause || !startsClause(frame)) return null;
  return { work: [{ did: 'replace', part, words: frame.wordsOf(frame.span) }] };
};

/** Ours: of heaters in one coil none has twice the ohms of another; "twenty twenty one" may be heard as twenty and one. */
const MOST_APART = 2;
const threeAlike: Means = (tags, frame) => {
  const values = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].flatMap((each) =>
    each === null ? [] : (amountIn(each).value ?? []),
  );
  return Math.max(...values) < Math.min(...values) * MOST_APART ? ohmsOfThose(tags, frame) : null;
};

const newCaps: Means = (_tags, frame) => ({
  work: [{ did: 'replace', part: 'runCapacitor', words: frame.wordsOf(frame.span) }],
});

const wasOhmed = ({ context }: Frame): boolean => context.lastQuantity === 'resistance';

const OF =
  '[(so|and|but|looks like|well)] [about] <number> (of|out of [(the|my|their|your|these|those)]) <number:all>';
const OF_THOSE =
  '[(so|and|but|looks like|well)] [about] <number> [out] of [(the|my|their|your|these|those)] <number:all>';
const IS = '(is|are|was|were|look|looks|came up|test|tested|ohm|ohmed|read|reads)';
const IN_EACH =
  '[(both|all|each|all (three|four)|the two|both sides) [of (them|those|the (fans|motors|units))]|there]';
const ONE =
  '[(and|but)] [the] (left|right|middle|center|top|bottom|first|second|third|fourth|last|other|good) [hand] one';

/** "It's in", behind what was found bad. */
const itIsIn: Means = (_tags, frame) => {
  const { foundBad } = frame.context;
  const part =
    foundBad === 'evaporatorFan' || foundBad === 'condenserFan' ? MOTOR_OF[foundBad] : foundBad;
  return part !== null && FITTED.has(part)
    ? { work: [{ did: 'replace', part, words: frame.wordsOf(frame.span) }] }
    : null;
};
const MOTOR_OF = {
  evaporatorFan: 'evaporatorFanMotor',
  condenserFan: 'condenserFanMotor',
} as const;

/** How many of several, and which of them. */
export const SOME_OF_THEM_RULES: readonly Rule[] = [
  rule(`${OF} <part> ${IS} <very> <state>`, stateOf('state'), {
    unheard: true,
    examples: ['two of three heaters are burnt'],
  }),
  rule(`${OF} <part> ${IS} <very> ${LIFELESS}`, lifeless, {
    unheard: true,
    examples: ['two out of the three evaporator fans are dead'],
  }),
  rule(
    '[(i|we|so i)] (ohmed|ohm) (it|that|that one) [out] [<pause>] [(and|so)] [(it is|i got|got|it reads|reads|i get|it read|reading|at)] <amount>',
    ohmedIt,
    { unheard: true, examples: [] },
  ),
  rule(`${OF_THOSE} [of them] ${IS} <very> <state>`, ofThose, { unheard: true, examples: [] }),
  rule(`${ONE} <very> <state>`, ofThose, { apart: true, unheard: true, examples: [] }),
  rule('[(the|my)] (it|new one|new motor|replacement|new part) is [(all|finally)] in', itIsIn, {
    unheard: true,
    apart: true,
    examples: [],
  }),
  // What is screwed onto a valve goes on, and not in.
  rule(
    `[(and|so|ok)] [(i|we)] ([(the|two|both|my)] new caps (are|went) [(all|both)] in|(put|installed|threw|stuck) [(two|both)] new caps in) ${IN_EACH}`,
    newCaps,
    { unheard: true, apart: true, beforeTold: true, examples: ['new caps are in'] },
  ),
  rule(
    `<the> [(new|two new|three new|four new)] <part> (is|are) [(all|finally|both)] in ${IN_EACH}`,
    fitted,
    {
      unheard: true,
      examples: ['heaters are in'],
    },
  ),
  rule(
    '[and] ([(the|both|all|all the|these|those|all (two|three|four) [(of (the|them)|the)])] [new] (ones|one|two|[defrost] (heaters|elements))|they|both|these|those|all (of them|two|three|four)) [all] (read|reads|ohm|ohms|ohmed|measure|measures|check|checks|test|come in) [(out|at|out at|in at)] <amount> [(<pause> [and]|and) <amount:second> [(<pause> [and]|and) <amount:third>]] [(each|apiece|a piece)]',
    ohmsOfThose,
    { unheard: true, examples: [] },
  ),
  rule(
    '[(and|so|ok)] [now] (i have [got]|i got|i get|it is|they are|reading|we have [got]) <amount> [(<pause> [and]|and)] <amount:second> [(<pause> [and]|and)] <amount:third>',
    threeAlike,
    { unheard: true, apart: true, only: wasOhmed, examples: [] },
  ),
];
