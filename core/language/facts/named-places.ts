import { startsClause, wordBefore } from '../words/clause-start.ts';
import {
  callBehind,
  closesAsTrade,
  gasBehind,
  LEAD_TO_SITE,
  TRADE,
  unitBehind,
  withoutRoad,
} from '../names/site-names.ts';
import { holdsNumber, holdsReading, isOnlyNumber } from '../words/own-reading.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { boxFacts, equipmentFact, numberIn, refrigerantId, spanIn, tagsIn } from '../slots.ts';
import type { Fact } from '../utterance.ts';

const NUMBERED =
  /\b(?:route|highway|hwy|store|number|exit|street|avenue|pier|gate|building|rt|interstate|#)\.? ?(?:number )?#?[a-z]?-?\d+\b/gi;
const CAPITAL = /^(?:the )?[A-Z0-9]/;
/** "Three Rivers Pizza" */
const CAPITALS = /^[A-Z][a-z]+ [A-Z]/;
const NO_NAME =
  /^(?:supply house|unit|roof|truck|van|panel|compressor|condenser|back|front|house|shop|store|same|other|next|last|bottom|top|end|box|coil|contactor|disconnect|kitchen|bar|counter|register|office|point|moment)\b|\b(?:is|are|was|psi|degrees|hundred|now|volts|amps)\b/i;

/** A name has its capitals behind the words that lead to it, or ends as a trade. */
const mayCall = (frame: Frame): boolean => {
  const words = frame.wordsOf(frame.span);
  return / [A-Z0-9]/.test(words) || closesAsTrade(words);
};
/** Some of the name stands before its trade. */
const mayClose = ({ span }: Frame): boolean => span.from > 0;

/** "I'm at the Blue Anchor Grill", "over at Quick Stop on Route 9": a name by its capitals, or by its trade. */
const siteCalled: Means = (tags, frame) => {
  // "He studied at Harvard": by "at" alone only where a clause begins.
  if (OPENS_WITH_AT.test(frame.wordsOf(frame.span)) && !startsClause(frame)) return null;
  const span = spanIn(tags['clause']);
  const words = span === null ? '' : frame.wordsOf(span);
  const { site: value, call } = callBehind(words.replace(/^the /i, ''));
  const name = withoutRoad(value);
  const isName = CAPITAL.test(words) || (/ /.test(name) && closesAsTrade(words));
  const plain = name.replace(NUMBERED, '');
  const count = value.split(/\s+/).length;
  if (!isName || isOnlyNumber(value)) return null;
  if (count > 7 || NO_NAME.test(value) || (holdsNumber(plain) && !CAPITALS.test(value)))
    return null;
  const { site, unit } = unitBehind(value);
  const kind = unit && equipmentFact(unit, frame.wordsOf(frame.span));
  const named: Fact = { fact: 'site', value: site, words: frame.wordsOf(frame.span) };
  const facts = kind ? [named, kind] : [named];
  return call === null ? { facts } : { facts, remarks: [call] };
};

const OPENS_WITH_AT = /^(?:(?:got|working|over|out|here|back|down|up|on site) )?at /i;

/** "Lincoln Elementary, kitchen": what opens a sentence in capitals and ends as a trade. */
const siteOpening: Means = (_tags, frame) => {
  const { from, to } = frame.span;
  const value = frame.wordsOf({ from: 0, to }).replace(/^the /i, '');
  const before = frame.wordsOf({ from: 0, to: from }).split(/\s+/);
  const isName =
    from > 0 && before.length <= 5 && before.every((word) => /^(?:[A-Z]|and$|of$|&$)/.test(word));
  if (!isName || !frame.endsAtPause || PRONOUN.test(value) || value.includes(','))
    return siteInside(frame);
  return { facts: [{ fact: 'site', value, words: value }] };
};

/** "I'm at Harbor Street Deli head is one ninety": behind "at" the name ends with its trade, and no pause need tell. */
function siteInside(frame: Frame): ReturnType<Means> {
  const { from, to } = frame.span;
  const said = frame.wordsOf({ from: 0, to });
  const value = said.replace(LEAD_TO_SITE, '');
  const next = frame.wordsOf({ from: to, to: to + 1 });
  const count = value.split(/\s+/).length;
  if (from === 0 || value === said || next === '' || count < 2 || count > 5) return null;
  if (GOES_ON.test(next) || NO_NAME.test(value) || holdsNumber(value)) return null;
  return { facts: [{ fact: 'site', value, words: said }] };
}
const GOES_ON = new RegExp(`^(?:on|in|at|by|and|number|'s|is|was|has|near|off|${TRADE})$`, 'i');
const PRONOUN =
  /^(?:I|We|It|The|This|That|You|He|She|They|My|And|So|OK|Okay|Check|Clean|At|In|On|By|From|For|To|With|After|When|If|Please|Leave|Same|Now)\b/;

const NEAR =
  '[(back|over|down|up|out|right|just|here|there)] (by|in|near|behind|next to|beside|across from|under|underneath|below|above|against|off|on|at|past|outside|left of|right of)';
const HERE =
  '[(this is|it is|that is|i am on|i am at|i am looking at|looking at|working on|i am working on|we are on|unit is|the unit is|on|i have got|we have got|got|now|next is|next up is)]';
/** Said of where it stands alone: the kind of it. */
const BOX = '(<equipment>|<count:doors> (door|doors) (<doored>|<equipment>))';
const LOOSE_BOX = '(cooler|freezer|case|unit|box|machine|cabinet|table)';
const MUST_NOT =
  /\b(?:is|are|was|were|has|have|reads|reading|degrees|psi|at (?:about )?\d|running|warm|cold|iced|not|and|trips|tripping|on|with|using)\b|'s\b(?! \w+$)/i;

function unitNamed(frame: Frame, where: string): Fact | null {
  const words = frame.wordsOf(frame.span);
  const value = words.replace(LEAD_IN, '');
  const isPlace =
    where.split(/\s+/).length <= 6 &&
    !MUST_NOT.test(where) &&
    /^(?:the|their|a|my|our|that|to|where)\b/i.test(where);
  return isPlace ? { fact: 'unit', value, words } : null;
}
const LEAD_IN =
  /^(?:.*?\b(?:is|'s|on|at|got|now|up)\s+)?(?:the|a|an|our|their|that|this)\s+(?=\S)|^.*?\b(?:this is|it's|that's)\s+/i;

const STARTS = (frame: Frame): boolean =>
  frame.endsAtPause &&
  (frame.span.from <= 1 || JOIN.test(wordBefore(frame)) || startsClause(frame));
const JOIN = /^(?:and|then|now|so|but)$/i;

/** "The milk cooler by the serving line": what it is, and what it is called. */
const unitAt: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const where = span === null ? '' : frame.wordsOf(span);
  const named = STARTS(frame) ? unitNamed(frame, where) : null;
  if (named?.fact !== 'unit') return null;
  const words = frame.wordsOf(frame.span);
  const { name, gas } = gasBehind(named.value);
  const refrigerant = refrigerantId(gas?.['refrigerant']);
  const kind = equipmentFact(tags, words);
  const unit: Fact = { fact: 'unit', value: name, words };
  const held: readonly Fact[] =
    refrigerant === null ? [] : [{ fact: 'refrigerant', value: refrigerant, words }];
  return { facts: [...(kind === null ? [] : [kind]), unit, ...held] };
};

const ON_PAPER =
  /\b(?:ticket|list|sheet|schedule|work order|invoice|paperwork|board|looks?|feels?|seems?|sounds?|keeps?|still|does|will)\b/i;
/** "Box four at the moment", "box ten in case you wonder" */
const NO_PLACE = /^(?:at )?(?:(?:the|this) (?:moment|minute|time|one|point)|case|least|last)\b/i;
const POINTED_OUT =
  /^(?:(?:this is|it's|it is|that's|that is|i'm (?:on|at)|on|at|now|got|next (?:up )?is|working on) )?(?:the )?/i;

/** Ours: no store numbers more boxes. */
const MOST_UNITS = 99;

/** "Unit four back left corner of the kitchen": which of several, and where. */
const numberedAt: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const words = frame.wordsOf(frame.span);
  const value = words.replace(POINTED_OUT, '');
  const where = span === null ? '' : frame.wordsOf(span);
  const which = numberIn(tagsIn(tags['which'])?.['number']);
  // "Box thirty six forty one on the rail" is two readings.
  if (which === null || which > MOST_UNITS || which < 1 || !Number.isInteger(which)) return null;
  if (NO_PLACE.test(where) || AT_THIS_TIME.test(where)) return null;
  if (!STARTS(frame) || where.split(/\s+/).length > 6 || ON_PAPER.test(where)) return null;
  return MUST_NOT.test(where) || holdsNumber(where)
    ? null
    : { facts: [{ fact: 'unit', value, words }] };
};

/** "Box fifty six right now" */
const AT_THIS_TIME = /^(?:now|away|here)\b/i;

/** "This is unit four" */
const numbered: Means = (tags, frame) => {
  const which = numberIn(tagsIn(tags['which'])?.['number']);
  const words = frame.wordsOf(frame.span);
  if (which === null || which > MOST_UNITS || which < 1 || !Number.isInteger(which)) return null;
  return frame.endsAtPause
    ? { facts: [{ fact: 'unit', value: words.replace(TO_UNIT, ''), words }] }
    : null;
};
const TO_UNIT = /^.*?(?=\bunit\b)/i;

/** "Case twelve dairy rack b": which of a store's cases, and what is kept in it. */
const numberedFor: Means = (tags, frame) => {
  const which = numberIn(tagsIn(tags['which'])?.['number']);
  if (which === null || which > MOST_UNITS || which < 1 || !Number.isInteger(which)) return null;
  if (frame.span.from > 1) return null;
  const words = frame.wordsOf(frame.span);
  return { facts: [{ fact: 'unit', value: words.replace(POINTED_OUT, ''), words }] };
};

const unitStanding: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (!frame.endsAtPause) return null;
  const kind = equipmentFact(tags, words);
  const unit: Fact = { fact: 'unit', value: words.replace(LEAD_IN, ''), words };
  return { facts: [...(kind === null ? [] : [kind]), unit] };
};

const kindOnly: Means = (tags, frame) => {
  const facts = boxFacts(tags, frame.wordsOf(frame.span));
  return facts.length === 0 ? null : { facts };
};

const troubled: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const kind = equipmentFact(tags, words);
  return kind === null || holdsReading(words) ? null : { facts: [kind], memos: [words] };
};

const calledFor: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return holdsReading(words) || !startsClause(frame) ? null : { memos: [words] };
};

