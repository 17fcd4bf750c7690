import { startsClause } from '../words/clause-start.ts';
import { electrical, GOT } from './electrical.ts';
import { amountIn } from '../numbers/measure.ts';
import { pointed } from './meter-figures.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';
import { numberIn, placeId, tagsIn } from '../slots.ts';
import type { PlaceId } from '../../terms/names.ts';
import {
  LEAST_SUPPLY,
  LEG_PAIRS as PAIRS,
  mayBeLegVolts,
  MOST_SUPPLY,
  MOST_UNLIKE,
} from '../../terms/three-phase.ts';

/** The same between each two legs of a three-phase supply. */
const onAllThree: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  if (unit !== null && unit !== 'V') return null;
  const readings = PAIRS.flatMap((pair) => electrical(tags, pair, frame) ?? []);
  return readings.length === PAIRS.length ? { readings } : null;
};

const METER = '[(the|my)] meter (says|shows|reads|proves|proved|gives me|is (reading|showing))';

/** Of both legs of a supply on one phase: what stands on either. */
const onEach: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const words = frame.wordsOf(frame.span);
  if (/\bboth\b/i.test(words)) {
    const read = unit === null || unit === 'V' ? electrical(tags, null, frame) : null;
    return read === null ? null : { readings: [read] };
  }
  const isVolts = unit === 'V' || (unit === null && (value === 0 || (value ?? 0) >= LEAST_VOLTS));
  return isVolts ? onAllThree(tags, frame) : null;
};

/** Ours: less is no supply's. */
const LEAST_VOLTS = 20;

/** The three pairs of a three-phase supply in the order they are taken. */
const threePairs: Means = (tags, frame) => {
  const pairs = [
    ['ab', 'lineOneTwo'],
    ['bc', 'lineTwoThree'],
    ['ca', 'lineOneThree'],
  ] as const;
  const readings = pairs.flatMap(([slot, place]) => {
    const amount = tagsIn(tags[slot]);
    // "Legs nine one, eight eight" are amps, said without their points.
    return amount === null || (amountIn(amount).value ?? 0) < LEAST_VOLTS
      ? []
      : (electrical(amount, place, frame) ?? []);
  });
  return readings.length === pairs.length ? { readings } : null;
};

/** "One to two is four sixty one, two to three four fifty eight": volts between the legs, where they can be a supply's. */
const betweenLegs: Means = (tags, frame) => {
  const told = (
    [
      ['ab', 'lineOneTwo'],
      ['bc', 'lineTwoThree'],
      ['ca', 'lineOneThree'],
    ] as const
  ).flatMap(([slot, place]) => {
    const amount = tagsIn(tags[slot]);
    return amount === null ? [] : [{ amount, place }];
  });
  const readings = told.flatMap(({ amount, place }) => {
    const { unit, value } = amountIn(amount);
    const isSupply = value !== null && value >= LEAST_SUPPLY && value <= MOST_SUPPLY;
    const isVolts = unit === 'V' || (unit === null && isSupply);
    return isVolts ? (electrical({ ...amount, unit: 'V' }, place, frame) ?? []) : [];
  });
  return readings.length === told.length ? { readings } : null;
};
const READS = '[(is|was|reads|reading|got|i got|i have|gives me|shows|at)]';

const FED_BY_LEGS: readonly (PlaceId | null)[] = [
  'contactor',
  'lineSide',
  'loadSide',
  'compressor',
];

/** "Two oh eight two oh six one ninety eight": three numbers, and of the legs where it says so. */
const runTogether: Means = (tags, frame) => {
  const values = ['ab', 'bc', 'ca'].flatMap(
    (slot) => amountIn(tagsIn(tags[slot]) ?? {}).value ?? [],
  );
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const isSupply = least >= LEAST_SUPPLY && most <= MOST_SUPPLY && most <= least * MOST_UNLIKE;
  if (values.length < PAIRS.length || !isSupply || !startsClause(frame)) return null;
  const isNamed = FED_BY_LEGS.includes(placeId(tags['place']));
  const isSaid = /\b(?:legs?|phases?|volts?|v|power|(?:line|load) side)\b/i.test(
    frame.wordsOf(frame.span),
  );
  return isNamed || isSaid || areOfSupply(values, frame)
    ? threePairs(tags, frame)
    : { unclaimed: values.map(String) };
};

