import { ratedCan as ratedAs } from '../electrical/ratings.ts';
import type { CondenserId, HeadControlId, PartId } from '../../terms/names.ts';
import { wordBefore } from '../words/clause-start.ts';
import { GOT } from '../electrical/electrical.ts';
import { amountIn, readingOf, withMore } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';
import type { Tags } from '../../grammar/nodes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Reading } from '../utterance.ts';

const condenser =
  (value: CondenserId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'condenser', value, words: frame.wordsOf(frame.span) }],
    names: 'condenser',
  });

/** "Condenser leaving air sixty one, and return air forty four" are two clauses. */
const isOfBox = (frame: Frame): boolean =>
  !/^(?:condenser|cond|outdoor|head|discharge)$/i.test(wordBefore(frame));

/** Not "is it water cooled", nor "it isn't". */
const told =
  (means: Means): Means =>
  (tags, frame) => {
    const { from } = frame.span;
    const before = frame.wordsOf({ from: Math.max(0, from - 2), to: from });
    return /\b(?:not|isn't|no|is (?:it|this)|if|or|the|that|other|was|be|a|an)$/i.test(before)
      ? null
      : means(tags, frame);
  };

const headControl =
  (value: HeadControlId, part?: PartId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'headControl', value, words: frame.wordsOf(frame.span) }],
    ...(part === undefined ? {} : { names: part }),
  });

function read(quantity: QuantityId, amount: Tags | null, frame: Frame): readonly Reading[] {
  const found =
    amount === null ? null : readingOf(quantity, amountIn(amount), { place: null, frame });
  // Degrees said of a fan's pressure are another quantity: they stay unclaimed and are asked about.
  return found?.quantity === quantity ? [found] : [];
}

const one =
  (quantity: QuantityId): Means =>
  (tags, frame) => {
    const readings = read(quantity, tags, frame);
    return readings.length === 1 ? { readings } : null;
  };

const fanPair: Means = (tags, frame) => {
  const readings = [
    ...read('fanCutinPressure', tagsIn(tags['on']), frame),
    ...read('fanCutoutPressure', tagsIn(tags['off']), frame),
  ];
  return readings.length === 2 ? { readings } : null;
};

/** Air that goes through something, at one end and at the other. */
const airPair =
  (first: QuantityId, second: QuantityId): Means =>
  (tags, frame) => {
    const readings = [
      ...read(first, tagsIn(tags['one']), frame),
      ...read(second, tagsIn(tags['other']), frame),
    ];
    return readings.length === 2 ? { readings } : null;
  };

/** "ten microfarad cap": a rating only by its unit. */
const ratedCan: Means = (tags, frame) =>
  amountIn(tags).unit === 'uF' ? one('ratedCapacitance')(tags, frame) : null;

/** Calendar months and years are so long on the whole: nobody counts them by the day. */
const DAYS = { day: 1, week: 7, month: 365 / 12, year: 365 } as const;

type Stretch = keyof typeof DAYS;
const isStretch = (word: string | undefined): word is Stretch =>
  word !== undefined && Object.hasOwn(DAYS, word);

const stretchIn = (words: string): Stretch | null => {
  const [, word] = /\b(day|week|month|year)s?\b/i.exec(words) ?? [];
  const stretch = word?.toLowerCase();
  return isStretch(stretch) ? stretch : null;
};

const sinceCharged: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const count = numberIn(tagsIn(tags['count'])?.['number']);
  const stretch = stretchIn(words);
  if (count === null || stretch === null) return null;
  const value = Math.round(count * DAYS[stretch]);
  const found = { quantity: 'sinceLastCharge', value, unit: 'day', unitFrom: 'said' } as const;
  const isRough =
    !Number.isInteger(DAYS[stretch]) || /\b(?:about|around|like|maybe)\b/i.test(words);
  const reading: Reading = { ...found, place: null, words };
  return { readings: [isRough ? withMore(reading, { hedged: true }) : reading] };
};

const HAS =
  '(it has [got]|it is got|there is|it is on|with|has|this has|this one has [got]|unit has|(we|i) have got)';
const IS = '(it is|this is|this one is|the condenser is|condenser is|unit is|the unit is)';
const FLOODED =
  '((head pressure|head) [pressure] [(control|regulating)] valve|(condenser flooding|flooding) valve|flooded head pressure control|(flooded|flooding) condenser|headmaster|head master)';
/** Told by its name and no more: what holds this unit's head. */
const CONTROLS_ALONE: readonly { readonly said: string; readonly value: HeadControlId }[] = [
  { said: FLOODED, value: 'floodingValve' },
  { said: '[condenser] fan (cycling|cycle) [pressure] [(switch|control)]', value: 'fanCycling' },
  {
    said: '([condenser] fan speed (control|controller)|variable speed [condenser] fan)',
    value: 'fanSpeed',
  },
];
/** The valve by its kind, and what it is set for. */
const FLOODING_TYPE =
  '[(the|a)] (head [pressure] control [valve] [is] [(a|an|the)] (flooding|flooded) [(type|style|kind|valve)]|(flooding|flooded) [type] head [pressure] control [valve]|~~(head pressure [control] valve [(on|in) (it|here|there)] [too] [<pause>] [(a|the)] (flooding|flooded) (one|type|style)))';