/** "Three door, self contained": of the kind of unit that was told before. */
const doorsOfIt: Means = (tags, frame) => {
  const { equipment } = frame.context;
  return equipment === null || frame.span.from > 1 ? null : kindOnly({ ...tags, equipment }, frame);
};

/** "The sandwich reach-in, left hand one under the slicer" */
const unitWhichOne: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  if (!STARTS(frame) && frame.span.from > 1) return null;
  const kind = equipmentFact(tags, words);
  const unit: Fact = { fact: 'unit', value: words.replace(LEAD_IN, ''), words };
  return kind === null || MUST_NOT.test(unit.value) ? null : { facts: [kind, unit] };
};

/** "Just pulled up to the bagel shop on Main, Sunrise Bagels": what is said behind is its name. */
const siteBehind: Means = (tags, frame) => {
  const second = tagsIn(tags['name']);
  const called = second === null ? null : siteCalled(second, frame);
  return called ?? siteCalled(tags, frame);
};

/** Sites by their names. */
export const SITE_NAME_RULES: readonly Rule[] = [
  rule(
    '[(i am|we are|i|we|just|i just|we just)] [just] (pulled up|pulled in|got|made it|rolled up|arrived|rolled in|showed up|~~(pulling (in|up)|rolling (in|up))) [(over|here|up|down|in)] (to|at) <clause> [<pause> <clause:name>]',
    siteBehind,
    { only: mayCall, yields: 'name', examples: ['pulled up to Sunrise Bagels'] },
  ),
  rule(
    '[(i am|we are|i am here|just got|just got here|pulled up|got|working|first (call|stop) is|next (call|stop) is|call is)] [(over|out|here|back|down|up|on site)] at <clause>',
    siteCalled,
    { only: mayCall, yields: 'name', examples: ['over at Quick Stop on Route 9'] },
  ),
  rule(TRADE, siteOpening, { only: mayClose, examples: [] }),
];

