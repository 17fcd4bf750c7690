import { namesReading } from '../words/own-reading.ts';
import { isLone, startsClause, wordsBehind } from '../words/clause-start.ts';
import { FANS } from '../words/fans.ts';
import { isTwoFigures } from '../numbers/dropped-points.ts';
import { isSized } from '../numbers/cut-numbers.ts';
import { isOfThisUnit, isSaidByName } from './gases-talked-of.ts';
import { isCutShort } from '../numbers/cut-numbers.ts';
import type { HeaterId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { ChargeDoubtId, ValveKindId } from '../../terms/procedures.ts';
import { amountIn, measured, readingOf } from '../numbers/measure.ts';
import { PORT_RULES } from './ports-told.ts';
import { METERING_RULES } from './metering-told.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { boxFacts, equipmentFact, plateItemId, refrigerantId, spanIn, tagsIn } from '../slots.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { SIGHT_GLASS_RULES } from '../findings/sight-glass.ts';
import { callBehind, ENDS_AS_TRADE, unitBehind } from '../names/site-names.ts';
import { EVERYDAY } from './unit-description.ts';
import type { Fact, NameplateItem } from '../utterance.ts';
import { ON_IT } from '../vocabulary/plate-names.ts';

const equipment: Means = (tags, frame) => {
  const facts = boxFacts(tags, frame.wordsOf(frame.span));
  return facts.length === 0 ? null : { facts };
};

/** "it's thirty two" is a temperature until something says that a refrigerant is meant. */
const SAYS_REFRIGERANT =
  /\b(?:on|r|freon|gas|refrigerant|charged|runs|uses|using)\b|\b(?:r-?|our )\d/i;

/** "Blew it out with CO2" */
const FROM_CARTRIDGE = /^with\b/i;

export const refrigerant: Means = (tags, frame) => {
  const value = refrigerantId(tags['refrigerant']);
  const words = frame.wordsOf(frame.span);
  if (
    value === null ||
    isSized(frame) ||
    (EVERYDAY.includes(value) && !SAYS_REFRIGERANT.test(words))
  )
    return null;
  if (value === 'R-744' && FROM_CARTRIDGE.test(words)) return null;
  return { facts: [{ fact: 'refrigerant', value, words }] };
};

/** "Propane unit, two ninety": the same by both its names. */
const saidTwice: Means = (tags, frame) => {
  const again = refrigerantId(tagsIn(tags['again'])?.['refrigerant']);
  return again !== null && again === refrigerantId(tags['refrigerant'])
    ? refrigerant(tags, frame)
    : null;
};

const remote: Means = (_tags, frame) => ({
  facts: [{ fact: 'condensingUnit', value: 'remote', words: frame.wordsOf(frame.span) }],
});

const valves =
  (value: ValveKindId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'valves', value, words: frame.wordsOf(frame.span) }],
  });

const chargeDoubt =
  (value: ChargeDoubtId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'chargeDoubt', value, words: frame.wordsOf(frame.span) }],
  });

const MEASURED_AS: Record<NameplateItem, QuantityId> = {
  charge: 'refrigerantCharge',
  voltage: 'voltage',
  upperVoltage: 'voltage',
  ratedLoadAmps: 'current',
  lockedRotorAmps: 'current',
  minimumCircuitAmps: 'current',
  maximumFuse: 'current',
  highSide: 'headPressure',
  lowSide: 'suctionPressure',
};

const DROPS_POINT: readonly NameplateItem[] = ['ratedLoadAmps', 'minimumCircuitAmps'];

