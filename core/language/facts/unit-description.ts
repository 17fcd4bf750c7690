import { opensSentence } from '../words/clause-start.ts';
import type { RefrigerantId } from '../../terms/refrigerants.ts';
import { amountIn, measured } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { ENDS_AS_TRADE, LEAD_TO_SITE, TRADE } from '../names/site-names.ts';
import { boxFacts, meteringId, refrigerantId, tagsIn } from '../slots.ts';
import type { Fact } from '../utterance.ts';

/** Refrigerants whose figures are everyday temperatures: "walk in, thirty two" is a box at 32. */
export const EVERYDAY: readonly RefrigerantId[] = ['R-12', 'R-22', 'R-32', 'R-125'];

/** Everything that was told of the unit in one breath, each as a fact. */
const described: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const facts: Fact[] = [...boxFacts(tags, words)];
  const refrigerant = refrigerantId(tags['refrigerant']);
  const metering = meteringId(tags['metering']);
  if (refrigerant !== null) facts.push({ fact: 'refrigerant', value: refrigerant, words });
  if (metering !== null) facts.push({ fact: 'metering', value: metering, words });
  return { facts };
};

/** The box, and that its condenser stands elsewhere: its split, superheat and difference go by the box. */
const describedApart: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const condenser: Fact = { fact: 'condenser', value: 'remote', words };
  return { facts: [...(described(tags, frame)?.facts ?? []), condenser] };
};

/** With nothing but a comma before it, only a figure that cannot be the box's temperature is a refrigerant. */
const describedByFigure: Means = (tags, frame) => {
  const refrigerant = refrigerantId(tags['refrigerant']);
  const isEveryday = refrigerant !== null && EVERYDAY.includes(refrigerant);
  return isEveryday && tags['metering'] === undefined ? null : described(tags, frame);
};

/** With what the plate says goes in: only a weight is a charge. */
const charged: Means = (tags, frame) => {
  const amount = amountIn(tagsIn(tags['charge']) ?? {});
  const found =
    amount.unit === null ? null : measured('refrigerantCharge', amount, frame.context.units);
  if (found?.value === undefined || found.unit === null) return null;
  const { value, unit } = found;
  const words = frame.wordsOf(frame.span);
  const charge: Fact = { fact: 'nameplate', item: 'charge', value, unit, words };
  return { facts: [...(described(tags, frame)?.facts ?? []), charge] };
};

/** Behind a comma "twelve" is ounces, or anything. */
const describedByComma: Means = (tags, frame) => {
  const refrigerant = refrigerantId(tags['refrigerant']);
  const isEveryday = refrigerant !== null && EVERYDAY.includes(refrigerant);
  return isEveryday && !/\b(?:on|using|r)\b|r-?\d/i.test(frame.wordsOf(frame.span))
    ? null
    : described(tags, frame);
};

/** "this is the", "its", "I'm on our": what leads up to a name; "the unit is the" to its end. */
const BEFORE_NAME = /^.*?(?:\b(?:is|its|at|on|have|got)|'s)\s+(?:(?:the|a|an|our|their|your)\s+)?/i;

const named: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const value = words.replace(BEFORE_NAME, '');
  const unit: Fact = { fact: 'unit', value, words };
  return { facts: [...(described(tags, frame)?.facts ?? []), unit] };
};

/** No name of a site: what points, counts or greets. */
const NO_SITE =
  /^(?:this|that|the|here|there|next|second|first|third|another|other|last|moving|back|working|looking|so|ok|okay|alright|all|good|hey|hello|i|we|it|its|now|and|for)\b|\b(?:is|are|was|and|unit|one|box|next|up|here|degrees|psi)\b|'s\b(?! \w)|\d/i;

/** "Harbor Street Deli, the reach-in by the back door": what opens a sentence and is no other words is the site's name. */
function siteBefore(frame: Frame): readonly Fact[] {
  const { from } = frame.span;
  const value = from === 0 ? '' : frame.wordsOf({ from: 0, to: from });
  const count = value.split(/\s+/).length;
  const isName = count >= 2 && count <= 6 && !NO_SITE.test(value);
  return isName ? [{ fact: 'site', value, words: value }] : [];
}

const namedHere: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const value = words.replace(/^(?:the|our|their|your)\s+/i, '');
  return { facts: [...(described(tags, frame)?.facts ?? []), { fact: 'unit', value, words }] };
};

