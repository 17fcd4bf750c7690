import { spokenUnit } from '../measure.ts';
import { type Frame, heardCommand, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, spanIn } from '../slots.ts';
import { command } from './command.ts';

type Tags = Parameters<Means>[0];

const timer: Means = (tags, frame) => {
  const number = numberIn(tags['number']);
  const per = tags['per'] === 'hours' ? 60 : 1;
  if (number === null || number <= 0 || spokenUnit(tags['unit']) !== null) return null;
  const minutes = Math.round(number * per * 1000) / 1000;
  return command({ do: 'timer', minutes, about: aboutIn(tags, frame) });
};

/** The name of work that is timed, or whatever else it was said to be for. */
function aboutIn(tags: Tags, frame: Frame): string | null {
  const { timed } = tags;
  if (typeof timed === 'string') return timed;
  const span = spanIn(tags['clause']);
  return span === null ? null : frame.wordsOf(span);
}

const hour: Means = (tags, frame) => timer({ ...tags, number: 60 }, frame);
const halfHour: Means = (tags, frame) => timer({ ...tags, number: 30 }, frame);
const timing =
  (timed: string): Means =>
  (tags, frame) =>
    timer({ ...tags, timed }, frame);

const extend: Means = (tags, frame) => {
  const minutes = numberIn(tags['number']);
  if (minutes === null || minutes <= 0) return null;
  return command({ do: 'extendTimer', minutes, about: aboutIn(tags, frame) });
};

const stop: Means = (tags, frame) => command({ do: 'stopTimer', about: aboutIn(tags, frame) });

const START = '(set|start|give me|~run|~put on|~begin|~set me|~i need|~start me)';
const FOR = '[~(for|on|to) [the] <clause>]';
const FOR_WORDS = '[(for|on) [the] <clause>]';
const MINUTES = '(minutes|~minute|~mins|~min)';

/** What is timed, without the word "timer": only work that is known to be timed, not "ten minutes for lunch". */
const TIMED_WORK: readonly Rule[] = [
  heardRule(
    `[~(put|set|start|run|give me|make it)] <minutes> ${MINUTES} (on|~for) [the] <timed>`,
    timer,
    {
      examples: ['ten minutes on the vacuum hold', 'twenty minutes for the defrost'],
    },
  ),
  rule('[(put|set|start|run|give me)] (an hour|one hour) (on|for) [the] <timed>', hour, {
    examples: ['an hour on the pull down'],
  }),
  rule(
    '[(put|set|start|run|give me)] (half an hour|a half hour) (on|for) [the] <timed>',
    halfHour,
    {
      examples: ['half an hour on the pressure test'],
    },
  ),
  rule(`(give|time) [the] <timed> [for] <number> ${MINUTES}`, timer, {
    examples: ['give the defrost twenty minutes'],
  }),
  rule('[(start|do|begin|run)] [(a|the)] <number> minute <timed>', timer, {
    examples: ['ten minute vacuum hold'],
  }),
  rule(`hold [(the|this)] vacuum [for] <number> ${MINUTES}`, timing('vacuum hold'), {
    examples: ['hold the vacuum for ten minutes'],
  }),
  rule(
    `(let it|let this|let that|give it) settle [(out|down)] [for] <number> ${MINUTES}`,
    timing('settle'),
    {
      examples: ['let it settle for ten minutes'],
    },
  ),
  rule(
    `give it <number> ${MINUTES} to (settle|settle out|settle down|stabilize|level out)`,
    timing('settle'),
    {
      examples: ['give it ten minutes to settle'],
    },
  ),
  rule(`let it run [for] [(another|about)] <number> ${MINUTES}`, timing('run'), {
    examples: ['let it run fifteen minutes'],
  }),
];

/** "Five more minutes" is anybody's, unless something is being timed. */
const extendRunning: Means = (tags, frame) => (frame.context.timing ? extend(tags, frame) : null);

/** More time, and no more of it. */
const RUNNING: readonly Rule[] = [
  heardRule(
    `(add|~put on|~give it) [~another] <minutes> [more] ${MINUTES} [~(to|on|for) [the] <timed>] [~timer]`,
    extend,
    { examples: ['add five minutes', 'add ten minutes to the vacuum'] },
  ),
  rule(`<number> more ${MINUTES} (to|on|for) [the] <timed>`, extend, {
    examples: ['two more minutes on the defrost'],
  }),
  rule(`[give it] (<number> more|another <number>) ${MINUTES}`, extendRunning, { alone: true }),
  heardRule(
    '(cancel|stop|~kill|~clear|~end|~turn off|~shut off|~forget|~drop) [the] [~<timed>] timer [~(on|for) [the] <timed>]',
    stop,
    { examples: ['cancel the timer', 'cancel the defrost timer', 'stop the timer'] },
  ),
];

/** Being told when time is up. */
export const TIMER_COMMANDS: readonly Rule[] = [
  rule('(remind|tell|ping|call) me in an hour [(to|about|for) [the] <clause>]', hour, {
    examples: ['remind me in an hour'],
  }),
  heardCommand(`${START} (a|an|~the) <minutes> minute timer ${FOR}`, timer, {
    examples: ['set a ten minute timer'],
  }),
  rule(`[a] <number> (minute|minutes) timer ${FOR_WORDS}`, timer, {
    examples: ['ten minute timer for the vacuum'],
  }),
  rule(
    `(set|start|run) [(a|the|me a)] timer (for|at|of|to) <number> (minutes|minute) ${FOR_WORDS}`,
    timer,
    { examples: ['set a timer for ten minutes'] },
  ),
  rule(`timer [for] <number> (minutes|minute) ${FOR_WORDS}`, timer, {
    examples: ['timer five minutes'],
  }),
  rule(`(set|start|run|give me) (a|an) <number> hour timer ${FOR_WORDS}`, timer, {
    tags: { per: 'hours' },
    examples: ['set a two hour timer'],
  }),
  rule('(set|start|run) [(a|the)] timer for <number> hours [(for|on) [the] <clause>]', timer, {
    tags: { per: 'hours' },
    examples: ['set a timer for two hours'],
  }),
  rule(`(set|start|run) [(a|the)] timer for (an|one) hour ${FOR_WORDS}`, hour, {
    examples: ['set a timer for an hour'],
  }),
  rule(`(set|start|run) [(a|the)] timer for half an hour ${FOR_WORDS}`, halfHour, {
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
  ...TIMED_WORK,
  ...RUNNING,
];
