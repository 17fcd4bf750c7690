import type { FindingStateId, PartId } from '../../terms/names.ts';
import { FANS, fanPlace, TURNS } from '../words/fans.ts';
import { finding } from './finding-of.ts';
import { stateOf } from './state-of.ts';
import { startsClause, wordBehind } from '../words/clause-start.ts';
import { holdsNumber } from '../words/own-reading.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId, stateId } from '../slots.ts';

const CONTROLS: readonly PartId[] = [
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'controller',
  'fanControl',
  'defrostTermination',
  'doorSwitch',
  'overload',
];

/** "Sight glass is clearing up, yeah it's clear" finds nothing well, but no bubbles. */
export function glassCleared(last: PartId, frame: Frame): Meaning | null {
  const words = frame.wordsOf(frame.span);
  return last === 'sightGlass' && /\bclear(?: now)?$/i.test(words)
    ? { facts: [{ fact: 'sightGlass', value: 'clear', words }] }
    : null;
}

/** "So it's on four oh four A": what it is on is told behind it. */
export const isOnSomething = (frame: Frame): boolean =>
  !frame.endsAtPause && /\bon$/i.test(frame.wordsOf(frame.span)) && holdsNumber(wordBehind(frame));

/** "The control's bad": the one that was spoken of last. */
const itIsControl: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  if (state === null) return null;
  const means = (part: PartId): Meaning | null =>
    CONTROLS.includes(part) ? { findings: [finding(part, state, frame)] } : null;
  return {
    ofIt: { means, inSentence: false, otherwise: { remarks: [frame.wordsOf(frame.span)] } },
  };
};

/** Bearings are a fan's, unless the compressor was spoken of; where they are gone, it has failed. */
const bearings: Means = (tags, frame) => {
  const said = stateId(tags['state']);
  if (said === null || said === 'running') return null;
  const state: FindingStateId = said === 'missing' ? 'failed' : said;
  const of = (part: PartId): Meaning => ({ findings: [finding(part, state, frame)] });
  const last = partId(fanPlace(frame.context) ?? undefined) ?? 'fan';
  // A compressor that was only told to run was not spoken of as what is noisy: the fan that was metered is.
  const means = (part: PartId): Meaning => of(part === 'compressor' ? compressorOr(last) : part);
  return {
    ofIt: {
      means: (part) => (TURNS.includes(part) ? means(part) : of(last)),
      inSentence: false,
      otherwise: of(last),
    },
  };
};

const compressorOr = (last: PartId): PartId => (last === 'fan' ? 'compressor' : last);

/** "It's still turning though": a fan that was spoken of. */
const stillTurns: Means = (_tags, frame) => ({
  ofIt: {
    means: (part) => (FANS.includes(part) ? { findings: [finding(part, 'running', frame)] } : null),
    inSentence: false,
  },
});

const LOOKED_AT =
  '[(just|already|have|did)] (checked|check|looked at|looked over|inspected|tested|went over|eyeballed)';
const THEN =
  '[(on the way in|coming in|walking in|on my way in|earlier|first [thing]|already|when i got here|too)] [<pause>] [(and|so|but)] [that]';
const EACH_IS =
  '(it is|that is|they are|they are all|all|both|(all|both|each|every one|all <count> [of them]|both [of them]|all of them) (is|are))';

/** What is found at a bit or by a kind of part, where only what was spoken of last says which. */
export const LAST_NAMED_RULES: readonly Rule[] = [
  rule(
    '[(but|and|well)] (it|she|they|that one) (is|are) [still] (turning|spinning) [(though|fine|ok|all right|good|for now)]',
    stillTurns,
    { unheard: true, apart: true, examples: [] },
  ),
  rule(
    '[(so|then|and)] (the|that|this) (control|switch|safety) (is|was|has) [got] <very> <state>',
    itIsControl,
    { examples: ['so the control is bad'] },
  ),
  rule(
    '[(so|then|and)] [(that|this)] [(power|rocker|toggle|on off|light)] switch (is|was|has) [got] <very> <state>',
    itIsControl,
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      only: startsClause,
      examples: ['switch is bad'],
    },
  ),
  rule(
    `<the> <part> [<pause>] (i|we) ${LOOKED_AT} (it|that|those|them|these) ${THEN} ${EACH_IS} <very> <state>`,
    stateOf('state'),
    { unheard: true, examples: ['evap fans i checked them on the way in they are running'] },
  ),
  rule(
    `[(i|we)] ${LOOKED_AT} [all] [of] <the> <part> ${THEN} ${EACH_IS} <very> <state>`,
    stateOf('state'),
    { unheard: true, examples: ['looked at the door gaskets on the way in and they are torn'] },
  ),
  rule(
    '<the> [(fan|motor)] (bearing|bearings|bushing|bushings|shaft) (is|are|was|were|sound|sounds) <very> <state>',
    bearings,
    { examples: ['motor bearings are shot'] },
  ),
];
