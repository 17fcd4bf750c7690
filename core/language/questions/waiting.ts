import type { Tags } from '../../grammar/nodes.ts';
import { QUANTITIES } from '../../terms/quantities.ts';
import { amountIn, isVacuumUnit, measured } from '../numbers/measure.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { ask, MY, plain } from './asking.ts';

const PLAIN = { low: null, high: null, hedged: false, overlimit: false } as const;

const eta: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null) return null;
  const { value, low, unit: said } = amountIn(tags);
  // A range is no single target: its numbers are asked about.
  if (low !== null) return null;
  if (value === null) return ask({ ask: 'eta', about: quantity });
  const found = measured(quantity, { ...PLAIN, value, unit: said }, frame.context.units);
  if (found?.unit == null) return null;
  return ask({ ask: 'eta', about: found.quantity, value: found.value ?? value, unit: found.unit });
};

/** What comes down to a number of degrees is the box, unless another temperature was just spoken of. */
const ofTheBox: Means = (tags, frame) => {
  const last = frame.context.lastQuantity;
  return eta(
    { ...tags, quantity: last === 'productTemp' || last === 'supplyAirTemp' ? last : 'boxTemp' },
    frame,
  );
};

/** A number alone, where nothing but a temperature was spoken of last and it can be a box's. */
function ofColdBox(tags: Tags, { context: { lastQuantity, units } }: Frame): boolean {
  const { value } = amountIn(tags);
  if (value === null || !canBeColdBox(value, units)) return false;
  return lastQuantity === null || QUANTITIES[lastQuantity].dimension === 'temperature';
}

/** How long to a number alone could be to anything, but that microns are the vacuum's. */
const toMicrons: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (isVacuumUnit(unit)) return eta({ ...tags, quantity: 'vacuum' }, frame);
  if (unit === null && ofColdBox(tags, frame)) return ofTheBox(tags, frame);
  return unit === 'degrees' || unit === 'degF' || unit === 'degC' ? ofTheBox(tags, frame) : null;
};

export const trend: Means = (tags) => ask({ ask: 'trend', about: quantityId(tags['quantity']) });

export const MOVING =
  'coming down|going down|dropping|falling|rising|climbing|going up|coming up|moving|trending [(up|down)]|holding|steady|changing|stable|settled|settling|leveled|leveled out|level|pulling down|creeping [(up|down)]|flat|come down|come up|gone (up|down)|on (its|it is) way [back] (up|down)|moved|stopped|drifting|changed|dropped';

