import { startsClause, wordBehind } from '../words/clause-start.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { boxFacts } from '../slots.ts';
import type { Fact } from '../utterance.ts';

const IT_IS =
  '(it is|this is|that is|this one is|i have|i have got|we have|got|working on|looking at|i am on|we are on|(the|this) (unit|one|box) is)';
const SIZES = '[(big|little|small|long|short|tall|old|older|new|newer|low|main)]';
const FEET = '(foot|footer|ft|feet)';
const RACK = '(rack [(system|case|house|unit)]|parallel rack)';

/** "It's the big open dairy case, twelve footer": what it is, and the name to know it by. */
const sized: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const facts: readonly Fact[] = boxFacts(tags, words);
  const isSized = tags['length'] !== undefined || SIZE.test(words) || NEW_NAME.test(words);
  if (facts[0]?.fact !== 'equipment' || !isSized || wordBehind(frame) === 'door') return null;
  const [, value] = THE.exec(words) ?? [];
  return { facts: value === undefined ? facts : [...facts, { fact: 'unit', value, words }] };
};
const SIZE = /\b(?:big|little|small|long|short|tall|old|older|new|newer|low|main)\b/i;
const NEW_NAME = /\b(?:multi[- ]?deck|coffin|bunker|island)\b/i;
const THE = /^.*?\b(?:the|their|our|your)\s+(.+)$/i;

/** "It's got its own condensing unit on the roof", behind "not a rack" or not. */
const ownUnit: Means = (_tags, frame) => ({
  facts: [{ fact: 'condensingUnit', value: 'remote', words: frame.wordsOf(frame.span) }],
});

const remark: Means = (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] });
const talk: Means = () => ({});

const HAS_OWN =
  '[(and|but)] [(it|this one|that one|the case|the box|case|box|the unit|unit)] (is|is got|has|has got|have|got|runs|is running|is piped|goes) [(got|on|off|off of|to)] [(it is|a|an|their)] own';
const UNIT =
  '[(remote|outdoor|rooftop)] (condensing unit|condenser and compressor|compressor and condenser)';
const PLACE =
  '[right] [(up|down|over|out)] (outside|outdoors|up top|out back|in back|upstairs|downstairs|remote|(on|in|at|behind|by|beside) (the|their) (roof|rooftop|alley|back|building|ground|pad|basement|side|dock|yard|parking lot|wall|machine room))';

/** Cases told by how long they are, and what is cooled by a unit of its own. */
export const SIZED_UNIT_RULES: readonly Rule[] = [
  rule(
    `[${IT_IS}] [(a|an|the|their|our|your|one of the)] ${SIZES} [<number:length> ${FEET}] ${SIZES} <equipment> [[<pause>] [(it is|about)] [(a|an)] <number:length> ${FEET} [(long|one)]]`,
    sized,
    {
      only: startsClause,
      unheard: true,
      examples: ['it is the big open dairy case twelve footer', 'working on the long dairy case'],
    },
  ),
  rule(`${HAS_OWN} ${UNIT} [(that is|sitting|mounted|it is)] ${PLACE}`, ownUnit, {
    only: startsClause,
    unheard: true,
    examples: ['it is got its own condensing unit on the roof'],
  }),
  rule(`own ${UNIT} [(that is|sitting|mounted|it is)] ${PLACE}`, ownUnit, {
    only: startsClause,
    unheard: true,
    examples: ['own condensing unit on the roof'],
  }),
  // What it is not tells nothing of the part that "it" was.
  rule(
    `[(it|this|that|this one|the case)] [is] not (a|on a|on the|part of the|off a|off the) ${RACK}`,
    talk,
    {
      only: startsClause,
      unheard: true,
      examples: ['it is not on a rack'],
    },
  ),
  rule(
    `(it|this|that|this one|the case) is (a|on a|on the|part of the|off a|off the) ${RACK}`,
    remark,
    {
      only: startsClause,
      unheard: true,
      examples: ['it is on a rack'],
    },
  ),
];
