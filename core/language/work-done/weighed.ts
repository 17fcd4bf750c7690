import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { breaksOff } from '../numbers/cut-numbers.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { SHOWN_UNITS } from '../../units/shown-unit.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { remark } from '../plain-means.ts';
import { fixed, reading } from '../readings/reading-means.ts';
import { type Frame, heardRule, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { isNotDone } from '../words/not-done.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { numberIn, refrigerantId, tagsIn } from '../slots.ts';
import { EVERYDAY } from '../facts/unit-description.ts';

export const refrigerantMoved =
  (quantity: 'refrigerantAdded' | 'refrigerantRecovered' | 'refrigerantLost'): Means =>
  (tags, frame) => {
    const refrigerant = refrigerantId(tags['refrigerant']);
    const { unit } = amountIn(tags);
    // "added two fuses" has neither a weight nor a refrigerant.
    if (unit === null && refrigerant === null) return null;
    if (isNotDone(frame)) return byOthers(frame);
    if (isOfElse(frame) || isSoLong(frame) || breaksOff(frame)) return null;
    // "two pounds twelve" is a weight, not two pounds of R-12.
    const isBare = !/\b(?:of|r)\b|\br-?\d/i.test(frame.wordsOf(frame.span));
    if (refrigerant !== null && EVERYDAY.includes(refrigerant) && isBare) return null;
    return fixed(quantity, refrigerant === null ? {} : { refrigerant })(tags, frame);
  };

/** "Last guy was here in August, he put in eight ounces": told of what is in it, and not ours; what was not done is nothing. */
const byOthers = (frame: Frame): Meaning =>
  /^(?:he|she|they|guy|tech|somebody|someone)$/i.test(wordBefore(frame)) &&
  BY_SOMEBODY.test(frame.wordsOf({ from: 0, to: frame.span.from }))
    ? { remarks: [frame.wordsOf({ from: 0, to: frame.span.to })] }
    : {};

/** "He wrote down he put two ounces in it" */
const BY_SOMEBODY =
  /^(?:(?:the|that|this|a|my|their|other) )*(?:last|previous|other) |\b(?:wrote|noted|logged|sticker|ticket|note|notes|paperwork|log) /i;

/** "Dropped five pounds in twenty minutes": how long it took, and nothing that it went into. */
function isSoLong(frame: Frame): boolean {
  const { to } = frame.span;
  return (
    /\bin$/i.test(frame.wordsOf(frame.span)) &&
    !frame.endsAtPause &&
    /^(?:(?:about|the last|less than|under|over) )?(?:an?|half|\d|[a-z]+(?:ty|teen)|one|two|three|four|five|six|seven|eight|nine|ten|twelve)\b/i.test(
      frame.wordsOf({ from: to, to: to + 2 }),
    )
  );
}

/** "Pulled forty pounds of chicken", "added two pounds of oil": what is no gas is not accounted for as one. */
function isOfElse(frame: Frame): boolean {
  const { from, to } = frame.span;
  const [, what] = BEHIND_OF.exec(frame.wordsOf({ from, to: to + 2 })) ?? [];
  return what !== undefined && !/^of\b/i.test(what) && !OF_GAS.test(what);
}
const BEHIND_OF =
  /\b(?:pounds?|ounces?|lbs?|oz|kilos?|kg|grams?|g)\.? of ((?:the |that |this |my |our |your |fresh |new )?[a-z]+)/i;
/** Gases are told by numbers, too, known to us or not. */
const OF_GAS = new RegExp(
  `\\b(?:it|that|this|them|gas|refrigerant|freon|charge|liquid|vapou?r|r|are|blend|propane|isobutane|stuff|juice|the|my|our|virgin|new|fresh|clean|reclaimed|recovered|${[...ONES, ...TEENS, ...TENS].join('|')})$`,
  'i',
);

const ADDED =
  '(added|weighed in|~put in|~put|~charged|~charged (in|it with|with)|~added in|~dumped in|~topped [(it|her|him|the system|the unit|this|this thing)] [(off|up)] with|~weighed in another|~(ended up|wound up) (adding|putting in)|~had to (add|put in)|~put in another|~added another|~put another|~put back|~threw in|~adding|~recharged [(it|the system)] with)';
const RECOVERED =
  '(recovered|~reclaimed|~recovered out|~pulled out|~took out|~pulled|~removed|~got out|~recovering|~weighed out)';

/** Of what so little is left unsaid that only the unit is asked. */
const ADDED_BARE = '(added|weighed in|topped [it] (off|up) with|dumped in)';
const RECOVERED_BARE = '(recovered|reclaimed|pulled out)';

const unweighed =
  (quantity: 'refrigerantAdded' | 'refrigerantRecovered'): Means =>
  (tags, frame) =>
    amountIn(tags).unit === null ? fixed(quantity)(tags, frame) : null;

/** What a cylinder gained came out of the system, and what it lost went in: only a weight with its unit. */
const weighedUp =
  (quantity: 'refrigerantAdded' | 'refrigerantRecovered'): Means =>
  (tags, frame) =>
    amountIn(tags).unit === null ? null : fixed(quantity)(tags, frame);

/** "Ounces", where only that was asked. */
const unitOfLast: Means = (tags, frame) => {
  const { unitless } = frame.context;
  if (unitless === null) return null;
  return fixed(unitless.quantity)({ ...tags, number: unitless.value }, frame);
};

/** With no weight told, its unit is asked; "charged it to fifty psi" weighs nothing. */
const chargedIt: Means = (tags, frame) => {
  const refrigerant = refrigerantId(tags['refrigerant']);
  const of = refrigerant === null ? {} : { refrigerant };
  return fixed('refrigerantAdded', of)(tags, frame);
};

/** "Eleven pounds in it all together": the charge, by its weight. */
const inAll: Means = (tags, frame) => {
  const refrigerant = refrigerantId(tags['refrigerant']);
  const { unit } = amountIn(tags);
  if (refrigerant === null && THROWN_OUT.test(frame.wordsOf({ from: 0, to: frame.span.from })))
    return remark(tags, frame);
  const weighs = unit !== null && WEIGHTS.has(unit);
  return weighs
    ? fixed('refrigerantCharge', refrigerant === null ? {} : { refrigerant })(tags, frame)
    : null;
};
/** "She's throwing out the tuna and the turkey, about twenty two pounds all told" weighs no gas. */
const THROWN_OUT =
  /\b(?:throw|throws|throwing|threw|thrown|toss|tosses|tossing|tossed|pitch|pitching|pitched|dump|dumping|dumped|discard|discarding|discarded|trash|trashing|trashed|lost|losing|spoiled|ruined)\b/i;
export const WEIGHTS: ReadonlySet<string> = new Set(['pounds', 'lb', 'oz', 'kg', 'g']);

/** "No refrigerant added": of nothing the unit need not be asked. */
const noneMoved =
  (quantity: 'refrigerantAdded' | 'refrigerantRecovered'): Means =>
  (tags, frame) => {
    const unit = SHOWN_UNITS[frame.context.units].mass;
    return fixed(quantity)({ ...tags, number: 0, unit }, frame);
  };

/** "Added a pound, then another eight ounces": more of what was weighed before in the same sentence, or last. */
const another: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.value === null) return null;
  if (amount.unit === null) return moreUnnamed(tags, frame);
  if (!WEIGHTS.has(amount.unit)) return null;
  if (isOfElse(frame)) return null;
  const { movedLast } = frame.context;
  const ofLast = movedLast === null ? null : fixed(movedLast.quantity)(tags, frame);
  const means = (quantity: QuantityId): Meaning | null => {
    const isMoved = quantity === 'refrigerantAdded' || quantity === 'refrigerantRecovered';
    const found = isMoved ? reading(quantity, amount, frame) : null;
    return found === null ? null : { readings: [found] };
  };
  return { ofThat: { means, otherwise: ofLast ?? { unclaimed: [String(amount.value)] } } };
};

