import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { droppedIn } from '../numbers/dropped-points.ts';
import { electrical, GOT, one } from './electrical.ts';
import { letsInAgain } from '../facts/controls-acting.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn, readingOf, withMore } from '../numbers/measure.ts';
import { isSupply } from '../numbers/nominal-voltages.ts';
import { pointed } from './meter-figures.ts';
import { leftToAsk, reading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { placeId, tagsIn } from '../slots.ts';

export const isVolts = (tags: Tags): boolean => [null, 'V'].includes(amountIn(tags).unit);

type PressureSwitch = 'highPressureSwitch' | 'lowPressureSwitch';
const SIDE_OF: Record<PressureSwitch, QuantityId> = {
  highPressureSwitch: 'headPressure',
  lowPressureSwitch: 'suctionPressure',
};

/** "Twenty four going in the high pressure": only volts go into a control. */
const intoSwitch =
  (part: PressureSwitch): Means =>
  (tags, frame) => {
    const volts = isVolts(tags) ? one(electrical(tags, 'lineSide', frame)) : null;
    return volts && { ...volts, names: part };
  };

/** "Twenty four at the low pressure", behind a voltage: the circuit is followed on; else it is the gauge's. */
const atSwitch =
  (part: PressureSwitch): Means =>
  (tags, frame) => {
    const volts = intoSwitch(part)(tags, frame);
    const gauged = reading(SIDE_OF[part], amountIn(tags), frame);
    if (volts === null || gauged === null) return null;
    const means = (quantity: QuantityId): Meaning | null => (quantity === 'voltage' ? volts : null);
    return { ofThat: { means, otherwise: { readings: [gauged] } }, names: part };
  };

/** "…, twenty four out": behind a voltage told in the same breath. */
const thenOut: Means = (tags, frame) => {
  const volts = isVolts(tags) ? one(electrical(tags, 'loadSide', frame)) : null;
  if (volts === null) return null;
  const isDead = amountIn(tags).value === 0;
  const means = (quantity: QuantityId): Meaning | null =>
    quantity === 'voltage' && !isDead ? volts : null;
  const opened = (part: PartId): Meaning | null =>
    isDead && SWITCHES.includes(part)
      ? { ...volts, findings: [finding(part, 'open', frame)] }
      : null;
  const otherwise = isDead ? volts : leftToAsk(tags);
  return { ofThat: { means, otherwise }, ofIt: { means: opened, inSentence: true } };
};

const SWITCHES: readonly PartId[] = [
  ...(['highPressureSwitch', 'lowPressureSwitch', 'temperatureControl'] as const),
  ...(['overload', 'doorSwitch', 'fanControl', 'defrostTermination'] as const),
];

/** "… and zip on the other side": what was fed lets nothing through. */
const noneBeyond: Means = (_tags, frame) => {
  const dead = one(electrical({ number: 0 }, 'loadSide', frame)) ?? {};
  const means = (part: PartId): Meaning | null =>
    SWITCHES.includes(part) ? { ...dead, findings: [finding(part, 'open', frame)] } : dead;
  return { ofIt: { means, inSentence: true, otherwise: dead } };
};

/** What is fed with mains or control voltage; a motor's or a heater's bare figure may be its amps. */
const FED: readonly (PlaceId | null)[] = [
  ...(['contactor', 'liquidLineSolenoid', 'hotGasValve', 'startRelay', 'defrostTimer'] as const),
  ...(['temperatureControl', 'doorSwitch', 'lineSide', 'loadSide'] as const),
];

/** "Solenoid's got one nineteen": what can be a supply's voltage is. */
const fedBare: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const place = placeId(tags['place']);
  return unit === null && value !== null && isSupply(value) && FED.includes(place)
    ? one(electrical(tags, place, frame))
    : null;
};

/** "Two oh eight on the line side, same on the load side" */
const sameOnBoth: Means = (tags, frame) => {
  const [first, second] = /\bload\b.*\bline\b/i.test(frame.wordsOf(frame.span))
    ? (['loadSide', 'lineSide'] as const)
    : (['lineSide', 'loadSide'] as const);
  const readings = [first, second].flatMap((place) => electrical(tags, place, frame) ?? []);
  return isVolts(tags) && readings.length === 2 ? { readings } : null;
};

