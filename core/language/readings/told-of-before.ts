import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { leftToAsk, reading } from './reading-means.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import type { QuantityId } from '../../terms/quantities.ts';

/** What stood there some time ago is not what stands there now, nor what was found on arrival: kept as it was said. */
const remark: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const remarks = [frame.wordsOf(frame.span)];
  return quantity === null ? { remarks } : { remarks, speaksOf: quantity };
};

/** "Head was two ninety five before I cleaned it": what was read before any work is what was found. */
const beforeOurs: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found =
    quantity === null || isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
  return found === null ? null : { readings: [withMore(found, { when: 'arrival' })] };
};
const OUR_WORK =
  '((i|we) [(even|ever)] (cleaned|washed|brushed|hosed|touched|did|changed|replaced|swapped|adjusted|charged|added|fixed|repaired|opened|pulled|thawed|defrosted|started|reset|vacuumed|blew) <clause>|(cleaning|washing|brushing|charging|any work|the (cleaning|wash|work|repair|charge)) [(it|the (coil|condenser))])';

/** Behind a reading it is of that; alone, "it was ninety five yesterday" may be the weather. */
const remarkOfIt: Means = (tags, frame) => {
  const told = remark(tags, frame) ?? {};
  const isOfAnotherDay = /\b(?:yesterday|last|other day|days|weeks|nights)\b/i.test(
    frame.wordsOf(frame.span),
  );
  return { ofThat: { means: () => told, otherwise: isOfAnotherDay ? {} : told } };
};

/** What is told so right behind a reading is what that one was. */
const ofLastRead: Means = (tags, frame) => {
  const told = remark(tags, frame) ?? {};
  return { ofThat: { means: () => told, otherwise: leftToAsk(tags) } };
};

const BEFORE_THAT = '[before (i|we) <clause>]';
const AGO = `((<duration:ago>|<count:ago> (days|weeks|nights)|a [little] (while|bit)|a day) ago ${BEFORE_THAT}|earlier [(today|on|this morning)]|(this|in the) morning|yesterday|last night|last week|the other day|before (i|we) <clause>|when (i|we) left [<clause>])`;
const SOON_AGO = '(<duration:ago> ago|earlier [today]|this morning|yesterday|last night|before)';
const WAS = '(was|were|had been|used to be|was sitting|was running|was reading|started)';

/** "It was eighty five in here this morning, ninety four now": of where one stands, or of what was read before. */
const thenNow: Means = (tags, frame) => {
  const remarks = [frame.wordsOf(frame.span)];
  const at = (quantity: QuantityId): Meaning | null => {
    const found = isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
    return found === null ? null : { readings: [found], remarks };
  };
  const here = tags['room'] === true ? at('ambientTemp') : null;
  return here ?? { ofThat: { means: at, otherwise: leftToAsk(tags) } };
};

/** Numbers of the past, told beside the ones of now. */
export const BEFORE_RULES: readonly Rule[] = [
  rule(`[the] <quantity> ${WAS} [(at|up at|down at)] <amount> before ${OUR_WORK}`, beforeOurs, {
    unheard: true,
    examples: ['head was two ninety five before i cleaned it'],
  }),
  rule(
    `[(and|so|ok)] [the] <quantity> before [(this|that|it|i started|any of this|i touched it)] (was|were) [at] <amount>`,
    beforeOurs,
    { unheard: true, apart: true, examples: ['suction before was twelve'] },
  ),
  rule(
    `[the] <quantity> [(at|across) <the> <place>] ${WAS} [(at|up at|down at)] <amount> ${AGO}`,
    remark,
    {
      examples: ['head was two forty an hour ago'],
    },
  ),
  rule(`[(and|but)] [(it|she|they)] ${WAS} [(at|up at|down at)] <amount> ${AGO}`, remarkOfIt, {
    examples: ['it was two forty an hour ago'],
  }),
  rule(
    `[(and|but)] [(it|she|they|that)] (was|were|used to be|started at) [(at|up at|down at)] <amount> (before|to start [with]|coming in)`,
    remarkOfIt,
    { unheard: true, only: (frame) => frame.endsAtPause, examples: [] },
  ),
  // "Box thirty nine now it was forty six": behind a reading of the same.
  rule('[(and|but)] [(it|she|that)] (was|used to be) [(at|up at|down at)] <amount>', ofLastRead, {
    unheard: true,
    only: (frame) => frame.endsAtPause && frame.span.from > 0,
    examples: [],
  }),
  ...[true, false].map((room) =>
    rule(
      `[(it|she)] ${WAS} [(at|up at|down at)] <amount:before> ${room ? '(in here|in the kitchen|in this kitchen|back here) ' : ''}${SOON_AGO} [(and|but)] [it is] [(at|up to|down to)] <amount> now`,
      thenNow,
      {
        tags: { room },
        examples: room ? ['it was eighty five in here this morning ninety four now'] : [],
      },
    ),
  ),
];