const HEATER = /\b(?:(door|drain(?: pan| line)?|crankcase|defrost) )?heater\b/i;
/** "Drain pan heater's" right before its plate. */
const BEFORE_PLATE = /(?:[\w-]+ ){0,2}heater(?:'s)?(?: (?:name|data|rating))?$/i;
const LEADING = 4;
const HEATER_OF: Readonly<Record<string, HeaterId>> = {
  door: 'doorHeater',
  drain: 'drainHeater',
  crankcase: 'crankcaseHeater',
};

/** "Defrost heater nameplate is four amps": no amps of the unit's. */
function heaterRated(value: number, frame: Frame): Fact | null {
  const { from, to } = frame.span;
  const before = frame.wordsOf({ from: Math.max(0, from - LEADING), to: from });
  const words = `${BEFORE_PLATE.exec(before)?.[0] ?? ''} ${frame.wordsOf({ from, to })}`.trim();
  const named = HEATER.exec(words);
  if (named === null) return null;
  const heater = HEATER_OF[named[1]?.split(' ')[0]?.toLowerCase() ?? ''] ?? 'defrostHeater';
  return { fact: 'heaterRating', heater, value, unit: 'A', words };
}

export const nameplate =
  (item: NameplateItem): Means =>
  (tags, frame) => {
    const found = measured(MEASURED_AS[item], amountIn(tags), frame.context.units);
    if (found?.value === undefined || found.unit === null) return null;
    if (found.quantity !== MEASURED_AS[item]) return null;
    const { value, unit } = found;
    const ofHeater = item === 'ratedLoadAmps' ? heaterRated(value, frame) : null;
    if (ofHeater !== null) return { facts: [ofHeater] };
    // "Rated load six nine" is 6.9 or 69.
    const mayDrop = DROPS_POINT.includes(item) && Number.isInteger(value) && value >= 10;
    if (mayDrop && isTwoFigures(frame.wordsOf(frame.span)))
      return { unclaimed: [String(value / 10)] };
    const fact: Fact = { fact: 'nameplate', item, value, unit, words: frame.wordsOf(frame.span) };
    return { facts: [fact] };
  };

/** Of an item that was named as plates name it. */
export const plateItem: Means = (tags, frame) => {
  const item = plateItemId(tags['plateItem']);
  const words = frame.wordsOf(frame.span);
  if (item === null || isCutShort(frame) || IS_DRAWN.test(words)) return null;
  return isOfFan(words, frame) ? { remarks: [words] } : nameplate(item)(tags, frame);
};

/** "Says one point four full load", behind a fan that was metered or named: of its own plate, and of none of the unit's. */
const isOfFan = (words: string, { context }: Frame): boolean =>
  /\b(?:full load|fla|f l a)\b/i.test(words) &&
  FANS.some(
    (fan) =>
      fan === context.lastPart || (fan === context.lastPlace && context.lastQuantity === 'current'),
  );

/** "Locked rotor at forty amps" was metered. */
const IS_DRAWN = /\blocked rotor at\b/i;

/** Pounds or ounces? Asked about, as the charge that it is. */
export const chargeWithoutUnit: Means = (tags, frame) => {
  const found = readingOf('refrigerantCharge', amountIn(tags), { place: null, frame });
  return found?.unit === null ? { readings: [found] } : null;
};

/** What a vessel holds, or a valve, is not what the plate says that the system does: its words are kept. */
const HOLDS_ITS_OWN =
  /\b(?:receiver|accumulator|separator|vessel|tank|bin|hopper|pan|regulator|valve|rack|spring|line)$/i;
const OF_CHARGE = /^of (?:gas|charge|refrigerant|freon|it)\b/i;

const holdsCharge: Means = (tags, frame) => {
  const { from, to } = frame.span;
  const { unit } = amountIn(tags);
  const behind = wordsBehind(frame, 2);
  if (unit === 'V' || unit === 'A' || (/^of\b/i.test(behind) && !OF_CHARGE.test(behind)))
    return null;
  return HOLDS_ITS_OWN.test(frame.wordsOf({ from: 0, to: from })) && !frame.startsAtPause
    ? { remarks: [frame.wordsOf({ from: from - 1, to })] }
    : nameplateByUnit(tags, frame);
};

/** A plate that says volts means its voltage, one that says ounces its charge. */
const nameplateByUnit: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit === 'V') return nameplate('voltage')(tags, frame);
  if (unit === 'A') return nameplate('ratedLoadAmps')(tags, frame);
  return unit === null ? null : nameplate('charge')(tags, frame);
};

/** "Call it two hundred on the head", "let's call it settled" */
const NAMES_NO_UNIT = new RegExp(
  `^(?:\\d|(?:about|around|${[...ONES, ...TEENS, ...TENS, 'a hundred', 'minus', 'zero', 'half', 'even', 'good', 'done', 'settled', 'steady', 'fine', 'enough', 'ok(?:ay)?', 'a day', 'an hour', 'quits', 'close', 'it', 'what', 'off', 'in'].join('|')})\\b)`,
  'i',
);

export const unitByName: Means = (tags, frame) => {
  const found = nameOf('unit')(tags, frame);
  const [fact] = found?.facts ?? [];
  return fact?.fact === 'unit' && startsClause(frame) && !NAMES_NO_UNIT.test(fact.value)
    ? found
    : null;
};

const nameOf =
  (fact: 'unit' | 'site'): Means =>
  (tags, frame) => {
    const span = spanIn(tags['clause']);
    if (span === null) return null;
    const value = frame.wordsOf(span);
    const words = frame.wordsOf(frame.span);
    if (fact === 'unit') return { facts: [{ fact, value, words }] };
    const { site: said, call } = callBehind(value);
    const { site, unit } = unitBehind(said);
    const kind = unit && equipmentFact(unit, words);
    const facts: readonly Fact[] = [{ fact, value: site, words }, ...(kind ? [kind] : [])];
    return call === null ? { facts } : { facts, remarks: [call] };
  };

