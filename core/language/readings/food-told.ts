import { startsClause } from '../words/clause-start.ts';
import { FOOD, KEPT as ANY_FOOD } from '../words/food-words.ts';
import { amountIn } from '../numbers/measure.ts';
import { fixed } from './reading-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';

/** What was probed has a temperature; pounds of it have none. */
const probed: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const isWarmth = unit === null || unit === 'degrees' || unit === 'degF' || unit === 'degC';
  const [found] = (isWarmth ? fixed('productTemp')(tags, frame) : null)?.readings ?? [];
  return found === undefined
    ? null
    : { readings: [{ ...found, words: found.words.replace(IS_PROBING, '') }] };
};
/** What is done with the thermometer names no food. */
const IS_PROBING =
  /^(?:(?:i'm|i am|we're|we are) )?(?:probing|temping|checking) (?:(?:some of the|some|the|their|a little) )?(?:product|food|stuff)(?: (?:in here|here|now|real quick))?,? /i;

/** "Fish sticks eighteen": so tersely only where nothing else stands beside it. */
const listed: Means = (tags, frame) =>
  startsClause(frame) && frame.endsAtPause ? probed(tags, frame) : null;

/** "Lobster's fine, thirty six" */
const foodFine: Means = (tags, frame) => {
  const found = probed(tags, frame);
  const words = frame.wordsOf(frame.span);
  return found && { ...found, findings: [{ part: 'product', state: 'ok', words }] };
};

/** "Pitched four cases of chicken, it was fifty one in the middle": how warm it was, and that it is gone. */
const pitched: Means = (tags, frame) => {
  const found = probed(tags, frame);
  return found && { ...found, ...remark(tags, frame) };
};

const told: Means = (tags, frame) => (startsClause(frame) ? remark(tags, frame) : null);

const KEPT = FOOD.replace(/^\(/, '').replace(/\)$/, '');
const SOME =
  '[(the|their|that|this|some|all the|raw|cooked|cut|sliced|ground|frozen|fresh)] [(raw|cooked|cut|sliced|ground|frozen|fresh|front|back|top|bottom)]';
const ANY_SOME =
  '[(the|their|that|this|all the|some of the|my|those|these)] [(frozen|fresh|raw|cooked|cut|sliced|ground|fried|bagged|boxed|canned|bottled)]';
const DISH = `(${KEPT}|patties|salad (pan|pans)|(pan|pans|insert|inserts|tray|trays) [of (${KEPT})])`;
const THERE =
  '[(in there|in here|in it|inside|up top|down low|(in|on) the [(front|back|top|bottom|left|right)] (rail|pan|pans|box|case|cooler|freezer|unit|walk in|reach in|drawer|drawers|well|bottom|top|table|prep table|shelf|middle))]';
const WATER =
  '[(a|the|my|that|this|their)] ((bottle|glass|cup|jug|pan|container|gallon) of water|water (bottle|glass|cup|jug)|bottled water|(soda|beer|milk) (can|bottle|jug))';
const LEFT_THERE = '[[that] (i|we) (put|left|stuck|set|had)]';
const HOLDS =
  '[(a|the|one of the|some of the|that) (tub|pan|case|tray|bucket|box|jug|pot|pack|top|bottom|middle|center|well|jar|bin|container) of]';
/** What it was taken from: "a box of fries". */
const PACK =
  '[(a|the|one|another|that|this)] (tub|pan|case|tray|bucket|box|jug|bag|pack|package|jar|bin|container|carton|bottle|slab|tube) of';
const PACK_OF = `[${PACK}]`;
const PROBING =
  '[[(i am|we are)] (probing|temping|checking) [(some|some of the|the|their|a little)] (product|food|stuff) [(here|in here|now|real quick)] [<pause>]]';
const ON_SHELF =
  '((in|on|off|from) the [(front|back|top|bottom|left|right|middle)] (rail|shelf|rack|pan|drawer|well|case|table|corner|stack))';
const MIDDLE =
  '[(in|at) the (middle|center|core|thickest part|top|bottom|back|front) [of (it|the (pan|case|box|tray|stack))]]';
const SHOWS =
  '(is|are|was|at|reads|read|reading|says|shows|showing|measures|came (out|in) at|checks|is (at|reading|sitting at)|are (at|sitting at|reading)|sitting at)';
