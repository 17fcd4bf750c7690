import { isAskedWithDo } from '../words/clause-start.ts';
import { isPowerPart, PARTS, type PartId, type WorkKindId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { quantityTerm } from '../../terms/quantities.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { dueIn, stretchIn } from './due.ts';
import { settledFan } from '../words/fans.ts';
import { endsTheList, isTimerOfOurs, nameGoesOn } from '../findings/part-lists.ts';
import { NEEDED_RULES } from './needed.ts';
import { isWorkToDo, reasonIn } from './reason.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { answerableId, partId, spanIn, tagsIn, workId } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { Recommendation } from '../utterance.ts';

type Extras = Pick<Recommendation, 'by' | 'every' | 'reason'>;

/** When, how often and why; `null` where one of them was said and cannot be meant. */
export function extrasIn(tags: Tags, frame: Frame): Extras | null {
  const [due, every, why] = [tagsIn(tags['due']), tagsIn(tags['every']), tagsIn(tags['why'])];
  const by = due && dueIn(due);
  const stretch = every && stretchIn(every);
  const reason = why && reasonIn(why, frame);
  if ((due && !by) || (every && !stretch) || (why && !reason)) return null;
  return {
    ...(by ? { by } : {}),
    ...(stretch ? { every: stretch } : {}),
    ...(reason ? { reason } : {}),
  };
}

const isHaving = (frame: Frame): boolean => {
  const { to } = frame.span;
  const [next = '', second = ''] = frame.wordsOf({ from: to, to: to + 2 }).split(' ');
  if (JOINS.test(next)) return false;
  return !frame.endsAtPause && (isDone(next) || isDone(second)) && !OF_SOMETHING.test(second);
};
const isDone = (word: string): boolean => /(?:ed|en)$/i.test(word) && !NOT_DONE.test(word);
const NOT_DONE = /^(?:need|then|when|even|seen|speed|ten|\w+teen|seven|eleven)$/i;
const JOINS = /^(?:and|but|so|then|now)$/i;
/** "Order a relay pulled the old one" */
const OF_SOMETHING = /^(?:the|a|an|my|it|both|all)$/i;

/** "Needs a drier, set a timer": what stands behind is done to something else. */
const isDoneTo = (frame: Frame): boolean =>
  /\b(?:set|reset|cut|put|shut)$/i.test(frame.wordsOf(frame.span)) &&
  /^(?:a|an|the|my|me|it)$/i.test(wordBehind(frame));

/** "Quote a defrost heater" defrosts nothing. */
const DEFROST_PART = /\bdefrost (?:heater|timer|clock|term|control|board|stat)/i;

export const todo: Means = (tags, frame) => {
  const kind = workId(tags['work']);
  const named = partId(tags['part']);
  const extras = extrasIn(tags, frame);
  if (kind === null || named === null || extras === null || isAskedWithDo(frame)) return null;
  // "No need to replace the fan"
  if (wordBefore(frame) === 'no') return null;
  // "They need to get that drain heated" buys nothing.
  if (kind === 'order' && isHaving(frame)) return null;
  if (nameGoesOn(frame) || isTimerOfOurs(frame) || isDoneTo(frame)) return null;
  if (kind === 'defrost' && DEFROST_PART.test(frame.wordsOf(frame.span))) return null;
  const part = settledFan(named, frame.context);
  return { recommendations: [{ do: kind, part, ...extras, words: frame.wordsOf(frame.span) }] };
};

/** What is worn is "done" by a new one; what is dirty is cleaned. */
export const getDone: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const isCoil = part === 'condenser' || part === 'evaporator' || part === 'drainLine';
  return todo({ ...tags, work: isCoil ? 'clean' : 'replace' }, frame);
};

/** "You should not come back", "a decent return": nobody is to come. */
const isToCome = (frame: Frame, isDated: boolean): boolean =>
  !COMES.test(frame.wordsOf(frame.span)) ||
  startsClause(frame) ||
  LEADS_TO_COME.test(wordBefore(frame)) ||
  (isDated && COMES_BACK.test(frame.wordsOf(frame.span)) && !OF_OTHERS.test(wordBefore(frame)));
