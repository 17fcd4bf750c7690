import { remark } from '../plain-means.ts';
import { type Rule, rule } from '../rule.ts';

const BOX =
  '(box|cooler|freezer|case|cabinet|walk in|reach in|unit|fridge|prep table|shelf|shelves|rail|display [case])';
const FULL =
  '((packed|stuffed|crammed|jammed|overloaded|loaded|stacked|overstocked|overfilled) [(pretty|real|way)] [(full|up|tight|solid|down|out|to (the (ceiling|top|door|doors|roof|fan|fans)|capacity))]|half (empty|full)|[about] (a third|a quarter|two thirds|three quarters) (full|empty)|full to the (top|ceiling|door))';
const HOW = '[(pretty|really|way|all|totally|completely|about|almost|nearly|too|so|only)]';

/** How much stands in a box: it bears on how air moves and on what the unit has to cool. */
export const HOW_FULL_RULES: readonly Rule[] = [
  rule(`<the> ${BOX} (is|was|has been) ${HOW} ${FULL} [(of|with) <clause>]`, remark, {
    unheard: true,
    apart: true,
    examples: ['the box is packed', 'cooler is about half empty'],
  }),
  rule(
    `(they|he|she|somebody|everybody|kitchen|staff) (have [got]|has [got]|got|keep|keeps) (it|this thing|the ${BOX}) ${HOW} ${FULL}`,
    remark,
    { unheard: true, apart: true, examples: ['they have got it packed full'] },
  ),
  // How high oil stands in its glass.
  rule(
    '[the] ([(oil|compressor)] (sight glass|glass)|[oil] level) (is|was|shows|sits|is sitting) [(about|right|just|over|under|a little (over|under))] [at] [(a|the)] (half|half way|halfway|quarter|three quarters|third|two thirds|middle) [full] [(up|mark|line|glass)]',
    remark,
    { unheard: true, only: (frame) => frame.endsAtPause, examples: ['oil sight glass is half'] },
  ),
];

/** What is not at hand: why a job is not done today. */
export const NOT_AT_HAND_RULES: readonly Rule[] = [
  rule(
    '[(i have|i have got|there is|we have)] no <part> (on (the|my) (truck|van|shelf)|in stock|with me|at the shop) [<clause>]',
    remark,
    { unheard: true, apart: true, examples: ['no heater on the truck'] },
  ),
  rule(
    '(i|we) (do not|did not|does not) (have|carry|stock|bring) (a|an|any|that|the|this|one of those) <part> (on (the|my|this) (truck|van|shelf)|in stock|with me|at the shop|with us) [<clause>]',
    remark,
    { unheard: true, apart: true, examples: ['i do not have a heater on the truck'] },
  ),
  rule(
    '(supply house|[the] (supplier|parts house|counter|distributor|warehouse|branch)|nobody|no one) (does not have|do not have|is out of|has not got|has|is got|have) (it|one|any|them|that|that one) [(in stock|in town|on the shelf|around here|today|till <clause>)]',
    remark,
    { unheard: true, apart: true, examples: ['supply house does not have it'] },
  ),
];