const THROWN = '(pitched|tossed|thrown (out|away)|discarded|dumped|trashed|pulled|thrown)';

/** What is kept in the box: how warm it is, and what became of it. */
export const FOOD_RULES: readonly Rule[] = [
  rule(
    `[(and|so|but)] (everything|stuff|all the (stuff|food|product)|(half|most|some) (of it|the stuff|the food|of the stuff|of the food)|all of it) (in (it|there|here|the (box|case))|inside) (is|was|has|is all|was all) [(still|getting|starting to|pretty|kind of|already|gone|gotten|all)] (soft|thaw|thawed [out]|thawing [out]|melt|melted|melting|warm|mushy|spoiled|bad|hard|frozen [solid]|cold|ok|fine)`,
    told,
    { unheard: true, examples: ['everything in it is soft'] },
  ),
  rule(
    `[(i|we)] [just] (temped|probed|shot|zapped) ${PACK} [(the|their|some|some of the)] ${ANY_FOOD} ${THERE} [<pause>] [(it is|and it is|it was|they are|got|at)] <amount>`,
    probed,
    { unheard: true, only: startsClause, examples: ['probed a bag of fries twenty one'] },
  ),
  rule(
    `[(i|we)] [just] (temped|probed) (a couple|some|a few|one|two|three|four) [of] [(the|those|their)] (boxes|bags|cases|packages|trays|tubs|packs|containers) [${MIDDLE}] [<pause>] [(they are|it is|and they are|and it is|all)] [(about|at|reading|right at)] <amount>`,
    probed,
    {
      unheard: true,
      examples: ['temped a couple boxes in the middle they are at twenty nine'],
    },
  ),
  rule(
    `${SOME} ${DISH} ${THERE} (temped|temping|is temping|are temping|temps|probed|probes|is probing|was temped) [out] [at] <amount>`,
    probed,
    {
      unheard: true,
      examples: ['meat in there temped forty four'],
    },
  ),
  rule(
    `${SOME} ((${KEPT}|patties) (in there|in here|inside|up top|(in|on) the [(front|back|top|bottom|left|right)] (rail|pan|pans|drawer|drawers|well|prep table))|salad (pan|pans) ${THERE}|(pan|pans|insert|inserts) [of (${KEPT})] (in|on) the [(front|back|top)] (rail|well|table|prep table)) ${SHOWS} <amount>`,
    probed,
    { unheard: true, examples: ['salad pans in the rail at forty six'] },
  ),
  rule(
    `${WATER} ${LEFT_THERE} (in there|in here|in it|inside|in the (box|cooler|case|walk in|reach in|freezer|cabinet)) ${SHOWS} <amount>`,
    probed,
    {
      unheard: true,
      examples: ['water bottle i put in there reads forty'],
    },
  ),
  rule(`(temped|probed) ${WATER} ${THERE} [at] <amount>`, probed, {
    unheard: true,
    examples: ['temped a glass of water at forty'],
  }),
  rule(
    `[(the|their|that|all the|this)] ${ANY_FOOD} ${THERE} (is|are|was|were|looks|look|feels) [(all|still|just)] (fine|good|ok|all right|safe|cold|frozen) [<pause>] [(it is|they are|at|i got|i have|reads|temped [at]|read|reading)] <amount> ${MIDDLE}`,
    foodFine,
    { unheard: true, only: startsClause, examples: ['lobster is fine thirty six'] },
  ),
  rule(
    `${ANY_SOME} ${ANY_FOOD} ${THERE} (is|are|was|were) [(still|only|already|all|sitting|up|down)] (at|up at|down at|sitting at|reading|temping|probing|up to|down to) <amount>`,
    probed,
    { unheard: true, only: startsClause, examples: ['lobster is at forty eight'] },
  ),
  rule(
    `${PROBING} ${PACK_OF} ${ANY_SOME} ${ANY_FOOD} [(up|down|on|at)] [(top|bottom|low|in (back|front))] ${THERE} (is|are|reads|read) [(still|only|already|all|at)] <amount>`,
    probed,
    { unheard: true, only: startsClause, examples: ['lobster in the top drawer is forty eight'] },
  ),
  rule(`${PROBING} ${PACK_OF} ${ANY_SOME} ${ANY_FOOD} [${ON_SHELF}] <amount>`, listed, {
    unheard: true,
    examples: ['fish sticks eighteen', 'chicken on the bottom shelf twenty one and a half'],
  }),
  rule(
    `${ANY_SOME} ${ANY_FOOD} ${THERE} (is|are) [(getting|all|already|starting to get|a little|really|pretty|kind of)] (soft|mushy|thawing|thawed|melting|melted|warm|spoiled|sweating|dripping|slushy) (<pause> [(and|it is|they are|i got|it is at|at)]|[and] (at|reading|probing|temping)) <amount>`,
    pitched,
    { unheard: true, only: startsClause, examples: ['popsicles are soft at twenty two'] },
  ),
  rule(
    '[(the|their)] (beer|soda|milk|juice|wine|draft|draft beer|keg beer|product) [line] [(at the (tap|faucet|tower|spout|nozzle)|from the (tap|faucet))] (pours|pouring|is pouring|comes out|is coming out|dispenses|pours out) [(at|down at)] <amount> [(at the (tap|faucet|tower))]',
    probed,
    { unheard: true, examples: ['beer line at the tap pours at forty'] },
  ),
  rule(
    `[(i|we|just|and)] (probed|temped|shot|checked|gunned) ${HOLDS} [(the|some|some of the|their|that)] ${ANY_FOOD} ${THERE} [<pause>] [(and|at|it is|it was|got|and got|and it is)] [at] <amount>`,
    probed,
    { unheard: true, examples: ['probed the burgers at thirty nine'] },
  ),
  rule(
    `[(the|all the|their|that)] (product|food|${KEPT}) (is|are|was|were|has|have) [been] (over|above|warmer than|past|under) <amount> [(for|since|all|over) <clause>]`,
    told,
    { unheard: true, examples: ['product has been over forty one since midnight'] },
  ),
  rule(
    `[(i|we|just|and)] (stuck|put|shoved|jammed|poked|set|dropped|got|have [got]|placed|pushed) (my|a|the) [(temp|pocket|stem|meat)] (probe|thermometer|thermocouple|stem) (in|into|down in|inside) ${HOLDS} [(the|some|some of the|their|that)] ${ANY_FOOD} [<pause>] [(and|so)] [(it|that|he|she|i)] (is|got|have|have got|am getting|reads|says|shows|read|said|showed|came up|came out|comes up|showing|reading|at) [(at|with)] <amount>`,
    probed,
    {
      unheard: true,
      examples: ['stuck my probe in the pickles and it says forty four point six'],
    },
  ),
  rule(
    `[(i|we|they|he|she|the (cook|chef|manager|kitchen)|had them)] [(just|all|went ahead and)] (pitched|tossed|threw (out|away)|dumped|trashed|discarded|pulled|lost|pitch|toss) [(about|all|all the|the|some|a)] [<number>] [(cases|case|boxes|box|pans|pan|trays|tray|pounds|gallons|bags|bag|flats|racks|crates)] [of] [(the|their)] ${ANY_FOOD} <pause> [(and|because|since)] [(it|they|all of it|that)] (was|were|temped|probed|read|had got to|got to|is) [(at|up at|already|sitting at|up to)] <amount> ${MIDDLE}`,
    pitched,
    { unheard: true, examples: [] },
  ),
  rule(
    `(everything|anything|all of it|whatever (was|is)) (over|above|warmer than|past) <amount> [[for] [(more than|longer than|over)] <duration:held>] (goes|went|is going|gets thrown|has to go|got thrown|goes straight) (in|into|out [in]) [the] (bin|trash|garbage|dumpster|can)`,
    remark,
    { unheard: true, examples: ['everything over forty one for four hours goes in the bin'] },
  ),
  rule(
    `(everything|anything|all of it|whatever was) (over|above|warmer than|past|under|below) <amount> [that] (got|gets|was|is|had to be|went|has to be) [(being|all|already)] ${THROWN} [by (<who>|the (chef|cook|manager|staff|kitchen))]`,
    remark,
    { unheard: true, examples: ['everything over forty one got pitched by the chef'] },
  ),
  rule(
    '[(total|the|their)] (product|food) loss [(is|was|of|comes to|about|around|maybe)] [(is|about|around|maybe|over)] <number> [(bucks|dollars|grand|cases|pounds)] [(they (figure|say|think|said)|worth|so far)]',
    told,
    { unheard: true, examples: ['product loss about six hundred bucks they figure'] },
  ),
];
