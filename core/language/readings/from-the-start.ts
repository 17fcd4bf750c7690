import type { Tags } from '../../grammar/nodes.ts';
import { isSetting, type QuantityId } from '../../terms/quantities.ts';
import { startsClause, wordBefore } from '../words/clause-start.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, amountIn, withMore } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

function readAs(quantity: QuantityId | null, amount: Tags | null, frame: Frame): Reading | null {
  if (quantity === null || amount === null || isElectrical(quantity)) return null;
  return reading(quantity, amountIn(amount), frame);
}

const asFound = (found: Reading): Reading => withMore(found, { when: 'arrival' });

/** Several told behind the same "when I walked up", each of that time. */
const allAtFirst: Means = (tags, frame) => {
  if (!startsClause(frame)) return null;
  const said: readonly (readonly [string, string])[] = [
    ['first', 'one'],
    ['second', 'two'],
    ['third', 'three'],
    ['fourth', 'four'],
  ];
  const pairs = said.flatMap(([name, amount]) => {
    const named = tagsIn(tags[name]);
    return named === null
      ? []
      : [readAs(quantityId(named['quantity']), tagsIn(tags[amount]), frame)];
  });
  const readings = pairs.flatMap((found) => (found === null ? [] : [asFound(found)]));
  return readings.length === 0 || readings.length < pairs.length ? null : { readings };
};

/** "Before cleaning head was two ninety, after it's two fifteen": where it was found, and where it stands. */
const beforeAndAfter: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const before = readAs(quantity, tagsIn(tags['before']), frame);
  const after = readAs(quantity, tags, frame);
  if (before === null || after === null) return null;
  return { readings: [tags['atFirst'] === true ? asFound(before) : before, after] };
};

/** Both sides in one breath, the high one first; told of what was found, of then. */
const bothSides: Means = (tags, frame) => {
  const said = [tagsIn(tags['one']), tagsIn(tags['two'])];
  const [first, second] = said.map((each) => amountIn(each ?? {}).value ?? 0);
  if (first === undefined || second === undefined || first === second) return null;
  const [head, suction] = first > second ? said : [...said].reverse();
  const high = readAs('headPressure', head ?? null, frame);
  const low = readAs('suctionPressure', suction ?? null, frame);
  if (high === null || low === null || high.quantity !== 'headPressure') return null;
  const isAtFirst = AT_FIRST.test(frame.wordsOf(frame.span));
  return { readings: isAtFirst ? [asFound(high), asFound(low)] : [high, low] };
};
const AT_FIRST = /^(?:my |the |our )?(?:arrival|starting|incoming|opening|initial|before)\b/i;

/** Ours: what settles goes on by steps no larger than this share of it, or by so few. */
const LARGEST_STEP = 0.2;
const FEW = 6;
const isStep = (from: Amounted, to: Amounted): boolean => {
  if (from.value === null || to.value === null) return false;
  const step = Math.abs(from.value - to.value);
  return step <= FEW || step <= LARGEST_STEP * Math.abs(from.value);
};

const STEPS = ['one', 'two', 'three', 'four', 'five'] as const;
/** "Head one eighty five, one eighty eight, still coming up, one ninety two": one after the other of the same. */
const series: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const said = STEPS.flatMap((slot): readonly Tags[] => {
    const each = tagsIn(tags[slot]);
    return each === null ? [] : [each];
  });
  const amounts = said.map((each) => amountIn(each));
  const goesOn = amounts.every((each, at) => {
    const last = amounts[at - 1];
    return last === undefined || isStep(last, each);
  });
  const found = said.flatMap((each) => readAs(quantity, each, frame) ?? []);
  const isOfOne = found.every((each) => each.quantity === quantity && each.value !== undefined);
  if (quantity === null || isSetting(quantity)) return null;
  if (!frame.endsAtPause || !goesOn || !isOfOne || found.length < said.length) return null;
  const [first, second] = found;
  return isTestAt(frame) && quantity === 'testPressure' && first && second?.value !== undefined
    ? { readings: [first], unclaimed: [String(second.value)] }
    : { readings: found };
};

/** "Nitrogen to one fifty at one forty": by the clock, or by the air, which nobody said; so it is asked about. */
const isTestAt = (frame: Frame): boolean =>
  /^(?!.*\b(?:now|then)\b)[^,;.]*\bto [^,;.]*\bat [^,;.]*$/i.test(frame.wordsOf(frame.span));

const nothing: Meaning = {};
/** What a meter shows on three legs is told beside each other, and none of it settles: not looked through in all its readings. */
const settles = (frame: Frame): boolean =>
  frame.endsAtPause && !OF_A_METER.test(frame.wordsOf(frame.span));
const OF_A_METER = /\b(?:volt|amp|ohm|meg|watt|current|resist|capaci|micro|power|mains)/i;

