import { leftToAsk } from '../readings/reading-means.ts';
import { derivedId } from '../slots.ts';
import { MOVING, trend } from './waiting.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, MY } from './asking.ts';

const about =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags) =>
    ask({ ask: kind, about: aboutIn(tags) });

/** What is never read off anything can only be asked for. */
const derivedAlone: Means = (tags) => {
  const derived = derivedId(tags['derived']);
  return derived === null ? null : ask({ ask: 'value', about: derived });
};

/** "TD's ten on the money": what is computed is not recorded, and asked about as a number is. */
const derivedTold: Means = (tags) => (derivedId(tags['derived']) === null ? null : leftToAsk(tags));

const IT = '(it|that|she|this)';
const ON_IT = '[(on|for|with|at) (it|that|this|this one|this unit|here)]';
const RIGHT =
  '[(running|a little|a bit|looking|still|way|really)] (too (high|low|cold|warm|hot|much)|high|low|ok|good|normal|right|all right|alright|where it should be|in range|off|fine|high or low|on target|about right|bad)';

/** The quantity first, and what is asked of it behind a pause: "superheat, what's it at now". */
export const NAMED_FIRST_QUESTIONS: readonly Rule[] = [
  rule(
    `(what (is|are) (it|that|this|they) supposed to be|where (is|are) (it|that|they) supposed to be|what should (it|that|this) (read|run)) [at] (on|for) ${MY} <asked>`,
    about('target'),
    { unheard: true, examples: ['what is it supposed to be on the low side'] },
  ),
  rule(
    `${MY} <asked> <pause> (what|where) (do|should|would) (we|i|you) (want|need|like|expect|see|have|be at|shoot for) [to see] ${ON_IT}`,
    about('target'),
    { examples: [] },
  ),
  rule(
    `${MY} <asked> <pause> (what (am i|are we) (looking|shooting|aiming) for|(what|where) is ${IT} (supposed to be|meant to be)|(what|where) should ${IT} (be|run|sit)) [at] ${ON_IT}`,
    about('target'),
    { examples: [] },
  ),
  rule(
    `${MY} <asked> <pause> (what|where) (is|was) ${IT} [(at|reading|running|sitting|sitting at|running at)] [(now|right now)]`,
    about('value'),
    { examples: [] },
  ),
  rule(
    `[(so|and|then)] ${MY} <asked> [(is|was)] [(at|now|running)] what [(now|then|again|right now)]`,
    about('value'),
    { unheard: true, apart: true, examples: ['so superheat is what now'] },
  ),
  rule(
    `${MY} <asked> <pause> ((is|does) ${IT} [(look|seem)] ${RIGHT}|how (is|does) ${IT} (look|looking|compare))`,
    about('compare'),
    { examples: [] },
  ),
  rule(
    `${MY} <quantity> <pause> ((is|has) ${IT} [(still|been|stopped|started)] (${MOVING}) [(yet|now|any|at all|out|down)]|which (way|direction) is ${IT} (going|moving|headed|heading|trending|drifting)|(what is|how is) ${IT} (doing|trending))`,
    trend,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(the|my|my own)] <derived> (is|of|at|is (running|sitting) [at]|runs) [(a|about a|right at)] <amount> [(on the (money|nose|button|dot)|dead on|spot on|right on|on the head)]`,
    derivedTold,
    { unheard: true, examples: ['td is ten on the money'] },
  ),
  rule(`[(the|my)] <asked>`, derivedAlone, { alone: true, examples: ['compression ratio'] }),
];