/** "Then two and three quarter more": in the unit of what was weighed last, where nothing was read since; asked about. */
const moreUnnamed: Means = (tags, frame) => {
  const { movedLast, lastQuantity } = frame.context;
  if (movedLast === null || lastQuantity !== movedLast.quantity) return null;
  const found = reading(movedLast.quantity, amountIn(tags), frame);
  return found === null
    ? null
    : { doubts: [{ ...found, unit: movedLast.unit, unitFrom: 'implied', why: 'soundsLike' }] };
};

/** "And another pound" */
const anotherWhole: Means = (tags, frame) =>
  frame.context.movedLast === null ? null : another({ ...tags, number: 1 }, frame);

const PARTS: readonly (readonly [RegExp, number])[] = [
  [/half$/i, 1.5],
  [/three quarters$/i, 1.75],
  [/quarter$/i, 1.25],
];
/** "Another pound and a quarter" */
const anotherAndParts: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const number = PARTS.find(([said]) => said.test(words))?.[1] ?? 1;
  const { lastQuantity } = frame.context;
  const isMoved = lastQuantity === 'refrigerantAdded' || lastQuantity === 'refrigerantRecovered';
  return isMoved
    ? fixed(lastQuantity)({ ...tags, number }, frame)
    : another({ ...tags, number }, frame);
};