const namedBehindSite: Means = (tags, frame) => {
  // "Prep table at the Corner Grill" stands in no corner.
  const { to } = frame.span;
  if (!frame.endsAtPause && IS_TRADE.test(frame.wordsOf({ from: to, to: to + 1 }))) return null;
  return { facts: [...siteBefore(frame), ...(namedHere(tags, frame)?.facts ?? [])] };
};

const IS_TRADE = new RegExp(`^${TRADE}$`, 'i');

/** Without a pause only behind what ends as a business does: "harbor street deli the reach in by the back door". */
const namedBehindTrade: Means = (tags, frame) => {
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  // "I'm at sunrise bagels" is read by itself.
  if (LEAD_TO_SITE.test(before)) return ENDS_AS_TRADE.test(before) ? namedHere(tags, frame) : null;
  const [site] = siteBefore(frame);
  return site?.fact === 'site' && ENDS_AS_TRADE.test(site.value)
    ? namedBehindSite(tags, frame)
    : null;
};

/** "Walk-in freezer at the back dock, four oh four a": only what opens a sentence names the unit so. */
const OPENING = { only: opensSentence, examples: [] };

const THIS =
  '(got|we got|i got|it is|this is|that is|we have|it is got|i am on|i have|i have got|working on|i am working on|i am looking at|looking at|this one is|unit is|the unit is|we are on|i am at|i am here at)';
export const WHERE =
  '(by|in|near|behind|next to|beside|across from|under|outside|below|out|on|at|~~along|~~against) (the|their) [(back|~~pass through|~~far|~~outside|front|left|right|north|south|east|west|main|side|cold|dish|prep|loading|dining|storage|service|salad|pizza|sandwich|grill|fry|pastry|pantry|sushi|deli|meat|produce|beer|coffee|espresso)] (kitchen|door|doors|bar|register|counter|fryer|fryers|hood|dock|line|sink|window|wall|~~pass through|~~pass|~~checkout|office|restroom|bathroom|entrance|grill|oven|ovens|storage|room|basement|roof|alley|hall|hallway|area|side|corner|station|stairs|patio|end|cook line|dish pit|left|right|back|front)';
const INCHES = '(inch|inches|incher|foot|footer|ft)';
const OUT_THERE =
  '(out back|in back|upstairs|downstairs|outside|in (the|their) [(back|front|main|produce|meat|dairy|beer|frozen|deli|bakery|seafood|floral)] (basement|cellar|garage|bar|aisle|section|department|market|floor|sales floor|cafe|pantry|shop|store|warehouse))';
const A_UNIT = `[${THIS}] [(a|an|the|their|another)] [~~<number:length> (inch|inches|foot|ft)] (<count:doors> (door|doors|section) (<doored>|<equipment>)|<equipment> [[<pause>] <count:doors> (door|doors)]) [(here|out here|up here|back here)] [[<pause>] (three phase|single phase|one phase|self contained|medium temp|low temp|med temp)] [<pause>]`;
const ON =
  '(on|with|using|charged with|that runs on|runs on|it runs on|which runs on|it is on|it is running|that is on|it uses|that uses|it has|that has|it takes|filled with)';
const IS = '[(running|is|it is|that is|takes|has|refrigerant|refrigerant is|gas is)]';
const METERED =
  '[(with|and|it has|and it has|that has|on|has|using|metered by|metering is)] [(a|an)] <metering>';
const CHARGED =
  '([<pause>] [(and|with)]|[<pause>] (charge|charge is|it takes|takes|holds|it holds|with a charge of|charged with)) <amount:charge> [(charge|of charge|total|of it)]';

