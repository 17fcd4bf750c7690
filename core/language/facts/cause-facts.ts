import { stateOf } from '../findings/state-of.ts';
import { opensSentence, wordBehind } from '../words/clause-start.ts';
import { heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { causeId, partId, tagsIn } from '../slots.ts';
import type { CauseId } from '../../terms/causes.ts';
import type { PartId } from '../../terms/names.ts';
import type { Fact } from '../utterance.ts';
import { nothing } from '../plain-means.ts';

const cause: Means = (tags, frame) => {
  const value = causeId(tags['cause']);
  return value === null ? null : { facts: [asTold(value, frame.wordsOf(frame.span))] };
};

/** "Low" and "short" leave some in it; what is gone, flat or empty leaves none. */
const SOME_LEFT = /\b(?:low|short|down|under ?charged)\b/i;
const asTold = (value: CauseId, words: string): Fact =>
  value === 'undercharge' && !SOME_LEFT.test(words)
    ? { fact: 'cause', value, empty: true, words }
    : { fact: 'cause', value, words };

/** The first is what it is held to be; the other is to blame as well, and not found so again. */
const twoCauses: Means = (tags, frame) => {
  const [one, other] = [tagsIn(tags['one']), tagsIn(tags['other'])].map((named) =>
    causeId(named?.['cause']),
  );
  const words = frame.wordsOf(frame.span);
  return one == null || other == null || one === other
    ? null
    : { facts: [{ fact: 'cause', value: one, words }], remarks: [words] };
};

/** "Turns out it was the run capacitor": a part that is to blame has failed. */
const partToBlame: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const words = frame.wordsOf(frame.span);
  if (part === null || (METERS.has(part) && IS_A.test(words))) return null;
  return { findings: [{ part, state: 'failed', words }] };
};
/** "So it's a tx valve" tells what meters it. */
const METERS: ReadonlySet<PartId> = new Set<PartId>(['expansionValve', 'capillaryTube']);
const IS_A = /^(?:so|then|and) .*\ban? (?!bad|failed|faulty|dead)/i;

/** "The cause was the relay, and the overload": each of them has failed. */
const partsToBlame: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const parts = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].flatMap((of) => {
    const part = partId(of?.['part']);
    return part === null ? [] : [part];
  });
  return parts.length < 2
    ? null
    : { findings: parts.map((part) => ({ part, state: 'failed', words })) };
};
const BAD = '[(bad|failed|faulty|dead|burnt|weak)]';
const AND = '(<pause> [(and|plus|and then|and also)]|and|plus|along with)';

const stateToBlame: Means = (tags, frame) => stateOf('state')(tags, frame);

const WAS = '(is|was|has been)';
/** Said once it is found; "I think it's" is not found yet. */
const FOUND = `(the cause is|~[the] [root] (cause|problem|trouble|culprit|fault|issue|diagnosis) ${WAS}|~(it|that) turned out to be|~turns out (it|that|the problem|the cause) ${WAS}|~i am calling it|~i call it)`;
const BLAMED = `([the] [root] (cause|problem|trouble|culprit|fault|issue|diagnosis) ${WAS}|(it|that) turned out to be|turns out (it|that|the problem|the cause) ${WAS}|what i found was|i am calling (it|that)|i (call|would call) (it|that|this))`;
const ARTICLE = '[(a|~an|~the|~some)]';

/** Thinking aloud keeps nothing. */
const notYetFound = nothing;

const outOfCharge: Means = (_tags, frame) => ({
  facts: [asTold('undercharge', frame.wordsOf(frame.span))],
});

/** Ours: boxes, pans, bottles and tires are empty or flat, too. */
const OTHER_EMPTY =
  /\b(?:box|coolers?|freezers?|cases?|bins?|pans?|drains?|sump|jugs?|bottles?|cylinders?|tanks?|receiver|reservoir|shel(?:f|ves)|carts?|trucks?|tires?|product|stock)\b/i;
const OTHER_PARTS: ReadonlySet<PartId> = new Set<PartId>([
  'door',
  'doorGasket',
  'drainLine',
  'drainPan',
  'filter',
  'product',
  'receiver',
  'sightGlass',
  'waterPump',
  'waterValve',
]);

/** "There is nothing in it": in the system, unless something else that holds things is spoken of. */
const nothingInIt: Means = (tags, frame) => {
  const remarks = { remarks: [frame.wordsOf(frame.span)] };
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if (OTHER_EMPTY.test(before)) return remarks;
  const empty = outOfCharge(tags, frame) ?? remarks;
  const means = (part: PartId): Meaning => (OTHER_PARTS.has(part) ? remarks : empty);
  return { ofIt: { means, inSentence: false, otherwise: empty } };
};

/** Of a sight glass it is told what it shows; of anything else nobody knows what is meant, so the words are kept. */
const lowOrEmpty: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const isEmptyGlass = frame.context.lastPart === 'sightGlass' && /empty$/i.test(words);
  return isEmptyGlass
    ? { facts: [{ fact: 'sightGlass', value: 'empty', words }] }
    : { remarks: [words] };
};