/** "Used a drier and two pounds of 404": the gas by its weight, the part as the office bills it. */
const usedWithGas: Means = (tags, frame) => {
  const gas = refrigerantMoved('refrigerantAdded')(tags, frame);
  return gas === null ? null : { ...gas, remarks: [frame.wordsOf(frame.span)] };
};

/** "Added twelve ounces, then another six": of the same. */
const andMore: Means = (tags, frame) => {
  const first = refrigerantMoved('refrigerantAdded')(tags, frame)?.readings ?? [];
  const value = numberIn(tagsIn(tags['more'])?.['number']);
  const [found] = first;
  return found?.unit == null || value === null
    ? null
    : { readings: [found, withMore(found, { value })] };
};

/** "Lost ten pounds overnight" may be a pressure: what is lost by the ounce or the gram is gas. */
const lostOunces: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === 'oz' || unit === 'g' || unit === 'kg'
    ? fixed('refrigerantLost')(tags, frame)
    : null;
};

const PART_OF =
  '(half|a third|a quarter|a fourth|a fifth|two thirds|three quarters|most|all|some|a good (bit|part|chunk)|(thirty|forty|twenty|fifty|sixty|ten) percent) [of]';
/** "Lost about a third of the charge, eleven ounces": so much is gone, and on no plate. */
const lostPart: Means = (tags, frame) =>
  tags['unit'] === undefined ? null : fixed('refrigerantLost')(tags, frame);

const A_CHARGE =
  '(the|a|its|my|that|this|it is) [(full|whole|new|fresh|factory|virgin|complete)] charge';
const WHAT = '(what|all) [that]';
const EVEN = '[~~(even|exactly|flat|on the nose|to the ounce|all told|total)]';
export const GAS = '(refrigerant|gas|freon|charge)';
const NO_GAS = `no ${GAS}`;

/** "It had two and a half pounds in it" tells what was in there, and half of it is no weight of its own. */
const isPutIn = (frame: Frame): boolean => {
  const isHalfOfMore =
    /^and$/i.test(wordBefore(frame)) &&
    /^(?:an? )?(?:half|quarter)/i.test(frame.wordsOf(frame.span));
  return !isHalfOfMore && !/^(?:it|there|here)$/.test(wordBehind(frame));
};

