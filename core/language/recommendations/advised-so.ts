import { startsClause } from '../words/clause-start.ts';
import { finding } from '../findings/finding-of.ts';
import { TURNS } from '../words/fans.ts';
import { comeBack, extrasIn, getDone, TAIL, todo } from './recommendations.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, tagsIn, workId } from '../slots.ts';
import { settledFan } from '../words/fans.ts';
import { isAskedWithDo } from '../words/clause-start.ts';
import { nameGoesOn } from '../findings/part-lists.ts';
import { THING, WHICH } from '../findings/things-seen.ts';
import type { PartId, WorkKindId } from '../../terms/names.ts';
import type { Recommendation } from '../utterance.ts';
import { remark } from '../plain-means.ts';

const REPLACED = { work: 'replace' } as const;

/** "Write up a quote for two motors and a heater": each is to be replaced, or ordered. */
const doneEach: Means = (tags, frame) => {
  if (isAskedWithDo(frame) || nameGoesOn(frame)) return null;
  const extras = extrasIn(tags, frame);
  if (extras === null) return null;
  const words = frame.wordsOf(frame.span);
  const kind = workId(tags['work']) ?? 'replace';
  const parts = [tags['part'], tagsIn(tags['second'])?.['part'], tagsIn(tags['third'])?.['part']];
  const recommendations = parts
    .map(partId)
    .flatMap((part): readonly Recommendation[] =>
      part === null ? [] : [{ do: kind, part: settledFan(part, frame.context), ...extras, words }],
    );
  return recommendations.length === 0 ? null : { recommendations };
};

/** "Get it washed quarterly": of what was spoken of. */
const doneToIt: Means = (tags, frame) => {
  const kind = workId(tags['work']);
  const extras = extrasIn(tags, frame);
  if (kind === null || extras === null) return null;
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning => ({
    recommendations: [{ do: kind, part: settledFan(part, frame.context), ...extras, words }],
  });
  return { ofIt: { means, inSentence: false, otherwise: { remarks: [words] } } };
};

const whole =
  (kind: WorkKindId): Means =>
  (tags, frame) => {
    const extras = extrasIn(tags, frame);
    const words = frame.wordsOf(frame.span);
    return extras && { recommendations: [{ do: kind, part: null, ...extras, words }] };
  };

/** What senses sits in the wrong place: nobody recommends to move anything else by a few inches. */
const moveIt: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part !== null && SENSING.has(part) ? todo({ ...tags, work: 'adjust' }, frame) : null;
};
const SENSING: ReadonlySet<PartId> = new Set<PartId>([
  ...(['expansionValveBulb', 'sensor', 'temperatureControl', 'defrostTermination'] as const),
  ...(['thermometer', 'controller'] as const),
]);

/** "Bearings are singing": the motor's that was spoken of. */
const bearings: Means = (_tags, frame) => {
  const state = /\b(?:shot|bad|gone|worn|going|dry|out)\b/i.test(frame.wordsOf(frame.span))
    ? 'failed'
    : 'noisy';
  const means = (part: PartId): Meaning | null =>
    TURNS.includes(part) || part.endsWith('Motor')
      ? { findings: [finding(part, state, frame)] }
      : null;
  return { ofIt: { means, inSentence: true, otherwise: { remarks: [frame.wordsOf(frame.span)] } } };
};

const OUGHT =
  '(ought to|should|need to|needs to|have to|has to|had better|better|must|got to|want to|going to have to|will have to)';
const WHO =
  '(they|we|you|i|he|she|customer|the (customer|store|owner|manager)|somebody|someone|this place)';
const HERE =
  '[(in here|around here|in this (kitchen|place|environment|room|heat|dust)|with all (this|that) (grease|dust|flour|lint|heat))]';
const AGAIN =
  '(redone|re done|re pitched|repitched|rerouted|re routed|rerun|re run|resealed|re sealed|rewired|re wired|insulated|re insulated|reworked|replumbed|re hung|rehung|realigned|leveled)';
/** "Fans in the freezer" are the evaporator's by their name. */
const FAN_OF_BOX = /\bfans? in the\b/i;
const INSIDE =
  '[(in|on|at) (the|that|this) (j box|junction box|panel|electrical box|control box|unit|box|case|conduit|reach in|walk in|cooler|freezer)]';
