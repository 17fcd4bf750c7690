import type { SightGlassId } from '../../terms/names.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';
import { sightGlassId } from '../slots.ts';
import { wordsBehind } from '../words/clause-start.ts';

const sightGlass: Means = (tags, frame) => {
  const value = sightGlassId(tags['sightGlass']);
  return value === null
    ? null
    : { facts: [{ fact: 'sightGlass', value, words: frame.wordsOf(frame.span) }] };
};

const glassIs =
  (value: SightGlassId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'sightGlass', value, words: frame.wordsOf(frame.span) }],
  });

const noBubbles = glassIs('clear');
const bubbles = glassIs('bubbling');
const emptyGlass = glassIs('empty');

/** "I see bubbles with soap": of a leak, and of no glass. */
const isSoaped = (frame: Frame): boolean =>
  SOAP.test(frame.wordsOf({ from: 0, to: frame.span.from })) || SOAP.test(wordsBehind(frame, 4));
const SOAP = /\b(?:soap(?:ed|y|ing)?|suds|sniffer|spray(?:ed)?|leak detector)\b/i;

/** "Now it's clear", with the tank on the scale: what clears as gas goes in. */
const isCharged = ({ context: { lastQuantity } }: Frame): boolean =>
  lastQuantity === 'cylinderWeight' || lastQuantity === 'refrigerantAdded';

/** What is seen in the liquid line's glass. */
export const SIGHT_GLASS_RULES: readonly Rule[] = [
  heardRule('[the] sight glass <sightGlass>', sightGlass, {
    examples: ['sight glass has bubbles'],
  }),
  rule(
    `[the] [(sight|site)] glass (comes up|came up|goes|went|stays|stayed|runs|looks|keeps|kept|is still|was|starts) <sightGlass>`,
    sightGlass,
    { examples: ['sight glass comes up foaming'] },
  ),
  rule(
    '[(and|ok|so|there)] [(now|ok)] [(it is|she is|that is)] [(all|nice and|finally)] clear [now]',
    sightGlass,
    {
      unheard: true,
      apart: true,
      beforeTold: true,
      only: isCharged,
      tags: { sightGlass: 'clear' },
      examples: [],
    },
  ),
  rule('[the] (glass|site glass) <sightGlass>', sightGlass, {
    examples: ['glass is clear'],
  }),
  rule(
    '[the] [(sight|site)] glass [(is|looks|was|stays|runs)] [(nice and|good and|now|all)] ((solid|clear|full) [(as a (rock|bell|brick|post)|as can be|liquid|all the (time|way)|of liquid|column)]|crystal [clear]|cleared [(right|all)] [(up|out)]|bubble free|without [(a|any)] (bubble|bubbles))',
    noBubbles,
    { unheard: true, examples: ['sight glass solid as a rock'] },
  ),
  rule(
    '[the] [(sight|site)] glass [(is|was|has been|keeps|kept)] [(still|just|kind of|always)] (fizzing|fizzy|bubbling|foaming|flashing|frothing|boiling|spitting|percolating) [(a little|a bit|a touch|some|away|away a little|like <clause>|now and then|on and off)]',
    bubbles,
    { unheard: true, examples: ['glass is still fizzing a little'] },
  ),
  rule('[(a lot of|lots of|a few|some)] bubbles in the [(sight|site)] glass', bubbles, {
    examples: ['bubbles in the glass'],
  }),
  rule(
    '([(there is|i see|i have)] nothing|(i|we) (do not|can not) see [any] liquid|no liquid) in the [(sight|site)] glass [at all]',
    emptyGlass,
    {
      examples: ['nothing in the sight glass'],
    },
  ),
  rule(
    '[(i have [got]|i am (showing|seeing|getting)|showing|got|it is|there is)] [a] ([nice] (solid|full) [clear]|[nice] clear) [(sight|site)] glass',
    noBubbles,
    { apart: true, examples: ['full glass', 'a solid clear sight glass'] },
  ),
  rule(
    '[(a few|few|some|a couple|a couple of|lots of|a lot of)] bubbles [(at|on|during|right at|when it) (startup|start up|start|first|started)] [<pause>] [(and|but)] [then] (it|the glass|they|she|now it) [(has|is|all|finally)] (cleared|clears|clear) [(up|out|right up)]',
    noBubbles,
    { unheard: true, examples: ['few bubbles at startup then it cleared up'] },
  ),
  rule(
    '[the] bubbles (went away|are gone|quit|stopped|cleared [(up|out)]|disappeared)',
    noBubbles,
    {
      examples: ['bubbles went away'],
    },
  ),
  rule('(no|not any|no more) bubbles [in the [(sight|site)] glass]', noBubbles, {
    examples: ['no bubbles'],
  }),
  rule(
    '(i have|i see|there is|there are|i have got|[(i am|we are) [still]] (seeing|getting|showing)|some|a few|lots of|still [(seeing|getting|showing)]) [some] <sightGlass> [in the [(sight|site)] glass]',
    (tags, frame) =>
      tags['sightGlass'] === 'bubbling'
        ? (isSoaped(frame) ? remark : sightGlass)(tags, frame)
        : null,
    { examples: ['i see bubbles in the sight glass'] },
  ),
];
