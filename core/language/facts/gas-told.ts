import type { PartId } from '../../terms/names.ts';
import { startsClause } from '../words/clause-start.ts';
import { nameplate, refrigerant } from './facts.ts';
import { isNamedSurely } from './refrigerant-said.ts';
import { amountIn } from '../numbers/measure.ts';
import type { RefrigerantId } from '../../terms/refrigerants.ts';
import { numberIn, refrigerantId, tagsIn } from '../slots.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { WordSet } from '../words/word-set.ts';
import { nothingAtClauseStart } from '../plain-means.ts';

const GAS = '[(a|an|the)] <refrigerant>';

/** "One of the new ones with four fifty four C": whatever its figures, a gas is all that is told so. */
const runsOn: Means = (tags, frame) => (startsClause(frame) ? refrigerant(tags, frame) : null);

/** "Looks like two ninety" may be a pressure: only where its letter or its name is said. */
const surelyRunsOn: Means = (tags, frame) =>
  isNamedSurely(frame.wordsOf(frame.span), frame) ? runsOn(tags, frame) : null;

/** Designations are told figure by figure; these few by their hundreds as well. */
const BY_HUNDREDS: Readonly<Record<number, RefrigerantId>> = {
  404: 'R-404A',
  410: 'R-410A',
  448: 'R-448A',
  449: 'R-449A',
  450: 'R-450A',
  507: 'R-507A',
  513: 'R-513A',
};
const HUNDRED = new WordSet('hundred');
/** "It's four hundred ten refrigerant" */
const byHundreds: Means = (tags, frame) => {
  const value = BY_HUNDREDS[numberIn(tags['number']) ?? 0];
  const words = frame.wordsOf(frame.span);
  return value === undefined || !startsClause(frame)
    ? null
    : { facts: [{ fact: 'refrigerant', value, words }] };
};

const SETS: readonly (PartId | null)[] = ['highPressureSwitch', 'lowPressureSwitch', 'fanControl'];
/** "It's labeled four oh four": of a control that was named it would be its setting. */
const labelled: Means = (tags, frame) =>
  SETS.includes(frame.context.lastPart) ? null : surelyRunsOn(tags, frame);

/** Not of what is in here: asked, supposed, denied, wanted, of the truck's or another unit's. */
const notHere = nothingAtClauseStart;

/** "It's not one thirty four a": no number is taken back. */
const surelyNotHere: Means = (tags, frame) =>
  isNamedSurely(frame.wordsOf(frame.span), frame) ? notHere(tags, frame) : null;

const before: Means = (_tags, frame: Frame) =>
  startsClause(frame) ? { remarks: [frame.wordsOf(frame.span)] } : null;

/** Only a weight is a charge: "thirty two on the charge" may be anything. */
const weighedCharge: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWeight = unit === 'oz' || unit === 'pounds' || unit === 'g' || unit === 'kg';
  return isWeight && startsClause(frame) ? nameplate('charge')(tags, frame) : null;
};

const UNITS =
  '(one|ones|unit|units|box|boxes|machine|machines|system|systems|model|models|job|jobs)';
const CHARGE = '[the] [(nameplate|factory|plate|tag|data plate|rated)] charge';

const ON_PLATE = '(on|off|from|per) (the|its|that) (plate|nameplate|tag|label|sticker|data plate)';

/** What it is built to hold: no gauge shows it. */
const bothSidesOnPlate: Means = (tags, frame) => {
  const high = nameplate('highSide')(tagsIn(tags['high']) ?? {}, frame)?.facts ?? [];
  const low = nameplate('lowSide')(tagsIn(tags['low']) ?? {}, frame)?.facts ?? [];
  return high.length === 0 || low.length === 0 ? null : { facts: [...high, ...low] };
};

/** "It's a propane one, R two ninety": told twice it has to be the same. */
const sameGas: Means = (tags, frame) => {
  const again = refrigerantId(tagsIn(tags['again'])?.['refrigerant']);
  return again === null || again === refrigerantId(tags['refrigerant'])
    ? runsOn(tags, frame)
    : null;
};
const SAYS_SO = `(says so|it says so|so it says|that is what it says|it says|marked) [right [(there|here)]] [${ON_PLATE}]`;