const SET_FOR = '[(it is|and it is|that is|and|is)] set [(up|to hold)] [(at|to|for)] <amount>';
const HOLDER =
  '(head pressure [control] valve|[condenser] flooding valve|head valve|headmaster|head master)';
const FANS =
  '[(the|their)] [condenser] (fan|fans|(fan|fan cycle|fan cycling|fan pressure) (control|switch) [(is|is set to)])';
const ON = '(comes on|come on|cuts in|cut in|cycles on|cycle on|kicks on|kick on|starts|start)';
const OFF = '(off|out|cuts out|cut out|goes off|go off|cycles off|cycle off|kicks off|stops|stop)';
const CHARGED =
  '((it was|was) [last] (charged|topped off|filled|gassed up|serviced with gas)|[last] (charged|topped off|gassed up) [it]|last (filled|charge was|time gas was added)|(somebody|someone|they|we|i) [last] (added (gas|refrigerant|charge|some)|charged it|topped it off|gassed it up))';

const STRETCH = '(day|days|week|weeks|month|months|year|years)';
const GAS_WENT_IN =
  '((anybody|anyone|somebody|someone|they|we|i|it) [(has|have|was)] [last] (put (gas|refrigerant|charge|any|some) in|added (gas|refrigerant|charge|any)|charged|topped off|gassed up|topped it off) [(it|to it|in it|up)]|the last charge)';

/** "Head control's flooding type, set one eighty" */
const floodingAt: Means = (tags, frame) => {
  const [held] = read('heldHeadPressure', tags, frame);
  const value: HeadControlId = 'floodingValve';
  return held?.unit == null
    ? null
    : {
        readings: [held],
        facts: [{ fact: 'headControl', value, words: frame.wordsOf(frame.span) }],
      };
};

