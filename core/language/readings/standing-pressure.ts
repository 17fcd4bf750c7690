import type { Tags } from '../../grammar/nodes.ts';
import { amountIn } from '../numbers/measure.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import { ask } from '../questions/asking.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { fixed, reading } from './reading-means.ts';

/** Of what was put under nitrogen it is the test's; else of the condenser at rest. */
const standing: Means = (tags, frame) => {
  // "On both sides" tells of two.
  if (wordBehind(frame) === 'on') return null;
  return frame.context.holding?.quantity === 'testPressure'
    ? fixed('testPressure')(tags, frame)
    : fixed('headPressure', { event: 'standing' })(tags, frame);
};

/** "Coil's at twenty seven, air is twenty seven in and out": a condenser's, where no evaporator is so warm. */
const alike: Means = (tags, frame) => {
  const air = reading('ambientTemp', amountIn(tags), frame);
  const isAlike = tags['coil'] === undefined || isSame(tags, frame);
  if (air?.value === undefined || air.unit === null || !isAlike) return null;
  const isNamed = /\bcond/i.test(frame.wordsOf(frame.span));
  return isNamed || !canBeColdBox(air.value, air.unit === 'degC' ? 'si' : 'us')
    ? { readings: [air] }
    : { unclaimed: [String(air.value)] };
};

const isSame = (tags: Tags, frame: Frame): boolean =>
  reading('ambientTemp', amountIn(tagsIn(tags['coil']) ?? {}), frame)?.value ===
  reading('ambientTemp', amountIn(tags), frame)?.value;

/** "Standing at ninety two", of a head that was read and of no vacuum. */
const readsHead = (frame: Frame): boolean =>
  startsClause(frame) &&
  frame.context.headPressure !== null &&
  frame.context.lastQuantity !== 'vacuum';

const asked = (): Meaning => ask({ ask: 'standing' });

const STILL = '(standing|static|resting|at rest|idle|off cycle)';
const PRESSURE = '(pressure|head|head pressure|high side|high side pressure)';
const BOTH_WAYS =
  '(in and out|on and off|on and off [of] it|both (ways|sides)|entering and leaving|going in and coming out|in and coming out)';

/** Pressure of a condenser at rest, and the air that it is held to. */
export const STANDING_RULES: readonly Rule[] = [
  rule(`[the] [condenser] ${STILL} ${PRESSURE} [now] <link> <amount>`, standing, {
    only: startsClause,
    unheard: true,
    examples: ['standing pressure is eight point four bar'],
  }),
  rule(
    `[the] ${PRESSURE} [(is|it is)] (standing|resting) [(still|steady|now)] at <amount>`,
    standing,
    {
      only: startsClause,
      unheard: true,
      examples: ['head pressure is standing at one forty'],
    },
  ),
  rule(
    '[(it|she|system|the system|everything)] [is] (standing|resting) [(still|steady|now)] [at] <amount>',
    standing,
    { unheard: true, only: readsHead, examples: [] },
  ),
  rule(
    `[the] [condenser] coil [(is|is at|at)] <amount:coil> [<pause>] [(and|with)] [the] air [(is|is at|at)] [both] <amount> ${BOTH_WAYS}`,
    alike,
    { unheard: true, examples: ['coil is at eighty air is eighty in and out'] },
  ),
  rule(`[and] [the] [condenser] air [(is|is at|at)] [both] <amount> ${BOTH_WAYS}`, alike, {
    unheard: true,
    examples: ['air is eighty in and out'],
  }),
  rule(
    '[and] [the] [condenser] air in and [(the|condenser)] air out [(are|is)] [both] [(the same|alike)] [at] <amount>',
    alike,
    { unheard: true, examples: ['air in and air out are both eighty'] },
  ),
  rule(
    `[(so|and|ok)] (what should (it|she|this|that|the (pressure|head|condenser)) be (standing|sitting|resting) at|what should [the] ${STILL} ${PRESSURE} be|what should (it|the (head|pressure|condenser)) (stand|rest|sit) at [(with the compressor off|at rest)]|what is [the] ${STILL} ${PRESSURE} (supposed to|meant to) be|what pressure should it (stand|be standing) at)`,
    asked,
    { unheard: true, examples: ['what should it be standing at'] },
  ),
];
