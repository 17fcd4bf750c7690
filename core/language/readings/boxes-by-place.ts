import { fixed } from './reading-means.ts';
import { type Rule, rule } from '../rule.ts';

const BOX = '(box|cooler|freezer|case|cabinet|fridge|reach in|walk in|prep table|display case)';
const NEAR =
  '(under|by|beside|behind|below|next to|across from|near|over by) (the|their) [(back|front|left|right|main|prep|salad|fry|beer|wine|side)] (counter|bar|line|window|grill|fryer|fryers|register|sink|oven|ovens|door|dish pit|hood|stairs|wall|host stand|coffee (bar|machine)|ice machine|kitchen|office)';
const IN_AISLE = '(in|on|at) (aisle|row|bay|lane) <number:which>';

/** Which of several boxes it is, told between its name and its air. */
export const BOX_BY_PLACE_RULES: readonly Rule[] = [
  rule(
    `[(the|their|that|this)] ${BOX} (${NEAR}|${IN_AISLE}) (is|is at|reads|is reading|is sitting at|is holding|is running) <amount>`,
    fixed('boxTemp'),
    { unheard: true, examples: ['cooler under the counter is forty three'] },
  ),
];
