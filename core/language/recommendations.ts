import { settledFan } from './fans.ts';
import { heardRule, type Means, type Rule, rule } from './rule.ts';
import { partId, tagsIn, workId } from './slots.ts';

const todo: Means = (tags, frame) => {
  const kind = workId(tags['work']);
  const named = partId(tags['part']);
  if (kind === null || named === null) return null;
  const part = settledFan(named, frame.context);
  return { recommendations: [{ do: kind, part, words: frame.wordsOf(frame.span) }] };
};

const SHOULD =
  '(they should|recommend|~they (need to|ought to|have to|will need to|will have to|want to|must)|~we (should|need to)|~you should|~customer (should|needs to)|~the customer (should|needs to)|~i (would|recommend they|recommend that they|suggest they|recommend we)|~recommend (they|to|that they|we)|~somebody should|~someone should|~owner should|~(next|on the next|at the next) (time|visit|trip|call) [(we (should|need to)|they (should|need to)|i (should|need to|will)|somebody should)]|~i recommend|~suggest|~(i would|i|we) (suggest|advise|advised|suggested|recommended) [(that|to)] [(they|them|he|she|we|the (customer|owner))] [(should|to)]|~suggest [that] (they|we)|~advise (them|the customer|they) [to]|~(you|they|we|they are|you are|we are|customer is) [(going to|are going to)] (want|need|have) to|~it would be (good|smart|a good idea) to|~should)';

/** The same recommended of two parts at once. */
const todoBoth: Means = (tags, frame) => {
  const first = todo(tags, frame);
  const second = todo({ ...tags, part: tagsIn(tags['second'])?.['part'] ?? '' }, frame);
  if (first === null || second === null) return null;
  return { recommendations: [...(first.recommendations ?? []), ...(second.recommendations ?? [])] };
};

/** What still ought to be done. */
export const RECOMMENDATION_RULES: readonly Rule[] = [
  heardRule(
    `${SHOULD} [~(come back and|come back to|also|probably|just|go ahead and|really)] <todo> <the> <part>`,
    todo,
    {
      examples: ['they should replace the door gasket'],
    },
  ),
  rule('[i] (recommend|suggest|recommended|advise|would recommend) <working> <the> <part>', todo, {
    examples: ['i recommend replacing the filter dryer'],
  }),
  rule('<the> <part> (should|needs to|need to|has to|ought to|must|will need to) be <done>', todo, {
    examples: ['the door gasket should be replaced'],
  }),
  heardRule(
    '<the> <part> (needs|~need|~wants|~could use|~is due for|~is going to need|~will need) <working>',
    todo,
    {
      examples: ['the door gasket needs replacing'],
    },
  ),
  rule(
    '([(it|they|this|unit|the unit|customer|the customer|this one)] (needs|wants|is due for|could use|is going to need|are going to need|will need)|(it|they|this|we|you) [will] need|going to need|[i] recommend|[i] recommended|[i would] recommend|due for|quote [(them|him|her|it)] [(on|for)]) (a new|a brand new|a replacement|new|some new) <part>',
    todo,
    {
      tags: { work: 'replace' },
      examples: ['it needs a new door gasket'],
    },
  ),
  rule(`${SHOULD} <todo> <the> <part> and <the> <part:second>`, todoBoth, {
    examples: ['they should replace the door gasket and the hinge'],
  }),
  rule(
    '[(they|we|customer|the customer|you)] (should|ought to|need to) (have|get) <the> <part> <done>',
    todo,
    {
      examples: ['they should have the defrost heater replaced'],
    },
  ),
  rule('<the> <part> (is|are) (due|ready|about due) (to be <done>|for <working>)', todo, {
    examples: ['filter dryer is due to be replaced'],
  }),
  rule('(quote|price|estimate) [(them|him|her|it|out)] [(on|for)] <working> <the> <part>', todo, {
    examples: ['quote them on replacing the compressor'],
  }),
  rule('<the> <part> (is|are|has|have) (about|just about) had it', todo, {
    tags: { work: 'replace' },
    examples: ['the door gasket has about had it'],
  }),
  rule('<the> <part> (is|are) on (it is|their) last legs', todo, {
    tags: { work: 'replace' },
    examples: ['the hinges are on their last legs'],
  }),
  rule('(it needs|needs|they need|it will need) (a|the) <part> <done>', todo, {
    examples: ['needs the door gasket replaced'],
  }),
];
