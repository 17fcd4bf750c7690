import { startsClause, wordBefore } from '../words/clause-start.ts';
import { TAIL, todo } from './recommendations.ts';
import { type Frame, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';

const REPLACED = { work: 'replace' } as const;

/** "I put a new one in next to it" is done; behind nobody it is what is to be done then. */
const orders = (frame: Frame): boolean =>
  startsClause(frame) || /^(?:and|then|just|to|should|gotta|will|let's)$/i.test(wordBefore(frame));

const WHO =
  '(they|we|you|i|he|she|customer|the (customer|store|owner|manager)|somebody|someone|this place)';
const OUGHT =
  '(ought to|should|need to|needs to|have to|has to|had better|better|must|got to|have got to|want to|going to have to|will have to)';
const OTHERS =
  '(somebody|someone|(a|the|their|an) (plumber|electrician|carpenter|roofer|contractor|handyman|locksmith|glazier|guy|tech|roof guy|door guy|glass guy|door company|glass company))';
const PUT = '(put|stick|throw|install|hang|fit|drop|slap|get|braze|wire)';
const A_NEW = '[in] (a|an|some|another|<nth:many>) [brand] [(new|fresh|different|rebuilt)]';
const THERE = '[(in|on|for|on to|into)] [(it|there|that|that one|this one|her|them|here)]';
const MEANWHILE =
  '[<pause>] [(while|as long as|since) (we are|i am|you are|they are|somebody is) (at it|here|in there|in it|up there|out here|there)]';
/** No reason: "as long as we're in there" would be one. */
const BY = '[<due:due>] [<every:every>]';
const HURT =
  '[(it|that)] (would not|will not|can not|could not) hurt [(them|him|her|us|you|anything|nothing|a thing|any)] to [(also|just|go ahead and)]';
const WHOLE =
  '[(whole|entire|complete)] [(new|old|damn)] (unit|box|machine|system|thing|condensing unit|cooler|freezer|case|ice machine|reach in)';

/** What ought to be done, as it is dropped between two other things: at no cost, by somebody else, at the next visit. */
export const ADVISED_ALOUD_RULES: readonly Rule[] = [
  rule(`${HURT} <todo> <the> <part> ${MEANWHILE} ${BY}`, todo, {
    unheard: true,
    examples: ['would not hurt to swap both fan motors while we are at it'],
  }),
  rule(
    `[${WHO}] (might|may) as well [(just|go ahead and|also)] <todo> <the> <part> ${MEANWHILE} ${BY}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['might as well change the filter dryer while we are in there'],
    },
  ),
  rule(
    `[${WHO}] [${OUGHT}] (get|have|call|send|bring) ${OTHERS} [(out|in|over|back|up)] [here] to <todo> <the> <part> ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['ought to get somebody out to fix that door heater'],
    },
  ),
  rule(
    `<due:due> [<pause>] [${WHO}] [(should|will|can|need to|have to|got to|ought to)] [(just|go ahead and)] ${PUT} ${A_NEW} <part> ${THERE} [<why:why>]`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['next visit put a new high pressure switch in it'],
    },
  ),
  rule(`${PUT} ${A_NEW} <part> ${THERE} [<pause>] <due:due> [<why:why>]`, todo, {
    unheard: true,
    only: orders,
    tags: REPLACED,
    examples: ['put a new contactor in it next trip'],
  }),
  // No part of it: what it comes to stands in its words.
  rule(
    `[${WHO}] [(i am|i would|would|should|ought to|need to|needs|need|better|really)] [(recommend|recommending|advise|advising|suggest|suggesting|quote|quoting|price|pricing|look at|consider|just)] (replace|replacing|swapping out|changing out|scrapping|junking) (the|that|this|their) ${WHOLE} [<why:why>]`,
    remark,
    { unheard: true, only: startsClause, examples: ['advise replacing the whole unit'] },
  ),
  rule(
    `(they|it|he|she|this place|the customer|customer|you) (needs|need|could use|wants|is due for|are due for) (a|another) [(whole|complete)] new (unit|box|machine|system|condensing unit|cooler|freezer|case|ice machine|reach in|one of these)`,
    remark,
    { unheard: true, only: startsClause, examples: ['they need a whole new unit'] },
  ),
];
