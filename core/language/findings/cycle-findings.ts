import type { FindingStateId, PartId } from '../../terms/names.ts';
import { TURNS } from '../words/fans.ts';
import { wordBefore, wordBehind, wordsBehind } from '../words/clause-start.ts';
import { minutesIn } from '../numbers/durations.ts';
import { numberIn, tagsIn } from '../slots.ts';
import { finding, onlyOf } from './finding-of.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';

const UNIT = '(it|unit|the unit|the box|the freezer|the case|the coil|the evaporator)';

/** "Poured a quart in and it runs good" */
const DRAINS: ReadonlySet<PartId> = new Set<PartId>(['drainLine', 'drainPan']);

/** Of what does not turn by itself "it runs" is said of the unit; a drain runs, too. */
export const ofWhatTurns =
  (state: FindingStateId): Means =>
  (_tags, frame) => {
    const of = (part: PartId): Meaning => ({ findings: [finding(part, state, frame)] });
    return {
      ofIt: {
        means: (part) =>
          state === 'running' && DRAINS.has(part)
            ? { findings: [finding('drainLine', 'ok', frame)] }
            : of(TURNS.includes(part) ? part : 'compressor'),
        inSentence: false,
        otherwise: of('compressor'),
      },
    };
  };
const itRuns = ofWhatTurns('running');
/** It tries, and its overload takes it off. */
const humsAndTrips: Means = (_tags, frame) => ({
  findings: [finding('compressor', 'humming', frame), finding('compressor', 'tripped', frame)],
});
/** "Pulled the disconnect, hung my tag on it, and she's dead": so it ought to be. */
const itIsDead: Means = (tags, frame) =>
  SWITCHED_OFF.test(frame.wordsOf({ from: 0, to: frame.span.from }))
    ? {}
    : ofWhatTurns('notRunning')(tags, frame);
const SWITCHED_OFF =
  /\b(?:(?:pulled|opened|killed|cut|threw|shut off|turned off) (?:\S+ ){0,3}(?:disconnect|breaker|isolator|switch|main|power|plug)|(?:turned|shut|switched|flipped) (?:\S+ ){1,4}off|(?:locked|tagged) .*\b(?:out|tagged|disconnect)|my (?:lock|tag))\b/i;

/** "You're wrong, dead wrong" */
const endsAtPause = (frame: Frame): boolean => frame.endsAtPause;

const NOTHING_RUNS =
  '(nothing [(is|at all is)] (running|on|coming on|working|happening)|nothing (runs|comes on|works|turns on)|no signs of life)';
/** What a dead unit lacks, told behind it. */
const NO_LIFE = `(${NOTHING_RUNS}|no lights)`;

/** "We're running out of hope", "we are back on the main street", "it starts in five minutes": nothing turns in it. */
const runsHere = (frame: Frame): boolean => {
  const next = wordBehind(frame);
  // "She's running sixteen on the low side" is of what the gauges show.
  const isFigure = holdsNumber(next) || NEAR.test(wordsBehind(frame, 2)) || isNeedleBackUp(frame);
  return !isFigure && !RUNS_ELSEWHERE.test(next);
};
/** "Suction line's thirty then it's back up": of the needle. */
const isNeedleBackUp = (frame: Frame): boolean =>
  /\bback up$/i.test(frame.wordsOf(frame.span)) &&
  wordBefore(frame).toLowerCase() === 'then' &&
  holdsNumber(frame.wordsOf({ from: 0, to: frame.span.from }));
const NEAR = /^(?:right|only|just|still) (?:around|about|at|near|\d|\w+teen\b|\w+ty\b)/i;
const RUNS_ELSEWHERE =
  /^(?:one|about|out|from|into|to|late|behind|errands|through|instead|away|over|after|ahead|short|in|at|like|around|the|a|an|my|our|your|his|her|their|this|that|me|him|us|them)$/;

/** "On for twenty seconds off for a minute": what starts so often short cycles; the figures stay as they were said. */
const runsAndRests: Means = (tags, frame) => {
  const ranTags = tagsIn(tags['ran']);
  const bare = numberIn(tagsIn(tags['bare'])?.['number']);
  // "Runs two minutes, off five": in the unit before it.
  const restedTags = bare === null ? tagsIn(tags['rested']) : { ...ranTags, number: bare };
  const [ran, rested] = [minutesIn(ranTags), minutesIn(restedTags)];
  if (ran === null || (restedTags !== null && rested === null)) return null;
  const remarks = [frame.wordsOf(frame.span)];
  if (ran + (rested ?? 0) >= LEAST_BETWEEN_STARTS) return { remarks };
  return { ...onlyOf('compressor', 'shortCycling')(tags, frame), remarks };
};
/** Common practice: no more than six starts an hour. */
const LEAST_BETWEEN_STARTS = 10;

const RUNS_FOR =
  '(<the> (compressor|unit)|it|she) ((is|comes|kicks|runs|stays) on|runs) [for] [(about|maybe|like|only)]';
