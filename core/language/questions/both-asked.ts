import { aboutIn, isWorkedOut, MY } from './asking.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { tagsIn } from '../slots.ts';
import { isUnasked } from './one-word.ts';
import { isNotTold } from './told-behind.ts';

/** Several quantities in one question are as many questions. */
const aboutEach =
  (kind: 'value' | 'compare'): Means =>
  (tags, frame) => {
    const told = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].filter(
      (each) => each !== null,
    );
    const named = told.map(aboutIn).filter((each) => each !== null);
    if (named.length < told.length || !isNotTold(frame)) return null;
    return { questions: named.map((about) => ({ ask: kind, about })) };
  };

/** "Superheat and subcooling": what is worked out is asked for by its name alone. */
const byName: Means = (tags, frame) => {
  const asked = aboutEach('value')(tags, frame)?.questions ?? [];
  const areWorkedOut = asked.every((each) => each.ask === 'value' && isWorkedOut(each.about));
  return asked.length > 0 && areWorkedOut ? { questions: asked } : null;
};

const NEXT = `(and|<pause> [and]) ${MY} <asked:second> [(and|<pause> [and]) ${MY} <asked:third>]`;

/** Two or three values asked for in one breath. */
export const BOTH_ASKED: readonly Rule[] = [
  rule(
    `(what is|what are|give me|tell me|calculate|read me|show me|i need|get me) ${MY} <asked> ${NEXT} [(now|please|again|right now)]`,
    aboutEach('value'),
    { unheard: true, alone: true, examples: ['give me superheat, subcooling'] },
  ),
  rule(`(what about|how about) ${MY} <asked> ${NEXT}`, aboutEach('compare'), {
    unheard: true,
    alone: true,
    examples: ['what about superheat and subcooling'],
  }),
  rule(`[(and|the|my)] <asked> ${NEXT} [(now|again|please)]`, byName, {
    unheard: true,
    alone: true,
    only: isUnasked,
    examples: ['superheat and subcooling'],
  }),
];
