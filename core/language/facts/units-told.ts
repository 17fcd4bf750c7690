import { TO_TWELVE } from '../../terms/number-words.ts';
import { startsClause } from '../words/clause-start.ts';
import { unitByName } from './facts.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { boxFacts, equipmentFact, selfContainedAs, tagsIn } from '../slots.ts';

/** "Call this one done" names nothing: a unit is called by its kind, by its number or in capitals. */
const unitOfItsKind: Means = (tags, frame) => {
  const found = unitByName(tags, frame);
  const [fact] = found?.facts ?? [];
  const value = fact?.fact === 'unit' ? fact.value : '';
  return OF_A_KIND.test(value) && !value.startsWith('number') ? found : null;
};
const OF_A_KIND =
  /[A-Z]|\b(?:cooler|freezer|box|case|unit|walk[- ]?in|reach[- ]?in|table|machine|rack|number|system|circuit|bar)\b/;

/** "Call this cooler three"; what "call this case closed" calls so is no unit. */
const unitNumbered: Means = (tags, frame) => {
  const found = unitByName(tags, frame);
  const [fact] = found?.facts ?? [];
  const value = fact?.fact === 'unit' ? fact.value : '';
  return OF_A_KIND.test(value) && ENDS_IN_NUMBER.test(value) && !IS_POINTED_AT.test(value)
    ? found
    : null;
};
/** "This unit" is read with its name behind it. */
const IS_POINTED_AT = /^(?:unit|one|box|case|cooler|freezer|machine) (?!(?:number )?\w+$)/i;
const ENDS_IN_NUMBER = new RegExp(`(?<!\\bpoint )\\b(?:\\d{1,2}|${TO_TWELVE.join('|')})$`, 'i');

const LEAD =
  '[(and|so|ok|now)] [(let us|let is|i will|we will|i am going to|we are going to|going to|i would|just)]';

const remote: Means = (_tags, frame) => ({
  facts: [{ fact: 'condensingUnit', value: 'remote', words: frame.wordsOf(frame.span) }],
});

/** "Roof unit for the produce walk in": what stands up there is the condensing unit, whatever the box is called for. */
const roofUnitFor: Means = (tags, frame) => {
  const facts = boxFacts(tags, frame.wordsOf(frame.span));
  return facts.length === 0 ? null : { facts: [...(remote(tags, frame)?.facts ?? []), ...facts] };
};

/** "Walk-in freezer with a remote condensing unit": the box and what cools it are two facts, in either order. */
const boxAndUnit: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const told = [tagsIn(tags['one']), tagsIn(tags['other'])].map(
    (named) => named && equipmentFact(named, words),
  );
  const facts = told.filter((fact) => fact !== null);
  const isPair = facts.length === 2 && facts[0]?.fact !== facts[1]?.fact;
  return isPair ? { facts } : null;
};

/** "Self contained walk-in cooler" */
const box: Means = (tags, frame) => {
  const facts = boxFacts(tags, frame.wordsOf(frame.span));
  return facts.length === 0 ? null : { facts };
};

const selfContained: Means = (_tags, frame) => ({
  facts: [selfContainedAs(frame.wordsOf(frame.span))],
});
/** Not "is it self contained". */
const isTold = (frame: Frame): boolean =>
  startsClause(frame) &&
  !/\b(?:is|if|are|it)$/i.test(
    frame.wordsOf({ from: Math.max(0, frame.span.from - 1), to: frame.span.from }),
  );

/** "Kitchen walk-in freezer": its kind, and which of the site's it is. */
const inRoom: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const facts = boxFacts(tags, words);
  if (facts.length === 0 || !frame.endsAtPause || !startsClause(frame)) return null;
  return { facts: [...facts, { fact: 'unit', value: words.replace(TO_ROOM, ''), words }] };
};
const TO_ROOM = /^(?:.*?\b(?:is|it's|that's|on|at|have|got)\s+)?(?:(?:a|an|the|their|our)\s+)?/i;

const ROOM =
  '(kitchen|bar|basement|upstairs|downstairs|garage|bakery|banquet|cafeteria|pantry|line|cook line|prep|prep room|storage|back room|dock|dish room|employee|main kitchen|patio|lobby|break room|front|back)';
