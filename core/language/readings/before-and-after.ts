import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { HERE, thenAndNow } from './loosely-said.ts';
import { amountIn } from '../numbers/measure.ts';
import { leftToAsk, reading } from './reading-means.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';

/** "Two eighty before, two ten after": of what was read last, both left to ask where nothing was. */
const ofLast: Means = (tags, frame) => {
  const before = tagsIn(tags['before']) ?? {};
  const means = (quantity: QuantityId): Meaning | null => {
    const [first, second] = [before, tags].map((each) =>
      isElectrical(quantity) ? null : reading(quantity, amountIn(each), frame),
    );
    return first == null || second == null ? null : { readings: [first, second] };
  };
  const { lastQuantity } = frame.context;
  const unclaimed = [before, tags].flatMap((each) => leftToAsk(each).unclaimed ?? []);
  const otherwise = lastQuantity === null ? null : means(lastQuantity);
  return { ofThat: { means, otherwise: otherwise ?? { unclaimed } } };
};

/** "Box started at fifty five an hour ago, forty three now": only the second stands there; both are kept as they were told. */
const agoAndNow: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const found =
    quantity === null || isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
  return found === null ? null : { readings: [found], remarks: [frame.wordsOf(frame.span)] };
};

const WORKED =
  '(the [(coil|condenser)] (clean|cleaning|wash|washing|brushing|charge|repair|work|job|defrost)|[just] (cleaning|washing|brushing|charging|adjusting) [(it|the (coil|condenser|valve))]|(i|we) (cleaned|washed|brushed|charged|started|touched|did|adjusted|replaced) [(it|anything|the (coil|condenser|valve|fan|charge))]|that)';
const IS = '[(is|was|were|started at|at|of|had been)] [(at|up at|down at)]';
const THEN =
  '[(and|then|but|now)] [(it is|is|it was|was|dropped to|came (down|up) to)] [(at|down to|up to)]';
const ON = '(on|for|at) <the> <quantity>';

/** Two values of one thing, told by what was done between them: both were read, the old one first. */
export const BEFORE_AND_AFTER_RULES: readonly Rule[] = [
  rule(
    `[the] <quantity> ${HERE} (<link>|<loose>) <amount> [now] (<pause> [(it|that|she|and|and it|but it)]|and it|but it) (was|used to be|had been|(down|up) from|from) [(at|up at|down at|running|up to)] <amount:before> [(before [that]|earlier|to start [with]|at first|originally)]`,
    thenAndNow,
    { unheard: true, examples: ['head is two ten now and it was two eighty'] },
  ),
  rule(
    `[the] <quantity> ${IS} <amount:before> before [${WORKED}] [<pause>] ${THEN} <amount> (after|now|afterwards|afterward) [${WORKED}]`,
    thenAndNow,
    { unheard: true, examples: ['suction twenty before and thirty after'] },
  ),
  rule(
    `[the] <quantity> (was|were|started [(out|off)]) [(at|up at|down at)] <amount:before> <duration:ago> ago [<pause>] ${THEN} <amount> now`,
    agoAndNow,
    { unheard: true, examples: [] },
  ),
  rule(
    `[the] <quantity> before ${IS} <amount:before> [<pause>] [and] after ${IS} <amount>`,
    thenAndNow,
    { unheard: true, examples: ['head before two eighty after two ten'] },
  ),
  rule(`before ${IS} <amount:before> [<pause>] [and] after ${IS} <amount> ${ON}`, thenAndNow, {
    unheard: true,
    examples: ['before two eighty after two ten on the head'],
  }),
  rule(
    `${IS} <amount:before> before [${WORKED}] [<pause>] ${THEN} <amount> (after|now|afterwards|afterward) [${WORKED}] ${ON}`,
    thenAndNow,
    { unheard: true, examples: ['two eighty before two ten after on the head'] },
  ),
  rule(
    `[it] ${IS} <amount:before> before [${WORKED}] [<pause>] ${THEN} <amount> (after|now|afterwards|afterward) [${WORKED}]`,
    ofLast,
    { unheard: true, examples: ['it was two eighty before two ten after'] },
  ),
];
