import { remark } from '../plain-means.ts';
import { type Rule, rule } from '../rule.ts';
import { startsClause } from '../words/clause-start.ts';

const LEAD = '[(and|but|so|then|ok|and then|yeah)]';
const WHO = '(he|she|they|<who>)';
const GO_AHEAD =
  '(go ahead [and (do|fix|replace|change|order|get|put in) (it|em|them|both|that|one|those)]|order (it|em|them|both|one)|do it|go for it|fix it|get it done|yes|no|not today|not right now|hold off|leave it|to (go ahead|hold off|wait|leave it|do it|fix it))';
const OF_IT =
  '[((with|on) (it|this|that|this one|that one|the (repair|price|quote))|for now|today)]';

const SO_MUCH = '<number> [(dollars|bucks|installed)]';
const PRICE = `[(about|around|roughly|like)] ${SO_MUCH}`;
const PART = '<the> [new] (<part>|motor)';
const FOR_IT = '(for|on) (a|an|the|it|this|that|both|everything) [<clause>]';

/** What whoever pays said of the repair: the office bills by it, and the next one comes back for it. */
export const CUSTOMERS_ANSWER_RULES: readonly Rule[] = [
  rule(
    `${LEAD} [(i|we)] [just] (told|gave|texted) (him|her|them|<who>) ${PRICE} ${FOR_IT}`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['told the owner seven hundred and forty for the compressor'],
    },
  ),
  rule(
    `${LEAD} [(the|my|our|that)] (quote|price|estimate|bid) [(on|for) <the> (<part>|job|repair|work)] (is|was|comes to|came to|will be) ${PRICE} [${FOR_IT}]`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['the quote is two eighty five for the gasket one ten for the little one'],
    },
  ),
  rule(
    `${LEAD} ${PART} (is|runs|costs|cost|(will|would|is going to) (be|run|cost)|comes to) ${PRICE} (plus|and|with) <duration> [of] labor`,
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['fan motor is about one ninety plus an hour labor'],
    },
  ),
  rule(
    `${LEAD} ${PART} (is|was|runs|costs|cost|(will|would|is going to) (be|run|cost)|comes to) [(about|around|roughly|like)] <number> (dollars|bucks|[(dollars|bucks)] (plus (tax|labor|shipping|freight|a core|the core)|(and|with) tax|list|our cost|my cost))`,
    remark,
    { unheard: true, only: startsClause, examples: ['motor is two eighty plus tax'] },
  ),
  rule(
    `${LEAD} [(it is|it will be|it will take|it takes|took|takes|that is|figure|call it)] [(about|around|roughly|like|maybe)] <duration> to (fit|install|change|swap|put|fix|braze|replace|hang|mount|wire) [(it|that|one|<the> [new] (<part>|motor))] [(in|on|out|up)]`,
    remark,
    { unheard: true, alone: true, examples: ['forty five minutes to fit'] },
  ),
  rule(
    `${LEAD} (${WHO}|the kitchen|[the] (kitchen|office|front|counter|desk) (lady|guy|girl|man|woman)) (says|said) (he|she|they|it|<who>) (has to|is got to|have to|have got to|has got to|needs to|need to|must|will) (ok|approve|sign off on|sign for|authorize) (it|that|this) [[<pause>] [(and|then)] (he|she|they) will (call|let|get back to|tell) (us|me|you) [know]]`,
    remark,
    { unheard: true, examples: ['she says the manager has to approve it she will call us'] },
  ),
  rule(
    `${LEAD} ${WHO} (is|was|are|were) [(all|totally)] (good|fine|ok|cool|on board|happy|not (happy|good|ok)) with (it|that|the (price|quote|repair|number)|going ahead)`,
    remark,
    { unheard: true, examples: ['she is good with it'] },
  ),
  rule(
    `${LEAD} ${WHO} (wants|want|is going|are going|needs|need|will have|has|have|would like|said (he|she|they) (wants|needs|is going)) to (think (about it|it over|on it)|sleep on it|talk (it over|to (the|his|her|their) (owner|boss|wife|husband|partner|manager|landlord|office))|get back to (me|us)|hold off [on (it|that)]|wait [on (it|that)] [till <clause>]|let (me|us) know|check with <clause>|(get|sign up|be|go) (on|for) <clause>)`,
    remark,
    { unheard: true, examples: ['and he wants to think about it'] },
  ),
  rule(`${LEAD} [${WHO}] (says|said) ${GO_AHEAD} ${OF_IT}`, remark, {
    unheard: true,
    only: startsClause,
    examples: ['says go ahead on this one'],
  }),
  rule(
    `${LEAD} ${WHO} (says|said) (he|she|they) (would|will|is going to|are going to|had) (have|get|call|ask|let) (his|her|their|the|a|an|somebody|someone) <clause>`,
    remark,
    { unheard: true, examples: ['he said he would have his maintenance guy look at it'] },
  ),
  rule(
    `${LEAD} [(i|we)] [(finally|just)] (got (hold of|a hold of)|talked to|reached|called) (the <who>|<who>|him|her|them) [(about it|on the phone)]`,
    remark,
    { unheard: true, only: startsClause, apart: true, examples: ['got hold of the owner'] },
  ),
  rule(
    `${LEAD} (that one|this one|it|that|that part|the <part>) (is|will|is going to) (not (getting|get|be) (done|fixed|replaced|changed) [(today|this trip|now|right now)]|have to wait)`,
    remark,
    { unheard: true, only: startsClause, examples: ['that one is not getting done today'] },
  ),
  rule(
    `${LEAD} [(i|we)] [(am|are|will|have|going to|would)] [(going to|have to)] [need to] come back (for|to (do|fix|finish|change|replace)) <clause>`,
    remark,
    { unheard: true, only: startsClause, examples: [] },
  ),
];
