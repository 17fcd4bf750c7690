import { startsClause, wordBehind } from '../words/clause-start.ts';
import { isWholeMetering } from '../findings/part-lists.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { meteringId } from '../slots.ts';

const metering: Means = (tags, frame) => {
  const value = meteringId(tags['metering']);
  return value === null
    ? null
    : { facts: [{ fact: 'metering', value, words: frame.wordsOf(frame.span) }] };
};

/** "So that's a cap tube, I'm guessing, yeah, it's a cap tube": told twice it has to be the same. */
const meteringSeen: Means = (tags, frame) => {
  const again = meteringId(tags['again']);
  return again === null || again === meteringId(tags['metering']) ? metering(tags, frame) : null;
};

/** "TXV on the case and three evap fans": more of what there is, and nothing of how it does. */
const GOES_ON = /^(?:and|with)$/i;

const IT = '(it|this [(one|unit|box)]|here|there)';

/** What meters the refrigerant into the coil. */
export const METERING_RULES: readonly Rule[] = [
  heardRule(
    '(with a|on a|it is a|~~(it is got|it has got|it has|there is|with|on) a (little|small)|~it is got (a|an)|~it has got (a|an)|~with an|~on an|~it is an|~has a|~has an|~it has a|~it has an|~and a|~with|~on|~uses a|~it is on a|~metering is a|~metering device is a|~metered by a) <metering>',
    metering,
    {
      examples: ['it is on a cap tube', 'with a txv'],
    },
  ),
  rule(
    '<the> (expansion|metering) (valve|device) is [(a|an)] electronic [(one|valve|type|expansion valve)]',
    metering,
    {
      unheard: true,
      tags: { metering: 'eev' },
      examples: ['the expansion valve is an electronic one'],
    },
  ),
  rule(
    '[(it has [got]|there is|there are|with|it is|has|has got)] (one|two|three|four) (evaporators|evaporator|evaps|evap|coils|unit coolers|unit cooler) (with|on|and|both (with|on|have)|each with) [a] <metering> [[<pause>] (and|with|plus) [a] [(pump down|liquid line)] (solenoid|solenoids) [(valve|valves)]]',
    (tags, frame) => ({ ...metering(tags, frame), remarks: [frame.wordsOf(frame.span)] }),
    { unheard: true, examples: ['two evaporators with txvs and a pump down solenoid'] },
  ),
  rule('[the] metering [device] is [just] [(a|an)] <metering>', metering, {
    examples: ['the metering device is just an orifice'],
  }),
  rule('[a] <metering> [(system|metering|metered|unit|~job|~setup|~machine|~box)]', metering, {
    apart: true,
    beforeTold: true,
    only: isWholeMetering,
    examples: ['txv', 'cap tube system'],
  }),
  rule(
    `[(so|yeah|ok|well|and)] (that is|it is|this is|looks like|must be|has to be) (a|an) <metering> (i am guessing|to me|i would say|by the looks of it) [[<pause>] [(yeah|yep|yes)] (it is|that is) (a|an) <metering:again>]`,
    meteringSeen,
    { unheard: true, alone: true, examples: ['so that is a cap tube i am guessing'] },
  ),
  rule('so [(it is|that is|that makes it|that would be)] [(a|an)] <metering>', metering, {
    unheard: true,
    only: ({ endsAtPause }) => endsAtPause,
    examples: ['so that is a cap tube'],
  }),
  rule(
    '[(there is|it is got|it has got)] [(a|an)] <metering> (on|at|in) (the (case|box|coil|evaporator|unit cooler)|this [(one|case|box|unit)]|it|here|there)',
    (tags, frame) =>
      frame.endsAtPause || GOES_ON.test(wordBehind(frame)) ? metering(tags, frame) : null,
    { unheard: true, only: startsClause, examples: ['txv on the case'] },
  ),
  rule('<pause> [a] <metering>', metering, { only: isWholeMetering }),
  rule('(and|with|there is|it has [got]|has) no <metering>', () => ({}), { unheard: true }),
  rule(
    `[(it is|this is|that is|just|and|(there is|it is got|it has got) [just])] [(a|an)] <metering> [(system|unit|job|setup|metering|metered)] [(on|in) ${IT}] [<pause>] [(and|so|with|there is)] (no (valve|txv|expansion valve)|not a (valve|txv)) [(on|in|to) ${IT}] [(or (anything|nothing|such)|nothing (fancy|else)|at all)]`,
    metering,
    { unheard: true, only: startsClause, examples: ['cap tube system no valve on it'] },
  ),
  rule(
    '(i|we|it|this [one]|~~(this|that) (unit|box|evaporator|coil|case|system|machine)|~~that one) (have [got]|has [got]|~~is [got]|~~uses|~~runs) (a|an) <metering> [(on|in) (it|this [one]|here)]',
    (tags, frame) => (frame.endsAtPause ? metering(tags, frame) : null),
    { examples: ['i have got an expansion valve on this one'] },
  ),
  // Pointed at, not told what it is.
  rule(
    '[(i (think|bet|guess|believe|figure)|maybe|probably|looks like|pretty sure)] (it is|that is|it was|it has to be|it must be|could be|might be) the <metering>',
    () => ({}),
    { examples: ["i think it's the txv"] },
  ),
];
