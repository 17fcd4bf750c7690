import { remark } from '../talk/people-remarks.ts';
import { startsClause } from '../words/clause-start.ts';
import { holdsNumber, holdsReading } from '../words/own-reading.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import type { PartId } from '../../terms/names.ts';
import { nothing } from '../plain-means.ts';

/** What a box, a case and a machine have that no part of ours is called by. */
export const THING =
  '(strip (curtain|curtains|door|doors)|air curtain|night (curtain|cover)|[(door|self)] closer|closers|door (sweep|glass|frame|handle|latch|strike|track|rail|rollers)|sweep|threshold|ramp|honeycomb|air straightener|louver|louvers|grille|grilles|kick plate|toe kick|shelf|shelves|shelving|shelf clips|pilasters|handle|latch|strike|lock|casters|caster|wheels|shroud|guard|insulation|floor [drain]|ceiling|wall|walls|deflector|baffle|duct|alarm|buzzer|display|readout|keypad|data tag|model [(number|tag)]|serial [(number|tag)]|sticker|door frame|bin|ice bin|scoop|chute|float [valve]|water (line|filter|pump|pan|valve)|bumper|rail|corner guard|heat tape|tag|base|bottom|cabinet|back|top|inside|outside|roof|pad|stand|rack|wheel|cover|lock out|clock|pins|trippers|dial|knob)';
const BAD =
  '(is|are|has|have|was|were|needs|need|got|will not|does not|do not|keeps|looks|smells|is been)';
const LEAD = '[(and|so|but|also|well|yeah|oh|plus)]';
export const WHICH =
  '[(left|right|top|bottom|front|back|middle|upper|lower|inside|outside|whole|other|first|second|one|center|rear)]';
const DID =
  '(tightened|adjusted|cleaned|vacuumed|wiped|swept|fixed|repaired|replaced|straightened|reset|patched|taped|greased|oiled|lubed|shimmed|leveled|moved|pulled|reattached|rehung|screwed|secured|sealed|caulked|insulated|put|cut|bent|hosed|washed|scrubbed|took off|removed|swapped|changed|unclogged|cleared|installed|built|re hung|zip tied|blew) [(out|off|up|down)]';
const I = '[(i|we|just|i just|also|i also|and|went ahead and|i went ahead and)]';

/** "One" of them is looked at, and the next words are of it. */
const ONE =
  '[the] (left|right|top|bottom|front|back|middle|upper|lower|other|first|second|center|rear) [hand] (one|side)';

const seenOfOne: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  // "Left one's at forty" was read.
  return /\b(?:at|degrees|psi|volts|amps|reads|reading)\b/i.test(words) || holdsReading(words)
    ? null
    : { remarks: [words] };
};

/** "Pan's cracked, needs one": of the part that was told of in the same breath. */
const needsOne: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning => ({
    recommendations: [{ do: 'replace', part, words }],
  });
  return { ofIt: { means, inSentence: true } };
};

const orderOne: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const means = (part: PartId): Meaning => ({ recommendations: [{ do: 'order', part, words }] });
  return { ofIt: { means, inSentence: true } };
};

/** Only where it says from where or whereto: "pulled it out" takes a part out. */
const movedIt: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  return /\b(?:wall|corner|floor|room|aisle|counter|forward|over|unit|box|case|machine|cooler|freezer|table)\b/i.test(
    words,
  )
    ? remark({}, frame)
    : null;
};

/** "The rail's at forty seven" was read; of what is "four inches short" nobody asks. */
const seen: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const isCounted = /\b(?:number|inch|inches|feet|foot|hours?|years?|strips?|screws?|of)\b/i.test(
    words,
  );
  const part = partId(tags['part']);
  // A breaker's handle is found as the breaker is.
  if (part !== null && OF_ITSELF.includes(part)) return null;
  // "The fans inside are running": those of the evaporator.
  if (/\bfans? inside\b/i.test(words)) return null;
  return holdsNumber(words) && !isCounted ? null : remark(tags, frame);
};
const OF_ITSELF: readonly PartId[] = ['breaker', 'disconnect', 'fuse', 'contactor'];

/** Things without a name among the parts: what is told of them stands in the note as it was said. */
export const THING_RULES: readonly Rule[] = [
  rule(
    `${I} (took|pulled|popped|got) (the|this|that) ${WHICH} [(front|kick|bottom|lower|back|rear|top)] (grille|grill|kick plate|kickplate|louver|skirt|toe kick) (off|out)`,
    remark,
    { unheard: true, examples: ['took the front grille off'] },
  ),
  rule(
    '[(i|we|just|had to|i had to)] (pulled|slid|rolled|moved|pushed|walked|scooted|pull|slide|roll|move) (it|her|the (unit|box|case|machine|cooler|freezer|table|thing)) (out|back|away|over|forward) [<clause>]',
    movedIt,
    { examples: ['pulled it out from the wall'] },
  ),
  rule(
    '[(so|either|it is either|its either|then)] <the> <part> (is|are) <very> <state> [<pause>] or <the> <part:other> (is|are) <very> <state:second>',
    remark,
    { examples: ['so the thermostat is stuck or the solenoid is not closing'] },
  ),
  rule(
    `${LEAD} <the> ${WHICH} [<part>] ${THING} [<spot>] ${BAD} <clause> [<pause> [and] (somebody|someone|they|it|needs|need|we|should|could) <clause:more>]`,
    seen,
    { only: startsClause, examples: ['the strip curtain is shot'] },
  ),
  rule(`${I} ${DID} <the> ${WHICH} ${THING} [too]`, remark, {
    examples: ['adjusted the door closer', 'vacuumed out the base too'],
  }),
  rule(`${LEAD} ${ONE} (is|has|had|was|needs) <clause>`, seenOfOne, {
    examples: ['right one has got about half an inch on it'],
  }),
  rule(
    `${LEAD} [(they|school|store|somebody|you|we|the (customer|store|school|owner))] [(is|are|have|has)] (got to|need|needs|should|ought to|have to|has to) (have|get|put|install|add) (a|an|some|new|another|the|that|this|those|these|their) <clause>`,
    remark,
    { examples: ['school has got to have an outlet cover on that'] },
  ),
  rule(
    `${LEAD} [(it|they|this|the (unit|box|case)|you|we|customer)] [(really|also|probably|definitely)] (needs|need|wants|could use|will need|should have|going to (need|want)) ((a|an|some|another) [new]|new) ${THING} [<clause>]`,
    remark,
    { unheard: true, only: startsClause, examples: ['it needs a new door closer'] },
  ),
  rule(
    '(<pause>|and|so) (needs|need|will need|could use|wants) [(a new|another|a|new)] one',
    needsOne,
  ),
  rule('needs (a new one|another one|a replacement|one)', needsOne, {
    examples: [],
  }),
  rule(
    '[(somebody|someone|they|i|we|you)] [(just|will|should)] (needs to|need to|has to|have to|got to|should|going to|will) (order|get|buy|pick up|find|bring) [(them|him|me|us)] [(a new|another)] one',
    orderOne,
    { examples: ['somebody needs to order one'] },
  ),
  rule(
    '[(i|we|they|he)] (had|have|got|keep|carry|found|grabbed|had me|have got|brought|has) (one|a spare|a couple|some|another one|a new one) (on the (truck|van)|in the (truck|van|shop|bag)|with me|on me|at the shop|left)',
    nothing,
    { examples: ['had one on the truck'] },
  ),
];