const sagsTo: Means = (tags, frame) =>
  isVolts(tags) ? one(electrical({ ...tags, unit: 'V' }, null, frame)) : null;

/** "Drops to one oh nine when she tries to start": the same, at the same place. */
const asItStarts: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const means = (quantity: QuantityId, place: PlaceId | null): Meaning | null =>
    quantity === 'voltage' || quantity === 'current'
      ? one(readingOf(quantity, amount, { place, frame }))
      : null;
  const volts = amount.unit === 'V' ? one(electrical(tags, null, frame)) : null;
  return { ofThat: { means, otherwise: volts ?? leftToAsk(tags) } };
};

/** "…, closed back up at twenty eight": what its side stood at as the control that opened made again. */
const madeAgain: Means = (tags, frame) => {
  const means = (part: PartId): Meaning | null => {
    if (part !== 'highPressureSwitch' && part !== 'lowPressureSwitch') return null;
    const found = reading(SIDE_OF[part], amountIn(tags), frame);
    return found && { readings: [found], findings: [finding(part, 'closed', frame)] };
  };
  const otherwise = letsInAgain(tags, frame) ?? leftToAsk(tags);
  return { ofIt: { means, inSentence: true, otherwise } };
};

const atTransformer: Means = (tags, frame) =>
  isVolts(tags) ? one(electrical({ ...tags, unit: 'V' }, null, frame)) : null;

/** With its point, without it where nothing else is meant, or asked about. */
export function amps(tags: Tags, place: PlaceId | null, frame: Frame): Meaning | null {
  const dropped = droppedIn(tags);
  const read = electrical({ ...pointed(tags), unit: 'A' }, place, frame);
  if (read === null) return null;
  if (dropped === null || dropped.or === null) return { readings: [read] };
  return { doubts: [withMore(read, { why: 'saidTwoWays', or: dropped.or })] };
}

const joined = (each: readonly (Meaning | null)[]): Meaning | null => {
  const meanings = each.filter((meaning) => meaning !== null);
  if (meanings.length < each.length) return null;
  return {
    readings: meanings.flatMap(({ readings = [] }) => readings),
    doubts: meanings.flatMap(({ doubts = [] }) => doubts),
  };
};

/** What is drawn on each leg, one after the other. */
const ampsOnLegs: Means = (tags, frame) => {
  const legs = ['lineOne', 'lineTwo', 'lineThree'] as const;
  const slots = ['one', 'two', 'three'];
  return joined(legs.map((leg, at) => amps(tagsIn(tags[slots[at] ?? '']) ?? {}, leg, frame)));
};

/** "Amp draw's down from six nine to five four": both were read, the old one first. */
const ampsThenAndNow: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const said = [tagsIn(tags['before']) ?? {}, tagsIn(tags['now']) ?? {}];
  return joined(said.map((each) => amps(each, place, frame)));
};

/** Ours: no line that is worth calling one carries less. */
const LEAST_LINE = 100;

/** "One twenty two on one leg, nothing on the other": which of them is which nobody tells. */
const onOneLeg: Means = (tags, frame) => {
  const other = tagsIn(tags['other']);
  const { unit, value } = amountIn(tags);
  // "Eighty five on one side": of a coil as likely as of a supply.
  const isSide = /\bone side\b/i.test(frame.wordsOf(frame.span));
  if (isSide && unit === null && (value ?? 0) < LEAST_LINE) return null;
  const readings = [tags, other].flatMap((each) =>
    each === null || !isVolts(each) ? [] : (electrical(each, null, frame) ?? []),
  );
  return readings.length === 2 ? { readings } : null;
};

/** Where only what it draws is told behind what it gets: "heater's getting two oh eight but drawing nothing". */
const fedAndDraws: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const fed = isVolts(tags) ? one(electrical({ ...tags, unit: 'V' }, place, frame)) : null;
  const drawn = readingOf('current', amountIn({ number: 0 }), { place, frame });
  if (fed?.readings === undefined || drawn === null) return null;
  return { readings: [...fed.readings, drawn] };
};

const overloadTrips: Means = (_tags, frame) => ({
  findings: [finding('overload', 'tripped', frame)],
});

