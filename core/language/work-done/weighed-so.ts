import { startsClause, wordBehind } from '../words/clause-start.ts';
import { breaksOff } from '../numbers/cut-numbers.ts';
import { amountIn } from '../numbers/measure.ts';
import { asReading, fixed, reading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, quantityId, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import type { Reading } from '../utterance.ts';
import { GAS, refrigerantMoved, WEIGHTS } from './weighed.ts';
import { remark } from '../plain-means.ts';
import { WordSet } from '../words/word-set.ts';
const isWeight = (tags: Tags | null): boolean => {
  const unit = tags === null ? null : amountIn(tags).unit;
  return unit !== null && WEIGHTS.has(unit);
};

/** Pounds may be those of a gauge: only where nothing but gas is weighed so. */
const isSurelyWeight = (tags: Tags): boolean => isWeight(tags) && amountIn(tags).unit !== 'pounds';

const added = refrigerantMoved('refrigerantAdded');
const recovered = refrigerantMoved('refrigerantRecovered');
const lost = refrigerantMoved('refrigerantLost');

/** Behind a scale that was set to nothing a bare number is a weight: only its unit is asked. */
const addedOrAsked: Means = (tags, frame) =>
  added(tags, frame) ?? fixed('refrigerantAdded')(tags, frame);

/** "Bled two pounds off" may be nitrogen: into a cylinder, or by the ounce, it is gas. */
const bledOff: Means = (tags, frame) =>
  isSurelyWeight(tags) || INTO_CYLINDER.test(frame.wordsOf(frame.span))
    ? recovered(tags, frame)
    : null;
const INTO_CYLINDER = /\b(?:tank|cylinder|bottle|jug|drum|recovery machine)\b/i;

/** Ours: more pounds than a unit on site takes at once are a pressure that was put on it. */
const MOST_POUNDS = 20;
const putIn: Means = (tags, frame) => {
  const { value, unit } = amountIn(tags);
  return unit === 'pounds' && value !== null && value > MOST_POUNDS ? null : added(tags, frame);
};

/** "An ounce": one, where no number is said. */
const orOne =
  (means: Means): Means =>
  (tags, frame) =>
    means(tags['number'] === undefined ? { ...tags, number: 1 } : tags, frame);

/** A value of the quantity from one of two amounts, of which one may have said the unit for both. */
function readingAt(quantity: QuantityId, tags: Tags, frame: Frame): (slot: string) => Reading[] {
  const slots = ['one', 'two'].map((slot) => tagsIn(tags[slot]));
  const unit = slots.map((each) => (each === null ? null : amountIn(each).unit)).find(Boolean);
  return (slot) => {
    const said = tagsIn(tags[slot]);
    if (said === null) return [];
    const amount = amountIn(said);
    const found = reading(quantity, { ...amount, unit: amount.unit ?? unit ?? null }, frame);
    return found === null ? [] : [found];
  };
}

/** "Forty pounds before, thirty seven and a half after": a cylinder told twice, its unit once. */
const cylinderTwice: Means = (tags, frame) => {
  if (breaksOff(frame)) return null;
  if (!isWeight(tagsIn(tags['one'])) && !isWeight(tagsIn(tags['two']))) return null;
  const at = readingAt('cylinderWeight', tags, frame);
  const [one, two] = [at('one'), at('two')];
  // "Forty seven pounds, and 856 microns" weighs it once.
  return one.length === 0 || two.length === 0 ? null : { readings: [...one, ...two] };
};

/** "Sixteen pounds one now" is told once, to the ounce. */
const isToldTwice = (frame: Frame): boolean =>
  !/\b(?:pounds?|lbs?) [\w-]+ now$/i.test(frame.wordsOf(frame.span));

const unitOf = (tags: Tags | null): boolean => tags !== null && amountIn(tags).unit !== null;

/** "Thirty ounces in, thirty out": what went in and what came out, in whichever order. */
const inAndOut =
  (first: 'in' | 'out'): Means =>
  (tags, frame) => {
    const unit = tags['unit'] === undefined ? {} : { unit: tags['unit'] };
    const [one, two] = [tagsIn(tags['one']), tagsIn(tags['two'])];
    if (one === null || two === null) return null;
    const both = {
      one: unitOf(one) ? one : { ...one, ...unit },
      two: unitOf(two) ? two : { ...two, ...unit },
    };
    if (!isWeight(both.one) && !isWeight(both.two)) return null;
    const at = (slot: string, way: 'in' | 'out'): Reading[] =>
      readingAt(way === 'in' ? 'refrigerantAdded' : 'refrigerantRecovered', both, frame)(slot);
    return { readings: [...at('one', first), ...at('two', first === 'in' ? 'out' : 'in')] };
  };

/** "Got seven ounces out of a system that holds thirty": what it holds is told in the same unit. */
const outOfHolding: Means = (tags, frame) => {
  const [out] = recovered(tags, frame)?.readings ?? [];
  const holds = amountIn(tagsIn(tags['holds']) ?? {});
  if (out === undefined || out.unit === null || holds.value === null) return null;
  const full = reading('refrigerantCharge', { ...holds, unit: holds.unit ?? out.unit }, frame);
  return full === null ? null : { readings: [out, full] };
};

/** "Two ounces still in the hoses, so call it thirty six net" */
const netOfHoses: Means = (tags, frame) => {
  const unit = amountIn(tags).unit;
  const net = amountIn(tagsIn(tags['net']) ?? {});
  const found = reading('refrigerantAdded', { ...net, unit: net.unit ?? unit }, frame);
  if (!isWeight(tags) || found === null) return null;
  return { readings: [found], remarks: [frame.wordsOf(frame.span)] };
};

/** "Eight ounces, then another five and a half": more of the same. */
const andAnother: Means = (tags, frame) => {
  const [found] = added(tags, frame)?.readings ?? [];
  const more = tagsIn(tags['more']);
  if (found === undefined) return null;
  if (more === null) return { readings: [found] };
  const value = numberIn(more['number']);
  return value === null ? null : { readings: [found, { ...found, value }] };
};

/** By how much the charge was off: kept as told, and what it tells of the cause with it. */
const shortBy =
  (isSure: boolean): Means =>
  (tags, frame) => {
    const words = frame.wordsOf(frame.span);
    if (!(isSure ? isWeight(tags) : isSurelyWeight(tags)) || !startsClause(frame)) return null;
    const value = OVER.test(words) ? 'overcharge' : 'undercharge';
    return { facts: [{ fact: 'cause', value, words }], remarks: [words] };
  };
const OVER = /\b(?:over|overcharged|heavy|too much)\b/i;

/** "Two pound bottle of nitrogen" is no gas of ours. */
const cylinderOf: Means = (tags, frame) =>
  startsClause(frame) && wordBehind(frame) !== 'of' ? remark(tags, frame) : null;

/** A glass that was cleared shows no bubbles: nobody cleans it for that. */
const glassCleared: Means = (_tags, frame): Meaning => ({
  facts: [{ fact: 'sightGlass', value: 'clear', words: frame.wordsOf(frame.span) }],
});

const nothingMoved: Means = (tags, frame) => {
  const none = { ...tags, number: 0, unit: SHOWN_UNITS[frame.context.units].mass };
  const both = [fixed('refrigerantAdded'), fixed('refrigerantRecovered')];
  return { readings: both.flatMap((means) => means(none, frame)?.readings ?? []) };
};

const IT = '(it|her|she|him|this|that|the (system|unit|box|machine|thing|circuit)|this thing)';
const I = '[(i|we)] [(have|just|also|then|and|had to|ended up)]';
const OF_GAS = `[of (<refrigerant>|${GAS}|it)]`;
const SIDE = '(high|low|suction|liquid|discharge|vapor|back)';
const AS_LIQUID = '[as [a] (liquid|vapor|gas)]';
const HOW = `${AS_LIQUID} [(through|on|at|to|from|into) (the|my) ${SIDE} [(side|line|port|valve|hose)]] ${AS_LIQUID} [(slow|slowly|real slow|nice and slow|a little at a time|in steps)] [(by|on|off|per) (the|my) scale]`;
const PUT =
  '(put|dumped|threw|fed|poured|trickled|dribbled|shot|charged|metered|bled|squirted|bumped|snuck|stuck|worked|weighed|ran)';
const THAT_IS =
  '[<pause>] [(at|with|it took|took|that is|it was|which (is|was)|total|a total of|all|of|for a total of)]';
const CYLINDER = '[(the|my|this|that)] [(recovery|charging)] (bottle|tank|cylinder|jug|drum|scale)';
const BY_SCALE = '[(by|on|per|off|according to) the scale]';
const TAKEN = '(took|pulled|got|recovered|reclaimed|had) [out]';
const OIL =
  '([(mineral|polyolester|ester|alkylbenzene|a b|compressor|refrigeration|p o e|poe|pve)] oil|poe|p o e|polyolester|mineral)';

/** "Bottle's at twenty four pounds four on the scale": the ounces belong to the pounds before them. */
const onScale: Means = (tags, frame) =>
  tags['quantity'] === 'cylinderWeight' ? asReading()(tags, frame) : null;

/** "Cylinder's at thirteen six and three quarters": pounds, and ounces with the part of one that no other weight has. */
const poundsAndPart: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const pounds = numberIn(tagsIn(tags['pounds'])?.['number']);
  const ounces = numberIn(tagsIn(tags['ounces'])?.['number']);
  if (quantity === null || pounds === null || ounces === null || breaksOff(frame)) return null;
  if (!Number.isInteger(pounds) || Number.isInteger(ounces) || ounces >= OUNCES_A_POUND)
    return null;
  // "Twenty six and a half" may be one number, and "eighteen point two" is one.
  if (ounces < 1 || (pounds % 10 === 0 && ounces < 10)) return null;
  const found = reading(quantity, amountIn({ number: pounds * OUNCES_A_POUND + ounces }), frame);
  return found === null ? null : { readings: [{ ...found, unit: 'oz', unitFrom: 'implied' }] };
};
const OUNCES_A_POUND = 16;
const PART_OF_ONE = new WordSet('half quarter quarters');

