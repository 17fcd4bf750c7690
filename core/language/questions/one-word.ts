import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, isWorkedOut, plain } from './asking.ts';

const itsValue: Means = (tags) => {
  const about = aboutIn(tags);
  return about !== null && isWorkedOut(about) ? ask({ ask: 'value', about }) : null;
};

/** A number that was asked for its name is answered by one; where a reading was asked for, a name is none. */
export const isUnasked = ({ context: { openNumber, asksYes } }: Frame): boolean =>
  openNumber === null && !asksYes;

/** A system that was tested or is evacuated, and nothing read of it since. */
const isPulledDown = (frame: Frame): boolean =>
  isUnasked(frame) &&
  [frame.context.lastQuantity, frame.context.asked].some(
    (each) => each === 'vacuum' || each === 'testPressure',
  );

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
  // Behind a pressure test or a vacuum nobody need say what is pulled down.
  rule(
    '[(so|ok)] ((what|how (low|far|deep) [down]) (do|should|must|would) (i|we) [(have to|need to|got to|want to)] (get|go|pull|be|take) [(it|this)] [(down|at)] [to]|how (low|far|deep) [down] does (it|this) (have to|need to) (get|go|be) [down] [to]|what (am i|are we) (pulling|going|looking|shooting) [(it|this)] [down] (to|for))',
    () => ask({ ask: 'target', about: 'vacuum' }),
    { ...BY_ITSELF, only: isPulledDown, examples: [] },
  ),
  rule('(compare|comparison) [(now|again|please)]', plain('beforeAfter'), {
    ...BY_ITSELF,
    examples: ['compare'],
  }),
];
