import type { Tags } from '../../grammar/nodes.ts';
import type { AnswerableId } from '../../terms/quantities.ts';
import { amountIn, measured } from '../numbers/measure.ts';
import { isPlausible } from '../numbers/plausible.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import type { Supposed } from '../utterance.ts';
import { aboutIn, ask, MY, TELL } from './asking.ts';

const AIR = /\b(?:ambient|outside|out|outdoors?|air|weather|day)\b/i;
/** What the box decides rather than the air, where nothing tells what the number is of. */
const OF_THE_LOW_SIDE: ReadonlySet<AnswerableId> = new Set(['suctionPressure', 'evaporatingTemp']);

/** The day that something is asked for, where its temperature was said; `null` where none was. */
export function supposedIn(about: AnswerableId, tags: Tags, frame: Frame): Supposed | null {
  const amount = amountIn(tags);
  if (OF_THE_LOW_SIDE.has(about) && !AIR.test(frame.wordsOf(frame.span))) return null;
  const found = amount.value === null ? null : measured(QUANTITY, amount, frame.context.units);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  return isPlausible(QUANTITY, { value, unit }, null) ? { quantity: QUANTITY, value, unit } : null;
}
const QUANTITY = 'ambientTemp';

const targetSupposing: Means = (tags, frame) => {
  const about = aboutIn(tags);
  const supposed = about === null ? null : supposedIn(about, tags, frame);
  return supposed === null ? null : ask({ ask: 'target', about, supposed });
};

const targetOfItSupposing: Means = (tags, frame) => {
  const supposed = supposedIn('headPressure', tags, frame);
  return supposed === null ? null : ask({ ask: 'target', about: null, supposed });
};

const THERE =
  '[(ambient|outside|outside air|out|out here|outdoors|air|weather|on the condenser|day)]';
const SUPPOSING = `((at|with|in|for|on|when it is|if it is|if it was|if it were|with it) [(a|an|say)] <amount> ${THERE}|(with|at|when|if) [(the|an|a)] (ambient|air|outside air|outside) [(is|at|of|being|was|were)] <amount>)`;

/** "What should head be at ninety five": of a day that need not be this one. */
export const SUPPOSED_TARGETS: readonly Rule[] = [
  rule(
    `[${TELL}] (what|where) (should (it|that|this) [to] be|is (it|that|this) supposed to be) [at] ${SUPPOSING}`,
    targetOfItSupposing,
    { unheard: true, examples: ['what should it be on a ninety five degree day'] },
  ),
  rule(
    `[${TELL}] (what|where|how high|how low) (should|would|ought|must|does) ${MY} <asked> [(to|need to|have to|want to)] (be|run|read|sit) [(running|sitting|reading)] ${SUPPOSING}`,
    targetSupposing,
    {
      examples: [
        'what should head be at ninety five',
        'what would head be if it was a hundred and five out',
      ],
    },
  ),
  rule(
    `[${TELL}] (what|where|how high|how low) ((is|are) ${MY} <asked> (supposed|meant) to (be|run|sit)|${MY} <asked> (should be|is supposed to be|ought to be|needs to be)) [(at|running)] ${SUPPOSING}`,
    targetSupposing,
    { examples: ['what is head supposed to be at ninety degrees'] },
  ),
  rule(
    `[${TELL}] (what|where) (is|are) ${MY} <asked> (supposed|meant|going) to (ride|float|hang|land|end up|settle|come in|wind up|read) [(at|out)] ${SUPPOSING}`,
    targetSupposing,
    { unheard: true, examples: ['where is head supposed to ride with ninety outside'] },
  ),
  rule(
    `(what|where) (is|are) ${MY} <asked> (supposed|meant|going) to (ride|float|hang|land|end up|settle|come in|wind up|read|go) [(at|out)] (with|on|for|in) (a|an) <amount> (box|cooler|freezer|case|cabinet|walk in)`,
    (tags) => {
      const about = aboutIn(tags);
      return about === null ? null : ask({ ask: 'target', about });
    },
    { unheard: true, examples: ['where is the suction supposed to ride with a thirty five box'] },
  ),
  rule(
    `[${TELL}] (what|what (kind|sort) of|how much) <asked> (should|would|will|do|am) (i|we|it|this|you) [(supposed to)] (be [(at|seeing|looking (at|for)|running|getting|expecting)]|see|have|expect|want|run|get|look for|need) ${SUPPOSING}`,
    targetSupposing,
    {
      unheard: true,
      examples: ['what kind of head should i be looking at on a ninety five degree day'],
    },
  ),
  rule(
    `${SUPPOSING} [<pause>] (what|where) (should|would|must) ${MY} <asked> (be|run|read|sit) [at]`,
    targetSupposing,
    { examples: ['at ninety five outside what should head be'] },
  ),
];
