import type { Frame, Rule } from '../rule.ts';
import { heardRule, rule } from '../rule.ts';
import { always } from './done-to-part.ts';

const I = '<byMe>';

const PULLED = '(pulled|out|locked|locked out|tagged|tagged out|locked off|thrown)';
/** "Found the disconnect off and tagged": somebody else's. */
const byUs = (frame: Frame): boolean =>
  !/\b(?:found|was|were|had|left|somebody|someone|they|he|she|already)\b/i.test(
    frame.wordsOf({ from: Math.max(0, frame.span.from - 4), to: frame.span.to }),
  );
/** What only somebody who works on it does: nothing was found so. */
const LOCKED =
  '(locked|tagged|locked out|tagged out|locked off|locked [out] and tagged [out]|tagged and locked|my lock is on [it]|lock is on [it]|lock on|tag on)';
const POWER_RULES: readonly Rule[] = [
  rule(
    `${I} (killed|cut|shut off|turned off|shut down|pulled) (the|all the) power`,
    always('isolate', 'disconnect'),
    { examples: ['killed the power'] },
  ),
  rule(
    `(the|all the) power (is|is all) (off|locked out|killed|cut)`,
    always('isolate', 'disconnect'),
  ),
  heardRule('power is (off|~locked out)', always('isolate', 'disconnect'), {
    examples: ['power is off'],
  }),
  rule(
    `${I} (locked [it] out|~~tagged it [out]|locked and tagged [it]|locked [it] out and tagged [it] [out]|have it locked out)`,
    always('isolate', 'disconnect'),
    { examples: ['i locked it out', 'locked out and tagged'], apart: true },
  ),
  rule(
    `[(${I}|it is|unit is|everything is|i have (it|everything)|the unit is)] [(electrically|all)] (isolated [(it|the (unit|power|supply|electrics))]|killed it|shut it off|switched it off|turned it off) and (locked|tagged) [it] [(off|out)] [and tagged [it] [(off|out)]]`,
    always('isolate', 'disconnect'),
    { unheard: true, apart: true, examples: ['isolated and locked off'] },
  ),
  rule(
    `[(${I}|it is|power is|unit is|the unit is|supply is)] locked off [and tagged [(off|out)]]`,
    always('isolate', 'disconnect'),
    { unheard: true, apart: true, examples: ['locked off and tagged'] },
  ),
  heardRule('power is (back on|~restored|~on again)', always('restore', 'disconnect'), {
    examples: ['power is back on'],
  }),
  rule('(the|my) power is (back on|restored|on again)', always('restore', 'disconnect')),
  rule(
    '[(i|we)] [(have|just)] (got|have got|have) [(the|my)] power (restored|back on|back) [(at|to|through) (the|my) disconnect]',
    always('restore', 'disconnect'),
    { unheard: true, examples: ['got power restored at the disconnect'] },
  ),
  rule(`${I} (turned|put|switched) the power back on`, always('restore', 'disconnect'), {
    examples: ['turned the power back on'],
  }),
  rule(`(my|the) lock is (off|out)`, always('restore', 'disconnect'), {
    examples: ['my lock is off'],
  }),
];

const LOCKED_RULES: readonly Rule[] = [
  rule(
    `<the> disconnect is ${PULLED} [and (pulled|tagged|locked|locked out|tagged out)]`,
    always('isolate', 'disconnect'),
    { examples: ['the disconnect is pulled and tagged'] },
  ),
  rule(
    `<the> disconnect [is] (off|open|down) (<pause> [and]|and) [(it is|is)] ${LOCKED}`,
    always('isolate', 'disconnect'),
    { unheard: true, only: byUs, examples: ['disconnect is off and locked'] },
  ),
  rule(
    `<the> (breaker|breakers) [(is|are)] (off|open|down) (<pause> [and]|and) [(it is|they are|is|are)] ${LOCKED}`,
    always('isolate', 'breaker'),
    { unheard: true, only: byUs, examples: ['breaker is off and tagged'] },
  ),
  rule(
    `((it is|i have it|have it|got it) [(all|now)]|[(all|now)]) (isolated|killed|shut off) (<pause> [and]|and) ${LOCKED}`,
    always('isolate', 'disconnect'),
    { unheard: true, apart: true, examples: ['have it isolated and tagged'] },
  ),
  rule(
    `<the> disconnect [is] (locked|tagged|locked off) [and (locked|tagged)]`,
    always('isolate', 'disconnect'),
    {
      unheard: true,
      apart: true,
      examples: ['disconnect locked'],
    },
  ),
  rule(
    `[(and|then|so)] ${I} (put|stuck|hung|got|have|threw) (my|our) (lock|padlock|lock and tag|tag and lock) [(on|there)] [(it|there|<the> (disconnect|breaker|switch))]`,
    always('isolate', 'disconnect'),
    { unheard: true, examples: ['put my lock on the disconnect'] },
  ),
  rule(
    `[(and|then|so)] ${I} (put|stuck|hung|threw) a (lock|padlock) on <the> disconnect`,
    always('isolate', 'disconnect'),
    { unheard: true, examples: ['put a lock on the disconnect'] },
  ),
  rule(
    `[(and|then|so)] ${I} (padlocked|locked) [out] <the> disconnect [out]`,
    always('isolate', 'disconnect'),
    {
      unheard: true,
      examples: ['padlocked the disconnect'],
    },
  ),
  rule(
    `(my|the) (lock|padlock) is on [(it|the disconnect|now|there)]|[(my|the)] (lock|padlock) is on|[my] lock and tag are on`,
    always('isolate', 'disconnect'),
    {
      unheard: true,
      apart: true,
      examples: ['my lock is on it'],
    },
  ),
];

/** How the power is told off and on again, with a lock or without one. */
export const POWER_OFF_RULES: readonly Rule[] = [...POWER_RULES, ...LOCKED_RULES];
