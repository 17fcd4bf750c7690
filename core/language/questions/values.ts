import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, MY } from './asking.ts';

const about =
  (kind: 'target' | 'value' | 'compare'): Means =>
  (tags) =>
    ask({ ask: kind, about: aboutIn(tags) });

const NOW = '[~(now|right now|at|at now|currently|reading|at right now|again)]';

/** What something should be, what it is, and how far apart the two are. */
export const VALUE_QUESTIONS: readonly Rule[] = [
  heardRule(
    `(what|where) should ${MY} <asked> be [~(at|running|sitting at|reading|right now|here|on this|at right now)]`,
    about('target'),
    {
      examples: ['what should head be', 'where should my head be at'],
    },
  ),
  rule(
    `what (should|would) (i|we) (have|see|expect|be seeing|be getting|be looking for|get|look for|want) (for|on|in|at) ${MY} <asked>`,
    about('target'),
    {
      examples: ['what should i see for suction'],
    },
  ),
  rule(
    `(what is|what is a|what is the|give me the|give me a|what would be a|tell me the|and the|what is my) (target|normal|good|right|proper|ideal|correct|expected) <asked>`,
    about('target'),
    {
      examples: ['what is the target suction'],
    },
  ),
  rule(
    `what <asked> (should i|am i supposed to|do i want to|would you) (have|see|expect|want|be at|look for)`,
    about('target'),
    {
      examples: ['what superheat should i have'],
    },
  ),
  rule(`what is ${MY} <asked> supposed to be [at]`, about('target'), {
    examples: ['what is head supposed to be'],
  }),
  rule('what should (it|that|this) be [at]', () => ask({ ask: 'target', about: null }), {
    examples: ['what should it be'],
  }),
  heardRule(`what is ${MY} <asked> ${NOW}`, about('value'), { examples: ['what is my superheat'] }),
  rule(
    `(what are|what was|give me|tell me|how much is|how much|what do i have for|calculate|figure|work out|read me|what have i got for|what did i get for) ${MY} <asked> ${NOW}`,
    about('value'),
    {
      examples: ['give me the subcooling'],
    },
  ),
  heardRule(
    '(how far off am i|am i (high|low)|is that normal)',
    () => ask({ ask: 'compare', about: null }),
    {
      examples: ['how far off am i', 'am i high', 'is that normal'],
    },
  ),
  rule(
    '(how far off (is that|is it|are we|is this)|how is (that|it|this) looking|is (it|this) (normal|right)|is (that|it|this) (ok|good|high|low|in line|about right|too high|too low|all right|where it should be|in range|bad)|how does (that|it) look|how am i doing|am i (close|ok|good|running high|running low|in range|on target|too high|too low|off)|is that right)',
    () => ask({ ask: 'compare', about: null }),
    {
      examples: ['is it normal', 'how does that look'],
    },
  ),
  heardRule(`how far off is ${MY} <asked>`, about('compare'), {
    examples: ['how far off is my condensing'],
  }),
  rule(`how far off (am i|are we) (on|with|for) ${MY} <asked>`, about('compare'), {
    examples: ['how far off am i on suction'],
  }),
  rule(`(how is|how does|how are) ${MY} <asked> [(looking|look|doing|compare)]`, about('compare'), {
    examples: ['how is my suction looking'],
  }),
  rule(
    `is ${MY} <asked> [(too|running|a little|a bit)] (high|low|ok|good|normal|right|all right|where it should be|in range|off|fine)`,
    about('compare'),
    {
      examples: ['is my head too high'],
    },
  ),
];
