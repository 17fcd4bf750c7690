import { startsClause, wordBefore, wordBehind, wordsBehind } from '../words/clause-start.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact } from '../slots.ts';
import { WHERE } from './unit-description.ts';

/** "The compressor's outside and noisy": what goes on saying how it is tells more than where it stands. */
const ENDS = /^(?:and|but) (?:it|its|it's|the|with|an?|on|there|has)\b/i;
const ENDS_IN_ONE = /^(?:|with|on|it|has)$/;

const remote: Means = (_tags, frame) =>
  frame.endsAtPause || ENDS.test(wordsBehind(frame, 2)) || ENDS_IN_ONE.test(wordBehind(frame))
    ? { facts: [{ fact: 'condensingUnit', value: 'remote', words: frame.wordsOf(frame.span) }] }
    : null;

/** Not "is the compressor outside". */
const isAsked = (frame: Frame): boolean =>
  /\b(?:is|are|was|were|isn't)(?: (?:the|their|its|a))?$/i.test(
    frame.wordsOf({ from: 0, to: frame.span.from }),
  );

/** Behind what else is told of the unit: what opens a sentence may be the unit's name. */
const isTold = (frame: Frame): boolean =>
  frame.span.from > 0 &&
  !isAsked(frame) &&
  (startsClause(frame) || /^(?:and|with|but)$/i.test(wordBefore(frame)));

const ROOMS = '[(plant|machine|machinery|compressor|mechanical|boiler|engine|motor|pump)]';
const YARD = `(roof|rooftop|yard|back yard|courtyard|alley|alleyway|parking lot|car park|garden|garage|basement|cellar|attic|loft|shed|loading (dock|bay)|dock|compound|building|store room|back room|outbuilding|${ROOMS.slice(1, -1)} room)`;
const OUTSIDE = `[right] [(up|down|over|out)] (outside [the (building|store|restaurant|kitchen|shop|box)]|outdoors|out (back|side|here|there|front)|upstairs|downstairs|up top|in back|remote|[outside] (on|in|at|behind|beside|outside|out (on|in)|next to|round the back of|around the back of) (the|their|a|our) ${YARD})`;
const IS = '(is|are|sits|is sitting|is mounted|is located|stands|lives)';
const UNIT = '(condensing unit|outdoor unit|compressor|compressors|condensing units)';

/**
 * "And the compressor's outside", "condensing unit in the yard": that it stands apart from its box, wherever that is told
 * in a list of what the unit is.
 */
export const CONDENSING_UNIT_PLACE_RULES: readonly Rule[] = [
  rule(
    `[(and|with|but)] [(the|a|an|its|their|one|two|three|both)] ${UNIT} [(${IS}|that is|sitting|mounted|located)] ${OUTSIDE}`,
    remote,
    { only: isTold, unheard: true, examples: [] },
  ),
];

/** "Cold room number one" */
const numbered: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const kind = equipmentFact(tags, words);
  if (kind === null || wordBehind(frame) !== '') return null;
  const value = words.replace(/^(?:it(?:'s| is)|this is|i'm (?:on|at)|the|their)\s+/i, '');
  return { facts: [kind, { fact: 'unit', value, words }] };
};

/** The same, told by itself, and units that are told apart by their numbers. */
export const UNIT_BY_PLACE_RULES: readonly Rule[] = [
  rule(`[and] [(the|its|their)] ${UNIT} (${IS}|sitting|mounted) ${OUTSIDE}`, remote, {
    only: startsClause,
    unheard: true,
    examples: ['the compressor is outside'],
  }),
  rule(`(condensing|outdoor) unit ${OUTSIDE}`, remote, {
    only: startsClause,
    unheard: true,
    examples: ['condensing unit in the yard'],
  }),
  rule(
    `[(it is|this is|i am (on|at))] [(the|their)] <equipment> number <number> [[<pause>] (the|an|a) (open|closed|big|little|long|short|old|new|glass door) one] [[<pause>] [(the|a)] <number:decks> (deck|decks|decker|door|doors)] [${WHERE}]`,
    numbered,
    {
      only: startsClause,
      unheard: true,
      examples: ['walk in cooler number two', 'dairy case number four the open one'],
    },
  ),
];
