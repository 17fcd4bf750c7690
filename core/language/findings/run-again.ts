import type { PartId } from '../../terms/names.ts';
import { settledFan, TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { isTimerOfOurs } from './part-lists.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, partId, tagsIn } from '../slots.ts';
import { reading } from '../readings/reading-means.ts';
import { remark } from '../plain-means.ts';

/** "Fired right up": what turns and was spoken of last, else the compressor. */
const itRuns: Means = (_tags, frame) => {
  const runs = (part: PartId): Meaning => ({ findings: [finding(part, 'running', frame)] });
  const means = (part: PartId): Meaning => runs(TURNS.includes(part) ? part : 'compressor');
  return { ofIt: { means, inSentence: false, otherwise: runs('compressor') } };
};

/** "Condenser fans run fine" */
const runFine: Means = (tags, frame) => {
  const part = partId(tags['part']);
  if (part === null || !TURNS.includes(part)) return null;
  return { findings: [finding(settledFan(part, frame.context), 'running', frame)] };
};

/** "Off on overload, I think" is no finding yet: it stands in the note as it was said. */
const offOnOverload: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return tags['unsure'] === true
    ? { remarks: [words] }
    : {
        findings: [
          /\bcompressor\b/i.test(words)
            ? finding('compressor', 'notRunning', frame)
            : finding('overload', 'tripped', frame),
        ],
      };
};

const hotterThan: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : { findings: [finding(part, 'hot', frame)] };
};

/** "Swapped the fan cap, five mike three seventy": the new one's rating; its volts are on the can. */
const swappedCan: Means = (tags, frame) => {
  const place = partId(tags['part']);
  const value = numberIn(tagsIn(tags['rated'])?.['number']);
  if ((place !== 'runCapacitor' && place !== 'startCapacitor') || value === null) return null;
  const words = frame.wordsOf(frame.span);
  const amount = {
    value,
    low: null,
    high: null,
    unit: 'uF',
    hedged: false,
    overlimit: false,
  } as const;
  const rated = reading('ratedCapacitance', amount, frame);
  const at = place === 'startCapacitor' ? place : null;
  return {
    work: [{ did: 'replace', part: place, words }],
    readings: rated === null ? [] : [{ ...rated, place: at }],
  };
};

/** "Fan motor's noisy, not the condenser, the evap": which one, put behind. */
const whichBehind: Means = (tags, frame) => {
  const which = partId(tagsIn(tags['which'])?.['part']);
  const isMotor = /\bmotor\b/i.test(frame.wordsOf(frame.span));
  if (which !== 'condenser' && which !== 'evaporator') return null;
  const part: PartId = isMotor ? `${which}FanMotor` : `${which}Fan`;
  const state = tags['doing'] ?? tags['state'];
  return typeof state === 'string' && state === 'noisy'
    ? { findings: [{ part, state: 'noisy', words: frame.wordsOf(frame.span) }] }
    : null;
};

/** What ends a defrost acts by the coil's warmth: no gauge showed it. */
const actedAt: Means = (tags, frame) =>
  tags['part'] === 'defrostTermination' || tags['part'] === 'temperatureControl'
    ? remark(tags, frame)
    : null;

const THINK = '(i think|i believe|i guess|probably|looks like|maybe|i would say)';
const UF = '(mike|mikes|mic|mics|microfarad|microfarads)';

/** "Set a timer for twenty" is asked of us: the unit's own is known. */
const clockSet: Means = (_tags, frame) => {
  if (isTimerOfOurs(frame)) return null;
  return { work: [{ did: 'adjust', part: 'defrostTimer', words: frame.wordsOf(frame.span) }] };
};

const pulledIn: Means = (_tags, frame) => ({
  findings: [finding('contactor', 'closed', frame)],
});

