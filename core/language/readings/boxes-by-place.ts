import { fixed } from './reading-means.ts';
import { amountIn } from '../numbers/measure.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import { startsClause } from '../words/clause-start.ts';

const BOX = '(box|cooler|freezer|case|cabinet|fridge|reach in|walk in|prep table|display case)';
const NEAR =
  '(under|by|beside|behind|below|next to|across from|near|over by) (the|their) [(back|front|left|right|main|prep|salad|fry|beer|wine|side)] (counter|bar|line|window|grill|fryer|fryers|register|sink|oven|ovens|door|dish pit|hood|stairs|wall|host stand|coffee (bar|machine)|ice machine|kitchen|office)';
const IN_AISLE = '(in|on|at) (aisle|row|bay|lane) <number:which>';

const ON_TOP = '(up top|on top|at the top|in the top|up high|on the rail|in the rail|in the pans)';
const BELOW =
  '(down below|below|underneath|down low|on the bottom|at the bottom|in the bottom|in the (base|cabinet)|down in the (base|cabinet|bottom))';

/** The rail and the base of one box: both are its air. */
const topAndBottom: Means = (tags, frame) => {
  const each = [tags['top'], tags['bottom']].map((said) => {
    const found = tagsIn(said);
    return found && fixed('boxTemp')(found, frame);
  });
  const readings = each.flatMap((found) => found?.readings ?? []);
  return readings.length < each.length ? null : { readings, remarks: [frame.wordsOf(frame.span)] };
};

/** A unit was turned to, and nothing read of it yet: "that one's at fifty two" is its box. */
const isUnread = ({ context: { equipment, lastQuantity, asked } }: Frame): boolean =>
  equipment !== null && lastQuantity === null && asked === null;
const newBox: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  const isCold = value !== null && canBeColdBox(value, frame.context.units);
  return isCold && (unit === null || unit === 'degrees') ? fixed('boxTemp')(tags, frame) : null;
};

/** Which of several boxes it is, told between its name and its air. */
export const BOX_BY_PLACE_RULES: readonly Rule[] = [
  rule(
    `[(the|their|that|this)] ${BOX} (${NEAR}|${IN_AISLE}) (is|is at|reads|is reading|is sitting at|is holding|is running) <amount>`,
    fixed('boxTemp'),
    { unheard: true, examples: ['cooler under the counter is forty three'] },
  ),
  rule(
    `(it is|she is|that one is|this one is|[the] box is|${BOX} is) [(at|running|sitting at|reading)] <amount:top> ${ON_TOP} [<pause>] [(and|with)] [(it is|at)] <amount:bottom> ${BELOW}`,
    topAndBottom,
    {
      unheard: true,
      only: startsClause,
      examples: ['it is at forty six up top and forty three down below'],
    },
  ),
  rule(
    '[(the|their|that|this)] (undercounter|under counter) [(one|unit|cooler|freezer|box)] [(is|at|is at|reads|is reading|is down to|is up to|is holding|is sitting at)] <amount> [now]',
    fixed('boxTemp'),
    { unheard: true, only: startsClause, examples: ['undercounter is at forty five'] },
  ),
  rule('(that|this) one is [(up|down|sitting|running|only|still)] [(at|to)] <amount>', newBox, {
    unheard: true,
    alone: true,
    only: isUnread,
    examples: [],
  }),
];
