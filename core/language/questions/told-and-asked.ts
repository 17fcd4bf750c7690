import type { Tags } from '../../grammar/nodes.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { asReading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { ask, MY, plain } from './asking.ts';

function told(tags: Tags, frame: Frame): Meaning | null {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity) || isCutShort(frame)
    ? null
    : asReading()(tags, frame);
}

/** "How come suction's only at four": what it stands at is told with the question. */
const whyOf: Means = (tags, frame) => {
  const found = told(tags, frame);
  return found === null ? null : { ...found, ...plain('causes')(tags, frame) };
};

/** "Is eighteen degrees superheat too much" */
const judgedOf: Means = (tags, frame) => {
  const found = told(tags, frame);
  const about = quantityId(tags['quantity']);
  return found === null ? null : { ...found, ...ask({ ask: 'compare', about }) };
};

const JUDGED =
  '[(a little|a bit|kind of|way|really)] (too (much|high|low|little)|high|low|ok|normal|good|fine|bad|a lot|all right|about right|right|enough)';
const FOR = '[(for|on|with|in) (a|an|this|that|the|my) [(cap tube|txv)] [<equipment>]]';

/** A value, and the question about it, in one breath. */
export const TOLD_AND_ASKED: readonly Rule[] = [
  rule(
    `(why is|why are|how come|any idea why|what makes) ${MY} <quantity> (<link>|<loose>) <amount>`,
    whyOf,
    { examples: ['how come suction is only at four'] },
  ),
  rule(`is [a] <amount> [of] <quantity> ${JUDGED} ${FOR}`, judgedOf, {
    examples: ['is eighteen degrees superheat too much for a freezer'],
  }),
  rule(
    `(should i|do i need to|should we) (worry|be (worried|concerned)|care) (about|with|over) [(a|an|only)] <amount> [of] <quantity> ${FOR}`,
    judgedOf,
    {
      unheard: true,
      examples: ['should i worry over twelve pounds of suction'],
    },
  ),
  rule(
    `(does|do|would) [(a|an)] <amount> [of] <quantity> (sound|look|seem|be) ${JUDGED} [to you] ${FOR}`,
    judgedOf,
    {
      unheard: true,
      examples: ['does eighteen superheat sound high to you'],
    },
  ),
  rule(`is ${MY} <quantity> (of|at) <amount> ${JUDGED} ${FOR}`, judgedOf, {
    examples: ['is superheat of eighteen too high'],
  }),
];