/** What starts again, what went off by itself, and what was put in with its rating behind it. */
export const RUN_RULES: readonly Rule[] = [
  // Pulled in by its coil; one that was found bad is put in.
  rule('<the> contactor is in', pulledIn, {
    apart: true,
    unheard: true,
    only: ({ context }) => context.foundBad !== 'contactor',
    examples: ['the contactor is in'],
  }),
  rule(
    '[(i|we|just|i just|and|i also|went ahead and|i went ahead and)] (advanced|stepped|rolled|cranked|turned|moved|reset|set) <the> [defrost] (clock|time clock|timer) [(by hand|manually|ahead|forward|back)] [(and|then) (put|set|left|got) it (on|to|for|at) <clause> [<pause> <clause:more>]]',
    clockSet,
    { examples: ['set the clock and put it on four a day'] },
  ),
  rule(
    '[(and|it|she|that|the thing|unit|the unit)] [just] (fired|started|kicked|came|took|popped|lit) [(right|straight)] (up|off|back up|right up|on|back on) [(again|now|by itself)]',
    itRuns,
    { alone: true, examples: ['fired right up'] },
  ),
  rule('<the> <part> run (fine|good|great|ok|smooth|all right|like they should)', runFine, {
    unheard: true,
    examples: ['condenser fans run fine'],
  }),
  rule(
    '[(and|so|but)] (it is|she is|it went|it kicked|<the> compressor is|<the> compressor went|<the> compressor kicked) (off|out|down) on [(the|its|it is|internal|thermal)] [(internal|thermal)] overload',
    offOnOverload,
    { examples: ['it is off on the internal overload'] },
  ),
  rule(
    `[(and|so|but)] (it is|she is|it went|<the> compressor is|<the> compressor went) (off|out|down) on [(the|its|it is)] [(internal|thermal)] overload [<pause>] ${THINK}`,
    offOnOverload,
    { tags: { unsure: true }, examples: ['it is off on overload i think'] },
  ),
  rule('<the> <part> is (hotter than|hot as|as hot as|hot enough to) <clause>', hotterThan, {
    yields: 'purpose',
    examples: ['compressor is hotter than a two dollar pistol'],
  }),
  rule(
    '<the> <part> (spins|turns|moves|swings|rolls) (free|freely|easy|fine|good|by hand) [(by hand|when i spin it|when i push it)] [so it is not (seized|locked|locked up|stuck|frozen)]',
    remark,
    { examples: ['blade spins free by hand so it is not seized'] },
  ),
  rule(
    `[(i|we|just|i just)] (swapped|changed|replaced|put in|installed|put) [(out|in)] <the> [(new|old|bad)] <part> [(out|in)] [<pause>] [(with|for|it is|that is|is|used)] [(a|an)] <number:rated> ${UF} [[(by|at|and|<pause>)] <number:volts> [(volt|volts|vac|v)]]`,
    swappedCan,
    { examples: ['swapped the fan cap with a five mike three seventy'] },
  ),
  rule(
    '<the> <part> <doing> <pause> not <the> <part:not> [(one|fan|side)] <pause> [it is] <the> <part:which> [(one|fan|side|motor)]',
    whichBehind,
  ),
  rule(
    '[<the>] drain [line] (is|runs|drains|was|is running|is draining) <very> (slow|slowly|sluggish|backing up)',
    (_tags, frame) => ({ findings: [finding('drainLine', 'plugged', frame)] }),
    { examples: ['drain is slow'] },
  ),
  rule(
    '[(i|we|just|and)] (pulled|threw|killed|opened|popped|yanked|flipped) <the> (disconnect|main disconnect) [(off|out|open)] [[<pause>] [and] (locked|tagged|locked and tagged) [it] [(out|off|and tagged)]]',
    (_tags, frame) => ({
      work: [{ did: 'isolate', part: 'disconnect', words: frame.wordsOf(frame.span) }],
    }),
    { examples: ['pulled the disconnect and locked it'] },
  ),
  rule(
    '<the> <part> (opened|closed|opens|closes|made|broke|cut out|cut in|let go|terminated|snapped (open|closed)) at <amount> [(on its own|on it is own|like it should|by itself|as it should)]',
    actedAt,
    { examples: ['thermostat opened at fifty five'] },
  ),
  rule(
    '[there is] no (taps|ports|access ports|service ports|access fittings|fittings|schraders) [<clause>]',
    remark,
    {
      examples: ['no taps on it'],
    },
  ),
  rule(
    '[and] (they|he|she|you|we|customer|this place|these people) [really] (should|ought to|need to|needs to|could|want to|have to) (get|be|go) on a (pm|p m|maintenance|service|cleaning) [<clause>] [<pause> <clause:more>]',
    remark,
    { examples: ['they should get on a pm quarterly'] },
  ),
];