/** What a unit runs on, told in more words than by its name, and its charge in any order. */
export const GAS_RULES: readonly Rule[] = [
  rule(
    `[(it is|this is|that is|this one is)] (a|an|one of (the|those|them|these)) [(new|newer|old|older|little)] <refrigerant> ${UNITS} [[<pause>] [(it is|it takes)] [(a|an)] <refrigerant:again>] [[<pause>] ${SAYS_SO}]`,
    sameGas,
    { unheard: true, examples: ['it is a propane one r two ninety says so on the sticker'] },
  ),
  rule(`[(it is|this is|it takes)] [(a|an)] <refrigerant> [<pause>] ${SAYS_SO}`, runsOn, {
    unheard: true,
    examples: ['four oh four a says so on the plate'],
  }),
  rule(
    `[(it is|this is|that is|there is|it looks like|looks like) [just] [another]] one of (the|these|those|them|their) [(new|newer|old|older|little|big|small)] (<refrigerant> ${UNITS}|${UNITS} (with|on|running|runs on|that (runs|run|is|are|takes|take|uses|use) [on]|using|charged with) <refrigerant>)`,
    runsOn,
    { unheard: true, examples: ['it is one of the new ones with four fifty four c'] },
  ),
  rule(
    '[(it is|this is|this one is|that is|on|with|it has|runs on|running)] [(a|an|r)] <number> [a] (refrigerant|freon|gas|unit|system|machine|box)',
    byHundreds,
    { unheard: true, needs: HUNDRED, examples: ['it is four hundred ten refrigerant'] },
  ),
  rule(
    `[(it|this one|that)] (looks like|looks to be|must be|has got to be|appears to be|seems to be) [it is] [(on|running)] ${GAS} [(in (it|there|here)|on (the|that) (tag|label|sticker|plate))]`,
    surelyRunsOn,
    { unheard: true, examples: ['looks like four oh four a'] },
  ),
  rule(
    `[(it|this [one]|unit|system|they|somebody|someone)] [(is|has|was|have)] [been] (converted|changed over|retrofitted|switched [over]) [it] [(from <refrigerant:was>)] to <refrigerant>`,
    runsOn,
    { unheard: true, examples: ['it has been converted to four forty eight a'] },
  ),
  rule(`[it is] (labeled|labelled|marked|stamped|tagged) [(as|for|with)] ${GAS}`, labelled, {
    unheard: true,
    examples: ['it is labeled four oh four a'],
  }),
  rule(
    `(compressor|(this|that|the) (box|one|case|machine)) (says|has|is marked|takes|uses) ${GAS} [in it]`,
    surelyRunsOn,
    { unheard: true, examples: ['this box has four oh four a'] },
  ),
  rule(
    `(there is|it has [got]|it is got|they have [got]|they put|somebody put) ${GAS} in (it|this [(one|unit|box)]|here|there)`,
    runsOn,
    { unheard: true, examples: ['there is four oh four in it'] },
  ),
  rule(
    `${CHARGE} (is (listed|stamped|marked|shown|printed) [(as|at)]|reads|shows|comes [out] to|came [out] to|looks like|looks to be|at|works out (at|to)) <amount>`,
    weighedCharge,
    { unheard: true, examples: ['charge comes to two pounds four'] },
  ),
  rule(
    `[the] high side [(is|of|at|reads)] <amount:high> [<pause>] [and] [the] low side [(is|of|at|reads)] <amount:low> ${ON_PLATE}`,
    bothSidesOnPlate,
    { unheard: true, examples: ['high side four fifty low side one fifty on the tag'] },
  ),
  rule(
    `[the] low side [(is|of|at|reads)] <amount:low> [<pause>] [and] [the] high side [(is|of|at|reads)] <amount:high> ${ON_PLATE}`,
    bothSidesOnPlate,
    { unheard: true, examples: [] },
  ),
  rule(
    `[(the|its|it is)] (plate|nameplate|tag|label|sticker|data plate) (says|reads|shows|has|lists|is) [the] high side [(is|of|at)] <amount:high> [<pause>] [and] [the] low side [(is|of|at)] <amount:low>`,
    bothSidesOnPlate,
    { unheard: true, examples: [] },
  ),
  rule(`<amount> [(is|was|for|on)] ${CHARGE}`, weighedCharge, {
    apart: true,
    unheard: true,
    examples: ['twelve ounces is the charge'],
  }),
];

