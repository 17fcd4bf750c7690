import { amountIn } from '../numbers/measure.ts';
import { remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { startsClause } from '../words/clause-start.ts';
import { reading } from './reading-means.ts';

/** "Suction's bouncing around thirty eight down to twenty six and back": the two that it goes between. */
const swings: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
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
};
const SWINGS =
  '([(is|was|keeps)] [(all over|just|still)] (bouncing|swinging|jumping|hunting|wandering|bounces|swings|jumps|hunts|wanders)) [(around|back and forth|up and down)] [(from|between|at|around|about)]';
const TO = '(down to|up to|to)';
const AND_BACK =
  '[and [right] back [(up|down)] [again]] [every (minute|couple minutes|few minutes|couple of minutes|few seconds|so often|thirty seconds)]';

/** What goes back and forth, told by where it turns. */
export const SWINGING_RULES: readonly Rule[] = [
  rule(
    `[the] <quantity> ${SWINGS} <amount:one> [all the way] ${TO} <amount:other> ${AND_BACK}`,
    swings,
    { unheard: true, examples: ['suction is bouncing around thirty eight down to twenty six'] },
  ),
  rule(
    `[it is [just] (hunting|swinging|bouncing)] [<pause>] [(it|and it|and)] ${SWINGS} <amount:one> [all the way] ${TO} <amount:other> ${AND_BACK}`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['it is hunting swings from four up to eighteen'],
    },
  ),
];
