import { spokenUnit } from '../measure.ts';
import { heardCommand, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, spanIn } from '../slots.ts';
import { command } from './command.ts';

const timer: Means = (tags, frame) => {
  const number = numberIn(tags['number']);
  const per = tags['per'] === 'hours' ? 60 : 1;
  const span = spanIn(tags['clause']);
  if (number === null || number <= 0 || spokenUnit(tags['unit']) !== null) return null;
  const about = span === null ? null : frame.wordsOf(span);
  return command({ do: 'timer', minutes: Math.round(number * per * 1000) / 1000, about });
};

const hour: Means = (tags, frame) => timer({ ...tags, number: 60 }, frame);
const halfHour: Means = (tags, frame) => timer({ ...tags, number: 30 }, frame);

const START = '(set|start|give me|~run|~put on|~begin|~set me|~i need|~start me)';
const FOR = '[~(for|on|to) [the] <clause>]';

/** Being told when time is up. */
export const TIMER_COMMANDS: readonly Rule[] = [
  rule('(remind|tell|ping|call) me in an hour [(to|about|for) [the] <clause>]', hour, {
    examples: ['remind me in an hour'],
  }),
  heardCommand(`${START} (a|an|~the) <minutes> minute timer ${FOR}`, timer, {
    examples: ['set a ten minute timer'],
  }),
  rule('[a] <number> (minute|minutes) timer [(for|on) [the] <clause>]', timer, {
    examples: ['ten minute timer for the vacuum'],
  }),
  rule(
    '(set|start|run) [(a|the|me a)] timer (for|at|of|to) <number> (minutes|minute) [(for|on) [the] <clause>]',
    timer,
    { examples: ['set a timer for ten minutes'] },
  ),
  rule('timer [for] <number> (minutes|minute) [(for|on) [the] <clause>]', timer, {
    examples: ['timer five minutes'],
  }),
  rule('(set|start|run|give me) (a|an) <number> hour timer [(for|on) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['set a two hour timer'],
  }),
  rule('(set|start|run) [(a|the)] timer for <number> hours [(for|on) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['set a timer for two hours'],
  }),
  rule('(set|start|run) [(a|the)] timer for (an|one) hour [(for|on) [the] <clause>]', hour, {
    examples: ['set a timer for an hour'],
  }),
  rule('(set|start|run) [(a|the)] timer for half an hour [(for|on) [the] <clause>]', halfHour, {
    examples: ['set a timer for half an hour'],
  }),
  rule(
    '(remind|tell|ping|call) me in <number> (minutes|minute) [(to|about|for) [the] <clause>]',
    timer,
    { examples: ['remind me in twenty minutes to check the vacuum'] },
  ),
  rule('(remind|tell) me in <number> (hours|hour) [(to|about|for) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['remind me in two hours'],
  }),
];
