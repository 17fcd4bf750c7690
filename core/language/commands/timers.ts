import { wordBehind } from '../words/clause-start.ts';
import { minutesIn } from '../numbers/durations.ts';
import { spokenUnit } from '../numbers/measure.ts';
import { type Frame, heardCommand, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, spanIn } from '../slots.ts';
import { command } from './command.ts';

type Tags = Parameters<Means>[0];

const timer: Means = (tags, frame) => {
  const minutes = minutesIn(tags) ?? numberIn(tags['number']);
  if (minutes === null || minutes <= 0 || minutes > LONGEST || spokenUnit(tags['unit']) !== null)
    return null;
  return command({ do: 'timer', minutes, about: aboutIn(tags, frame) });
};

/** A night: "fourteen fifteen minutes" is another number and a quarter of an hour. */
const LONGEST = 12 * 60;

/** The name of work that is timed, or whatever else it was said to be for. */
function aboutIn(tags: Tags, frame: Frame): string | null {
  const { timed } = tags;
  if (typeof timed === 'string') return timed;
  const span = spanIn(tags['clause']);
  // "On the vacuum and remind me"
  return span === null ? null : frame.wordsOf(span).replace(ASKED_BESIDE, '');
}

const ASKED_BESIDE =
  /,? and (?:then )?(?:remind|tell|let|call|wake|beep|buzz|alert) (?:me|us)\b.*$/i;

const timing =
  (timed: string): Means =>
  (tags, frame) =>
    timer({ ...tags, timed }, frame);

const extend: Means = (tags, frame) => {
  const minutes = numberIn(tags['number']);
  if (minutes === null || minutes <= 0) return null;
  return command({ do: 'extendTimer', minutes, about: aboutIn(tags, frame) });
};

/** "Give it twenty minutes" starts a timer where none runs; "another twenty" never does. */
const giveIt: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (frame.context.timing || !/\bgive it\b/i.test(words) || MORE.test(words))
    return extend(tags, frame);
  const timed = tags['timed'] ?? timedByLast(frame);
  return timer({ ...tags, per: 'minutes', ...(timed === null ? {} : { timed }) }, frame);
};
const MORE = /\b(?:another|more|add|put on)\b/i;

/** What is left standing for so long, by what was read last. */
function timedByLast({ context: { lastQuantity } }: Frame): string | null {
  // Whether the pump still pulls is not known: a hold would be judged as one.
  if (lastQuantity === 'vacuum') return 'vacuum';
  return lastQuantity === 'testPressure' ? 'pressure test' : null;
}

/** "Give me ten minutes on that": of what is left standing. */
const thisLong: Means = (tags, frame) => {
  const isPump = /\b(?:pump|vacuum)\b/i.test(frame.wordsOf(frame.span));
  const timed = isPump ? 'vacuum' : timedByLast(frame);
  return timer(timed === null ? tags : { ...tags, timed }, frame);
};

/** "Remind me in five": minutes, as long as so many are waited for. */
const soonEnough: Means = (tags, frame) => {
  const minutes = numberIn(tags['number']);
  return minutes !== null && minutes > MOST_MINUTES && tags['per'] === undefined
    ? null
    : timer(tags, frame);
};
/** Ours. */
const MOST_MINUTES = 120;

const stop: Means = (tags, frame) => command({ do: 'stopTimer', about: aboutIn(tags, frame) });

const START = '(set|start|give me|~run|~put on|~begin|~set me|~i need|~start me)';
const FOR = '[~(for|on|to) [the] <clause>]';
const FOR_WORDS = '[(for|on) [the] <clause>]';
const MINUTES = '(minutes|~minute)';

/** What a bare number counts behind it: these make no minutes of it. */
const COUNTED =
  /^(?:\d.*|minutes?|seconds?|hours?|days?|more|to|and a|point|degrees?|psi|pounds?|of|(?:quarter|half) .*)$/i;
const endsTimed = (frame: Frame): boolean => !COUNTED.test(wordBehind(frame));

