import { type Means, type Rule, rule } from '../rule.ts';
import { startsClause } from '../words/clause-start.ts';
import { TAIL, todo } from './recommendations.ts';

const remark: Means = (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] });
const REPLACED = { work: 'replace' } as const;

/** "Somebody should check the oil": whoever comes next looks, and what at is kept as it was said. */
const looked: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const [called] = LOOKS.exec(words) ?? [];
  return called === undefined || frame.isAsked === true
    ? null
    : { recommendations: [{ do: 'asSaid', part: null, called, words }] };
};
const LOOKS = /\b(?:check|look|keep|watch|inspect|test|monitor)\b.*$/i;
const OTHERS =
  '(they|you|he|she|somebody|someone|everybody|[the] next (guy|tech|man|fella|person)|whoever (is next|comes next|comes out next)|[the] (owner|manager|store|kitchen|chef|staff))';
const MUST =
  '(should|ought to|needs to|need to|has to|have to|must|better|had better|would better|(is|are|has|have) got to|got to|might want to|will want to|want to|(is|are) going to (want|have|need) to|could stand to|would do well to)';
const LED = `((${OTHERS}|we) ${MUST}|better|had better|best|ought to|should)`;
const LED_OTHERS = `(${OTHERS} ${MUST}|better|had better|best|ought to|should)`;
const LIGHTLY = '[(really|probably|also|just|definitely|go ahead and)]';
const SOON = '[(soon|pretty soon|sooner or later|before long|one of these days)]';
const LOOK =
  '(check|check on|look at|take a look at|look over|inspect|test|watch|keep an eye on|monitor)';
const THING =
  '(oil|oil level|charge|refrigerant|gas|pressures|temps|temperature|temperatures|amps|oil pressure|refrigerant level|level|voltage)';

/** What ought to be done, whoever ought to do it and however strongly that is said. */
export const OUGHT_RULES: readonly Rule[] = [
  rule(`${LED} ${LIGHTLY} <todo> <the> <part> ${SOON} ${TAIL}`, todo, {
    unheard: true,
    only: startsClause,
    examples: ['somebody ought to clean the condenser', 'better change that contactor soon'],
  }),
  rule(
    `${LED} ${LIGHTLY} (get|have|buy|order|put in|install) [(a|an|some|another)] (new|replacement|brand new) <part> ${SOON} ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['somebody is got to buy a replacement door gasket'],
    },
  ),
  rule(
    `${LED} ${LIGHTLY} (have|get) (somebody|someone|them|him|her|a guy|us|me) [(in|out|over|back)] [to] <todo> <the> <part> ${SOON} ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['better have somebody clean the condenser'],
    },
  ),
  rule(
    `${LED} ${LIGHTLY} [(start|be)] (think about|thinking about|look at|looking at|look into|looking into|plan on|planning on|plan for|planning for|budget for|budgeting for|see about|figure on) (a new|a replacement|another|getting a new|replacing <the>|changing <the> [out]|swapping <the> [out]) <part> ${SOON} ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['should think about a new compressor'],
    },
  ),
  rule(
    `[(it|they|you|she|he|this one|this thing) [(is|are)]] going to want (a new|another|a replacement) <part> ${SOON} ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['going to want a new compressor'],
    },
  ),
  rule(
    `[(it|they|you|she|he|this one)] (is|are|would be|will be) better [off] (<working>|to <todo>) <the> <part> ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['they would be better off replacing the compressor'],
    },
  ),
  rule(
    `${LED_OTHERS} ${LIGHTLY} ${LOOK} <the> (<part>|${THING}) ${SOON} [<due:due>] [<every:every>]`,
    looked,
    {
      unheard: true,
      only: startsClause,
      examples: ['somebody should check the oil'],
    },
  ),
  rule(
    `[the] ${THING} (should|ought to|needs to|need to|has to|have to|must) (be|get) [(re)] (checked|changed|looked at|tested|watched|sampled|rechecked|replaced) [<due:due>] [<every:every>]`,
    remark,
    { unheard: true, only: startsClause, examples: ['oil should be checked'] },
  ),
];