/** "Two ten, two eleven, two oh nine", alone, of a unit that is known to be built for three phases and about so many volts. */
function areOfSupply(values: readonly number[], { context }: Frame): boolean {
  const volts = context.threePhaseVolts;
  if (volts === null || !mayBeLegVolts(values)) return false;
  return values.every((value) => Math.abs(value - volts) <= volts * MOST_OFF);
}
/** Ours, of the plate's voltage: what lies further off is asked about. */
const MOST_OFF = 0.2;

const L = '(line|leg|phase|l)';

const LINES = ['lineOne', 'lineTwo', 'lineThree'] as const;

/** What a motor draws on each line, told with the line behind its figure. */
const drawnOnLines: Means = (tags, frame) => {
  const readings = LINES.flatMap((place, index) => {
    const amount = tagsIn(tags[['one', 'two', 'three'][index] ?? '']);
    if (amount === null) return [];
    return electrical({ ...pointed(amount), unit: 'A' }, place, frame) ?? [];
  });
  return readings.length === LINES.length ? { readings } : null;
};

/** Ours: legs of one motor that differ by more were no three readings of it: "drawing one twenty one" is no one, twenty and one. */
const MOST_APART = 2;

/** "Drawing six amps, six point two, six point one": each leg in turn, whatever is not said of them. */
const drawnInTurn: Means = (tags, frame) => {
  const readings = drawnOnLines(tags, frame)?.readings ?? [];
  const words = frame.wordsOf(frame.span);
  const amps = readings.flatMap(({ value = 0, unit }) => (unit === 'A' ? value : []));
  // A leg that lies dead draws nothing.
  const alive = amps.filter((each) => each > 0);
  const isOfOne = Math.max(...alive) <= Math.min(...alive) * MOST_APART;
  if (amps.length < LINES.length || !isOfOne || !TELLS_AMPS.test(words)) return null;
  return SEVERAL.test(words) ? { remarks: [words] } : { readings };
};
/** Of three heaters or fans, which draws what nobody tells. */
const SEVERAL = /^(?:\S+ ){0,3}(?:heaters|fans|motors|elements)\b/i;
/** "Thirteen point one, twelve nine and thirteen three on the legs": no supply gives so few volts. */
const drawnOnLegs: Means = (tags, frame) => {
  const readings = drawnOnLines(tags, frame)?.readings ?? [];
  const amps = readings.flatMap(({ value = 0, unit }) => (unit === 'A' ? value : []));
  const isDrawn = amps.length === LINES.length && Math.max(...amps) < LEAST_SUPPLY;
  return isDrawn && Math.max(...amps) <= Math.min(...amps) * MOST_APART ? { readings } : null;
};

/** Without a point or "amps" three figures in a row are one number, or volts. */
const TELLS_AMPS = /\b(?:amps?|point|drawing|pulling|draws|pulls)\b|\d\.\d|\da\b/i;

const figure = (slot: string): string => `(<number:${slot}>|<droppedSurely:${slot}>) [amps]`;
const droppedInTurn = (slot: string): string => `<dropped:${slot}> [(amps|amp)]`;
const mixedInTurn = (slot: string): string => `(<tenths:${slot}>|<dropped:${slot}>) [(amps|amp)]`;
const inTurn = (slot: string): string => `<tenths:${slot}> [(amps|amp)]`;

/** "I dropped point three on L one, two point eight on L two": of a contactor's poles, which the note names in those words. */
const lostAcross: Means = (tags, frame) =>
  (numberIn(tagsIn(tags['one'])?.['number']) ?? MOST_LOST) < MOST_LOST ? remark(tags, frame) : null;
/** Ours: what more is lost across is no contact that still closes. */
const MOST_LOST = 50;