/** Refrigerant that went in, came out or was lost on the way. */
export const WEIGHED_RULES: readonly Rule[] = [
  rule(
    '[((it|this|unit|the unit|system|the system) (has|has got|is got|holds|got)|there is)] <amount> [of (<refrigerant>|gas|refrigerant|freon)] [in (it|there|here|the system|this thing)] (all together|altogether|total|in total|all told|in all) [in (it|there|here|the system)]',
    inAll,
    {
      unheard: true,
      only: startsClause,
      examples: ['it has eleven pounds of four oh four in it all together'],
    },
  ),
  rule(
    `[(i|we|just)] [have] ((topped|gassed|filled|charged|juiced) (it|her|him|the (system|unit|box)|this thing) (off|up|back up)|(dumped|threw|shot|snuck|trickled|bumped) some [(gas|in|more in|gas in)]) <pause> [(it took|took|about|put in|with|that was|in)] <amount> [of <refrigerant>]`,
    refrigerantMoved('refrigerantAdded'),
    { unheard: true, examples: [] },
  ),
  rule(
    `[(i|we|and|just)] [(have|had to)] (dumped|threw|shot|stuck|snuck|trickled|bumped|poured|squirted|fed|pushed|dropped|dump|shoot|stick) [another] <amount> [of (<refrigerant>|gas|it)] [(more|back)] (in|in it|into it|in her|to it|in the system|back in)`,
    refrigerantMoved('refrigerantAdded'),
    { unheard: true, examples: ['dumped two pounds in'] },
  ),
  rule('[(it is|that is|in|that was|those are|they are)] <unit>', unitOfLast, { alone: true }),
  rule(
    `[(i|we)] [have] ((weighed (in|out)|charged in|put [back] in|dumped in) ${A_CHARGE}|(charged|recharged|weighed) (it|the (system|unit|box)) [up] (by|on|off|with|to) [the] (weight|scale)) [<pause>] [(it took|that was|that is|at|of|took)] <amount> [of <refrigerant>]`,
    refrigerantMoved('refrigerantAdded'),
    { unheard: true, examples: ['weighed in the charge thirty eight ounces'] },
  ),
  rule(
    '[the] scale (says|shows|reads|is at|has|is reading) <amount> (added|in|gone in|went in|used|so far)',
    weighedUp('refrigerantAdded'),
    { unheard: true, examples: ['scale says one pound six added'] },
  ),
  rule(
    '[the] scale (says|shows|reads|is at|has|is reading) <amount> (recovered|out|came out|back)',
    weighedUp('refrigerantRecovered'),
    { unheard: true, examples: ['scale says one pound six recovered'] },
  ),
  rule(
    `[(i|we)] [have] (charged it|charged the (system|unit)) [back] [(up|with|to|at)] [with] <amount> [of <refrigerant>] [(by|on|off) the scale]`,
    chargedIt,
    { examples: ['charged it with five point three ounces'] },
  ),
  rule(
    '[(i|we|have|i have)] ((recovered|reclaimed) [back] (nothing|no (refrigerant|gas|freon|charge)) [(out|out of it|back)]|(got|pulled) no (refrigerant|gas|freon) (out|back) [of it]|(did not|could not) recover (anything|any [(gas|refrigerant|freon)]|a thing) [(out|out of it)]|(nothing|not anything) [(in (it|there)|left)] to recover)',
    noneMoved('refrigerantRecovered'),
    { examples: ['recovered nothing', 'nothing to recover'] },
  ),
  rule(
    `(${NO_GAS} [(was|were|is)] (added|needed|put in|required)|[(i|we)] (did not|have not) (add|added|put) (any|a drop of|any more) ${GAS} [in]|[(i|we)] [have] (added|put in) (${NO_GAS}|none|zero ${GAS})|~~[(i|we)] (did not|never|have not|did not have to|did not need to) (touch|touched|mess with|messed with|adjust|change|changed) the ${GAS}|~~left the ${GAS} (alone|as it (is|was)|where it (is|was))|~~[(i|we|it|she)] (did not|does not|has not|have not) [(have|need|needed|had)] [to] (add|put in|put|take|need|needed|added) (any|any more|no) ${GAS} [(in it|to it|in)])`,
    noneMoved('refrigerantAdded'),
    { examples: ['no refrigerant added', 'did not add any refrigerant'] },
  ),
  heardRule(
    `[(i|we)] [have] ${ADDED} [~(another|an additional|an extra|only|just|a total of|(the|a) (full|whole|same|other|last|remaining|first|final|complete)|exactly|right at)] <amount> [~(more|by weight)] [(of <refrigerant>|~<refrigerant>|~[of] <refrigerant:wrong> <correction> [of] <refrigerant>)] [~(in (it|there)|(into|to) (it|the (system|unit))|[that] (i|we) (took|pulled|got|recovered) [out])] [~(by|per|off|to|according to) the (tag|plate|nameplate|name plate|data plate|sticker|label|scale)]`,
    refrigerantMoved('refrigerantAdded'),
    {
      examples: ['added eight ounces of one thirty four', 'weighed in three pounds two ounces'],
    },
  ),
  rule(
    `[(i|we)] [have] ${ADDED} [another] <weight> [[of] <refrigerant>]`,
    refrigerantMoved('refrigerantAdded'),
    { unheard: true, examples: ['added five pounds three or so'] },
  ),
  rule(
    `[(i|we)] [have] ${ADDED} <amount> [<pause>] [of] (virgin|new|fresh|clean|reclaimed) <refrigerant>`,
    refrigerantMoved('refrigerantAdded'),
    { unheard: true, examples: ['added two pounds of new four oh four'] },
  ),
  rule(
    `[(i|we)] [have] ${RECOVERED} [(another|a total of|only|all|exactly)] <weight> [of] [[<refrigerant:wrong> <correction> [of]] <refrigerant>]`,
    refrigerantMoved('refrigerantRecovered'),
    { examples: ['recovered two pounds of four oh four a'] },
  ),
  rule(
    '[(i|we)] [have] [also] (used|went through|put in) [another] (<number:count>|a|an) [new] [(feet of|foot of|set of|box of)] <part> [<pause>] [and] <amount> of <refrigerant>',
    usedWithGas,
    { examples: ['used one dryer and a pound and a half of four oh four a'] },
  ),
  rule(
    `[(i|we)] [have] (lost|leaked) <amount> [of <refrigerant>] (in|out of|to|through|purging) [(the|my)] (hose|hoses|gages|purge|purging|manifold|fittings|air|connections)`,
    refrigerantMoved('refrigerantLost'),
    { examples: ['lost two ounces in the hoses'] },
  ),
  rule(
    `[(it|she|<the> (unit|system|box|machine)|we)] [(is|has|have)] (lost|leaked [out]) <amount> of (<refrigerant>|${GAS})`,
    refrigerantMoved('refrigerantLost'),
    { examples: ['it has lost about two pounds of gas'] },
  ),
  rule(
    `[(it|she|we|i|<the> (unit|system|box))] [(is|has|have)] (lost|leaked [out]|short|down|missing) [(about|maybe|like|around|roughly|nearly|almost|over)] ${PART_OF} (the|it is|my|that|this) [(full|whole|nameplate|factory)] (charge|gas|refrigerant) [(i would (say|guess|think)|i (figure|reckon|guess|think)|give or take|maybe|or so)] [<pause>] [(call it|that is|say|so|about|which is)] <amount>`,
    lostPart,
    { unheard: true, examples: ['lost about a third of the charge i would say eleven ounces'] },
  ),
  rule(`[(it|<the> (unit|system))] [(is|has)] (lost|leaked [out]) <amount>`, lostOunces, {
    apart: true,
    beforeTold: true,
    examples: ['lost eight ounces'],
  }),
  rule(
    `<amount> [of] [<refrigerant>] (is|was) ${WHAT} ((has leaked|leaked) [(out|away)] [of it]|(it|we) [(has|have)] (lost|leaked [out])|got away)`,
    refrigerantMoved('refrigerantLost'),
    { examples: ['half a pound is what leaked out of it'] },
  ),
  rule(
    `[(i|we)] [have] (lost|leaked) (a|an|about an|maybe an) ounce (in|out of|to|purging) [(the|my)] (hose|hoses|gages|purge|purging|manifold|fittings|air)`,
    (tags, frame) => refrigerantMoved('refrigerantLost')({ ...tags, number: 1, unit: 'oz' }, frame),
    { examples: ['lost an ounce in the hoses'] },
  ),
  rule(
    '[(i|we)] [have] [(ended up|just|only)] (used|using|burned through|went through|took|it took) [up] [(about|a total of|another)] <amount> [more] of <refrigerant> [(total|in all|to (top it off|fill it|charge it))]',
    refrigerantMoved('refrigerantAdded'),
    { examples: ['used eight ounces of four oh four a'] },
  ),
  rule(
    `<weight> ${EVEN} [of] [<refrigerant>] [(is|was|has been)] [${WHAT}] (added|weighed in|put in|put back in|(has|have) gone in|went [back] in|(i|we) [(have|ended up|had to|wound up)] (added|add|put (in|back)|weighed in|putting in|adding))`,
    refrigerantMoved('refrigerantAdded'),
    { examples: ['four ounces added'] },
  ),
  rule(
    `<weight> ${EVEN} [of] [<refrigerant>] [(is|was|has been)] [${WHAT}] (recovered|reclaimed|pulled out|taken out|removed|came [back] out|(i|we) (recovered|pulled out|got out|got back|took out|reclaimed)) [of (it|there|the system)] [when (i|we) recovered (it|the charge)]`,
    refrigerantMoved('refrigerantRecovered'),
    { examples: ['two pounds four ounces recovered'] },
  ),
  rule(
    '[(i|we)] (got|have|pulled|took) [out] (all of it|it all|everything|the whole charge|the whole thing) [out] [(of it|of there|of the system)] [(it|that|which|total)] [(is|was|came to|weighed|comes to)] <amount>',
    refrigerantMoved('refrigerantRecovered'),
    { examples: ['got all of it four pounds one ounce'] },
  ),
  rule(
    '[(i|we)] (got|pulled|took) <amount> [of <refrigerant>] (back [out]|out) [of (it|there|the system|the unit)]',
    refrigerantMoved('refrigerantRecovered'),
    { examples: ['got three pounds out of it'] },
  ),
  rule(
    `[(i|we)] [have] ${RECOVERED} ((the|the whole) lot|what (was|is) left [(in (it|her|there|here|the system))]|the (gas|freon)) [(it|that|which|total)] [(is|was|came to|weighed|comes to)] [(only|just)] <amount> [(nothing|even|flat|on the (nose|dot))]`,
    refrigerantMoved('refrigerantRecovered'),
    { unheard: true, examples: ['recovered the lot eight pounds nothing'] },
  ),
  rule(
    `[(i|we)] [have] ${RECOVERED} (everything|it all|all of it|the [whole] charge|the refrigerant|~~(what|whatever|all that) (was [left]|it had [left]|there was) [(in (it|there|here|the system))]|~~the rest [of it]) [(it|that|which|total)] [(is|was|came to|weighed|comes to|~~got|~~and got|~~only got|~~about)] [(only|just)] <amount>`,
    refrigerantMoved('refrigerantRecovered'),
    { examples: ['recovered everything, thirty one ounces'] },
  ),
  rule(
    `[(i|we)] [have] ${ADDED} [another] (a|an) <unit> [of] [<refrigerant>]`,
    refrigerantMoved('refrigerantAdded'),
    {
      tags: { number: 1 },
      examples: ['added an ounce'],
    },
  ),
  rule(
    `[(i|we)] [have] ${RECOVERED} [(another|about)] (a|an) <unit> [of] [<refrigerant>]`,
    refrigerantMoved('refrigerantRecovered'),
    {
      tags: { number: 1 },
      examples: ['recovered a pound'],
    },
  ),
  rule(
    `[(i|we)] [have] ${ADDED_BARE} [another] <amount> [(of refrigerant|of gas|of charge|more)]`,
    unweighed('refrigerantAdded'),
    {
      alone: true,
      examples: ['added eight'],
    },
  ),
  rule(
    `[(i|we)] [have] ${RECOVERED_BARE} <amount> [(of refrigerant|of gas|of charge|total)]`,
    unweighed('refrigerantRecovered'),
    {
      alone: true,
      examples: ['recovered thirty six'],
    },
  ),
  rule(
    '<pause> [(and|it|and it)] took <amount> [of <refrigerant>] [(even|total|to (fill|clear) it|in all|altogether)]',
    refrigerantMoved('refrigerantAdded'),
  ),
  rule(
    '[the] (scale|tank|cylinder|bottle|drum|recovery (tank|cylinder)) (came up|went up|gained|picked up|is up|climbed) [by] <amount>',
    weighedUp('refrigerantRecovered'),
    { examples: ['scale came up four pounds nine'] },
  ),
  rule(
    '[the] (scale|tank|cylinder|bottle|drum|jug) (came down|went down|lost|is down|gave up|dropped) [by] <amount>',
    weighedUp('refrigerantAdded'),
    { examples: ['tank dropped three pounds two ounces'] },
  ),
  rule(
    `[(i|we)] [have] ${ADDED} <amount> [more] [of <refrigerant>] [<pause>] [(then|and|plus|and then)] [(added|put in)] another <number:more>`,
    andMore,
    { examples: ['added twelve ounces then another six'] },
  ),
  rule(
    '<amount> in [(so far|now|already|total|by the scale|[and] [the] scale says so|per the scale)]',
    weighedUp('refrigerantAdded'),
    {
      unheard: true,
      apart: true,
      only: isPutIn,
      examples: ['nine pounds four ounces in so far'],
    },
  ),
  rule(
    '[(then|and|plus|and then)] another <unit> and (a half|a quarter|three quarters)',
    anotherAndParts,
    { unheard: true, examples: ['another pound and a quarter'] },
  ),
  rule('[(then|and|plus|and then)] another <amount> [of it]', another, {
    examples: ['then another eight ounces'],
  }),
  rule(
    '[(then|and|plus|and then|there is|now|gave it|gave her)] [(about|maybe|a last)] <amount> more [(of it|after that|now|in)]',
    another,
    { unheard: true, apart: true, examples: [] },
  ),
  rule('[(then|and|plus|and then)] [(about|maybe)] <number> more <unit> [of it]', another, {
    unheard: true,
    apart: true,
    examples: [],
  }),
  rule('[(then|and|plus|and then)] (another|a last|an extra) <unit> [of it]', anotherWhole, {
    unheard: true,
    apart: true,
    examples: [],
  }),
];