const COMES_BACK = /^(?:come|go|check|stop) back\b|^follow up\b/i;
/** "He'll come back tuesday" */
const OF_OTHERS =
  /^(?:i|we|he|she|they|who|it|you|will|would|not|never|could|can|might|may|should|does|did|had|has|have|him|her|them|us|let|make|always|wants?|said|id|ill|youll|theyll|[a-z]+['’][a-z]+)$/i;
const COMES = /^(?:come|be|go|return|follow|check|stop)\b/i;
const LEADS_TO_COME =
  /^(?:and|then|so|to|or|gotta|just|please|better|week|month|today|tomorrow|\w+day)$/i;

export const comeBack: Means = (tags, frame) => {
  if (!isToCome(frame, tags['due'] !== undefined)) return null;
  const extras = extrasIn(tags, frame);
  const words = frame.wordsOf(frame.span);
  return extras && { recommendations: [{ do: COME_BACK_ID, part: null, ...extras, words }] };
};
const COME_BACK_ID: WorkKindId = 'comeBack';

/** "Come back with a new schrader core": what is brought is kept as it was said, its numbers with it. */
const comeBackWith: Means = (tags, frame) => {
  const [back] = comeBack(tags, frame)?.recommendations ?? [];
  const brought = spanIn(tags['clause']);
  if (back === undefined || brought === null) return null;
  return { recommendations: [{ ...back, reason: `with ${frame.wordsOf(brought)}` }] };
};

/** "Come back thursday to put the fan in": as it was said. */
const comeBackFor: Means = (tags, frame) => {
  const [back] = comeBack(tags, frame)?.recommendations ?? [];
  const what = spanIn(tags['clause']);
  if (back === undefined || what === null) return null;
  const aim = frame.wordsOf(what);
  const leads = frame.wordsOf({ from: what.from - 1, to: what.from });
  const isToDo = isWorkToDo(aim) || (back.by !== undefined && leads === 'to');
  return MORE_THAN_ONE.test(aim) || holdsNumber(aim) || !isToDo
    ? null
    : { recommendations: [{ ...back, reason: `to ${aim}` }] };
};

/** What follows may be told for itself. */
const MORE_THAN_ONE = /,|\b(?:and|then|so|but|also)\b/i;

/** "Come back to check the charge in two weeks": what is looked at has a name, so that the day can follow it. */
const comeBackTo: Means = (tags, frame) => {
  const meant = comeBack(tags, frame);
  const watched = watchedIn(tags);
  const [back] = meant?.recommendations ?? [];
  if (back === undefined || watched === null) return null;
  return { recommendations: [{ ...back, reason: `to check ${watched}` }] };
};

/** "Come back Friday and leak check it" */
const comeBackAnd: Means = (tags, frame) => {
  const [back] = comeBack(tags, frame)?.recommendations ?? [];
  const words = frame.wordsOf(frame.span);
  const [, why] =
    /\b(?:and|to) (?!come|be|go)((?:leak check|check|recheck|retest|pressure test|weigh|go over|look over|top off|verify|read|test)\b.*)$/i.exec(
      words,
    ) ?? [];
  return back === undefined || why === undefined
    ? null
    : { recommendations: [{ ...back, reason: `to ${why}` }] };
};

function watchedIn(tags: Tags): string | null {
  const part = partId(tags['part']);
  const quantity = answerableId(tags['quantity'] ?? tags['derived']);
  if (part !== null) return `the ${PARTS[part]}`;
  if (quantity !== null) return `the ${quantityTerm(quantity).name}`;
  const { watched } = tags;
  return typeof watched !== 'string' ? null : watched === 'it' ? 'it' : `the ${watched}`;
}

const SHOULD =
  '(they should|recommend|~they (need to|ought to|have to|will need to|will have to|want to|must)|~we (should|need to)|~you should|~customer (should|needs to)|~the customer (should|needs to)|~i (would|recommend they|recommend that they|suggest they|recommend we)|~recommend (they|to|that they|we)|~[(i|we)] told (them|him|her|the (customer|owner|manager)) [that] (to|they (should|need to|have to))|~somebody should|~someone should|~owner should|~(next|on the next|at the next) (time|visit|trip|call) [(we (should|need to)|they (should|need to)|i (should|need to|will)|somebody should)]|~i recommend|~suggest|~(i would|i|we) (suggest|advise|advised|suggested|recommended) [(that|to)] [(they|them|he|she|we|the (customer|owner))] [(should|to)]|~suggest [that] (they|we)|~advise (them|the customer|they) [to]|~(i|you|they|we|they are|you are|we are|i am|customer is|somebody) [(will|might|would|going to|are going to)] (want|need|have) to|~(might|may) want to|~(you|they|we|customer|the customer) (ought to|better|had better|could use to)|~it would be (good|smart|a good idea) to|~(have|get|tell|ask) (them|him|her|somebody|someone|the (customer|owner)) [(to|(they|he|she) (should|need to|needs to|ought to|have to))]|~(they|we|you|i|somebody) [have] got to|~i would say|~should|~~(need|got|have got) to)';

/** When, how often and why. A finite grammar cannot hear free words, and every word that it hears costs accuracy. */
/** "Checked the fans on the way in", "the fan's coming on". */
const isOnTheWayIn = (frame: Frame): boolean =>
  /^(?:in|out|over|up|down|here|back|home|to|through|off|by|past|on)$/.test(wordBehind(frame));

export const TAIL = '[~<due:due>] [~<every:every>] [~<why:why>]';

const BACK =
  '[((we|they|i|somebody) (should|need to|have to|must)|(i|we) will|will|[(i am|we are)] going to|need to|have to|recommend [(we|i)])] (come back|be back|go back|return|follow up|check back|stop back) [(here|out|again)]';

/** The same recommended of two parts at once. */
const todoBoth: Means = (tags, frame) => {
  const first = todo(tags, frame);
  const second = todo({ ...tags, part: tagsIn(tags['second'])?.['part'] ?? '' }, frame);
  if (first === null || second === null || !endsTheList(frame)) return null;
  return { recommendations: [...(first.recommendations ?? []), ...(second.recommendations ?? [])] };
};

const todoThree: Means = (tags, frame) => {
  const third = todo({ ...tags, part: tagsIn(tags['third'])?.['part'] ?? '' }, frame);
  const both = todoBoth(tags, frame);
  if (third === null || both === null) return null;
  return { recommendations: [...(both.recommendations ?? []), ...(third.recommendations ?? [])] };
};

/** One thing of one part, and another of another. */
const todoEach: Means = (tags, frame) => {
  const first = todo(tags, frame);
  const then = tagsIn(tags['then'])?.['work'] ?? '';
  const second = todo({ ...tags, work: then, part: tagsIn(tags['second'])?.['part'] ?? '' }, frame);
  // "Recommend replacing the compressor, washed the evaporator" did the second.
  if (!/(?:and|,) (?:and )?\w+ing\b/i.test(frame.wordsOf(frame.span))) return null;
  if (first === null || second === null) return null;
  return { recommendations: [...(first.recommendations ?? []), ...(second.recommendations ?? [])] };
};

const whole =
  (kind: WorkKindId): Means =>
  (_tags, frame) => ({
    recommendations: [{ do: kind, part: null, words: frame.wordsOf(frame.span) }],
  });

/** Of the part that was named last, in the sentence itself where it is not called "it". */
export const ofIt =
  (kind?: WorkKindId, inSentence = false): Means =>
  (tags, frame) => {
    const named = kind ?? workId(tags['work']);
    const extras = extrasIn(tags, frame);
    if (named === null || extras === null || isAskedWithDo(frame)) return null;
    const words = frame.wordsOf(frame.span);
    const means = (part: PartId): Meaning => {
      const meant = adviseAbout(part, frame.context);
      if (meant === null) return { remarks: [words] };
      const to = settledFan(meant, frame.context);
      return { recommendations: [{ do: named, part: to, ...extras, words }] };
    };
    return { ofIt: { means, inSentence } };
  };

/** "Killed it and ohmed them, I'll have to order it": what was switched off for the meter's sake is not what is wanted. */
const adviseAbout = (part: PartId, { powerIsOff, foundBad }: Context): PartId | null =>
  powerIsOff && isPowerPart(part) ? foundBad : part;

const IT_NEEDS =
  '([(it|this|they|this one|the unit|unit|system|the system)] (needs|need|could use|wants|is due for|should (have|get))|[i] (recommend|suggest)|they should (get|have)|due for)';

const CHECKED_AGAIN = [
  { what: '<part>', example: 'come back to check the filter dryer in two weeks' },
  { what: '<asked>', example: 'check head again in two weeks' },
  { what: '<watched>', example: 'come back to check the charge in two weeks' },
];

/** What still ought to be done. */
export const RECOMMENDATION_RULES: readonly Rule[] = [
  heardRule(
    `${SHOULD} [~(come back and|come back to|also|probably|just|go ahead and|really)] <todo> <the> <part> ${TAIL}`,
    todo,
    {
      examples: ['they should replace the door gasket'],
    },
  ),
  rule(
    `[(i|i am|we are)] (recommend|recommending|suggest|recommended|advise|would recommend) <working> <the> <part> ${TAIL}`,
    todo,
    {
      examples: ['i recommend replacing the filter dryer'],
    },
  ),
  rule(
    `<the> <part> (should|needs to|need to|has to|ought to|must|will need to|is going to need to|could stand to) [(probably|really|definitely|also|just)] (be|get) <done> ${TAIL}`,
    todo,
    {
      examples: ['the door gasket should be replaced'],
    },
  ),
  heardRule(
    `<the> <part> [~~<spot>] (needs|~need|~wants|~could use|~is due for|~is going to need|~will need) <working> ${TAIL}`,
    todo,
    {
      examples: ['the door gasket needs replacing'],
    },
  ),
  rule(
    `([(it|they|this|unit|the unit|customer|the customer|this one)] (needs|wants|is due for|could use|could stand|(ought to|should|needs to) (have|get)|(is|are) going to (need|want)|will (need|want))|(it|they|this|we|you) [will] need|going to need|[i] recommend|[i] recommended|[i would] recommend|[(i am|we are)] recommending|[it is] time for|due for|quote [(them|him|her|it)] [(on|for)]) (a new|a brand new|a replacement|new|some new|(a|another) [new] set of [new]) <part> ${TAIL}`,
    todo,
    {
      tags: { work: 'replace' },
      examples: ['it needs a new door gasket'],
    },
  ),
  rule('[i] (suggest|advise) (a new|a brand new|new|a replacement) <part> [<due:due>]', todo, {
    unheard: true,
    tags: { work: 'replace' },
    examples: ['suggest a new expansion valve'],
  }),
  rule(
    `[i] (recommend|suggest|recommended|would recommend|advise) (adding|installing|putting in|putting on|a|an) [(a|an)] <part> ${TAIL}`,
    todo,
    {
      tags: { work: 'add' },
      examples: ['recommend a head pressure valve before next winter'],
    },
  ),
  rule(
    '[the] (next|following) (pm|p m|maintenance|service|visit|cleaning|preventive maintenance|check up|checkup) [visit] [(is|will be|should be)] [due] <due:due>',
    comeBack,
    { examples: ['next visit is due in three months'] },
  ),
  rule(
    `(they|you|he|she|customer|this place|we|it) [(really|do)] (need|needs|want|have got to have|could use) <the> <part> <done> ${TAIL} [(in here|here|around here)]`,
    todo,
    { examples: ['they need that condenser cleaned every month in here'] },
  ),
  rule(
    `[(they|you|he|she|customer|this place|we|it|i)] [(really|do)] (need|needs|want|wants|could use) [(a|an|the)] [<count:many>] [new] <part> [(ordering|ordered)] and <the> <part:second> <done> ${TAIL}`,
    todoBoth,
    {
      unheard: true,
      only: startsClause,
      examples: ['they want two gaskets and the hinge replaced'],
    },
  ),
  rule(
    `[(a|the|another)] [(new|replacement)] <part> [(is|are|has been|was|will be)] (on order|ordered|back ordered|on back order|coming|on the way) ${TAIL}`,
    (tags, frame) => (isOnTheWayIn(frame) ? null : todo(tags, frame)),
    { tags: { work: 'order' }, examples: ['new defrost timer is on order'] },
  ),
  rule(
    `(${SHOULD} <todo>|[(i|i am|we)] (recommend|recommending|suggest|advise) <working>) <the> <part> <pause> <the> <part:second> [<pause>] and [both] <the> <part:third> ${TAIL}`,
    todoThree,
    { unheard: true, examples: ['they should replace the dryer, the contactor and the hinge'] },
  ),
  rule(`${SHOULD} <todo> <the> <part> and <the> <part:second>`, todoBoth, {
    examples: ['they should replace the door gasket and the hinge'],
  }),
  rule(
    `[(they|we|customer|the customer|you)] (should|ought to|need to) (have|get) <the> <part> <done> [~~<spot>] ${TAIL}`,
    todo,
    {
      examples: ['they should have the defrost heater replaced'],
    },
  ),
  rule(`<the> <part> (is|are) (due|ready|about due) (to be <done>|for <working>) ${TAIL}`, todo, {
    examples: ['filter dryer is due to be replaced'],
  }),
  rule(
    `(quote|price|estimate) [(them|him|her|it|out)] [(on|for)] <working> <the> <part> ${TAIL}`,
    todo,
    {
      examples: ['quote them on replacing the compressor'],
    },
  ),
  rule(
    `(it|they|this|that|this one|the unit|unit) [(will|is going to|are going to|does|also|probably)] (need|needs) (a|an) [(whole|complete|different|second)] <part> ${TAIL}`,
    todo,
    {
      tags: { work: 'replace' },
      examples: ['it will need a condenser fan motor'],
    },
  ),
  rule(
    `[(i|we|they|you)] [(would|should|need to|ought to|might|better|want to)] [(start)] (budget|plan|planning|budgeting) (for|on) (a|an|the|another) [(new|replacement)] <part> ${TAIL}`,
    todo,
    { tags: { work: 'replace' }, examples: ['i would budget for a compressor next year'] },
  ),
  rule(
    '(quote|price) [(them|him|her|it)] [(on|for|out)] (a|an|the|<count:count>) [new] <part>',
    todo,
    {
      tags: { work: 'replace' },
      examples: ['quote them an evaporator fan motor'],
    },
  ),
  rule(
    `${IT_NEEDS} (a|another) [(good|full|proper|thorough)] (leak (check|search|test))`,
    whole('leakCheck'),
    {
      examples: ['needs a leak check'],
    },
  ),
  rule(
    `(${SHOULD}|recommend|suggest) [(we|they|to)] <todo> <the> <part> [(back|on)] (up|down|in|out|by|to) [(by|to|another)] <amount> ${TAIL}`,
    todo,
    { unheard: true, examples: ['recommend we adjust the thermostat down two degrees'] },
  ),
  rule(
    `[(i|i am|we are|i would|we)] [also] (recommend|recommending|suggest|recommended|advise) <working> <the> <part> (and|<pause> [and]) <working:then> <the> <part:second> ${TAIL}`,
    todoEach,
    {
      unheard: true,
      examples: ['i would recommend cleaning the evaporator and replacing the thermometer'],
    },
  ),
  rule(`${SHOULD} <todo> (it|them) ${TAIL}`, ofIt(), { examples: ['they should replace it'] }),
  rule(`[i] (recommend|suggest|advise|would recommend) <working> (it|them) ${TAIL}`, ofIt()),
  rule(`(it|they|that) (should|needs to|need to|has to|ought to|must) be <done> ${TAIL}`, ofIt(), {
    examples: ['it should be replaced'],
  }),
  rule(`(it|that) (needs|wants|is due for) <working> ${TAIL}`, ofIt(), {
    examples: ['it needs replacing'],
  }),
  rule(
    `(${IT_NEEDS}|[they] need|quote [them]|recommend|suggest) (a new one|a replacement|new ones)`,
    ofIt('replace'),
    { examples: ['needs a new one'] },
  ),
  rule(
    `[(please|just|i|we|i will)] (tell|told|have|get|remind|need) [(them|him|her|the (customer|owner|manager|store))] [(to|they (need|have|ought) to|they should)] (get|have) <the> <part> (done|replaced|changed|taken care of|swapped [out]|looked at) [<pause>] ${TAIL}`,
    getDone,
    { tags: { work: 'replace' }, examples: ['tell them to get the door gasket done'] },
  ),
  rule(`${SHOULD} (keep|get) <the> <part> (clean|cleaned)`, todo, {
    tags: { work: 'clean' },
    examples: ['customer should keep the condenser clean'],
  }),
  rule(`<the> <part> (is|are|has|have) [(about|just about)] had it ${TAIL}`, todo, {
    tags: { work: 'replace' },
    examples: ['the door gasket has about had it'],
  }),
  rule(
    `<the> <part> (is|are) on ((it is|their) last legs|borrowed time|(it is|their) way out) ${TAIL}`,
    todo,
    {
      tags: { work: 'replace' },
      examples: ['the hinges are on their last legs'],
    },
  ),
  rule(`(it needs|needs|they need|it will need) (a|the) <part> <done> ${TAIL}`, todo, {
    examples: ['needs the door gasket replaced'],
  }),
  rule(
    `[(i|we|they)] (want to|need to|will|have to|should|(am|are) going to|got to|have got to) get <the> [(new|another)] <part> (ordered|on order) ${TAIL}`,
    todo,
    { tags: { work: 'order' }, examples: ['i want to get a door gasket ordered'] },
  ),
  rule(
    `[(i|we|they)] [(will|need to|have to|should|going to|am going to|are going to)] order <the> [(new|another|replacement)] <part> ${TAIL}`,
    todo,
    { tags: { work: 'order' }, examples: ['order a door gasket'] },
  ),
  rule('<todo> <the> <part> (<due:due> [<every:every>]|<every:every>) [<why:why>]', todo, {
    examples: ['replace the condenser fan motor within a month'],
  }),
  rule(`${BACK} <due:due> (to|and) <todo> <the> <part> [<why:why>]`, todo, {
    examples: ['come back in two weeks to replace the compressor'],
  }),
  rule(`${BACK} (<due:due> [<why:why>]|<every:every> [<why:why>]|<why:why>)`, comeBack, {
    examples: ['come back in two weeks to check the charge'],
  }),
  rule(`${BACK} [<due:due>] with <clause>`, comeBackWith, {
    examples: ['come back tuesday with a new condenser fan motor'],
  }),
  rule(
    `${BACK} [<due:due>] (and|to) (leak check|check|recheck|retest|pressure test|weigh|go over|look over|top off|verify|read|test) [(it|the (system|unit|joint|flare|braze|charge|readings|numbers|pressures|box|repair|whole (thing|system)))]`,
    comeBackAnd,
    { unheard: true, examples: ['come back friday and leak check it'] },
  ),
  rule(`${BACK} (to|and) <todo> <the> <part> [<why:why>]`, todo, {
    unheard: true,
    only: startsClause,
    examples: ['i will come back and change the dryer'],
  }),
  rule(`${BACK} [<due:due>] (to|and) <clause>`, comeBackFor, {
    unheard: true,
    examples: ['i am going to come back thursday to put the fan in'],
  }),
  rule(`<due:due> ${BACK} [<why:why>]`, comeBack, { examples: ['next tuesday come back'] }),
  ...NEEDED_RULES,
  // A product and a line are a part and a quantity too: a rule each, so that their order decides.
  ...CHECKED_AGAIN.map(({ what, example }) =>
    rule(
      `[${BACK} (to|and)] (check|recheck|look at|read|test) [on] <the> ${what} [again] <due:due>`,
      comeBackTo,
      { examples: [example] },
    ),
  ),
];
