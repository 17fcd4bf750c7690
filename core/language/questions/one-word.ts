import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, isWorkedOut, plain } from './asking.ts';

const itsValue: Means = (tags) => {
  const about = aboutIn(tags);
  return about !== null && isWorkedOut(about) ? ask({ ask: 'value', about }) : null;
};

/** A number that was asked for its name is answered by one; where a reading was asked for, a name is none. */
export const isUnasked = ({ context: { openNumber, asksYes } }: Frame): boolean =>
  openNumber === null && !asksYes;

const BY_ITSELF = { alone: true, unheard: true, only: isUnasked } as const;

/** With both hands in gloves on a valve: one word, and the answer; and how deep a vacuum is to be. */
export const ONE_WORD_QUESTIONS: readonly Rule[] = [
  rule('[(and|the|my)] <quantity> [(now|again|please)]', itsValue, {
    ...BY_ITSELF,
    examples: ['superheat', 'and subcooling'],
  }),
  rule(
    '(what|how (low|far|deep)) (do|should|must|would) (i|we) [(have to|need to|got to|want to)] (pull|pump|take|get) (it|this|her|the (vacuum|system|unit)) [down] to',
    () => ask({ ask: 'target', about: 'vacuum' }),
    { unheard: true, alone: true, examples: ['what do i have to pull it down to'] },
  ),
  rule('(compare|comparison) [(now|again|please)]', plain('beforeAfter'), {
    ...BY_ITSELF,
    examples: ['compare'],
  }),
];