/** When something will be reached, which way it goes, and how long the timer still runs. */
export const WAITING_QUESTIONS: readonly Rule[] = [
  rule(
    '[(so|and|ok)] (what is it|how long is it|how long is this) (going to|about to|got to) take to (get|pull) [(it|her|this|back|down|it back|it down)] [down] to <amount>',
    toMicrons,
    { unheard: true, examples: ['what is it going to take to get to minus ten'] },
  ),
  rule(
    `(when should ${MY} <quantity> (be|hit|reach|get to|be down to|get down to) [at]|how long (is|will|would|does) it [(going to|about to)] take [(us|me|you)] to (get|bring|pull|cool) ${MY} <quantity> [(back|down)] to) <amount>`,
    eta,
    {
      unheard: true,
      examples: ['how long is it going to take to get the box to thirty six'],
    },
  ),
  rule(
    `(is|will|would|can) ${MY} <quantity> [(ever|going to|ever going to)] (make it [(to|down to)]|get [(down|back|up)] to|hit|reach|be at|be down to|come [(down|back)] to|pull [down] to) <amount> [(by|before|in|within) <clause>]`,
    eta,
    { unheard: true, examples: ['is the box going to make it to thirty five by noon'] },
  ),
  rule(
    `(when|what time) (will|is) ${MY} <quantity> [going to] (be|hit|reach|get to|get down to|be down to|be at|come down to|make|pull down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['when will the box be at thirty six'] },
  ),
  rule(
    `how (long|much longer) (until|till|before|will it take|for) [(to get|for)] ${MY} <quantity> [(to|is|will|gets)] (is|be|hit|hits|reach|reaches|get to|gets to|at|down to|to|make|get down to|gets down to|comes down to) [(at|down to)] <amount>`,
    eta,
    { examples: ['how long until the box is at thirty six'] },
  ),
  rule(
    'how (long|much longer) (until|till|before) it (is|gets|hits|reaches|is down|gets down|comes down) [(at|to|down to)] <amount>',
    ofTheBox,
    { examples: ['how long until it is down to thirty six'] },
  ),
  rule(
    '(when [do] you (reckon|think|figure|suppose) (it|she|that|we) will|how long [do] you (reckon|think|figure|suppose) (till|until|before) (it|she|we) (will|is)) [to] (be|hit|reach|get [down] to|be down to|be at|come down to|pull down to|get to) [(at|down to)] <amount>',
    ofTheBox,
    { unheard: true, examples: ['when do you think it will hit thirty six'] },
  ),
  rule(
    '[(so|and)] (will|can|could) (it|she|this|we) [ever] (make|hit|reach|get [back] [down] to|be down to|be at|come [back] down to|pull down to) <amount> [((by|before|in|within) <clause>|tonight|today)]',
    toMicrons,
    { unheard: true, apart: true, examples: ['will it make zero by tonight'] },
  ),
  rule(
    '(when (will|is) (it|she|that|we) [going to]|how long (will it take|does it take|for it|(till|until|before) we (are|get))) [to] ([down] (at|to)|be|hit|reach|get [down] to|be down to|be at|come down to|make|pull down to) [(at|down to)] <amount>',
    ofTheBox,
    { examples: ['how long will it take to get to thirty six'] },
  ),
  rule(
    `(when will|how long (until|till|before|for)) ${MY} <quantity> (be|is|comes|come|gets|get|to be|to come|to get|makes|make) [(down|at|back)] [to] (temperature|temp|down|set point|cold|there)`,
    eta,
    { examples: ['when will the box be down to temperature'] },
  ),
  rule(
    `(when (do|will) (we|it)|how long (until|till|before) (we|it)) (reach|reaches|hit|hits|get to|gets to|make|makes|gets down to|get down to) [the] (set point|temp|temperature)`,
    ofTheBox,
    { examples: ['when do we reach set point'] },
  ),
  // Whatever is asked of a time, with a number to be reached in it, must not be taken for a reading.
  rule(
    '(how long|how much longer|(when|what time) (will|is|do|does|would)) <until> <the> <quantity> <until> <amount>',
    eta,
    {
      examples: ['when do you think the box will hit forty'],
    },
  ),
  rule(
    'how (long|much longer) (to|until|till|before) [(it|we|i|she) (is|are|am|gets|get|hits|hit|reach|reaches|see|pull|pulls)] [(at|to|down to|under|below|down below)] <amount>',
    toMicrons,
    {
      examples: ['how long to five hundred microns'],
    },
  ),
  heardRule(
    '(has it settled|~is it (done|settled|there) [(yet|now)]|~(can i|may i|should i|is it time (to|for)|is it ready (to|for)|ready to|when (can|should|do) i|am i ready to) [(take|read|get|do)] [(the|my)] after [(readings|numbers)] [(yet|now)])',
    () => ask({ ask: 'trend', about: null }),
    { examples: ['has it settled', 'can i take the after readings'] },
  ),
  rule(
    `(is|has|are|have) ${MY} <quantity> [(still|been|stopped|quit|started|starting to|begun)] (${MOVING}) [(yet|now|any|at all|out|down)]`,
    trend,
    { examples: ['is the box coming down'] },
  ),
  rule(
    `(what is the trend (on|of|for) ${MY} <quantity>|how is ${MY} <quantity> (trending|moving|doing|settling)|what is ${MY} <quantity> (doing|trend|up to)|did ${MY} <quantity> (hold|settle|come down|move)|which (way|direction) is ${MY} <quantity> (going|moving|headed|heading|trending|drifting))`,
    trend,
    { examples: ['which way is suction going'] },
  ),
  rule(
    `((is|has) it [(still|been|stopped|quit|started)] (${MOVING}|pulling down) [(yet|now|any|at all|out|down)]|did it (hold|settle|settle out|move)|have (they|things|pressures|the pressures) (settled|leveled out) [(yet|out|down)]|are (they|things|pressures|the pressures) (steady|settled|stable|holding) [yet]|which way (is it|are (we|they|things)) going|what is the trend|how (is it|are (we|they|things)) trending)`,
    () => ask({ ask: 'trend', about: null }),
    { examples: ['is it coming down'] },
  ),
  heardRule(
    '(how long have i been here|~how long [(was|have|am|were)] (i|we) [been] (here|out here|in here|at (it|this|this one)|on (it|this|this (one|job|call|unit|visit)|the (clock|job)|site)) [(so far|now|today)]|~how (much|many) (time|hours|minutes) (have|has|did) (i|we|it) (got|spent|spend|put|been|take|taken|have) [(in|on|here|into)] [(this|it|here|this (one|job|call|unit))] [so far]|~(what time|when) did (i|we) (get here|start|arrive|show up|begin|get started|clock in|get on site|get to (this|it))|~what is my time [(on this|here|so far|on this one)])',
    plain('timeHere'),
    { examples: ['how long have i been here', 'what time did i get here'] },
  ),
  heardRule(
    'how (long|~much [more] time|~many [more] minutes|~much longer) [~is] (left|~to go|~remaining) [~(on|for) [the] <timed>] [~timer]',
    plain('timeLeft'),
    {
      examples: ['how long left', 'how much time is left on the defrost'],
    },
  ),
  rule(
    '(how (long|much [more] time|much longer|many [more] minutes) (on|for) [(the|my|that|this)] (<timed>|timer|clock)|(what is|where is) [(the|my)] timer [at]|how long (has|have) (it|i|we) got|is [(the|my)] timer (up|done|over|finished|running|still (going|running)) [yet]|is (the|my) time up [yet]|how long (has|does) (the|my) timer (got|have) [left]|(time|minutes) remaining)',
    plain('timeLeft'),
    { examples: ['how long on the timer'] },
  ),
  rule(
    '[how] long (has|have|is) (it|we|i|<the> (<timed>|machine)) been ((on|in|under|pulling|holding) [(a|the)] <timed:doing>|(on|under|pulling|running|going|holding|defrosting|recovering|sitting|pumping) [(it|down)])',
    plain('timeLeft'),
    { examples: ['how long has it been pulling'] },
  ),
  rule(
    '(how (long|much time|much longer|many minutes)|how much) [(do|have)] (i|we) [(got|have)] [got] left (on|for) (the|that|this|my) [(<timed>|timer|clock)]',
    plain('timeLeft'),
    { unheard: true, examples: ['how long i got left on that vacuum'] },
  ),
  rule('how long (has|does) [the] <timed> (got|have) [left]', plain('timeLeft'), {
    examples: ['how long has the vacuum got'],
  }),
  rule(
    '(how (much time|long|many minutes) (is|are|do i have|have i got) left [on [(the|my)] timer]|how much time left|how much longer|time left|how long is left|how is the timer|what is left on the (timer|clock)|how much time on the timer|where is the timer|how many minutes left)',
    plain('timeLeft'),
    { examples: ['how much longer'] },
  ),
];
