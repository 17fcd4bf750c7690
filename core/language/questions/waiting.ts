import { amountIn, unitFor } from '../measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { ask, MY, plain } from './asking.ts';

const eta: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null) return null;
  const { value, low, unit: said } = amountIn(tags);
  // A range is no single target: its numbers are asked about.
  if (low !== null) return null;
  if (value === null) return ask({ ask: 'eta', about: quantity });
  const unit = unitFor(said ?? 'degrees', 'temperature', frame.context.units);
  return unit === null ? null : ask({ ask: 'eta', about: quantity, value, unit });
};

const trend: Means = (tags) => ask({ ask: 'trend', about: quantityId(tags['quantity']) });

/** When something will be reached, which way it goes, and how long the timer still runs. */
export const WAITING_QUESTIONS: readonly Rule[] = [
  rule(
    `when will ${MY} <quantity> (be|hit|reach|get to|get down to|be down to|be at|come down to|make|pull down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['when will the box be at thirty six'] },
  ),
  rule(
    `how long (until|till|before|will it take|for) [(to get|for)] ${MY} <quantity> [(to|is|will|gets)] (be|hit|hits|reach|reaches|get to|gets to|at|down to|to|make|get down to|gets down to|comes down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['how long until the box is at thirty six'] },
  ),
  rule(
    'how long (until|till|before) it (is|gets|hits|reaches|is down|gets down|comes down) [(at|to|down to)] <amount>',
    (tags, frame) => eta({ ...tags, quantity: frame.context.lastQuantity ?? 'boxTemp' }, frame),
    { examples: ['how long until it is down to thirty six'] },
  ),
  rule(
    `(when will|how long (until|till|before|for)) ${MY} <quantity> (be|is|comes|come|gets|get|to be|to come|to get|makes|make) [(down|at|back)] [to] (temperature|temp|down|set point|cold|there)`,
    eta,
    { examples: ['when will the box be down to temperature'] },
  ),
  rule(
    `is ${MY} <quantity> [still] (coming down|going down|dropping|falling|rising|climbing|going up|coming up|moving|trending [(up|down)]|holding|steady|changing|stable)`,
    trend,
    { examples: ['is the box coming down'] },
  ),
  rule(
    `(how is [the] <quantity> (trending|moving)|what is [the] <quantity> (doing|trend)|which way is ${MY} <quantity> (going|moving|headed|trending))`,
    trend,
    { examples: ['which way is suction going'] },
  ),
  rule(
    '(is it (coming down|going down|dropping|falling|rising|climbing|going up|trending [(up|down)]|holding|steady|pulling down)|which way is it going|what is the trend|how is it trending)',
    () => ask({ ask: 'trend', about: null }),
    { examples: ['is it coming down'] },
  ),
  rule(
    '(how (much time|long|many minutes) (is|are|do i have|have i got) left [on [(the|my)] timer]|how much time left|how much longer|time left|how long is left|how is the timer|what is left on the timer|how much time on the timer|where is the timer|how many minutes left)',
    plain('timeLeft'),
    { examples: ['how much time is left'] },
  ),
];