/** What is timed, without the word "timer": only work that is known to be timed, not "ten minutes for lunch". */
const TIMED_WORK: readonly Rule[] = [
  rule(
    '[(give me|put|set|start|set me|start me|let us (do|put)|i need|run|put me)] [a] <duration> on the (timer|clock)',
    timer,
    { examples: ['give me fifteen minutes on the timer'] },
  ),
  rule('(start me|set me|time me [for]) [(a|another)] <duration>', timer, {
    alone: true,
    examples: ['set me fifteen minutes'],
  }),
  heardRule(
    `[~(put|set|start|run|give me|make it)] <minutes> ${MINUTES} (on|~for) [the] <timed>`,
    timer,
    {
      examples: ['ten minutes on the vacuum hold', 'twenty minutes for the defrost'],
    },
  ),
  rule('[(put|set|start|run|give me|time|make it)] <duration> (on|for) [the] <timed>', timer, {
    examples: ['an hour on the pull down', 'time ten minutes on the vacuum'],
  }),
  rule(
    '[(a|start a|manual|starting a|put it in|it is in)] [manual] <timed> <pause> (give me|give it|set|start|put|gimme) <duration> [(on|for) (that|it|this)]',
    timer,
    { examples: [] },
  ),
  rule(
    '(time|give) [(the|this|that|my|a)] (standing [pressure] test|standing pressure [test]|nitrogen test) [for] <duration>',
    timing('pressure test'),
    { unheard: true, examples: ['time the standing pressure test for half an hour'] },
  ),
  rule('time (it|this|that) [(for|at)] <duration>', thisLong, {
    unheard: true,
    alone: true,
    examples: ['time it for ten minutes'],
  }),
  rule('(give|time) [(the|this|that|my)] <timed> [for] <duration>', timer, {
    examples: ['give the defrost twenty minutes'],
  }),
  rule('[(start|do|begin|run|set|set me|give me)] [(a|the)] <number> minute <timed>', timer, {
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
  rule(
    '[(going to|we will|i will|i am going to)] (let|leave) (it|them|that|the (coil|evaporator|box)) [to] (thaw|defrost|melt|de ice) [(out|off)] [for] [(another|about|like|maybe)] <duration>',
    timing('defrost'),
    { examples: ['let it thaw for about half an hour'] },
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
    `(add|~put on|give it) [~another] <minutes> [more] ${MINUTES} [~(to|on|for) [the] <timed>] [~timer]`,
    giveIt,
    { examples: ['add five minutes', 'add ten minutes to the vacuum'] },
  ),
  rule('give (it|her|that) <number>', giveIt, { unheard: true, alone: true, examples: [] }),
  rule(
    '(give (it|her|that) another|let (it|her) (go|run) another|another|~~and another) <number> [more]',
    extendRunning,
    {
      unheard: true,
      alone: true,
      examples: [],
    },
  ),
  rule(`<number> more ${MINUTES} (to|on|for) [the] <timed>`, extend, {
    examples: ['two more minutes on the defrost'],
  }),
  rule(
    '(another|put another|add another|give it another) <number> [(minutes|minute)] (on|to) (the|that|my|this) (timer|clock|<timed>)',
    extend,
    { examples: ['another five on the timer'] },
  ),
  rule(
    `[give it] (<number> more|another <number>) ${MINUTES} [(on|to|for) (that|it|this|there)]`,
    extendRunning,
    { alone: true },
  ),
  heardCommand(
    '(cancel|stop|~kill|~clear|~end|~scratch|~turn off|~shut off|~forget|~drop) [the] [~(that|this|my)] [~<timed>] timer [~(on|for) [the] <timed>]',
    stop,
    { examples: ['cancel the timer', 'cancel the defrost timer', 'stop the timer'] },
  ),
];

/** Being told when time is up. */
export const TIMER_COMMANDS: readonly Rule[] = [
  rule(
    `((give (me|us) a (shout|yell|holler|nudge|ping|buzz|call|poke|heads up)|(shout|holler|yell|beep|ping|buzz|poke|nudge) [(at|for)] [(me|us)]|call me) in [about] <duration>) ${FOR_WORDS}`,
    timer,
    { unheard: true, yields: 'purpose', examples: ['give us a shout in half an hour'] },
  ),
  rule(
    '<duration> for the (caps|cap|capacitor|capacitors) to (bleed|discharge|drain) [(off|down|out)] [<pause>] [(go|starting now|start)]',
    timing('capacitors to bleed'),
    { unheard: true, alone: true, examples: ['two minutes for the caps to bleed down go'] },
  ),
  heardCommand(`${START} (a|an|~the) <minutes> minute timer ${FOR}`, timer, {
    yields: 'purpose',
    examples: ['set a ten minute timer'],
  }),
  rule(`[${START}] [(a|an|another|the)] <duration> timer ${FOR_WORDS}`, timer, {
    yields: 'purpose',
    examples: ['ten minute timer for the vacuum', 'set a two hour timer', 'half hour timer'],
  }),
  rule(
    `(set|start|run|put) [(a|the|me a|another)] timer [on] (for|at|of|to|on) <duration> ${FOR_WORDS}`,
    timer,
    { examples: ['set a timer for an hour and a half'] },
  ),
  rule(
    '(set|start|run|put) [(a|the|me a|another)] timer [on] (for|at|of) [about] <number>',
    timer,
    {
      only: endsTimed,
      examples: ['set a timer for twenty'],
    },
  ),
  rule(
    '[(give me|set me|put me|put|start|run|set)] <duration> on (that|this|it) [(and|then|and then)]',
    thisLong,
    {
      unheard: true,
      apart: true,
      examples: ['give me ten minutes on that'],
    },
  ),
  rule('[[the] [vacuum] (pump|vacuum) [is] on] timer [(for|of|at)] <number>', thisLong, {
    unheard: true,
    apart: true,
    beforeTold: true,
    examples: ['timer thirty'],
  }),
  rule(`timer [(for|of|at|on)] <duration> ${FOR_WORDS}`, timer, {
    yields: 'purpose',
    examples: ['timer five minutes', 'timer thirty seconds'],
  }),
  rule(
    '[(set|start|run|put)] [(a|the)] timer (for|on) [the] <timed> [(for|of|at|to)] <duration>',
    timer,
    { examples: ['timer for the vacuum fifteen minutes'] },
  ),
  rule(`(set|start|put) [me] [a] <duration> (on the (clock|timer)|timer) ${FOR_WORDS}`, timer, {
    yields: 'purpose',
    examples: ['put five minutes on the clock'],
  }),
  rule(
    '(remind|tell|ping|call|wake|alert|beep|holler at|yell at|let) me [know] in <duration> [(to|about|for) [the] <clause>]',
    timer,
    { yields: 'purpose', examples: ['remind me in twenty minutes to check the vacuum'] },
  ),
  rule(
    `[(can you|please)] ([start] (timing|time) [the] [<timed>] [for] <duration>|count down <duration>|(wake|get|call|holler at) me [up] in <duration>|(tell me|let me know|holler|yell) when <duration> is (up|over|done|gone)|[(i want to|i am going to|going to|let us)] (run|keep|let|leave) (the|this|my) <timed> [(run|running|go|going|on)] [for] <duration>|[i] (need|want) (a|another|the) timer (for|of|on) <duration> ${FOR_WORDS})`,
    timer,
    {
      apart: true,
      beforeTold: true,
      yields: 'purpose',
      unheard: true,
      examples: ['start timing the vacuum fifteen minutes'],
    },
  ),
  rule('[(start|set|run)] [(the|a)] <timed> timer [(for|at|to)] <duration>', timer, {
    unheard: true,
    examples: ['vacuum timer ten minutes'],
  }),
  rule(
    '(start|set|run|hit) (the|a|my) (clock|timer|watch|stopwatch) <pause> <duration> [<pause> [(for|on) [the]] <timed>]',
    timer,
    { unheard: true, examples: [] },
  ),
  rule(
    '(time me [for]|give me) <duration> (while|until|till|so i can|and see|to see) <clause>',
    timer,
    { yields: 'purpose', unheard: true, examples: ['time me five minutes while it settles'] },
  ),
  ...['<number>', '<duration>'].map((long) =>
    rule(
      `(remind|ping|wake|alert|beep|buzz|nudge|poke|bug|page|holler at|come back to|check back with|get back to|yell at) me [(again|up)] in [about] ${long} [(to|about) [the] <clause>]`,
      soonEnough,
      {
        apart: true,
        yields: 'purpose',
        unheard: true,
        examples: long === '<number>' ? ['remind me in five to check the head'] : [],
      },
    ),
  ),
  rule('(come back|check back|check in) in [about] <duration>', timer, {
    alone: true,
    unheard: true,
    examples: ['come back in ten minutes'],
  }),
  rule('(give|get) me (a|an) <duration> (warning|heads up|shout|holler|call)', timer, {
    unheard: true,
    apart: true,
    examples: ['give me a ten minute warning'],
  }),
  rule(
    '(tell|holler at|let|yell at|remind) me [know] when <number> (is|are) (up|over|gone|done)',
    soonEnough,
    {
      unheard: true,
      apart: true,
      examples: ['tell me when fifteen is up'],
    },
  ),
  rule(
    '(start|set|run|hit) (the|a|my) (clock|timer|watch|stopwatch) (for|on) [(the|this|my)] <timed> [<pause>] [(for|at|give me|it is)] <duration>',
    timer,
    { unheard: true, examples: ['start the clock on the pressure test fifteen minutes'] },
  ),
  rule('(stop|kill|cancel|shut off|turn off|reset) (the|that|my) (clock|stopwatch)', stop, {
    unheard: true,
    alone: true,
    examples: ['stop the clock'],
  }),
  rule('(set|start|run) timer <number> (minutes|minute) [(for|on) [the] <timed>]', timer, {
    unheard: true,
    examples: ['set timer ten minutes for defrost'],
  }),
  rule('[the] timer (off|stop|cancel|done)', stop, {
    alone: true,
    unheard: true,
    examples: ['timer off'],
  }),
  rule('[(a|give it a|doing a)] <number> minute (wait|settle)', timing('settle'), {
    unheard: true,
    alone: true,
    examples: ['ten minute wait'],
  }),
  rule('timer [for] <duration> <timed>', timer, {
    unheard: true,
    alone: true,
    examples: ['timer ten minutes vacuum'],
  }),
  ...TIMED_WORK,
  ...RUNNING,
];
