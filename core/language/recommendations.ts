import { heardRule, type Means, type Rule, rule } from './rule.ts';
import { partId, workId } from './slots.ts';

const todo: Means = (tags, frame) => {
  const kind = workId(tags['work']);
  const part = partId(tags['part']);
  if (kind === null || part === null) return null;
  return { recommendations: [{ do: kind, part, words: frame.wordsOf(frame.span) }] };
};

const SHOULD =
  '(they should|recommend|~they (need to|ought to|have to|will need to|will have to|want to|must)|~we (should|need to)|~you should|~customer (should|needs to)|~the customer (should|needs to)|~i (would|recommend they|recommend that they|suggest they|recommend we)|~recommend (they|to|that they|we)|~somebody should|~someone should|~owner should|~next (time|visit) (we should|replace|they should)|~i recommend|~suggest|~should)';

/** What still ought to be done. */
export const RECOMMENDATION_RULES: readonly Rule[] = [
  heardRule(`${SHOULD} <todo> <the> <part>`, todo, {
    examples: ['they should replace the door gasket'],
  }),
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
    '(it needs|needs|they need|this needs|it is (going to|gonna) need|they are (going to|gonna) need|it will need|unit needs|recommend|i recommend) a new <part>',
    todo,
    {
      tags: { work: 'replace' },
      examples: ['it needs a new door gasket'],
    },
  ),
  rule('(it needs|needs|they need|it will need) (a|the) <part> <done>', todo, {
    examples: ['needs the door gasket replaced'],
  }),
];