/** "Load side two oh eight, two oh nine and nothing on the third": between which legs that was nobody says. */
const oneDead: Means = (tags, frame) => {
  const fed = placeId(tags['place']);
  const live = ['ab', 'bc'].flatMap((slot) => amountIn(tagsIn(tags[slot]) ?? {}).value ?? []);
  const isSupply = live.every((volts) => volts >= LEAST_SUPPLY && volts <= MOST_SUPPLY);
  return isSupply && fed !== null && FED_BY_LEGS.includes(fed) ? remark(tags, frame) : null;
};

const betweenPair = (one: string, other: string): string =>
  `(between|from|on|across|at) [${L}] ${one} (and|to) [${L}] ${other}`;

const POLE =
  '(at|on|across|over|through) [(the|my)] (pole <nth>|(left|middle|center|right|top|bottom|outside|first|second|third|other) (pole|leg|contact|set|one)|<place>)';
const lostOn = (slot: string): string => `[(about|only)] <number:${slot}> [(volts|volt)] ${POLE}`;

const ON_LEGS = '~~(on|across|of) [(the|my|all|all the|each of the)] [three] (legs|phases|lines)';

/** What a three-phase supply gives between its legs. */
export const LEG_RULES: readonly Rule[] = [
  // What is lost across a pole is drawn on no leg, nor does it stand at the coil.
  rule(
    `[line to load] [with it [pulled] in] [<pause>] [(i|we|it|and|but)] [(am|is)] (dropped|dropping|drop|drops|lost|losing|lose|loses) ${lostOn('one')} [(<pause> [and]|and) ${lostOn('two')} [(<pause> [and]|and) ${lostOn('three')}]]`,
    lostAcross,
    { unheard: true, examples: ['i dropped point three on line one'] },
  ),
  rule(
    `[(leg|line|l|phase)] one to two ${READS} <amount:ab> [[<pause>] [and] two to three ${READS} <amount:bc>] [[<pause>] [and] (one to three|three to one) ${READS} <amount:ca>]`,
    betweenLegs,
    { unheard: true, only: startsClause, examples: ['one to two is four sixty one'] },
  ),
  rule(
    `[(on|at|out of)] <the> <place> [is] ${GOT} <short:ab> [and] <short:bc> [<pause>] [(and|but)] (<none>|zero|0) [(volts|on (the|my) (third|last|other) [(one|leg|phase|pole)])]`,
    oneDead,
    {
      unheard: true,
      only: startsClause,
      examples: ['on the load side i have got two oh eight two oh nine and nothing on the third'],
    },
  ),
  rule(
    `${GOT} <amount:ab> ${betweenPair('one', 'two')} [[<pause>] [and] [${GOT}] <amount:bc> ${betweenPair('two', 'three')}] [[<pause>] [and] [${GOT}] <amount:ca> (${betweenPair('one', 'three')}|${betweenPair('three', 'one')})]`,
    betweenLegs,
    { unheard: true, only: startsClause, examples: ['i got two oh eight between one and two'] },
  ),
  rule(
    `${GOT} <amount:ab> [(and|over)] <amount:bc> [(and|over)] <amount:ca> (leg to leg|phase to phase|line to line)`,
    threePairs,
    { examples: ['two thirty two and two thirty and two thirty three leg to leg'] },
  ),
  rule(
    '[(my|the)] (line|supply|incoming) (voltage|power) [(is|at)] <amount:ab> <pause> [and] <amount:bc> <pause> [and] <amount:ca>',
    threePairs,
    { examples: [] },
  ),
  rule(
    `[<the> <place>] [is] (pulling|drawing|pulls|draws|amps are|amping) ${figure('one')} on [the] [${L}] one [and] ${figure('two')} on [the] [${L}] two [and] ${figure('three')} on [the] [${L}] three`,
    drawnOnLines,
    { examples: ['drawing fourteen two on one fourteen on two and thirteen nine on three'] },
  ),
  ...[inTurn, droppedInTurn].map((figureOf) =>
    rule(
      `[<the> (<place>|motor)] [(is|are|i have|i got)] (pulling|drawing|pulls|draws|pull|draw|amps [${ON_LEGS}] [(are|is|at)]|amping|amp draw [${ON_LEGS}] [is]|running amps [are]) ${figureOf('one')} [and] ${figureOf('two')} [and] (${figureOf('three')}|<none:three>) [(on|across) ([(the|all)] [three] (legs|phases|lines)|the (last|third|other) [(one|leg)])]`,
      drawnInTurn,
      {
        examples: [
          figureOf === inTurn
            ? 'drawing six amps six point two six point one'
            : 'amps are nine one nine three nine two',
        ],
      },
    ),
  ),
  ...[inTurn, droppedInTurn, mixedInTurn].map((figureOf) =>
    rule(
      `${GOT} ${figureOf('one')} [and] ${figureOf('two')} [and] ${figureOf('three')} (on|across|per) [(the|all|my|each)] [(three|of the)] (legs|phases|lines|leg)`,
      drawnOnLegs,
      { unheard: true, examples: [] },
    ),
  ),
  rule(
    `${GOT} <amount:ab> [and] <amount:bc> [and] <amount:ca> (between|across|on) [the] [three] (legs|phases|lines)`,
    threePairs,
    { examples: ['two thirty one two twenty nine and two thirty between the legs'] },
  ),
  rule(
    `${GOT} <short:ab> [and] <short:bc> [and] <short:ca> [(volts|volt|v)] [(at|on|across) <the> <place>] [[(that is|it is|so|got|with)] [a] (bad|lost|weak|low|dead) (leg|phase)]`,
    runTogether,
    { examples: ['two oh eight two oh six one ninety eight'] },
  ),
  rule(
    `${GOT} <short:ab> [and] <short:bc> [and] <short:ca> [(volts|volt|v)] [<pause>] (that is|those are|there are) [(all|my|the)] [three] (legs|phases|lines)`,
    runTogether,
    { unheard: true, examples: ['two oh eight two oh six one ninety eight those are my legs'] },
  ),
  rule(
    `[the] (line|load|supply) side [of <the> (fuses|fuse block|breaker|disconnect|contactor)] (is|looks|reads) (good|fine|ok|hot|right) [<pause>] [(and|at|with)] ${GOT} <short:ab> [and] <short:bc> [and] <short:ca> [(volts|volt|v)]`,
    runTogether,
    {
      unheard: true,
      examples: ['line side of the fuses is good two oh nine two ten two oh nine'],
    },
  ),
  rule(
    `[(turned|put|got)] [the] power [is] [back] on [<pause>] [(and|now)] ${GOT} <short:ab> [and] <short:bc> [and] <short:ca> [(volts|volt|v)]`,
    runTogether,
    { unheard: true, examples: ['power back on two oh nine two oh eight two ten'] },
  ),
  rule(
    '[(the|my|line|supply|incoming)] (volts|voltages|voltage) [(is|are|at|read)] <short:ab> [and] <short:bc> [and] <short:ca>',
    runTogether,
    { unheard: true, examples: ['volts two ten two eleven two oh nine'] },
  ),
  rule(`${GOT} <amount> (on|across|at|between) all three [(legs|phases|lines)]`, onAllThree, {
    examples: ['two oh eight on all three legs'],
  }),
  rule(
    `[(and|so)] (${METER}|${GOT}) <amount> (on|across|at|between|of|from) (all [(three|of the|the|my)]|each|every|both|any [of the]) (legs|phases|lines|leg|phase|line)`,
    onEach,
    { unheard: true, examples: ['meter proves zero on all legs'] },
  ),
  rule(
    '(all three|each|every) [(legs|leg|phases|phase|lines)] (is|are|read|reads|at|show|shows|is at|are at|reading) [(all|right at)] <amount>',
    onAllThree,
    { examples: ['all three legs are two ten'] },
  ),
  rule(
    '[(my|the|three)] [(voltage|line)] (legs|phases|voltages|lines|leg to leg|phase to phase|line to line) [(is|are|read|show|at|i have|i have got|i am getting)] <amount:ab> [and] <amount:bc> [and] <amount:ca>',
    threePairs,
    { examples: ['legs are four eighty one four seventy six and four eighty nine'] },
  ),
];