/** "Waited ten": so many minutes, and nothing that is read. */
const waited: Means = (_tags, frame) => {
  // "Unplugged it waited five": behind what was done nobody writes a comma.
  const isSequel = startsClause(frame) || /^(?:it|them|then)$/i.test(wordBefore(frame));
  return frame.endsAtPause && isSequel ? nothing : null;
};

const DID =
  '(touched|did|changed|started|adjusted|cleaned|washed|messed with|turned|opened|got into|hooked into)';
const THING =
  '[(it|anything|a thing|on it|on anything|with it|anything else|the (coil|condenser|unit|evap|filter|valve))]';
const DOING =
  '(cleaning|washing|brushing|blowing (out|off)|adjusting|charging|adding (gas|anything)|starting)';
const WAS = '[(is|are|was|were|i had|i got|it was|we had|i have|it had)]';
/** Of one reading these are told by the rule for what was read on arrival. */
const HERE = `(when (i|we) [first] (got here|got there|arrived|came in|walked (in|up)|showed up|pulled up|got to it|hooked up|started|looked at it)|(on|at|upon) arrival)`;
const BEFORE = `(as found|(coming|walking) in|before (i|we) ${DID} ${THING}|before ${DOING} ${THING}|before the (wash|cleaning|clean up|charge)|[(my|the)] (arrival|starting|incoming|opening|initial|before) (temps|temperatures|numbers|readings|pressures)|to (start|begin) with|at first|first thing|right when i got here)`;
const AT_FIRST_SAID = `(${HERE}|${BEFORE}) ${WAS}`;
const AND = '[<pause>] [(and|with)] [(the|my)]';
const NOW =
  '(after [(that|it|cleaning|washing|the (wash|cleaning)|i (cleaned|washed) it|wards|i was done)] [(it is|i am|we are|is|it was|i have|i got)]|afterwards [it is]|now [(it is|i am|we are|is|she is)]|and now [(it is|i am|we are)]) [(at|down to|up to|down at|up at|only|running)]';
const MOVING =
  '[(it is|she is|and it is)] [(still|and|just|slowly)] (coming up|going up|climbing|rising|coming down|going down|dropping|falling|moving|creeping [up]|building|going)';
const THEN = `(<pause> [(now|then|and|and now)]|(then|now|and then|and now)) [${MOVING}] [<pause>] [(now|then|and|and now)] [(it is|she is|i am|we are|i got)] [(now|at|up to|down to|only)]`;
const ENDS = '[(now|there|and (holding|steady|climbing|dropping|rising|falling)|holding|steady)]';

/** What was read first and what after it: on arrival, before and after, and step by step. */
export const START_RULES: readonly Rule[] = [
  rule(`${BEFORE} ${WAS} [(the|my)] <quantity:first> <link> <amount:one>`, allAtFirst, {
    unheard: true,
    examples: ['before i touched anything superheat was thirty one'],
  }),
  rule(
    `${AT_FIRST_SAID} [(the|my)] <quantity:first> <link> <amount:one> ${AND} <quantity:second> <link> <amount:two> [${AND} <quantity:third> <link> <amount:three> [${AND} <quantity:fourth> <link> <amount:four>]]`,
    allAtFirst,
    {
      unheard: true,
      examples: ['when i walked up head was three forty box was fifty five'],
    },
  ),
  rule(
    `${AT_FIRST_SAID} [(the|my)] <quantity> <link> <amount:before> [<pause>] [(and|but)] ${NOW} <amount>`,
    beforeAndAfter,
    {
      tags: { atFirst: true },
      unheard: true,
      examples: ['before cleaning head was two ninety after it is two fifteen'],
    },
  ),
  rule(
    `[(it|she|i|we|that)] (started|began|came in|was) [(out|off)] (at|with|around) [a] <amount:before> [(on the|of)] <quantity> [<pause>] [(and|but)] ${NOW} <amount>`,
    beforeAndAfter,
    { unheard: true, examples: ['started out at three twenty head now we are at two thirty'] },
  ),
  rule(
    '[(my|the|our)] (final|ending|last|after|current|arrival|starting|opening|initial|incoming|before|running) (numbers|readings|pressures|gages) [(is|are|were|at)] <amount:one> (and|over|by) <amount:two>',
    bothSides,
    { unheard: true, examples: ['final numbers one eighty five and twenty one'] },
  ),
  rule(
    `[the] <quantity> <link> <amount:one> ${THEN} <amount:two> [${THEN} <amount:three> [${THEN} <amount:four> [${THEN} <amount:five>]]] ${ENDS}`,
    series,
    { only: settles, unheard: true, examples: [] },
  ),
  rule(
    '[(i|we|and|just|then)] (waited|gave it|let it (run|sit|settle|go)) [(about|like|another|maybe)] <number>',
    waited,
    { unheard: true, examples: ['waited ten'] },
  ),
];