const L = '[(line|leg|phase|l)]';
const pair = (from: string, to: string): string => `(${from}) (to|and) ${L} (${to})`;
const PAIRS = {
  ab: pair('one', 'two'),
  bc: pair('two', 'three'),
  ca: `(${pair('one', 'three')}|${pair('three', 'one')})`,
} as const;
type PairSlot = keyof typeof PAIRS;
const PLACE_OF = { ab: 'lineOneTwo', bc: 'lineTwoThree', ca: 'lineOneThree' } as const;
const ORDERS: readonly (readonly PairSlot[])[] = [
  ['ab', 'bc', 'ca'],
  ['ab', 'ca', 'bc'],
  ['ca', 'ab', 'bc'],
  ['ca', 'bc', 'ab'],
  ['bc', 'ab', 'ca'],
  ['bc', 'ca', 'ab'],
];

/** No supply of these has so little between two legs: windings do, and are told in ohms. */
const LEAST_SUPPLY = 100;

const pairwise =
  (order: readonly PairSlot[]): Means =>
  (tags, frame) => {
    const readings = order.flatMap((pair) => {
      const amount = tagsIn(tags[pair]);
      const { value } = amountIn(amount ?? {});
      const isSupply = amount !== null && isVolts(amount) && (value ?? 0) >= LEAST_SUPPLY;
      return isSupply ? (electrical(amount, PLACE_OF[pair], frame) ?? []) : [];
    });
    return readings.length === order.length ? { readings } : null;
  };

const HIGH = '(high pressure|high side|high limit|high head|high|h p|hp|h p c|hpc)';
const LOW = '(low pressure|low side|low|l p|lp|l p c|lpc)';
const SWITCH = '[(switch|control|cut out)]';
const IN = '([(going|coming)] (into|in to|to)|(going|coming) in)';
const DROPS =
  '(drops|dropped|falls|fell|sags|sagged|dips|dipped|goes|went|drags|pulls|jumps|jumped|spikes|spiked|climbs)';
const STARTS =
  '(tries [to start]|starts|starts up|kicks on|comes on|is starting|try to start|start it|hit the switch|pulls in|kicks in|cuts in|takes off|tries to kick on)';
const AMPS = '(amps|amp draw|amperage|current|current draw|draw)';
const AND = '(and|<pause> [and])';
/** Figures with their point or without one: two rules, as one could read "nine four" both ways. */
const FIGURES = ['dropped', 'number'] as const;
const figure = (kind: (typeof FIGURES)[number], slot: string): string =>
  `${kind === 'number' ? `(<number:${slot}>|<droppedSurely:${slot}>)` : `<dropped:${slot}>`} [(amps|amp)]`;

const EXAMPLE = { dropped: 'nine four', number: 'nine point four' } as const;