const DO =
  '(use|like|carry|have|need|want|love|hate|stock|keep|buy|sell|see|trust|run|put|get|mix|take|add|work with)';

/** Gases that are spoken of and are not in here. */
export const GAS_TALK_RULES: readonly Rule[] = [
  rule(
    `[so] (is|was|does|do|did|could|would|can|should|are) (it|this [one]|that [one]|they|you|we|i|this (unit|box|system)|[the] unit) [been] [${DO}] [(on|running|using|got)] [any] ${GAS} [in (here|there|it|this [one])]`,
    notHere,
    { unheard: true, examples: ['does it take four oh four a'] },
  ),
  rule(
    `[(it|this|that)] (could|might|may|should|would|ought to|needs to|is supposed to) be [(on|running)] ${GAS}`,
    surelyNotHere,
    { unheard: true, examples: ['could be four oh four a'] },
  ),
  rule(
    `[(i|we)] (thought|figured|assumed|bet|hoped) (it|this) (was|had|took|ran on|is|would be) ${GAS}`,
    notHere,
    { unheard: true, examples: ['i thought it was four oh four a'] },
  ),
  rule(`(make sure|check if|check that|see if|hope|not sure if) it is ${GAS}`, notHere, {
    unheard: true,
    examples: ['make sure it is four oh four a'],
  }),
  rule(`(it|this|this one|they) is not [(on|running)] ${GAS}`, surelyNotHere, {
    unheard: true,
    examples: ['it is not one thirty four a'],
  }),
  rule(
    `the (last|old|first|previous) (one|unit|compressor|system|box|machine) (is|was|had|has|ran|runs|took|takes|is got) [on] ${GAS}`,
    before,
    { unheard: true, examples: ['the last one was four oh four a'] },
  ),
  rule(
    `(it|this|this one) (was|used to be|had been|had) [on] ${GAS} (before|originally|from the factory|when it was new|at one time|once)`,
    before,
    { unheard: true, examples: ['it was four oh four a before'] },
  ),
  rule(
    `(i|we|you|they|guys) (used to|do not|did not|never|always|mostly|only|hardly|would not|will not) [(ever|even|really|usually)] ${DO} [(a (jug|can|bottle|drum|cylinder|tank) of|any|much|more)] <refrigerant> [in (it|here|this|there)]`,
    notHere,
    { unheard: true, examples: ['we used to use twenty two'] },
  ),
  rule(
    `<the> [(jug|can|bottle|drum|cylinder|tank) of] <refrigerant> [(i have [got]|we have [got]|that is)] [(out|back)] (on|in|at) (the|my) (truck|van|shop|trailer|supply house)`,
    notHere,
    { unheard: true, examples: ['the one thirty four a on the truck'] },
  ),
  rule(`[(i|we)] [(am|are)] [(all|almost|about|clean)] out of <refrigerant>`, notHere, {
    unheard: true,
    examples: ['i am out of four oh four a'],
  }),
  rule(
    `(i|we|you) (need|want|have [got]|got|will need|brought|grabbed|left|ordered|am getting) (a|another|some|more|one more|the|my) [(full|new|fresh|big)] (jug|can|bottle|drum|cylinder|tank) of <refrigerant>`,
    notHere,
    { unheard: true, examples: ['i need a jug of one thirty four a'] },
  ),
  rule(
    `(do not|never|you can not|do not ever) (put|use|add|mix|charge it with) <refrigerant> [(in|into|with) (it|here|this|there|that)]`,
    notHere,
    { unheard: true, examples: ['never use twenty two'] },
  ),
  rule(
    `what is [the] (pressure|pressures|charge|boiling point|glide|price|going rate|head|suction) (on|for|of) ${GAS}`,
    notHere,
    { unheard: true, examples: ['what is the pressure on four oh four a'] },
  ),
];
