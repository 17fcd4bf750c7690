import type { PartId } from '../../terms/names.ts';
import { wordBehind } from '../words/clause-start.ts';
import { settledFan } from '../words/fans.ts';
import { stateOf } from '../findings/state-of.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, partId, tagsIn, workId } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';

/** Ours: of what a cold box holds nobody puts in more at once; "added fifty fuses" is a slip or a joke. */
const MOST = 24;

function counted(tags: Tags): boolean {
  const count = numberIn(tagsIn(tags['count'])?.['number']);
  return count !== null && Number.isInteger(count) && count > 0 && count <= MOST;
}

/** What was done to a part of that size, or to so many of them: the words keep the figure. */
const done: Means = (tags, frame) => {
  const did = workId(tags['work']);
  const parts = [partId(tags['part']), partId(tagsIn(tags['second'])?.['part'])];
  const words = frame.wordsOf(frame.span);
  const named = parts.filter((part): part is PartId => part !== null);
  if (did === null || named.length === 0) return null;
  return { work: named.map((part) => ({ did, part: settledFan(part, frame.context), words })) };
};

/** "Got a thirty amp breaker in the truck": nobody put it in. */
const unlessStowed: Means = (tags, frame) =>
  /^(?:the|my|a|stock|hand|order)$/.test(wordBehind(frame)) ? null : done(tags, frame);

const doneToEach: Means = (tags, frame) => (counted(tags) ? done(tags, frame) : null);

/** What such a kit is: a relay and the capacitor that it switches. */
const START_KIT = ['startRelay', 'startCapacitor'] as const;
const startKit: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return { work: START_KIT.map((part) => ({ did: 'add', part, words })) };
};

/** "Put the kit on", where one of the two was found bad. */
const isOfStart = ({ context: { foundBad } }: Frame): boolean =>
  START_KIT.some((part) => part === foundBad);

const KIT_IN = '(put|installed|hung|wired|stuck|added|fitted|hooked up|tied) [(in|on|up)]';
const KIT_THERE = '[(on|in|up|to)] [(it|there|on it|to it|to the compressor|on the compressor)]';

const I =
  '[(i|we|just|i just|have|i have|we have|went ahead and|i went ahead and|also|i also|and|then)]';
// "Its thirty amp breaker" is written for "it's" as often: it is read so.
const THE = '[(a|an|the|that|this|their|my)]';
const A = '[(a|an|the|another|some|my)]';
const NEW = '[(new|brand new|replacement|used|spare|universal|bigger|smaller)]';
const OLD = '[(of the|of my|old|new|bad|worn|more|brand new)]';

/** Parts by their size, and so many of them: "put in a three eighths drier", "replaced two door gaskets". */
export const SIZED_PART_RULES: readonly Rule[] = [
  rule(`${I} <done> ${A} ${NEW} <size> ${NEW} <part>`, done, {
    examples: ['installed a three eighths filter dryer'],
  }),
  rule(`${I} (put|got|stuck) ${A} ${NEW} <size> ${NEW} <part> (in|on) [(it|there)]`, unlessStowed, {
    tags: { work: 'add' },
    examples: ['put a five microfarad run cap in'],
  }),
  rule(
    `${I} (put|got|stuck) [in] ${A} ${NEW} <number:rated> (mike|mikes|mic) ${NEW} <part> [(in|on)] [(it|there)]`,
    unlessStowed,
    {
      tags: { work: 'add' },
      unheard: true,
      examples: ['put a new fifteen mike run cap in'],
    },
  ),
  rule(
    `${I} ${KIT_IN} ${A} ${NEW} ((hard start|relay cap|relay and cap|relay capacitor|start|starting|(three|two|3|2) in (one|1) [(hard start|start)]) kit|hard start) ${KIT_THERE}`,
    startKit,
    { unheard: true, examples: ['installed a hard start kit'] },
  ),
  rule(`${I} ${KIT_IN} (the|that|my) ${NEW} kit ${KIT_THERE}`, startKit, {
    unheard: true,
    only: isOfStart,
    examples: [],
  }),
  rule(
    `${THE} <size> <part> (is|was|are|were|has|had|looks|~just|~keeps|~kept) <very> <state>`,
    // Nothing draws that.
    stateOf('state'),
    { unheard: true, examples: ['the twenty amp breaker is tripped'] },
  ),
  rule(
    `${THE} <part> (is|was) [only] (a|an) <size> [(breaker|fuse|motor|cap|contactor)] [<pause>] [(and|but)] [it] (is|was|has) [got] <very> <state>`,
    stateOf('state'),
    { unheard: true, examples: ['breaker is a twenty amp and it is tripped'] },
  ),
  rule(`${I} <done> <the> <part> with ${A} ${NEW} <size> [(one|<part:new>)]`, done, {
    examples: ['replaced the contactor with a thirty amp'],
  }),
  rule(
    `${I} <done> <the> <part> [[<pause>] and <the> <part:second>] with ${A} ${NEW} ((three|3|two|2) in (one|1)|combo|combination [(start device|kit|one)]|hard start [kit]|start kit|kit|universal [one]|one piece)`,
    done,
    {
      unheard: true,
      examples: ['replaced the start relay and overload with a three in one'],
    },
  ),
  rule(`${I} <done> <number:count> ${NEW} <size> ${NEW} <part>`, doneToEach, {
    unheard: true,
    examples: ['put in three new thirty five amp fuses'],
  }),
  rule(`${I} <done> [(all|the)] <number:count> ${OLD} <part>`, doneToEach, {
    examples: ['replaced two condenser fans'],
  }),
  rule(
    `${I} <done> <number:count> ${OLD} <part> and (<number:more>|<the>) ${OLD} <part:second>`,
    doneToEach,
    { examples: ['put in one contactor and two relays'] },
  ),
  rule(
    `${I} <done> <the> ${NEW} <part> [<pause>] and [(all|also|the)] <number:count> ${OLD} <part:second>`,
    doneToEach,
    { unheard: true, examples: ['replaced the contactor and all three fuses'] },
  ),
];