const IT_IS =
  '(it is|this is|that is|this one is|i have|i have got|we have|got|working on|looking at|i am on|we are on|(the|this) (unit|one|box) is)';
const KIND =
  '[(a|an|the|their|our)] [(older|newer|old|new|big|little|small|brand new)] [<count:doors> (door|doors)]';
const OUT_THERE =
  '[[(that is|which is|sitting|mounted)] [right] [(up|down|over|out)] (outside|outdoors|up top|out back|remote|(on|in|at|behind|by|beside) (the|their) (roof|alley|back|building|top|ground|pad|basement|side|dock|parking lot|wall))]';
const HAS =
  '(with|has|has got|and|on|off|off of|that has|it has|it has got|and it has|running off|runs off|fed by|served by|running on)';
const FOR =
  '(for|on|serving|serves|that serves|it serves|feeds|feeding|that feeds|runs|running|that runs|cooling|to)';

/** Units by the names that they are given, and the one that stands apart by where it stands. */
export const UNIT_TOLD_RULES: readonly Rule[] = [
  rule(
    `[${IT_IS}] ${KIND} <equipment:one> [<pause>] ${HAS} [(a|an|the|it is own|their|it is)] <equipment:other> ${OUT_THERE}`,
    boxAndUnit,
    {
      unheard: true,
      only: startsClause,
      examples: ['it is a walk in freezer with the condensing unit on the roof'],
    },
  ),
  rule(
    `[${IT_IS}] [(a|an|the|their)] <equipment:one> ${OUT_THERE} [<pause>] ${FOR} ${KIND} <equipment:other>`,
    boxAndUnit,
    {
      unheard: true,
      only: startsClause,
      examples: ['remote condensing unit for the walk in freezer'],
    },
  ),
  rule(
    `[${IT_IS}] [(a|an|the|their)] ((roof|rooftop|roof top) unit|unit [up] on the roof) [<pause>] ${FOR} [(a|an|the|their|our)] [(produce|meat|dairy|beer|keg|prep|main|back|front|big|little)] <equipment>`,
    roofUnitFor,
    {
      unheard: true,
      only: startsClause,
      examples: ['roof unit for the produce walk in'],
    },
  ),
  rule(
    `[${IT_IS}] [(a|an|the|their|our)] ${ROOM} [<count:doors> (door|doors)] <equipment>`,
    inRoom,
    {
      unheard: true,
      examples: ['kitchen walk in freezer'],
    },
  ),
  rule(`[${IT_IS}] ${KIND} self contained [<count:doors> (door|doors)] <equipment>`, box, {
    unheard: true,
    only: startsClause,
    examples: ['self contained walk in cooler'],
  }),
  rule(
    `[(not (a remote|remote)|no)] [<pause>] (${IT_IS}|the (case|cooler|freezer|condensing unit|walk in|reach in) is) [(a|all|actually)] self contained [(unit|one|box|job|system)]`,
    selfContained,
    { unheard: true, only: isTold, examples: ['it is self contained'] },
  ),
  rule(
    `[(it is|this is|got|have got|i have got|it has got|working on|looking at|on)] [(the|a)] [remote] condensing unit [(is|sits|sitting|mounted|it is)] [right] (up|out|over|down|outside|outdoors|up (here|there|top)) [(on|in|at|behind|by|beside) (the|their) (roof|alley|back|building|top|ground|basement|side|store|box|walk in|dock|parking lot|wall)]`,
    remote,
    { unheard: true, only: startsClause, examples: ['remote condensing unit up on the roof'] },
  ),
  rule('<pause> [and] self contained', selfContained, { unheard: true, examples: [] }),
  rule('self contained [(unit|system|box)]', selfContained, {
    alone: true,
    only: isTold,
    unheard: true,
    examples: ['self contained'],
  }),
  rule(
    `${LEAD} (call|name|label) (this|that) (one|box|case|cooler|freezer|machine) (<rest>|<clause>)`,
    unitOfItsKind,
    { yields: 'name', unheard: true, examples: ['call this one cooler two'] },
  ),
  rule(`${LEAD} (call|name|label) this (<rest>|<clause>)`, unitNumbered, {
    yields: 'name',
    unheard: true,
    examples: ['call this cooler two'],
  }),
];