/** The technician's own verdict: it outranks what the readings made likely. */
export const CAUSE_RULES: readonly Rule[] = [
  heardRule(`${FOUND} ${ARTICLE} <cause>`, cause, {
    examples: ['the cause was air in the system', 'turns out it was a restricted drier'],
  }),
  rule(`${FOUND} ${ARTICLE} <cause:one> [<pause>] (and|plus) ${ARTICLE} <cause:other>`, twoCauses, {
    unheard: true,
    examples: ['the cause was air in the system and a dirty condenser'],
  }),
  rule(
    `((it|that|[the] unit|[the] system) ${WAS}|i found|found|we found) ${ARTICLE} <charge>`,
    cause,
    {
      examples: ["it's low on charge", 'it was overcharged'],
    },
  ),
  rule(
    '[(so|then|well|yeah)] (it|that) (must be|has got to be|is got to be|has to be|got to be) (the|a|that) [(bad|dead|burnt|failed|seized)] (<part>|motor) [then]',
    notYetFound,
    { unheard: true, apart: true, examples: ['so it must be the motor'] },
  ),
  rule(
    `(i (think|guess|bet|suspect|am thinking)|maybe|probably|(it|that) (might|may|could) be) [(it|that) (is|was|might be|could be)] ${ARTICLE} <cause>`,
    notYetFound,
    { examples: ["i think it's low on charge"] },
  ),
  rule(
    `[so] (<the> (system|unit) ${WAS} <very> flat|(it|she|<the> (system|unit)) ${WAS} <very> (bone dry|gas flat|dead flat|flat on gas)|<the> system ${WAS} <very> (low|short|empty)|<the> charge ${WAS} <very> (low|short|gone|down)|[there is] no (charge|gas|refrigerant) [left] in (it|there|the system|the unit))`,
    outOfCharge,
    { examples: ['system is low', 'it is bone dry'] },
  ),
  rule(
    `([(there is|there was|it has|it has got|she has|i have|i have got|i got|got)] no pressure [left] [at all] (in|on) (it|her|there|the (system|unit)) [at all]|[(there is|there was|i have|i have got|got)] [absolutely] nothing [left] in the system [at all]|<the> (system|unit) (has|has got|is got|got) [absolutely] nothing [left] in it|(it|she|<the> (system|unit)) lost (all (its|it is|of its|of it is|the|of the)|(its|it is|the) (whole|entire)) (charge|gas|refrigerant)|all (the|of the|its|it is) (charge|gas|refrigerant) [has] (leaked|ran) out)`,
    outOfCharge,
    { unheard: true, examples: ['no pressure in it at all', 'it lost its whole charge'] },
  ),
  rule(
    `([so] (it|she) ${WAS} <very> flat [when i (got|came) (here|in)]|[(there is|there was|i have|i have got|got)] [absolutely] nothing [left] in (it|her) [at all])`,
    nothingInIt,
    {
      unheard: true,
      apart: true,
      examples: ['it is flat', 'there is nothing in it'],
    },
  ),
  rule(
    `(i (think|guess|bet|suspect|am thinking)|maybe|probably|it is probably) (it|she|that) [(is|was|might be|could be)] <very> (low|short|flat|empty|a little low)`,
    notYetFound,
    { examples: ['i think it is low'] },
  ),
  rule('(it|she|that) (is|was) <very> (low|empty)', lowOrEmpty, {
    alone: true,
    examples: ['it is empty'],
  }),
  rule('(so|then|and) (it is|that is) (a|the) [(bad|failed|faulty|dead)] <part>', partToBlame, {
    // "So it's the cap or the motor's tired": not yet known.
    only: (frame) => wordBehind(frame) !== 'or',
    examples: ['so it is the defrost timer'],
  }),
  rule('<charge>', cause, {
    apart: true,
    beforeTold: true,
    only: opensSentence,
    examples: ['low on charge'],
  }),
  rule(
    `([the] [root] (cause|problem|trouble|culprit|fault|issue) ${WAS}|(it|that) turned out to be|turns out (it|that|the problem|the cause) ${WAS}|~~i (call|would call|am calling) (it|that|this)) (a|an|the) [(bad|failed|faulty|dead)] <part>`,
    partToBlame,
    { examples: ['turns out it was the run capacitor', 'the problem was a bad contactor'] },
  ),
  rule(
    `${BLAMED} ${ARTICLE} ${BAD} <part> ${AND} ${ARTICLE} ${BAD} <part:second> [${AND} ${ARTICLE} ${BAD} <part:third>]`,
    partsToBlame,
    { unheard: true, examples: ['the cause was the relay and the overload'] },
  ),
  rule(
    `${BLAMED} (a|an|the) [(badly|partly|really|old)] (stuck|weak|worn [out]|restricted|seized|cracked|broken|blown|sticking|sticky|welded|torn|clogged|leaky|leaking|frozen|swollen|shorted|pitted) <part>`,
    partToBlame,
    { unheard: true, examples: ['the cause was a stuck expansion valve'] },
  ),
  rule(`${BLAMED} (a|an|the) <state> <part>`, stateToBlame, {
    unheard: true,
    examples: ['the cause was a burnt contactor'],
  }),
];