/** A unit described in one breath: "three door reach in, two ninety, cap tube". */
export const DESCRIPTION_RULES: readonly Rule[] = [
  rule(`${A_UNIT} ${ON} [a] <refrigerant> [${METERED}] ${CHARGED}`, charged, {
    examples: ['reach in on two ninety with a cap tube holds five point three ounces'],
  }),
  rule(`[a] [<metering>] [(system|unit)] <pause> [${ON}] <refrigerant> ${CHARGED}`, charged),
  rule(`${A_UNIT} ${IS} <refrigerant> [${METERED}] ${CHARGED}`, charged),
  rule(`${A_UNIT} ${ON} [a] <refrigerant> [${METERED}]`, described, {
    examples: ['reach in on two ninety with a cap tube'],
  }),
  rule(`${A_UNIT} ${IS} <refrigerant> [${METERED}]`, describedByFigure, {
    examples: ['prep table two ninety cap tube'],
  }),
  rule(
    `${A_UNIT} (with|on|has|that has|and it has|has got|is got|got) (a|an) <metering> [(on|in) (it|there)]`,
    described,
    {
      unheard: true,
      examples: ['walk in freezer with a txv'],
    },
  ),
  rule(
    `[this] ${A_UNIT} [<pause>] [(with|has|that has|it has|has got|got|on|and)] [(a|an|the|its|his|their)] (remote condenser|condenser [is] (remote|outside|outdoors|out back|on the roof|up on the roof|upstairs)) [[<pause>] [${ON}] <refrigerant>] [[<pause>] ${METERED}]`,
    describedApart,
    { unheard: true, examples: ['reach in with a remote condenser'] },
  ),
  rule(
    `[${THIS}] [(a|an|the)] remote condenser <equipment> [[<pause>] ${ON} <refrigerant>] [${METERED}]`,
    describedApart,
    { unheard: true, examples: ['it is a remote condenser reach in'] },
  ),
  rule(`${A_UNIT} ${METERED} [${ON}] [and] <refrigerant>`, described, {
    examples: ['walk in cooler with a txv on four oh four a'],
  }),
  rule(`[${THIS}] [(a|an|the)] <refrigerant> <equipment> [${METERED}]`, describedByFigure, {
    examples: ['it is a two ninety prep table with a cap tube'],
  }),
  rule(
    `[the] (box|cooler|freezer|case|cabinet|fridge) ${ON} <refrigerant> [${METERED}]`,
    describedByFigure,
    { examples: ['the cooler on four oh four a'] },
  ),
  rule(
    `[the] (nameplate|plate|tag|data plate|name plate|sticker|label|data tag) (says|shows|reads|has|calls for|is) [a charge of] <amount:charge> <pause> [(it is|of|and it is|and)] <refrigerant>`,
    charged,
    { unheard: true, examples: [] },
  ),
  rule(`[a] [<metering>] [(system|unit)] <pause> <amount:charge> of <refrigerant>`, charged),
  rule(
    `[(it is|this is)] [a] <metering> [(system|unit)] <amount:charge> of <refrigerant>`,
    charged,
    {
      examples: ['cap tube twelve ounces of one thirty four'],
    },
  ),
  rule(
    `[(it is|this is)] [a] <metering> [(system|unit)] [${ON}] <refrigerant> ${CHARGED}`,
    charged,
    {
      examples: ['cap tube system two ninety five point three ounces'],
    },
  ),
  rule(`[${ON}] <refrigerant> [(with|and|has|it has)] [(a|an)] <metering>`, describedByFigure, {
    examples: ['four oh four a txv'],
  }),
  rule(`<pause> [${ON}] <refrigerant> (with|and) [(a|an)] <metering>`, described, {
    examples: [],
  }),
  rule(`[a] <metering> [(system|unit)] <pause> [${ON}] <refrigerant>`, describedByComma, {
    examples: ['txv, four oh four a'],
  }),
  rule(`[a] <metering> [(system|unit)] [${ON}] <refrigerant>`, describedByFigure, {
    examples: ['txv four oh four a'],
  }),
  rule(`[(the|our|their|your)] <equipment> ${WHERE}`, namedBehindSite, OPENING),
  rule(
    `[(the|our|their|your|a|an)] ([<number:length> ${INCHES}] [(the|a|an)] <equipment> ${WHERE} [<pause>] [(it is|about)] [a] <number:length> ${INCHES}|<number:length> ${INCHES} <equipment> ${WHERE})`,
    namedBehindSite,
    { unheard: true, ...OPENING },
  ),
  rule(
    `[(the|our|their|your)] [<count:doors> (door|doors)] <equipment> ${WHERE}`,
    namedBehindTrade,
    {
      examples: [],
    },
  ),
  rule(
    `<pause> [(the|our|their|your)] [<count:doors> (door|doors)] <equipment> ${WHERE}`,
    namedBehindSite,
  ),

  rule(`${THIS} (the|our|their|your) <equipment> ${WHERE}`, named, {
    examples: ['this is the walk in by the kitchen'],
  }),
  rule(
    `${THIS} (the|our|their|your) <count:doors> (door|doors) (<equipment>|<doored>) ${WHERE}`,
    named,
    { examples: ['unit is the two door reach in on the line'] },
  ),
  rule(`${THIS} [(the|a)] <equipment> number <number:which>`, named, {
    examples: ['this is walk in number two'],
  }),
  rule(
    `[(the|our|their|your)] [(big|small|little|old|new|open|long|short)] [<count:doors> (door|doors)] <equipment> ${OUT_THERE}`,
    namedBehindSite,
    { unheard: true, ...OPENING, examples: ['walk in freezer out back'] },
  ),
];