const QUOTE =
  '((write up|work up|put together|get (them|him|her)|send (them|him|her)|give (them|him|her)|do|make|make up|work out|need) (a|the) (quote|price|estimate|proposal) (for|on)|(quote|price) (out|up) [(for|on)])';
const SOME = '[(a|an|the|<nth:many>)] [(new|replacement)]';
const next = (slot: string): string => `([<pause>] and|<pause>) ${SOME} <neededPart:${slot}>`;
const WHICH_ONE =
  'for [the] (door|unit|box|case|cooler|freezer|circuit|system|evaporator) [number] <number:which>';
const DUE_FOR =
  '[(it|she|they|this one|unit|the unit|this)] [(is|are)] [(about|way|also|over)] (due|overdue) for';
/** "Quote him a coil cleaning", "he should be on a coil cleaning twice a year": a job by its name. */
const OFFERS = `(${DUE_FOR}|[(it|this|this one|the unit|${WHO})] [(really|probably|just|also)] (need|needs|could use|wants|want|(should|ought to|need to|needs to|had better) (get|have|be on))|[(i|we)] [(will|would|need to|have to|got to|going to|want to|am going to|ought to|should)] (recommend|suggest|quote|price|sell|offer|quoted|offered|recommended|suggested|sold) [(them|him|her|the (customer|owner|manager))] [(on|for|out)]|[(i|we)] [(will|need to|have to|got to|going to)] ${QUOTE})`;

const NAMED_JOBS = [
  ['clean', '(cleaning|clean|wash|washing|brushing)', 'due for a condenser cleaning'],
  ['repair', '(repair|rebuild)', 'needs a drain line repair'],
  ['adjust', 'adjustment', 'needs a thermostat adjustment'],
] as const;