/** A circuit followed from one device to the next, and what supplies and motors are metered at on each leg. */
export const CIRCUIT_TRACE_RULES: readonly Rule[] = [
  rule(`${GOT} <amount> ${IN} [the] ${HIGH} ${SWITCH}`, intoSwitch('highPressureSwitch'), {
    examples: ['twenty four going in the high pressure'],
  }),
  rule(`${GOT} <amount> ${IN} [the] ${LOW} ${SWITCH}`, intoSwitch('lowPressureSwitch'), {
    examples: ['one twenty going into the low pressure'],
  }),
  rule(`${GOT} <amount> at the high pressure`, atSwitch('highPressureSwitch')),
  rule(`${GOT} <amount> at the low pressure`, atSwitch('lowPressureSwitch')),
  rule(
    `<pause> [(and|but)] [(i have|i got)] <amount> [(coming|going|back)] (out|out of it|leaving|leaving it)`,
    thenOut,
  ),
  rule(
    `[(and|but)] [(i have|i got|there is)] (nothing|zip|zilch|zero|dead|no (volts|voltage|power)|not a thing) (on|at|out) [of] the (other (side|end|leg)|output|outlet side|far side|back side) [of it]`,
    noneBeyond,
    { examples: ['zip on the other side'] },
  ),
  rule(
    `${GOT} <amount> (at|across|on|off|from|out of|coming off|coming out of) <the> [(secondary|primary|low side|high side|load side) [(of|on) the]] transformer [(secondary|primary)]`,
    atTransformer,
    { examples: ['twenty four at the transformer'] },
  ),
  rule('<the> <place> (has|has got|is got|got|have|have got) [got] <amount>', fedBare, {
    examples: ['solenoid has got one nineteen'],
  }),
  rule(
    `${GOT} <amount> [(on|at)] [the] (line|load) [side] [<pause>] [and] [the] same [thing] (on|at) [the] (line|load) [side]`,
    sameOnBoth,
    { examples: ['two oh eight on the line side same on the load side'] },
  ),
  rule(
    '[(and|it is)] [the] same [thing] (on|at|across) (the|my) (other side|<place>)',
    (_tags, frame) => ({ remarks: [frame.wordsOf(frame.span)] }),
    { examples: ['same on the load side'] },
  ),
  rule(
    `[(and|but|then)] [it] ${DROPS} [(down|off|up|right)] to <amount> (when|as|once|every time) (it|she|he|i|the compressor|the fan|the motor|compressor) [(first|just)] ${STARTS}`,
    asItStarts,
    { examples: [] },
  ),
  rule(
    `[(and|but|then)] [the] [(line|supply)] (voltage|volts|power) ${DROPS} [(down|off|up|right)] to <amount> (on (start|startup|start up)|under load|(when|as|once|every time) (it|she|he|i|the compressor|the fan|the motor|compressor) [(first|just)] ${STARTS})`,
    sagsTo,
    { unheard: true, examples: ['voltage sags to two thirty one on start'] },
  ),
  rule(
    '[(and|then|and then|but)] [it] (closed|closes|made|makes|came|comes|reset|resets) [right] (back [(up|in|on)]|again|itself) at <amount>',
    madeAgain,
    { examples: [] },
  ),
  ...FIGURES.flatMap((kind) => [
    rule(
      `[the] ${AMPS} (on|across|of|by) [(the|all|all the)] [three] (legs|phases|lines) [(is|are|at)] ${figure(kind, 'one')} ${AND} ${figure(kind, 'two')} ${AND} ${figure(kind, 'three')}`,
      ampsOnLegs,
      { examples: [`amps on the legs ${EXAMPLE[kind]} and ${EXAMPLE[kind]} and ${EXAMPLE[kind]}`] },
    ),
    rule(
      `([the] ${AMPS} [(on|of|at) <the> <place>]|<the> <place> ${AMPS}) [(is|are|has|have)] [(come|gone|went|came|dropped|fell)] [(down|up|back down)] from ${figure(kind, 'before')} [(down|up)] to ${figure(kind, 'now')}`,
      ampsThenAndNow,
      { examples: [`amp draw is down from ${EXAMPLE[kind]} to ${EXAMPLE[kind]}`] },
    ),
  ]),
  rule(
    '[(and|then|and then|it|she)] [(just)] (trips|tripped|pops|popped|opens|opened|kicks|kicked) the (overload|klixon|internal overload|thermal overload) [out]|[(and|then|and then)] the (overload|klixon|internal overload|thermal overload) (kicks|trips|takes|cuts|knocks|drops|kicked|took|cut|dropped) it (out|off)',
    overloadTrips,
    { examples: ['trips the overload'] },
  ),
  rule(
    `${GOT} <amount> [to (neutral|ground)] on one (leg|phase|line|side) [of (it|that)] [<pause>] [(and|but)] (<amount:other>|<none:other>) on the other [(one|leg|phase|line|side)]`,
    onOneLeg,
    { examples: ['one twenty two on one leg nothing on the other'] },
  ),
  rule(
    '<the> <place> (is getting|gets|has|has got|is got|sees|is seeing) [got] [(it is|all of it is|its|my|the)] <amount> [<pause>] [(and|but)] [it is] [not] (drawing|pulling) (nothing|anything|no amps|zero amps|no current|any amps)',
    fedAndDraws,
    { examples: ['defrost heater is getting two oh eight but it is drawing nothing'] },
  ),
  ...ORDERS.map((order) => {
    const said = order.map((pair) => `${L} ${PAIRS[pair]} <link> <amount:${pair}>`);
    return rule(said.join(' [<pause>] [and] '), pairwise(order), { examples: [] });
  }),
];
