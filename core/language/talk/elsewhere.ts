import { startsClause } from '../words/clause-start.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';

/** "Two ten on the head, one ninety last week": what stands before the comma was read today. */
const unbroken: Means = (tags, frame) =>
  /[,;]/.test(frame.wordsOf(frame.span)) && !startsClause(frame) ? null : remark(tags, frame);

const UNIT =
  '(one|unit|box|job|call|store|place|site|stop|machine|system|case|freezer|cooler|walk in|reach in|account|restaurant|location|building|house|rack)';
const BESIDE =
  '(next door|upstairs|downstairs|across town|(next to|beside|across from|behind|above|below) (it|this|that|this one|that one)|(i|we|you|he) (did|had|worked on|looked at|fixed|was on|were on) <clause>)';
const OTHERS =
  '(his|her|their other|your|my (buddy|neighbor|cousin|brother|uncle) is|the (neighbor|other guy) is|somebody else is)';
const OTHER_DAY =
  '((last|the last) (year|month|week|summer|winter|spring|fall|night|time|visit|trip) [((i|we) (was|were|came|got|looked) [(here|out|out here|at it)])]|yesterday|the other day|(a|<number:ago>|<count:ago>|a couple [of]) (year|month|week|years|months|weeks|days) ago)';
/** On another unit, or on another day. */
const ELSEWHERE = `([(over|down|up|out|back)] (on|at|in|with) ((the|that|my|our) (other|last|previous) ${UNIT}|the other|(the|that) ${UNIT} ${BESIDE}|another ${UNIT}|${OTHERS} ${UNIT})|next door|${OTHER_DAY})`;

const IS =
  '(is|are|was|were|has been|had been|looks|looked|seems|seemed|got|came up|reads|read|showed|shows)';
const SEEN = '[(i|we)] [(have|had|saw|found|see|got|there is|there was|it had|it has)] [got]';

/** The same told in every order, with where or when it was behind it. */
export const ELSEWHERE_RULES: readonly Rule[] = [
  rule(
    `[(and|but|so)] ${SEEN} <the> <measurable> [(${IS}|is (pulling|drawing|running|reading|at)|was (pulling|drawing|running|reading|at)|at|pulled|drew|pulls|draws)] <amount> ${ELSEWHERE}`,
    unbroken,
    { unheard: true, examples: ['head is one ninety on the other unit'] },
  ),
  rule(
    `[(and|but|so)] ${SEEN} <amount> [of] [(on|at|across|in|for|to|into)] <the> <measurable> ${ELSEWHERE}`,
    remark,
    { unheard: true, examples: ['two thirty at the contactor last week'] },
  ),
  rule(`[(and|but|so)] ${SEEN} <the> <part> [(${IS}|not)] <very> <state> ${ELSEWHERE}`, remark, {
    unheard: true,
    examples: ['compressor is bad on the other unit'],
  }),
  rule(`<the> <part> <doing> ${ELSEWHERE}`, remark, {
    unheard: true,
    examples: ['compressor died on the other unit'],
  }),
  // "Pulled down" is one thing that is done.
  rule(`<the> <part> (has|had) been <done> ${ELSEWHERE.replace('|down|up|out|', '|')}`, remark, {
    unheard: true,
    examples: ['compressor had been replaced on the other unit'],
  }),
  rule(
    `[(and|but|so)] ${SEEN} [(a|an|the|some)] (<very> <state>|leak (at|on|in|by|from) <the>) <part> ${ELSEWHERE}`,
    remark,
    { unheard: true, examples: ['found a leak at the txv on the last one'] },
  ),
  rule(`[(and|but|so)] (it|that|she|they) (${IS}|not) <very> <state> ${ELSEWHERE}`, remark, {
    unheard: true,
    examples: ['it was bad last week'],
  }),
  // Of which part, nobody tells.
  rule(
    `[(and|but|so)] [(i|we)] [just] (<done> (it|that|them) [(out|off|up|down|in|back)]|(took|cut|blew) (it|that|them) (out|off)|(put in|installed|put on|threw in|put|stuck) (a new|another) one [(in|on)]) ${ELSEWHERE}`,
    () => ({}),
    { unheard: true, examples: ['swapped it out two months ago'] },
  ),
  rule(
    `<byUs> (<done> <the> [old]|(threw|slapped|dropped|stuck|popped) in a new) <part> ${ELSEWHERE}`,
    remark,
    {
      unheard: true,
      examples: ['swapped out the contactor on the unit next door'],
    },
  ),
  rule(
    `[(and|but|so)] [(i|we)] [have] (added|put in|weighed in|recovered|pulled out|took out|charge (is|was|of)) <amount> [of <refrigerant>] [to it] ${ELSEWHERE}`,
    remark,
    { unheard: true, examples: ['added two pounds last week'] },
  ),
  rule(
    `[(it|they|this)] [(is|was)] [(on|running|has|had|uses)] [(a|an)] <refrigerant> [(system|unit)] ${ELSEWHERE}`,
    remark,
    { unheard: true, examples: ['it is on four oh four a on the other unit'] },
  ),
];