/** A name that was said without "site is": not a place on the premises, and no sentence of its own. */
const siteByName: Means = (tags, frame) => {
  const found = nameOf('site')(tags, frame);
  const [fact] = found?.facts ?? [];
  const value = fact?.fact === 'site' ? fact.value : '';
  const words = value.split(/\s+/);
  const least = OWNED.test(value) ? 1 : 2;
  const isName = words.length >= least && words.length <= 6 && !NO_NAME.test(value);
  return isName && !namesReading(value) && !isToDo(value, frame) ? found : null;
};

/** "I just got to talk to him": what stands behind "got to" is done, but for a name by its capital or its trade. */
const isToDo = (value: string, frame: Frame): boolean =>
  /\b(?:got|made it) (?:over )?to /i.test(frame.wordsOf(frame.span)) &&
  !/^[A-Z]/.test(value) &&
  !ENDS_AS_TRADE.test(value);

/** "Luigi's" is a name by itself. */
const OWNED = /\w's$/i;

/** "Ice machine at Blue Heron Hotel". */
const equipmentAtSite: Means = (tags, frame) => {
  const site = siteByName(tags, frame)?.facts ?? [];
  const kind = equipment(tags, frame)?.facts ?? [];
  return site.length === 0 ? null : { facts: [...site, ...kind] };
};

const NO_NAME =
  /\d|^(?:i|you|we|he|she|they|please|then|be|do|go|get|take|have|run|check|find|see|wait|keep|make|call|the|a|an|my|this|that|your|our|his|her|their|its|about|around|least|home|work|lunch|it|what|where|full|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|minus|negative|point|half|condenser|compressor|evaporator|line|load|common|start|run|set|box|head|suction|walk)\b|\b(?:is|are|was|and|psi|degrees|hundred|now)\b/i;

const IT_IS =
  '(it is|this is|that is|we have [got]|it is got|i am on|i have|i have got|working on|i am working on|i am looking at|looking at|this one is|unit is|the unit is|the box is|we are on|i am at)';
const RUNS_ON =
  '(on|it is on|with|it is|this is|runs on|running|using|it uses|it runs on|it has|it is running|the refrigerant is|refrigerant is|refrigerant|gas is|the gas is|takes|it takes|that is|charged with|system is on|unit is on|[the] (tag|label|nameplate|plate|sticker|data plate) (says|reads|shows)|unit has|system has)';

/** "High side" alone is what the gauge shows: the plate's own takes a word for it. */
const designSide = (side: 'high' | 'low'): string =>
  `([nameplate] (design|test) [pressure] ${side} [side]|[nameplate] ${side} side (design|rated|working) [pressure]|nameplate ${side} [side] [pressure]|${side} side (nameplate|design|test|working) [pressure]|(design|working) pressure (on|for) [the] ${side} [side])`;