/** What ought to be done, in the other ways that one colleague tells another. */
export const ADVISED_SO_RULES: readonly Rule[] = [
  rule(
    `[${WHO}] ${OUGHT} [(really|probably|definitely|just|also)] (get|have) <the> [<bit>] <part> <done> ${TAIL} ${HERE}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['ought to get the condenser cleaned every three months in this kitchen'],
    },
  ),
  rule(
    `[${WHO}] ${OUGHT} [(really|probably|also)] (get|have) (a|an|some|another) (new|replacement|different) <part> [(in|on|for) (here|there|it|this|this one)] ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['should get a new light in there'],
    },
  ),
  rule(
    `[${WHO}] ${OUGHT} [(really|probably|just|also)] (get|have) <the> [<bit>] <part> <done> before (it|they|she) (quits|quit|fails|fail|goes|go|dies|die|let us go|gives out|takes out <clause>|gets worse|leaves <clause>)`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['they ought to have that evap fan motor changed before it quits'],
    },
  ),
  rule(`(get|have) <the> <part> <done> (<due:due> [<every:every>]|<every:every>) ${HERE}`, todo, {
    unheard: true,
    only: startsClause,
    examples: ['get the filters washed monthly'],
  }),
  rule(
    `[[${WHO}] ${OUGHT}] (get|have) (it|them|that) <done> (<due:due> [<every:every>]|<every:every>) ${HERE}`,
    doneToIt,
    {
      unheard: true,
      only: startsClause,
      examples: ['get it washed quarterly'],
    },
  ),
  rule(
    '[(and|so|then|ok)] [(i am|we are|i will be|we will be|will be|i am going to be|going to be)] (coming back|heading back|headed back|be back) [(out|here|over)] [first thing] <due:due> [first thing] [<why:why>]',
    comeBack,
    {
      unheard: true,
      only: startsClause,
      examples: ['coming back thursday first thing'],
    },
  ),
  rule(
    `[(i|we)] ${OUGHT} (come back|be back|return|stop back|swing back|check back|swing by) [(here|out|again)] <due:due> [<why:why>]`,
    comeBack,
    {
      unheard: true,
      only: startsClause,
      examples: ['should come back friday and recheck the charge'],
    },
  ),
  rule(
    '(<pause>|and|<pause> [and] the) (bearings|bearing|bushings|bushing) (is|are) <very> (singing|howling|screaming|growling|squealing|noisy|loud|rough|whining|shot|bad|gone|worn|going|dry|going out)',
    bearings,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(i|we|they)] [(need to|have to|should|got to|will|going to|will have to)] order [(a|an|the|another)] [(new|replacement)] <part> ${WHICH_ONE} ${TAIL}`,
    todo,
    { unheard: true, tags: { work: 'order' }, examples: ['order a door heater for door three'] },
  ),
  rule(
    `[(it|they|we|i)] [(will|also)] (need|needs|want|wants) (a|an|another|the) [new] <part> ${WHICH_ONE} ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, examples: ['need a door heater for door three'] },
  ),
  rule(
    `[(i|we|they)] [(need to|have to|should|got to|will|going to|will have to)] order <nth:many> [new] <part> [for (the|that|this) (unit|box|case|<equipment>)] ${TAIL}`,
    todo,
    { unheard: true, tags: { work: 'order' }, examples: ['order two gaskets for the prep table'] },
  ),
  rule(
    `[${WHO}] ${OUGHT} [(really|probably|also)] (get|have|put in|buy) (a|an|some) [(new|replacement|fresh)] <part> ${next('second')} [${next('third')}] ${TAIL}`,
    doneEach,
    {
      unheard: true,
      only: startsClause,
      examples: ['customer ought to get a new contactor and start relay before summer'],
    },
  ),
  rule(
    `[${WHO}] [(${OUGHT}|will|going to|am going to|are going to)] [(also|just)] order ${SOME} <part> ${next('second')} [${next('third')}] ${TAIL}`,
    doneEach,
    { unheard: true, tags: { work: 'order' }, examples: ['i will order a gasket and a hinge'] },
  ),
  rule(`${QUOTE} ${SOME} <part> [${next('second')} [${next('third')}]]`, doneEach, {
    unheard: true,
    examples: ['write up a quote for two evaporator motors and a drain heater'],
  }),
  rule(
    `(it|she|this one|this thing|the unit) (will|is going to) (want|need) (a|an|another|some) [new] <part> ([<pause>] <due:due>|when (i|we|they) open (it|her) up|when (it|she) is opened [up]|eventually|sooner or later)`,
    todo,
    {
      unheard: true,
      tags: REPLACED,
      examples: ['she will want a txv next time it is opened up'],
    },
  ),
  rule(
    `[${WHO}] (${OUGHT} have|needs|need|${OUGHT} get|got to have|gotta have) <the> [<bit>] <part> ${AGAIN} ${TAIL}`,
    todo,
    {
      unheard: true,
      tags: { work: 'repair' },
      examples: ['got to have the drain line re pitched'],
    },
  ),
  rule(
    `<the> <part> ${INSIDE} ((needs|need|should be|has to be|have to be|ought to be|needs to be|needs to get|should get) ${AGAIN}) ${TAIL}`,
    (tags, frame) =>
      tags['part'] === 'fan' && FAN_OF_BOX.test(frame.wordsOf(frame.span))
        ? null
        : todo(tags, frame),
    { unheard: true, tags: { work: 'repair' }, examples: ['wiring in that j box needs redone'] },
  ),
  rule(
    `${OFFERS} (a|an) [new] <part> (change|changeout|change out|replacement|swap) ${TAIL}`,
    todo,
    {
      unheard: true,
      tags: REPLACED,
      examples: ['it is due for a filter dryer change'],
    },
  ),
  ...NAMED_JOBS.map(([work, called, example]) =>
    rule(`${OFFERS} [(a|an)] [(good|regular)] <part> ${called} ${TAIL}`, todo, {
      unheard: true,
      tags: { work },
      examples: [example],
    }),
  ),
  rule(
    `<the> <part> ${OUGHT} (get|be) (done|taken care of|addressed|handled|dealt with) ${TAIL}`,
    getDone,
    { unheard: true, tags: REPLACED, examples: ['contactor should get done asap'] },
  ),
  rule(
    `[(a|another)] ((return|second) (trip|visit) [(is|was)] (needed|required|necessary) (for|on|to (do|replace|install|put in|finish))|[(i|we)] (need to|have to|got to|will have to|going to have to) (come back|return|make a return trip) (for|to do|and do|to put in|to install)) <the> [new] <part> ${TAIL}`,
    todo,
    {
      unheard: true,
      only: startsClause,
      tags: REPLACED,
      examples: ['return trip needed for the defrost heater'],
    },
  ),
  rule(
    '[(the|that|my|those)] (part|parts) (is|are) [(still|all)] (on back order|back ordered|backordered|on order|ordered|coming) [(till|until|through|for|by) [the] (<ordinal>|next week|next month|monday|tuesday|wednesday|thursday|friday|<count:days> (days|weeks))]',
    remark,
    { unheard: true, examples: ['parts are on back order'] },
  ),
  rule(
    `(the|that|this|<the>) leak [repair] ${OUGHT} be (done|fixed|repaired|found and (fixed|repaired)|taken care of|addressed|found) ${TAIL}`,
    whole('repair'),
    { unheard: true, examples: ['leak repair must be done inside of thirty days'] },
  ),
  rule(
    `[(i am|we are|i|i would|i also)] (recommend|recommending|suggest|suggesting|recommended|advise) [(adding|installing|putting (in|on|up)|a|an|new|some|a new)] ${WHICH} ${THING} [(on|for|in|at) <the> (<equipment>|unit|<part>)]`,
    remark,
    { unheard: true, examples: ['recommending strip curtains on the walk in'] },
  ),
  rule(
    `<the> ${WHICH} ${THING} [all] (missing|gone|broken|cracked|bent|torn [up]|falling off|rusted out|busted)`,
    remark,
    { unheard: true, only: startsClause, examples: [] },
  ),
  rule(
    `[${WHO}] [(should|might|could|might want to|would|ought to)] consider (a new|replacing the|replacing|a different|changing the|swapping the) <part> ${TAIL}`,
    todo,
    { unheard: true, tags: REPLACED, only: startsClause, examples: ['consider a new thermostat'] },
  ),
  rule(
    `[${WHO}] [(should|might|could|might want to|would|ought to)] consider (a|an|adding a|adding an|adding|putting in a|installing a) <part> [instead of [the] (off cycle|manual|timed|electric|air|hot gas) [defrost]] ${TAIL}`,
    todo,
    {
      unheard: true,
      tags: { work: 'add' },
      only: startsClause,
      examples: ['consider a time clock instead of off cycle defrost'],
    },
  ),
  rule(
    `[(and|the|so the)] <part> (i|we|they|you) [(will|am|are|would)] (got to|have to|need to|going to have to|going to|had better|should|will) [have to] <todo> ${TAIL}`,
    todo,
    { unheard: true, only: startsClause, apart: true, examples: ['hinge i got to order'] },
  ),
  rule(
    `[[${WHO}] ${OUGHT}] (relocate|move|reposition|remount|rotate) <the> <part> [bulb] (out of|away from|to|off|off of|into|in|over to|closer to) <the> (air stream|airstream|supply air|return air|return|door|wall|discharge air|top of the line|suction line|coil|fan|fans|middle|front|back|other side) [<pause>] [<due:due>]`,
    moveIt,
    {
      unheard: true,
      only: startsClause,
      examples: ['relocate the thermostat bulb out of the air stream when there is time'],
    },
  ),
  rule(
    `<due:due> [<pause>] [[${WHO}] [(should|has to|have to|need to|needs to|will|must|ought to|want to|got to)]] [(go ahead and|just|also)] <todo> <the> <part> [<why:why>]`,
    todo,
    {
      unheard: true,
      only: startsClause,
      examples: ['before the holidays somebody has to swap that crankcase heater'],
    },
  ),
  rule(`do <the> <part> <due:due>`, getDone, {
    unheard: true,
    only: startsClause,
    tags: REPLACED,
    examples: ['do the contactor next trip'],
  }),
  rule(
    '[(the|their|next)] (pm|p m|preventive maintenance|maintenance|cleaning) [(is|should be|comes)] [(due|again|up|up again)] <due:due>',
    comeBack,
    { unheard: true, alone: true, examples: ['pm in october'] },
  ),
  rule(
    '[(best|better|smart|time|they should|you should|i would|should|ought to|it is time)] [to] (budget|plan) [(for|on)] (a|the) (replacement|new (unit|box|machine|system|condensing unit|one)) [<due:due>]',
    remark,
    {
      unheard: true,
      only: startsClause,
      examples: ['best to budget a replacement by next spring'],
    },
  ),
];