/** A scale that was set to nothing under a full cylinder shows below it what went in. */
export const SCALE_RULES: readonly Rule[] = [
  rule(`${CYLINDER} [weight] <link> <short:pounds> <number:ounces>`, poundsAndPart, {
    unheard: true,
    tags: { quantity: 'cylinderWeight' },
    needs: PART_OF_ONE,
    examples: ['cylinder is at thirteen six and three quarters'],
  }),
  rule(
    '[the] tare [weight] [(on|of|for) (it|that|this)] <link> <short:pounds> <number:ounces>',
    poundsAndPart,
    {
      unheard: true,
      tags: { quantity: 'tareWeight' },
      needs: PART_OF_ONE,
      examples: ['tare is fifteen eight and a half'],
    },
  ),
  rule(
    '[the] <quantity> <link> <amount> [(now|right now)] (on|by|off|per) (the|my) scale',
    onScale,
    {
      unheard: true,
      examples: ['bottle is at twenty four pounds four on the scale'],
    },
  ),
  rule(
    `[the] scale (says|shows|reads|is at|is reading|has|went to|is down to) (minus|negative) <amount>`,
    added,
    { unheard: true, examples: ['scale says minus eighteen ounces'] },
  ),
];

/** "Another quarter pound": nobody says that it is a quarter of one. */
const QUARTERS = '[(about|just|only|maybe)] [(a|another|an extra|one more)] quarter [of] [a]';