/** The condenser and what holds its head, what is printed on a can, and how long ago gas was added. */
export const CONDENSING_SIDE_RULES: readonly Rule[] = [
  rule(
    `${GOT} <amount:one> (coming off|off|off of|leaving|out of|blowing off|coming out of) <the> condenser [coil] [(and|<pause>)] <amount:other> (going in|coming in|on|going on|entering) [(it|to it)]`,
    airPair('condenserLeavingAirTemp', 'ambientTemp'),
    { examples: ['a hundred and twelve off the condenser ninety going in'] },
  ),
  rule(
    'leaving [air] [(temp|is|at)] <amount:one> [(and|<pause>)] (return|entering) [air] [(temp|is|at)] <amount:other>',
    airPair('supplyAirTemp', 'boxTemp'),
    { only: isOfBox, examples: ['leaving air thirty three return forty'] },
  ),
  rule(
    '(return|entering) [air] [(temp|is|at)] <amount:one> [(and|<pause>)] leaving [air] [(temp|is|at)] <amount:other>',
    airPair('boxTemp', 'supplyAirTemp'),
    { only: isOfBox, examples: ['return forty leaving thirty three'] },
  ),
  rule(`(${IS}|${HAS}) [a] water cooled [(condenser|unit)]`, condenser('waterCooled'), {
    examples: ['it is water cooled', 'it has a water cooled condenser'],
  }),
  rule('<pause> [and] water cooled [(condenser|unit)]', condenser('waterCooled')),
  rule('water cooled [(condenser|unit)]', told(condenser('waterCooled')), {
    examples: ['water cooled'],
  }),
  rule('air cooled [(condenser|unit)]', told(condenser('airCooled')), { examples: ['air cooled'] }),
  rule('<pause> [and] air cooled [(condenser|unit)]', condenser('airCooled')),
  rule(`(${IS}|${HAS}) [an] air cooled [(condenser|unit)]`, condenser('airCooled'), {
    examples: ['it is air cooled'],
  }),
  rule(
    `((${IS}|${HAS}) [a] (remote|roof|rooftop|outdoor) condenser|[(a|the)] condenser is remote [up] [<pause>] [up] [on the roof]|[the] condenser [(on|for) (this|it) [one]] is [up] (on the roof|outside|outdoors|remote|up top|out back))`,
    condenser('remote'),
    { examples: ['it has a remote condenser', 'the condenser is on the roof'] },
  ),
  rule(
    '[a] (remote|rooftop) condenser [[up] (on the roof|outside|out back)]',
    condenser('remote'),
    {
      alone: true,
      examples: ['remote condenser'],
    },
  ),
  rule(
    '[the] unit is [up] (on the roof|on top of the (box|walk in)|out back|outside|in the alley|up top)',
    condenser('remote'),
    { examples: ['unit is on the roof'] },
  ),
  rule(
    `[(${HAS}|got)] [(a|an|the)] (${FLOODED}|${FLOODING_TYPE}) [<pause>] ${SET_FOR}`,
    floodingAt,
    {
      unheard: true,
      examples: ['head control is flooding type set one eighty'],
    },
  ),
  rule(FLOODING_TYPE, headControl('floodingValve'), {
    unheard: true,
    examples: ['head control is flooding type'],
  }),
  rule(
    `[(the|a)] head [pressure] control [valve] [is] set [(up|to hold)] [(at|to|for)] <amount>`,
    one('heldHeadPressure'),
    {
      unheard: true,
      examples: ['head control is set for one eighty'],
    },
  ),
  rule(`(${HAS}|got) [(a|an|the)] ${FLOODED}`, headControl('floodingValve'), {
    examples: ['it has a head pressure valve'],
  }),
  ...CONTROLS_ALONE.map(({ said, value }) =>
    rule(`[(a|an|the)] ${said} [on (it|this [(one|unit)])]`, headControl(value), { alone: true }),
  ),
  rule(
    `(${FANS} (cycle|cycles|cycling|is cycled|are cycled|is cycling|are cycling) (on|by|off) [the] (pressure|head|head pressure|a pressure switch)|${FANS} (is|are) on a (pressure switch|fan cycle switch|fan cycling switch|pressure control|head pressure switch)|(${HAS}) [(a|an)] fan cycling [pressure] [(switch|control)])`,
    headControl('fanCycling', 'fanControl'),
    { examples: ['fans cycle on pressure', 'it has a fan cycling switch'] },
  ),
  rule(
    `(${FANS} (is|are) (variable speed|speed controlled|on a (speed control|drive|speed controller))|${HAS} [a] (variable speed [condenser] fan|[condenser] fan speed (control|controller)))`,
    headControl('fanSpeed'),
    { examples: ['it has a fan speed control', 'the condenser fan is variable speed'] },
  ),
  rule(
    '((it has|there is|it has got|has|with|unit has) no|no|it does not have [(a|any)]|there is not any|(there is|it has [got]|has) nothing [on it] for) (head pressure (control|valve)|head control|fan cycling|low ambient [(control|kit|head control|head pressure control)])',
    headControl('none'),
    { examples: ['it has no head pressure control', 'no head control'] },
  ),
  rule(
    '[the] fan (cycle|cycling|cycle switch|control|cycle control) [is] <amount:on> on [and] <amount:off> off',
    fanPair,
    {
      examples: ['fan cycle one eighty on one forty off'],
    },
  ),
  rule(`${FANS} ${ON} [at] <amount:on> [and] ${OFF} [at] <amount:off>`, fanPair, {
    examples: ['the fan comes on at two twenty and off at one seventy'],
  }),
  rule(
    `[the] [head pressure] valve (holds|is holding|keeps) [the] (head|head pressure|it) at <amount>`,
    one('heldHeadPressure'),
    { examples: ['the valve holds head at one eighty'] },
  ),
  rule(
    `<the> ${HOLDER} [is] [(set|set up)] ([to] (hold|holds|holding|keep|keeps|keeping|maintain|maintains)|at|to|for) [[the] (head|head pressure|it) [at]] <amount>`,
    one('heldHeadPressure'),
    { examples: [] },
  ),
  rule(
    `<amount> (is|was) (what|where) <the> ${HOLDER} [is] (set|set at|set to [hold]|holding|holds|keeps|maintains) [[the] (head|head pressure|it)] [at]`,
    one('heldHeadPressure'),
    { examples: ['two ten is what the flooding valve is holding the head at'] },
  ),
  rule(
    '(we|you) (see|get|hit) <amount> [(here|up here|on the roof|outside)] (on the (hottest|worst) (day|days)|in the (summer|dog days)) [of the (year|summer)]',
    one('designAmbientTemp'),
    { examples: ['we see a hundred and five here on the hottest day of the year'] },
  ),
  rule(
    '(it gets|it will get|it can get|summer gets|it gets up) [up] to <amount> [(here|there|up here|outside|on the roof)] (in [the] summer|on [the] hottest day|in july|in august)',
    one('designAmbientTemp'),
    { examples: ['it gets to a hundred and five here in the summer'] },
  ),
  rule(
    '[the] [run] (capacitor|cap) is [a] (rated|marked|stamped) [(at|for)] <amount>',
    (tags, frame) => ratedAs(tags, null, frame),
    { examples: ['the capacitor is rated ten microfarads'] },
  ),
  rule('(it is|this is|that is|it has|it takes) a <amount> [run] (capacitor|cap)', ratedCan, {
    examples: ['it is a ten microfarad cap'],
  }),
  rule(`${CHARGED} [(about|around|like|maybe)] <count:count> ${STRETCH} ago`, sinceCharged, {
    examples: ['last charged three weeks ago'],
  }),
  rule(`[(about|around|like|maybe)] <count:count> ${STRETCH} since ${GAS_WENT_IN}`, sinceCharged, {
    examples: ['sixty days since anybody put gas in it'],
  }),
];
