import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn } from '../numbers/measure.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { quantityId, tagsIn } from '../slots.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { amend, amendNot } from './changes.ts';

/** Whether the value that is denied is what was kept: then it is changed, else the right one is told for the first time. */
function isKept(quantity: QuantityId, wrong: number | null, { context }: Frame): boolean {
  if (quantity === 'headPressure' || quantity === 'suctionPressure')
    return context[quantity]?.value === wrong;
  return context.lastQuantity === quantity;
}

/** "Head's not two fifty, it's two fifteen": the number that is denied is told for nothing else. */
const putRight: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const [right, wrong] = [tagsIn(tags['right']), tagsIn(tags['wrong'])];
  if (quantity === null || right === null || wrong === null || isElectrical(quantity)) return null;
  if (isKept(quantity, amountIn(wrong).value, frame)) return amend({ ...right, quantity }, frame);
  const found = reading(quantity, amountIn(right), frame);
  return found === null ? null : { readings: [found] };
};

const NAMED = '[(the|my|that|your)] <quantity> [(reading|number)]';
const IT_IS =
  '[(but|and|no|now)] (it is|it was|that is|it is reading|it reads|it should be|should be|should have been|it should have been|make it|make that|i meant|i mean|more like|try) [(actually|really|more like|right at|at|closer to|supposed to be)]';

/** A value that was told wrong and is put right in one breath, by what it is of. */
export const PUT_RIGHT_RULES: readonly Rule[] = [
  rule(
    `[(no|wait|sorry|oops|shoot|ok|and|so)] (i|we) [(just|think i|must have|may have)] (said|told you|told it|gave you|called out|called|read you|read off|put down|wrote [down]) [that] ${NAMED} <link> <amount:wrong> [<pause>] ${IT_IS} <amount:right>`,
    putRight,
    { unheard: true, examples: ['i said liquid line ninety but it is actually ninety four'] },
  ),
  rule(
    `${NAMED} (is|was) not [(at|really|actually)] <amount:wrong> [<pause>] ${IT_IS} <amount:right>`,
    putRight,
    { unheard: true, examples: ['head is not two fifty it is two fifteen'] },
  ),
  rule(
    `${NAMED} (should (have been|have read|have said|read)|(is|was) (really|actually)|(was supposed|ought) to (be|have been)) <amount:right> [<pause>] [and] (not|instead of|rather than) <amount:wrong>`,
    amendNot,
    { unheard: true, examples: ['suction should have been twenty two not twelve'] },
  ),
];
