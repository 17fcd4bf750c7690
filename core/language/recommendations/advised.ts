import { startsClause } from '../words/clause-start.ts';
import { getDone, TAIL, todo } from './recommendations.ts';
import { type Rule, rule } from '../rule.ts';

const NEW = '(a|an|the|another) [(new|brand new|replacement|different)]';
const REPLACED = { work: 'replace' } as const;

/** What ought to be put in, in the looser ways that it is told in. */
export const ADVISED_RULES: readonly Rule[] = [
  rule(
    `[(i|we)] (would|should|ought to|need to|have to|want to|going to|will|would like to) (put|throw|stick) (${NEW} <part> (in|on) [(it|here|there|this|that|this one|this thing)]|[(some|new|brand new)] <part> (in|on) (it|here|there|this|that|this one|this thing)) ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['i would put a new door gasket in it'] },
  ),
  rule(
    `(they|you|somebody|someone|it) (should|ought to|needs to|need to|would) (put|get|have) ${NEW} <part> (in|on|put in|put on) [(it|here|there|this|that|this one|this thing)] ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['they should put a new contactor in it'] },
  ),
  rule(
    `[(i|we)] would like to see ${NEW} <part> (in|on) [(it|here|there|this|that)] ${TAIL}`,
    todo,
    {
      unheard: true,
      tags: REPLACED,
      examples: ['i would like to see a new contactor in here'],
    },
  ),
  rule(
    `((going to|will|am going to|are going to) (need|have|want) to|must|got to|it is time to|time to|somebody needs to|someone needs to|it would (help|pay) to|remind (them|him|her|the (customer|manager|owner)) to|make sure (they|he|she)|(next|on the next) (trip|visit|time) [(we|i|they)] (will|would|want to|need to|should|can)) <todo> <the> <part> ${TAIL}`,
    todo,
    { unheard: true, only: startsClause, examples: ['going to have to replace the contactor'] },
  ),
  rule(
    `(next|on the next) (trip|visit|time) [(we|i|they)] (will|would|want to|need to|should|can|going to) (do|get|handle|take care of) <the> <part>`,
    getDone,
    { unheard: true, tags: REPLACED, examples: ['next trip we will do the contactor'] },
  ),
  rule(
    `(recommend|recommended|recommending|suggest|suggesting|quote|needs) <part> (replacement|replaced|change out|changeout) ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['recommend contactor replacement'] },
  ),
  rule(
    `[(the|that|this)] <part> replacement (recommended|needed|required|is needed|is due)`,
    todo,
    {
      unheard: true,
      tags: REPLACED,
      examples: ['contactor replacement recommended'],
    },
  ),
  rule(`(new|a new) <part> [is] (recommended|needed|required|suggested) ${TAIL}`, todo, {
    unheard: true,
    tags: REPLACED,
    examples: ['new contactor recommended'],
  }),
  rule('<part> [is] needed', todo, {
    unheard: true,
    alone: true,
    tags: REPLACED,
    examples: ['contactor needed'],
  }),
  rule(`[(it|unit|this)] needs <part>`, todo, {
    unheard: true,
    alone: true,
    tags: REPLACED,
    examples: ['needs contactor'],
  }),
  rule(
    `(put (down|in for)|put (them|him|her) down for|write (up|down)|write (them|him|her) up for|figure on|plan on|mark (them|him) down for) (a|an|another|the) [(new|replacement)] <part> ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['write up a new contactor', 'put them down for a contactor'],
    },
  ),
  rule(`[(i|we|they)] (plan|figure|planning|count) on <working> <the> <part> ${TAIL}`, todo, {
    unheard: true,
    only: startsClause,
    examples: ['plan on replacing the contactor'],
  }),
  rule(
    `(that|this|the|those|these) <part> (has|needs|have|need|has got|have got) to go [(too|soon|though|for sure)]`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['that contactor has got to go'] },
  ),
  rule(
    `<the> <part> (is|are) (about|just about|almost|pretty much) (done|done for|shot|worn out|toast|dead) ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['the contactor is about done'] },
  ),
  rule(`<the> <part> (is|are) (getting|going to (be|get)|to be) <done> <due:due>`, todo, {
    unheard: true,
    examples: ['that contactor is getting replaced next trip'],
  }),
];
