import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { reading } from './reading-means.ts';

/** "Suction's bouncing around thirty eight down to twenty six and back": the two that it goes between. */
const swings: Means = (tags, frame) => swingOf(quantityId(tags['quantity']), tags, frame);

/** "Suction's fourteen, no wait, it's going between eleven and nineteen": of what was read in the same breath. */
const itSwings: Means = (tags, frame) => {
  const means = (quantity: QuantityId): Meaning | null => swingOf(quantity, tags, frame);
  return { ofThat: { means, otherwise: { remarks: [frame.wordsOf(frame.span)] } } };
};

function swingOf(quantity: QuantityId | null, tags: Tags, frame: Frame): Meaning | null {
  const [one, other] = [tagsIn(tags['one']), tagsIn(tags['other'])].map(
    (said) => said && amountIn(said),
  );
  if (quantity === null || isElectrical(quantity) || one?.value == null || other?.value == null)
    return null;
  const [low, high] = [one.value, other.value].toSorted((a, b) => a - b);
  if (low === undefined || high === undefined || low === high) return null;
  const unit = one.unit ?? other.unit;
  const found = reading(quantity, { ...one, unit, value: null, low, high, hedged: false }, frame);
  return found === null ? null : { readings: [found] };
}
const SWINGS =
  '([(is|are|was|keeps)] [(all over|just|still)] (bouncing|swinging|jumping|hunting|wandering|bounces|swings|jumps|hunts|wanders) [(around|back and forth|up and down)] [(a (little|bit|lot)|some)]|[(is|was)] [(just|still)] all over [the (place|map|shop)]|[(is|was)] [(just|still)] going back and forth) [(maybe|about|like|anywhere)] [(from|at|around)] [about]';
const TO = '(down to|up to|to)';
const IT =
  '[it is [just] (hunting|swinging|bouncing|moving)] [<pause>] [(it|she|and it|and|but|but it|[and] (the|my) needle)]';
const AND_BACK =
  '[and [right] back [(up|down)] [again]] [every (minute|couple minutes|few minutes|couple of minutes|few seconds|so often|thirty seconds)]';

/** What goes back and forth, told by where it turns. */
export const SWINGING_RULES: readonly Rule[] = [
  rule(
    `[the] <quantity> ${SWINGS} [between] <amount:one> [all the way] ${TO} <amount:other> ${AND_BACK}`,
    swings,
    { unheard: true, examples: ['suction is bouncing around thirty eight down to twenty six'] },
  ),
];

/** The same of what was told in that breath, behind the rules that ask by name. */
export const IT_SWINGS_RULES: readonly Rule[] = [
  rule(
    `${IT} (${SWINGS} <number:one> [all the way] ${TO}|(${SWINGS}|[(is|was|keeps)] [just] going) between <number:one> and) <number:other> [(degrees|psi|pounds)] ${AND_BACK}`,
    itSwings,
    { unheard: true, examples: ['it is hunting swings from four up to eighteen'] },
  ),
];
