import { type Means, type Rule, rule } from './rule.ts';
import { quantityId } from './slots.ts';

/** What stood there some time ago is not what stands there now, nor what was found on arrival: kept as it was said. */
const remark: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const remarks = [frame.wordsOf(frame.span)];
  return quantity === null ? { remarks } : { remarks, speaksOf: quantity };
};

/** Behind a reading it is of that; alone, "it was ninety five yesterday" may be the weather. */
const remarkOfIt: Means = (tags, frame) => {
  const told = remark(tags, frame) ?? {};
  const isOfAnotherDay = /\b(?:yesterday|last|other day|days|weeks|nights)\b/i.test(
    frame.wordsOf(frame.span),
  );
  return { ofThat: { means: () => told, otherwise: isOfAnotherDay ? {} : told } };
};

const BEFORE_THAT = '[before (i|we) <clause>]';
const AGO = `((<duration:ago>|<number:ago> (days|weeks|nights)|a [little] (while|bit|minute)|a day) ago ${BEFORE_THAT}|earlier [(today|on|this morning)]|this morning|yesterday|last night|last week|the other day|before (i|we) <clause>|when (i|we) left [<clause>])`;
const WAS = '(was|were|had been|used to be|was sitting|was running|was reading|started)';

/** Numbers of the past, told beside the ones of now. */
export const BEFORE_RULES: readonly Rule[] = [
  rule(`[the] <quantity> ${WAS} [(at|up at|down at|around)] <amount> ${AGO}`, remark, {
    examples: ['head was two forty an hour ago'],
  }),
  rule(
    `[(and|but)] [(it|she|they)] ${WAS} [(at|up at|down at|around)] <amount> ${AGO}`,
    remarkOfIt,
    {
      examples: ['it was two forty an hour ago'],
    },
  ),
];