/** Gas that went in, came out or was lost, in the other words that it is told in. */
export const WEIGHED_SO_RULES: readonly Rule[] = [
  rule(
    `${I} ${PUT} [(another|about another|only|just)] <amount> [more] ${OF_GAS} [back] (in|into|to) [${IT}] ${HOW}`,
    putIn,
    { unheard: true, examples: ['dumped fourteen ounces in on the high side as liquid'] },
  ),
  rule(
    `${I} (gave|fed|shot|hit) ${IT} [with] [(a|an|another|about a|one more)] [(quick|little|small|good|short|last|final)] <amount> [(shot|bump|kick|splash|charge|squirt|hit|slug|pop|more|bit)] ${OF_GAS}`,
    putIn,
    { unheard: true, examples: ['gave it a four ounce shot of four oh four'] },
  ),
  rule(
    `${I} (added|put in|put|charged|weighed in|gave it|gave her|shot in|dumped in|fed in) ${QUARTERS} <unit> [more] ${OF_GAS} [in]`,
    added,
    { unheard: true, tags: { number: 0.25 }, examples: ['added another quarter pound'] },
  ),
  rule(
    `${I} (recovered|pulled [out]|got [out]|took out|bled off) ${QUARTERS} <unit> [more] ${OF_GAS} [(back|out)]`,
    recovered,
    { unheard: true, tags: { number: 0.25 }, examples: ['recovered another quarter pound'] },
  ),
  rule(
    `${I} (added|put in|put|charged|weighed in|shot in|dumped in|fed in|threw in) [about] <amount> of (the|that|some|our|new|virgin|some of the|the new|some new) <refrigerant>`,
    added,
    { unheard: true, examples: ['put in a pound and a half of the four forty nine'] },
  ),
  rule(
    `${I} (added|put in|put|charged|weighed in|shot in|dumped in|fed in|threw in|bled in) (a (little|bit of|tad|touch|splash|shot of)|some|more|some more|a little more|a bit more) (gas|refrigerant|freon|charge|liquid) [in] [<pause>] [it was] <amount>`,
    added,
    { unheard: true, examples: ['threw in a little gas, six ounces'] },
  ),
  rule(
    `${I} (added|put in|put|charged|weighed in|shot in|dumped in|fed in) [another] <number> (more|extra|additional) <unit> ${OF_GAS} [in] [${IT}]`,
    putIn,
    { unheard: true, examples: ['put in six more ounces'] },
  ),
  rule(`${I} (gave|fed|shot|hit) ${IT} [with] (a|an|another) <unit> ${OF_GAS}`, orOne(added), {
    unheard: true,
    examples: ['gave her a pound of four oh four'],
  }),
  rule(
    `[(the|all the|my|all of the)] [(new|whole|full|factory|virgin|same)] ${GAS} (is|are|went|was|weighed|goes) [(all|right)] [weighed] [back] in ${THAT_IS} <amount> [even] ${BY_SCALE}`,
    added,
    { unheard: true, examples: ['charge is back in eleven point five ounces by the scale'] },
  ),
  rule(
    `${I} (charged|weighed in|put in|weighed) [${IT}] [(to|by|with|per|off|up to|in)] [(the|a)] (nameplate|name plate|plate|tag|data plate|factory|sticker|label) [(charge|weight)] ${THAT_IS} <amount> ${OF_GAS}`,
    added,
    { unheard: true, examples: ['charged nameplate one pound twelve'] },
  ),
  rule(
    `${I} (weighed (it|her|that|the (charge|gas)) [all] [back] in|(put|weighed) (it all|all of it|(the|that) same ${GAS}|the ${GAS}|everything (i|we) ${TAKEN}|what (i|we) ${TAKEN}|it) [all] back [in] [that (i|we) ${TAKEN}]|(put|weighed) back [in] (all of it|everything (i|we) ${TAKEN}|what (i|we) ${TAKEN}|the same ${GAS} [(i|we) ${TAKEN}])) ${THAT_IS} <amount> ${OF_GAS} ${BY_SCALE}`,
    added,
    { unheard: true, examples: ['put the same gas back that i took out all forty one ounces'] },
  ),
  rule(
    `${I} (topped|gassed|juiced|filled) [${IT}] [back] [(off|up)] [(with|by|about|another)] <amount> [more] ${OF_GAS}`,
    added,
    { unheard: true, examples: ['topped her off six ounces'] },
  ),
  rule(
    `${I} (topped|gassed|juiced) ${IT} [back] (off|up) [with] [about] (a|an) <unit> ${OF_GAS}`,
    orOne(added),
    {
      unheard: true,
      examples: [],
    },
  ),
  rule(
    `${I} (added|put in|charged [in]|trickled in|fed [in]|dribbled in|metered in|bumped in|put) [(some|more|the)] (liquid|vapor|gas|refrigerant|freon) [in] ${HOW} ${THAT_IS} [about] <amount> [[<pause>] (then|and|plus|and then|followed by) another <number:more>]`,
    andAnother,
    {
      unheard: true,
      examples: ['added liquid through the low side real slow eight ounces then another five'],
    },
  ),
  rule(
    `${I} (recovered|reclaimed|pumped|pulled) [(it|her|the charge|the gas|everything|all of it)] (into|in|to) (the|a|my) [(gray|grey|recovery|yellow|new|old|other|empty|clean)] (tank|cylinder|bottle|jug|drum) [<pause>] [(got|that was|it was|came to|and got)] <amount> ${OF_GAS} [(even|on the nose|total)]`,
    recovered,
    { unheard: true, examples: ['recovered into the gray tank seven pounds even'] },
  ),
  rule(
    `${I} (zeroed|tared|reset) [out] (the|my) scale [<pause>] [(and|then|and then)] [(put|weighed|fed)] <amount> ${OF_GAS} [(went|is|weighed)] in`,
    added,
    { unheard: true, examples: ['zeroed the scale three pounds four in'] },
  ),
  rule(
    `${I} (zeroed|tared|reset) [out] (the|my) scale [<pause>] [(and|then|and then)] [(i|we)] (weighed in|put in|fed in|charged [in]) [(about|exactly)] <amount> ${OF_GAS}`,
    addedOrAsked,
    { unheard: true, examples: ['zeroed the scale weighed in two point eight'] },
  ),
  rule(
    `[(it|she|that|this one)] took [(about|only)] <amount> ${OF_GAS} to (fill|top|charge|clear|get|satisfy) (it|her|the (system|glass|unit|sight glass)) [(up|off|out|right|back up)]`,
    added,
    { unheard: true, examples: ['took four pounds six to fill her'] },
  ),
  rule(
    `${I} (got|recovered|pulled|took|reclaimed) [(out|back)] [(the|all the|all of the|what) (gas|charge|refrigerant|freon) [was left]] [<pause>] [(only|just|back|about|that was)] <amount> ${OF_GAS} out of (a|an|the) [(full|nameplate|factory)] [charge of] <amount:holds> [(charge|nameplate|unit|system)]`,
    outOfHolding,
    { unheard: true, examples: ['reclaimed the gas four hundred grams out of a six fifty'] },
  ),
  rule(
    `${I} (charged|gassed|filled|juiced) (it|her|him|that|this|the (system|unit)) [back] [up] [(with|as|in)] [(a|the)] [(liquid|vapor|gas)] <pause> [(it took|took|with|at|that was|in)] <amount> ${OF_GAS} [(bang on|spot on|dead on|exactly|on the (nose|button|dot|money)|to the (gram|ounce))]`,
    added,
    { unheard: true, examples: [] },
  ),
  rule(
    `${I} (got|recovered|pulled|took|reclaimed) [(only|just|back)] <amount> ${OF_GAS} [back] (out of|from|out from) [(a|this|the)] (system|unit|box|machine|one|it) that (holds|takes|is supposed to (hold|have|take)|should (have|hold)|calls for|wants|had|needs) <amount:holds>`,
    outOfHolding,
    {
      unheard: true,
      examples: ['only got seven ounces out of a system that holds thirty'],
    },
  ),
  rule(
    `${I} (bled|drained|drew|sucked|let|took|pulled|dumped) (<amount> ${OF_GAS} [back] (off|out)|(off|out|back [(off|out)]) <amount> ${OF_GAS}) [(in|into|to) [(the|my|a)] [recovery] (tank|cylinder|bottle|jug|drum|machine)]`,
    bledOff,
    { unheard: true, examples: ['bled off five ounces into the recovery tank'] },
  ),
  rule(
    `[(every|each|all the|every last)] [<unit> [(is|was)] accounted for [<pause>]] <amount:one> [back] in [<pause>] [(and|but|with)] <amount:two> [back] out`,
    inAndOut('in'),
    { unheard: true, examples: ['every ounce accounted for thirty in and thirty out'] },
  ),
  rule(
    `[(every|each|all the|every last)] [<unit> [(is|was)] accounted for [<pause>]] <amount:one> [(came|come)] [back] out [<pause>] [(and|but|with)] <amount:two> [(went|going)] [back] in`,
    inAndOut('out'),
    { unheard: true, examples: ['thirty two ounces out and thirty eight back in'] },
  ),
  rule(
    `${CYLINDER} (was|started [(out|off)]|went from|went|weighed [in]|is) [at] <amount:one> [(before|to start|when i started|at the start)] (<pause> [(and|then|now|and now|but)]|and|then|now|to) [(it|that) is] [now] [(down|up|ended [up]|finished|weighs|it weighs|is|after)] [(down|up|back)] [(to|at|is)] <amount:two> [(now|after|when i finished)]`,
    cylinderTwice,
    {
      unheard: true,
      only: isToldTwice,
      examples: ['tank was at forty pounds and it is down to thirty seven'],
    },
  ),
  rule(
    `${CYLINDER} (weighed|weighs|was|is|started) [(at|out at)] <amount> (before|after|to start|when i started|at the start|going in|when i (got done|finished)|full)`,
    (tags, frame) => (isWeight(tags) ? fixed('cylinderWeight')(tags, frame) : null),
    { unheard: true, examples: ['bottle weighed twenty four pounds before'] },
  ),
  rule(
    `${I} (vented|bled|let (out|go)|lost|burped|wasted) [(maybe|about)] <amount> ${OF_GAS} (getting|pulling|taking|when|disconnecting|purging|clearing) [off] (the|my) (hose|hoses|gages|manifold|lines) [(off|out)] [(off|of|at|from|on) (the|it|that) [${SIDE}] [(port|side|valve|schrader|line|fitting)]]`,
    lost,
    { unheard: true, examples: ['vented two ounces pulling the hoses off the liquid port'] },
  ),
  rule(
    `${I} (vented|bled|let (out|go)|lost|burped|wasted) [(maybe|about)] (a|an) <unit> ${OF_GAS} (getting|pulling|taking|when|disconnecting|purging|clearing) [off] (the|my) (hose|hoses|gages|manifold|lines) [(off|out)] [(off|of|at|from|on) (the|it|that) [${SIDE}] [(port|side|valve|schrader|line|fitting)]]`,
    orOne(lost),
    { unheard: true, examples: ['vented an ounce getting the hose off the liquid port'] },
  ),
  rule(
    `<amount> ${OF_GAS} (still|left|is still|is left|are still) in [(the|my)] (hose|hoses|gages|manifold) [<pause>] [(so|and|but)] [(call it|that is|that makes it|makes it|i call it|put down|say)] <amount:net> (net|total|even|in (it|the system|the unit))`,
    netOfHoses,
    { unheard: true, examples: ['two ounces still in the hoses so call it thirty six net'] },
  ),
  rule(
    `[(the|it is|her)] charge (was|is|is running|was running) [(about|only|maybe|still)] (short|low|light|under|shy|over|heavy) [by] <amount>`,
    shortBy(true),
    { unheard: true, examples: ['charge was short by ten ounces'] },
  ),
  rule(
    `[(${IT}|i|we) (is|was|am|were|are)] [(about|only|maybe|still)] (short|low|light|under|shy|over|overcharged|undercharged|heavy) [on (charge|gas)] [by] <amount> [(i would (guess|say|think)|i (think|figure|guess|reckon)|maybe)]`,
    shortBy(false),
    { unheard: true, apart: true, examples: ['overcharged by six ounces'] },
  ),
  rule(
    `((${IT}|charge|the charge) (is|was) [(about|only|maybe|still)] <amount> (short|low|light|under|over|undercharged|overcharged|shy|heavy) [on (charge|gas)]|(i|we) (am|was|are|were) [(about|only|maybe|still)] <amount> (short|low|light|shy|heavy|under|over) on (charge|gas))`,
    shortBy(false),
    { unheard: true, examples: ['it is eight ounces over'] },
  ),
  rule(
    '[(it is|she is|we are|i am)] [(about|only|still)] <amount> (short of|shy of|under|over|above|below|more than) [the] (plate|nameplate|tag|factory charge|plate charge|nameplate charge)',
    shortBy(true),
    { unheard: true, examples: ['four ounces short of the plate'] },
  ),
  rule(`[(i|we|and|that|it|finally)] [(has|have)] cleared [up] the [sight] glass`, glassCleared, {
    unheard: true,
    examples: ['cleared the glass'],
  }),
  rule(
    `[(i|we)] [(did not|have not|never)] [(had to|have to|need to)] [(open|break into) the (system|circuit)] [<pause>] no ${GAS} (in or out|in and none out|moved|in no ${GAS} out|added or (removed|recovered|taken out)|used)`,
    nothingMoved,
    { unheard: true, examples: ['no refrigerant in or out'] },
  ),
  rule(
    `[(i|we)] [(used|opened|have got|have|got|grabbed)] [(virgin|new|fresh)] [(gas|refrigerant)] [(a|the|my|from a|out of a|off a|off of a|from my|with a)] [(new|full|fresh|partial|part)] <number> pound (jug|cylinder|bottle|tank|drum|can) [of <refrigerant>] [[<pause>] [it is] [(about|nearly|almost|maybe)] (half|full|empty|half full|half empty|a quarter full|new|brand new|low|getting low) [left]]`,
    cylinderOf,
    { unheard: true, examples: ['thirty pound cylinder of four forty eight it is about half'] },
  ),
  rule(
    `${I} [(added|put in|put|charged|pumped in|changed|drained|took out|oil changed|got)] <number> (ounces|ounce|oz|pints|pint|quarts|quart|pounds|gallon|gallons) (of|more) ${OIL} [(in|out|back in|in it|to it|in the compressor|out of it|out of the compressor)]`,
    remark,
    { unheard: true, examples: ['fifty ounces of poe'] },
  ),
];
