import { isAskedWithDo, startsClause } from '../words/clause-start.ts';
import { ofIt, TAIL } from './recommendations.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';

const MAYBE = '[(probably|really|definitely|also|just|likely|actually|at some point|eventually)]';
const OUGHT = `((should|ought to|must|will need to|will have to|going to have to|is going to have to|are going to have to|could stand to|might need to|may need to|might have to) ${MAYBE} (be|get)|(needs|need) to (be|get)|(has|have) to (be|get)|[has] got to (be|get)|needs)`;
const NEEDS = `(needs|need|wants|could use|could stand|is due for|due for|(will|would|may|might|is going to|going to) ${MAYBE} (need|want))`;
const JOINED = '[(and|so|but|then)]';
/** "Gasket's torn, so that needs replacing": nothing is named again, and the first of two clauses named it. */
const goesOn = (frame: Frame): boolean =>
  !isAskedWithDo(frame) &&
  !(frame.span.from > 0 && ASKS.test(frame.wordsOf({ from: 0, to: 1 }))) &&
  (startsClause(frame) || /^(?:and|so|but|then|it|that)\b/i.test(frame.wordsOf(frame.span)));

const ASKS = /^(?:do|does|did|is|are|should|would|could|can|will|what|why|how|when)$/i;

const told =
  (means: Means): Means =>
  (tags, frame) =>
    goesOn(frame) ? means(tags, frame) : null;

/** What ought to be done to what was just found, named no second time. */
export const ADVISED_OF_IT_RULES: readonly Rule[] = [
  rule(
    `${JOINED} [(just|to|please)] (put|get|order|buy) (one|another|another one|a new one) [(in|on|ordered|coming)] [(there|it|here)] <due:due>`,
    told(ofIt('replace', true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} (somebody|someone|they|we|you|i|customer|the customer) (needs to|need to|should|ought to|has to|have to|will have to|would) (put|get|install|order|buy) (a new one|another one|new ones) [(in|on)] [(there|it|here)] ${TAIL}`,
    told(ofIt('replace', true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} (somebody|someone|they|we|you|i|customer|the customer) (needs to|need to|should|ought to|has to|have to|will have to) <todo> (it|them|that|that one) [out] ${TAIL}`,
    told(ofIt(undefined, true)),
    { unheard: true, examples: [] },
  ),
  rule(`${JOINED} ${MAYBE} ${OUGHT} <done> ${TAIL}`, told(ofIt(undefined, true)), {
    unheard: true,
    examples: [],
  }),
  rule(`${JOINED} ${MAYBE} ${NEEDS} ${MAYBE} <working> ${TAIL}`, told(ofIt(undefined, true)), {
    unheard: true,
    examples: [],
  }),
  rule(
    `${JOINED} [(it|that|this|they|that one)] ${MAYBE} (needs to|need to|has to|have to|has got to|got to|should) go ${TAIL}`,
    told(ofIt('replace', true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} [(it|that|this|they)] ${MAYBE} ${NEEDS} [(a|another|some)] [(good|thorough|proper)] (cleaning|wash|washing|brushing|rinse|scrub|scrubbing|bath) ${TAIL}`,
    told(ofIt('clean', true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} [(it|that|this|they)] ${MAYBE} ${NEEDS} [(a|some)] (adjusting|adjustment) ${TAIL}`,
    told(ofIt('adjust', true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} (that|this|that one|those|they both|both) ${MAYBE} (${OUGHT} <done>|${NEEDS} ${MAYBE} <working>) ${TAIL}`,
    told(ofIt(undefined, true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} [(i|we)] (would|recommend|recommended|recommending|suggest|suggesting|am recommending|i would recommend) (<working>|<todo>) (it|them|that|that one) ${TAIL}`,
    told(ofIt(undefined, true)),
    { unheard: true, examples: [] },
  ),
  rule(
    `${JOINED} (recommend|recommending|recommended|suggest|quote|quoting|quoted) [(a|them a|them)] (replacement|replacing|changing [it] out) ${TAIL}`,
    told(ofIt('replace', true)),
    { unheard: true, examples: [] },
  ),
];