/** What the unit is and what its plate says. */
export const FACT_RULES: readonly Rule[] = [
  heardRule(
    '[(it has|~it has got|~they are|~it is got|~these are|~i have|~on)] service valves',
    valves('serviceValves'),
    { apart: true, examples: ['service valves', 'it has service valves'] },
  ),
  rule(
    '([(it has|it has got|they are|it is got|these are)] (service valves with a stem|stem valves|back seating valves|service valves with stems)|(it has|it has got|they are|it is got|these are) stems)',
    valves('serviceValves'),
    { apart: true },
  ),
  heardRule(
    '[(it has|~it has got|~they are|~it is got|~these are|~i have|~on)] (access fittings|~schraders|~schrader (fittings|valves)|~access (ports|valves)|~piercing (valves|valve)|~a piercing valve|~saddle valves|~line taps|~just schraders|~line tap valves)',
    valves('accessFittings'),
    { apart: true, examples: ['access fittings', 'it has access fittings'] },
  ),
  ...PORT_RULES,
  rule(
    '[(i think|looks like)] [(the|it is|there is)] [(gas|refrigerant|charge)] (is (mixed|a mix|contaminated|a mixture)|(a mix of gases|two gases in it|mixed gas|mixed refrigerant|mixed gases in it))',
    chargeDoubt('mixed'),
    { examples: ['the gas is mixed'] },
  ),
  rule(
    'somebody (mixed|put another) (gases|refrigerants|gas [in it]|the gas)',
    chargeDoubt('mixed'),
  ),
  rule(
    '(i do not know (what gas (it is|is in it)|what is in it|the refrigerant|what refrigerant it is)|the refrigerant is (unknown|not known)|no idea what gas is in it|unknown (gas|refrigerant))',
    chargeDoubt('unknown'),
    { examples: ['i do not know what gas is in it'] },
  ),
  rule(
    `[${IT_IS}] [a] <count:wrong> door [(<equipment:wrongKind>|<doored:wrongKind>)] <correction> [(it is a|a)] <count:doors> door (<equipment>|<doored>)`,
    equipment,
    { unheard: true, examples: ['it is a single door freezer no wait two door freezer'] },
  ),
  heardRule(
    `[(it is|~${IT_IS})] [a] <count:doors> (door|~(doors|section)) (<equipment>|<doored>)`,
    equipment,
    {
      examples: ['it is a two door reach in'],
    },
  ),
  heardRule(
    '(it is a|it is an|~(this|unit|the unit|this one) is [(a|an|the)] [(self contained|older|newer|brand new|remote)]|~it is (the|a self contained|(a|an) (older|newer|old|little|big|small|brand new))) <equipment>',
    equipment,
    {
      examples: ['it is a walk in cooler'],
    },
  ),
  rule(`${IT_IS} [(a|an|the|their)] <equipment>`, equipment, {
    examples: ['working on a prep table'],
  }),
  rule('[a] <equipment>', equipment, { apart: true, only: isLone, examples: ['walk in freezer'] }),
  rule(
    '[the] condensing unit is (a remote|on the roof|up on the roof|on top of the (box|walk in)|(behind|beside|on the side of) the (building|store|restaurant|kitchen)|in the alley|up top|outside|out back|out (side|back)|outdoors|in the basement|remote|in back)',
    remote,
    {
      examples: [],
    },
  ),
  rule('(a <equipment>|<equipment>)', (tags, frame) =>
    frame.span.from === 0 && frame.endsAtPause ? equipment(tags, frame) : null,
  ),
  rule(
    '[(it has|there is|got|i have)] <count:doors> [(glass|solid|swing|sliding)] (doors|door) (in|on) [(the|this|that|a)] (<equipment>|<doored>)',
    equipment,
    { unheard: true, only: startsClause, examples: ['six glass doors in the dairy case'] },
  ),
  rule(
    `[${IT_IS}] [(a|an|the|their)] <equipment> [<pause>] the <count:doors> (door|doors) (one|unit)`,
    equipment,
    { unheard: true, only: startsClause, examples: ['it is the display case the three door one'] },
  ),
  rule(`[${IT_IS}] [(a|an|the|their)] <equipment> with <count:doors> (doors|door)`, equipment, {
    examples: ['display case with three doors'],
  }),
  heardRule(`(on|it is on|~with|it is) <refrigerant>`, refrigerant, {
    only: isOfThisUnit,
    examples: ['it is four forty nine a', 'on one thirty four a'],
  }),
  rule(
    '[(it is|it is on|on|i am seeing|i see|says|sticker says|tag says)] [(a|an|r)] <refrigerant:wrong> [(i believe|i think|maybe)] [[<pause>] (let me (check|see|look)|hold on|hang on)] [<pause>] (no|nope|wait|no wait|correction|sorry|scratch that|make that|actually|no it is|nope it is) <refrigerant>',
    refrigerant,
    { examples: ['four fifty two a i believe nope four forty eight a'] },
  ),
  rule(
    '[(it is|it is got|i am seeing|i see|there is|got)] [(a|an)] <refrigerant> (sticker|tag|label|plate|nameplate|decal) [<pause>] [(and|it says|says|at|with)] <amount>',
    (tags, frame) => {
      const gas = refrigerant(tags, frame)?.facts ?? [];
      const charge = nameplate('charge')(tags, frame)?.facts ?? [];
      return gas.length * charge.length === 0 ? null : { facts: [...gas, ...charge] };
    },
    { examples: ['i am seeing a four oh four a sticker one pound six ounces'] },
  ),
  rule(
    '<refrigerant> (in (this|that|this one|that one|this unit)|on (the|that) (tag|label|nameplate|plate|sticker|data plate))',
    refrigerant,
    {
      examples: ['two ninety in this one'],
    },
  ),
  rule(`${RUNS_ON} [a] <refrigerant>`, refrigerant, {
    only: isOfThisUnit,
    examples: ['refrigerant is R-404A'],
  }),
  rule(
    `<refrigerant> (is|was) what ((it|this [one]|the (unit|system)|they have [got])|is in (it|this|there|here)) [(is|in it)] [(runs on|takes|uses|on|has in it|running [on]|charged with|in it)]`,
    refrigerant,
    {
      only: (frame) => isOfThisUnit(frame) && frame.endsAtPause,
      examples: ['five oh seven is what it runs on'],
    },
  ),
  rule('<refrigerant> [(system|unit)] <pause> <refrigerant:again>', saidTwice, { examples: [] }),
  rule('<refrigerant> [(system|unit|refrigerant|freon|machine)]', refrigerant, {
    only: isSaidByName,
    examples: ['R-404A', 'four forty eight a'],
  }),
  ...METERING_RULES,
  ...SIGHT_GLASS_RULES,
  heardRule(
    '[the] [(nameplate|~factory|~tag|~plate|~data plate|~name plate)] charge (is|~of|~says|~) <amount> [~(on|off|by|per) [the] (nameplate|plate|tag|data plate|name plate|sticker|label)]',
    nameplate('charge'),
    {
      examples: ['the charge is thirty eight ounces'],
    },
  ),
  rule('[the] [(nameplate|factory|total|system)] charge is <amount>', chargeWithoutUnit, {
    alone: true,
    examples: ['the charge is thirty eight'],
  }),
  rule(
    '(it takes|takes|it holds|holds|plate calls for|nameplate calls for|factory charge is) <amount> [of <refrigerant>]',
    holdsCharge,
    { examples: ['it takes thirty eight ounces'] },
  ),
  rule(
    `[the] (nameplate|plate|tag|data plate|name plate|sticker) ${ON_IT} (is|says|shows|reads|has) [a] [(voltage|[~~(full|total|factory|rated)] charge|rla|r l a)] [(of|is)] <amount>`,
    nameplateByUnit,
    {
      examples: ['nameplate says one fifteen volts'],
    },
  ),
  rule('[the] (nameplate|plate|rated) (voltage|volts) [is] <amount>', nameplate('voltage'), {
    examples: ['nameplate voltage is two oh eight'],
  }),
  rule(
    '[the] [nameplate] (rated amps|nameplate amps|plate amps) [on the (plate|nameplate|tag)] [(is|are|says|of|at)] <amount>',
    nameplate('ratedLoadAmps'),
    { examples: ['rated amps is six point two'] },
  ),
  rule(
    '[the] (plate|nameplate) locked rotor [on the (plate|nameplate|tag)] <link> <amount>',
    nameplate('lockedRotorAmps'),
    { examples: ['plate locked rotor is forty two'] },
  ),
  rule(
    '[the] [nameplate] <plateItem> [on the (plate|nameplate|tag)] [of] <link> <amount> [(on|off|by) the (plate|nameplate|tag|sticker|label|data plate)]',
    plateItem,
    { examples: ['rla is six point two', 'max fuse is twenty'] },
  ),
  rule(
    `[the] ${designSide('high')} [on the (plate|nameplate|tag)] <link> <amount>`,
    nameplate('highSide'),
    {
      examples: ['design high side two eighty'],
    },
  ),
  rule(
    `[the] ${designSide('low')} [on the (plate|nameplate|tag)] <link> <amount>`,
    nameplate('lowSide'),
    {
      examples: ['design low side one forty'],
    },
  ),
  rule(
    '(the site is|site is|site name is|i am at site|(the|our|my) customer is|customer is called|the account is|job is at|the job is at) (<rest>|<clause>)',
    nameOf('site'),
    {
      yields: 'name',
      examples: ['site is Harbor Street Deli'],
    },
  ),
  rule(
    '((i am|we are|i am here|we are here|here|i am on site|on site|just got here|i have arrived|arrived|just pulled up|pulling up|i am back|back|return visit|return call|callback|follow up|[i am] back out|call) at|[i] just (got|made it) [over] to) <clause>',
    siteByName,
    {
      yields: 'name',
      examples: ['i am at harbor street deli'],
    },
  ),
  rule(
    `[${IT_IS}] [(a|an|the|their|our)] [<count:doors> (door|doors)] <equipment> [(over|down|out|here)] at <clause>`,
    equipmentAtSite,
    { examples: ['ice machine at blue heron hotel'] },
  ),
  rule(
    '(unit name is|the unit is called|unit is called|call it|call this unit|call the unit|this unit is called|name the unit|label it|~~(name|label) (this|that|the) (one|unit|box|cooler|freezer|case|machine)|~~name it|~~this (one|box|case|machine) is called) (<rest>|<clause>)',
    unitByName,
    {
      yields: 'name',
      examples: ['unit is called reach-in by the back door'],
    },
  ),
];
