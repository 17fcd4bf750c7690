import { startsClause } from '../words/clause-start.ts';
import { isRoad } from '../names/site-names.ts';
import { remark } from '../plain-means.ts';
import { nameplate } from './facts.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact, meteringId, refrigerantId, spanIn } from '../slots.ts';
import type { Fact } from '../utterance.ts';
import { isOnlyNumber } from '../words/own-reading.ts';

const equipment: Means = (tags, frame) => {
  const fact = equipmentFact(tags, frame.wordsOf(frame.span));
  return fact === null ? null : { facts: [fact] };
};

/** What no site is called: it points, counts or tells. */
const NO_SITE =
  /^(?:the|a|an|this|that|it|my|our|their|least|home|work|lunch|about|around|night|first|last|\d)\b|\b(?:is|are|was|psi|degrees|volts)\b|\d{2,}/i;

/** "Site is Millpond Market, walk-in cooler": the name ends at the comma where a kind of unit follows. */
const siteThenUnit: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const value = span === null ? '' : frame.wordsOf(span);
  if (value === '' || NO_SITE.test(value) || frame.span.from > 1) return null;
  const site: Fact = { fact: 'site', value, words: value };
  return { facts: [site, ...(equipment(tags, frame)?.facts ?? [])] };
};

const metering: Means = (tags, frame) => {
  const value = meteringId(tags['metering']);
  return value === null
    ? null
    : { facts: [{ fact: 'metering', value, words: frame.wordsOf(frame.span) }] };
};

/** "Plate says three pounds eight of four forty eight" */
const plateWithGas: Means = (tags, frame) => {
  const charge = nameplate('charge')(tags, frame);
  const value = refrigerantId(tags['refrigerant']);
  if (charge?.facts === undefined || value === null) return null;
  return {
    facts: [...charge.facts, { fact: 'refrigerant', value, words: frame.wordsOf(frame.span) }],
  };
};

/** "Prep table at the Corner Grill": what is written in capitals is a name, and no corner. */
const unitThenSite: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const value = span === null ? '' : frame.wordsOf(span).replace(/^the /i, '');
  const words = value.split(/\s+/);
  const isName =
    words.length >= 2 && words.length <= 5 && words.every((word) => /^[A-Z&]/.test(word));
  if (!isName || isOnlyNumber(value) || frame.span.from > 1) return null;
  const site: Fact = { fact: 'site', value, words: value };
  return { facts: [site, ...(equipment(tags, frame)?.facts ?? [])] };
};

/** "We're on Mill Street": where it is, in those words. */
const onRoad: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  return span !== null && isRoad(frame.wordsOf(span)) ? remark(tags, frame) : null;
};

const DOORS = '<count:doors> (door|doors|section|sections)';
const A_UNIT = `[(a|an|the|their|its|it is)] [(a|the)] (<equipment> [[<pause>] ${DOORS}]|${DOORS} (<doored>|<equipment>))`;
const PLATE = '(nameplate|plate|tag|data plate|name plate|sticker|label)';

/** Where the call is and what stands there, told in one breath. */
export const SITE_RULES: readonly Rule[] = [
  rule(
    '[(we|i|it|they|this|this one|[the] (place|job|shop|store|site)) (are|am|is)] [(right|over|out|down|up|here)] (on|off|off of) <clause>',
    onRoad,
    { unheard: true, alone: true, examples: ['we are on mill street'] },
  ),
  rule(
    '[(it is|this is|i am on|i have|working on|i am at)] [(a|an|the|their)] [<count:doors> (door|doors)] <equipment> [(over|down|out|here)] at <clause>',
    unitThenSite,
  ),
  rule(
    `(the site is|site is|site name is|i am at site|(the|our|my) customer is|customer is called|the account is|job is at|the job is at|at|[(i am|we are|i am here|we are here|here|i am on site|on site|just got here)] at|just got to) <clause> <pause> ${A_UNIT}`,
    siteThenUnit,
  ),
  rule(
    `[(it is|this is|got|working on|(this|that|second|first|the [(second|first|third)]) (unit|one|box) is)] [(a|an|the)] <equipment> [<pause>] ${DOORS}`,
    equipment,
    {
      examples: ['reach in freezer three door'],
    },
  ),
  rule(
    '[(so|ok|alright)] (we|i|they|you) (got|have got|have) (a|an|the|their) <equipment> [(here|out here|back here|down|to look at|to do|today)]',
    equipment,
    { unheard: true, examples: ['we got a walk in cooler'] },
  ),
  rule(
    '((it|this|this one|she|unit|the unit) (is|has) got|[(we|i)] got|there is) (a|an) [(fixed|plain|regular)] <metering> (on|in|for|with) (it|this [(one|case|unit|box|thing|evap|coil)]|here|there|the (case|unit|box|evap|coil))',
    metering,
    {
      unheard: true,
      only: startsClause,
      examples: ['got an electronic expansion valve on this case'],
    },
  ),
  rule(
    `[the] ${PLATE} (is|says|shows|reads|has|calls for) <amount> of <refrigerant>`,
    plateWithGas,
    { examples: ['plate says three pounds eight of four forty eight'] },
  ),
  rule(
    `[(the|my|this|that)] ${PLATE} ((is|says|shows|reads|has|calls for) <amount> of <refrigerant> (on (it|there)|in it|charge|total)|(lists|has got|is got|got|wants|is (marked|stamped) [(for|at|with)]) <amount> of <refrigerant> [(on (it|there)|in it|charge|total)])`,
    plateWithGas,
    { unheard: true, examples: ['plate has got thirteen ounces of one thirty four on it'] },
  ),
];