/** Units by the places that they are told by. */
export const PLACE_NAME_RULES: readonly Rule[] = [
  rule(
    `${HERE} [(the|a|an|our|their|that)] ${BOX} [<pause>] (the|their) (left|right|top|bottom|middle|far|back|front|other|first|second|big|small|near) [hand] (one|side) [${NEAR} <clause>]`,
    unitWhichOne,
    { examples: ['it is the reach in the left one'] },
  ),
  rule(
    `${HERE} [(the|a|an|our|their|that)] ${BOX} (left|right|top|bottom|middle|far|back|front) hand (one|side) [${NEAR} <clause>]`,
    unitWhichOne,
    { examples: ['it is the reach in left hand one'] },
  ),
  rule(
    `${HERE} [(the|a|an|our|their|that)] ${BOX} <pause> (left|right|top|bottom|middle|far|back|front|other|first|second|big|small|near) [hand] (one|side) [${NEAR} <clause>]`,
    unitWhichOne,
  ),
  rule(`${HERE} (the|our|their|that) (${BOX}|${LOOSE_BOX}) ${NEAR} <clause>`, unitAt, {
    yields: 'name',
    examples: ['the milk cooler by the serving line'],
  }),
  rule(
    '(this is|it is|this one is|i am on|we are on|i am at|we are at|working on|now on|moving to|on to) unit [number] <number:which>',
    numbered,
    { unheard: true, examples: ['this is unit four'] },
  ),
  rule(
    `${HERE} [the] ${LOOSE_BOX} [number] <number:which> [<pause>] ([the] (back|front|left|right|far|middle|top|bottom)|${NEAR}) <clause>`,
    numberedAt,
    { yields: 'name', examples: ['unit four back left corner of the kitchen'] },
  ),
  rule(
    `${HERE} [the] ${LOOSE_BOX} [number] <number:which> [<pause>] ((dairy|deli|meat|produce|seafood|bakery|beer|ice cream) [[on] rack (a|b|c|d)]|[on] rack (a|b|c|d))`,
    numberedFor,
    { unheard: true, examples: ['case twelve dairy rack b'] },
  ),
  rule(
    `${HERE} (the|our|their|that) (${BOX}|${LOOSE_BOX}) (up front|out front|in back|out back|upstairs|downstairs|in front|in the (back|front|basement|kitchen))`,
    unitStanding,
    { examples: ['the display case up front'] },
  ),
  rule(
    `[<the>] (beer cave|cooler|freezer|case|unit|box|machine|fridge|first one|second one|this one) is [(just|only|really)] (a|an|one of (those|them|these)) <equipment> [with <clause>]`,
    kindOnly,
    { examples: ['beer cave is a walk in with two evaporators'] },
  ),
  rule(
    `[(so|what i have is|what we have is|what we have got is|what we got is|it is|this is|i have|we have|we have got|i have got|got|looking at|they have|they have got)] [(a|an|the|their|this)] ${BOX} (that|which|and it) (will not|does not|is not|keeps|quit|stopped|has been|never|can not) <clause>`,
    troubled,
    { examples: ['it is a reach in that will not hold'] },
  ),
  rule(
    `[(i|we|they)] [(got|had|have)] (a|the) (call|complaint|ticket|report) (on|about|for|that) <clause> [<pause> <clause:more>]`,
    calledFor,
    { examples: ['got a call on the walk in'] },
  ),
  rule(
    '[(it is|this is|that is)] [the] <count:doors> (door|doors) (one|unit|model|version)',
    doorsOfIt,
    { unheard: true, apart: true, examples: [] },
  ),
  rule('[it is] [(a|an)] <count:doors> (door|doors)', doorsOfIt, { alone: true }),
  rule('[it is] [(a|an)] <count:doors> (door|doors) <pause>', doorsOfIt),
  rule('[it is] [(a|an)] <count:doors> (door|doors) self contained', doorsOfIt),
];