const THEN_OFF =
  '(and|then|and then|but|<pause>) [then] [it] ([(is|back|goes|shuts|cuts|kicks|right back)] off [again]|quits|stops|dies|cuts out|drops out)';

/** How it starts, stops and defrosts, which only one part of it does: that part need not be named. */
export const CYCLE_RULES: readonly Rule[] = [
  rule(
    `((she|<the> unit|we) (is|are) ([(now|back|up and|finally|still)] running|back (on|up)|up and going)|it is (running (now|again|fine|good|great)|up and running|back (on|up|running)|finally running)|(she|it|<the> unit) [just] (fired|fires|started|starts) [right] [back] (up|right up)|(she|it) runs [(now|again|fine|good)]) [(now|again|fine|good|great)]`,
    itRuns,
    { only: runsHere, examples: ['she is running', 'it is up and running'] },
  ),
  rule('(fires|fired|starts|started|took) right (up|off)', itRuns, {
    alone: false,
    examples: ['fires right up'],
  }),
  rule(
    '(it is|it runs|and it|everything is|all) running [~~[<pause>] [and] [it] (sounds|seems|feels) [(real|pretty|nice and)] (good|fine|ok|smooth|quiet|normal|right|healthy)]',
    itRuns,
    { apart: true, examples: ['it is running'] },
  ),
  rule('(and|then) it (runs|starts|is running|takes off|fires up)', itRuns, {
    only: runsHere,
    examples: ['and it runs'],
  }),
  rule(
    `[(it|that|she|this|<the> unit|whole (unit|thing)) is] [(completely|totally|all|stone|dead)] dead [(as a (doornail|rock|hammer))] [<pause> ${NO_LIFE}]`,
    itIsDead,
    { apart: true, beforeTold: true, examples: ['it is dead'] },
  ),
  rule(`<pause> dead [<pause> ${NO_LIFE}]`, itIsDead, { only: endsAtPause }),
  rule(`[(it is|unit is|the unit is)] dead ${NO_LIFE}`, itIsDead, {
    examples: ['dead nothing running'],
  }),
  rule(NOTHING_RUNS, onlyOf('compressor', 'notRunning'), {
    apart: true,
    beforeTold: true,
    examples: ['nothing is running'],
  }),
  rule(
    '(it|unit|the unit|the system) (is short cycling|short cycles|keeps short cycling|was short cycling) [on [the] (high|low) pressure [(switch|control)]]',
    onlyOf('compressor', 'shortCycling'),
    { examples: ['it is short cycling'] },
  ),
  rule(
    `(${UNIT}|she|[the] compressor) (tries|keeps trying|is trying|tried) to start [every (<count:every>|couple|few) (minutes|seconds|minute)] (and|then|but) [(it|then)] (clicks|kicks|trips|shuts|cuts|goes) [right] [back] (off|out)`,
    onlyOf('compressor', 'shortCycling'),
    { examples: ['it tries to start and clicks off'] },
  ),
  rule(
    `(${UNIT}|[the] compressor) (keeps|kept|is) (starting and stopping|stopping and starting|coming on and off|starting up and (stopping|shutting off)|kicking on and off)`,
    onlyOf('compressor', 'shortCycling'),
    { examples: ['compressor keeps starting and stopping'] },
  ),
  rule(
    'short cycling [on [the] (high|low) [pressure] [(switch|control|side)]]',
    onlyOf('compressor', 'shortCycling'),
    {
      examples: ['short cycling on the low pressure'],
    },
  ),
  rule(
    '[(<the> (compressor|unit)|it|she)] [(is|comes|kicks|runs|stays|keeps going|goes)] (on|runs|running) [for] [(about|maybe|like|only)] <duration:ran> [(and|then|and then|but|<pause>)] [(it is|back|goes|shuts|cuts|kicks|right back|then)] off [again] [for] [(about|maybe|like|only)] (<duration:rested>|<count:bare>)',
    runsAndRests,
    { unheard: true, examples: ['it is on for twenty seconds off for a minute'] },
  ),
  rule(
    '[(it|she)] [(runs|is)] <duration:ran> on [(and|then|<pause>)] <duration:rested> off',
    runsAndRests,
    { unheard: true, examples: ['twenty seconds on one minute off'] },
  ),
  rule(
    `${RUNS_FOR} (a second|[(a few|a couple of|a couple)] (seconds|minutes)) ${THEN_OFF}`,
    onlyOf('compressor', 'shortCycling'),
    { unheard: true, examples: ['it comes on for a few seconds and then shuts off'] },
  ),
  rule(`${RUNS_FOR} <duration:ran> ${THEN_OFF}`, runsAndRests, {
    unheard: true,
    examples: ['it comes on for a minute and then shuts off'],
  }),
  rule(
    `${UNIT} (is|is still|went|just went|has gone) (in|into) [a] defrost [(now|right now|again)]`,
    onlyOf('evaporator', 'defrosting'),
    { examples: ['it is in defrost'] },
  ),
  rule(
    `${UNIT} (is|is still|went|just went|has gone) (in|into|in to) [a] defrost [(now|again)] [<pause>] [and] [<the>] [(evap|evaporator)] (fans|fan) [(is|are|just|all|have)] (off|dropped out|dropped off|stopped|shut off|shut down|went off|cut out|quit|kicked off)`,
    // They stand still for it: nothing is found wrong with them.
    (tags, frame) => ({
      ...onlyOf('evaporator', 'defrosting')(tags, frame),
      remarks: [frame.wordsOf(frame.span)],
    }),
    { unheard: true, examples: ['it is in defrost and the fans dropped out'] },
  ),
  rule(
    `[(it|she|defrost|the defrost|the heaters)] [just] (terminated|came out of defrost|kicked out of defrost|ended the defrost) ((on its own|on it is own|by itself|like it should) [[<pause>] (in|after) [about] <duration>]|[<pause>] (in|after) [about] <duration>) [[<pause>] at <amount>]`,
    (tags, frame) => ({
      ...onlyOf('evaporator', 'defrosted')(tags, frame),
      remarks: [frame.wordsOf(frame.span)],
    }),
    { unheard: true, apart: true, examples: ['terminated on its own in twenty minutes'] },
  ),
  rule(
    `(${UNIT} (is|came|just came|has come) out of [the] defrost|[the] defrost (is over|is done|has ended|ended|is finished|terminated|just ended))`,
    onlyOf('evaporator', 'defrosted'),
    { examples: ['it is out of defrost', 'defrost terminated'] },
  ),
  rule(
    `(${UNIT} (is|seems|was) (stuck|hung [up]|locked) in [a] defrost|${UNIT} (will not|does not|did not|never) (come out of|comes out of|came out of|get out of|terminate|end) [the] defrost|[the] defrost (will not|does not|never) (terminate|terminates|end|ends))`,
    onlyOf('evaporator', 'stuckInDefrost'),
    { examples: ['it is stuck in defrost', 'it will not come out of defrost'] },
  ),
  rule(
    '(it|she|the motor|<the> compressor) (just|only) (hums|buzzes|sits there and hums|sits there humming)',
    onlyOf('compressor', 'humming'),
    {
      examples: ['it just hums'],
    },
  ),
  rule(
    `(just hums|hums|humming|buzzes|buzzing) (and|but|then|and then) [(it|then)] (will not (start|turn|run)|does not (start|turn|run)|kicks out|kicking out|trips|tripping|trips out|goes off|shuts off|never starts) [[out] [(on|the)] [(the|it is)] [internal] overload]`,
    onlyOf('compressor', 'humming'),
    { apart: true, examples: ['hums and trips on overload'] },
  ),
  rule(
    `(<the> compressor|it|she|the motor|the unit) (hums|buzzes|just sits there (humming|and hums)|just hums|is humming|hums and hums) (and|but|then|and then) [(it|then)] (will not (start|turn|run|turn over)|does not (start|turn|run)|kicking out on [the] overload|kicks out [on [the] overload]|tripping out|trips [out] [(on (the|it is) overload|the overload|off|again)]|never starts|shuts off|goes off on [the] overload|is not (starting|turning|running))`,
    onlyOf('compressor', 'humming'),
    { examples: ['the compressor hums but will not start', 'compressor hums and trips'] },
  ),
  rule(
    `[(<the> compressor|it|she|the motor|the unit)] [(is|just)] (hums|humming|buzzes|buzzing) [for [about] (a|one|two|three|five|ten|a few|a couple of) (second|seconds|sec)] [<pause>] (and|but|then|and then|and it|and she|but it|then it|and it then) (clicks|clicking|clicked|cuts|cutting|kicks|kicking|drops|dropping|goes) (off|out) [on [(the|its)] [internal] overload] [(again|over and over|every (few|couple of|ten|twenty|thirty|so many) (seconds|minutes))]`,
    humsAndTrips,
    { apart: true, unheard: true, examples: ['compressor hums and then clicks off'] },
  ),
  rule(
    `[(so|and|but|ok)] (it|she|compressor|the compressor) (is getting|has got|has|gets|is seeing) (power|voltage|juice) [(to it|there|all the way|at the terminals)] [<pause>] (and|but) [(it|she)] [(is|it is)] (not (starting|running|turning|coming on|going)|will not (start|run|turn|come on|go)|does not (start|run|turn|come on|go))`,
    ofWhatTurns('notRunning'),
    { unheard: true, examples: ['it is getting power but it will not start'] },
  ),
  rule('(it|she) (started|starts) [(fine|now|again|right away)]', itRuns, {
    only: endsAtPause,
    apart: true,
    unheard: true,
    examples: ['it started'],
  }),
];
