import { startsClause } from '../words/clause-start.ts';
import { unitByName } from './facts.ts';
import { type Means, type Rule, rule } from '../rule.ts';

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
const ENDS_IN_NUMBER =
  /(?<!\bpoint )\b(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$/i;

const LEAD =
  '[(and|so|ok|now)] [(let us|let is|i will|we will|i am going to|we are going to|going to|i would|just)]';

const remote: Means = (_tags, frame) => ({
  facts: [{ fact: 'equipment', value: 'remoteCondensingUnit', words: frame.wordsOf(frame.span) }],
});

/** Units by the names that they are given, and the one that stands apart by where it stands. */
export const UNIT_TOLD_RULES: readonly Rule[] = [
  rule(
    `[(it is|this is|got|have got|i have got|it has got|working on|looking at|on)] [(the|a)] [remote] condensing unit [(is|sits|sitting|mounted|it is)] [right] (up|out|over|down|outside|outdoors|up (here|there|top)) [(on|in|at|behind|by|beside) (the|their) (roof|alley|back|building|top|ground|basement|side|store|box|walk in|dock|parking lot|wall)]`,
    remote,
    { unheard: true, only: startsClause, examples: ['remote condensing unit up on the roof'] },
  ),
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
