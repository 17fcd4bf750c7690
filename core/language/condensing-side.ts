import type { CondenserId, HeadControlId, PartId } from '../terms/names.ts';
import { GOT } from './electrical.ts';
import { amountIn, readingOf } from './measure.ts';
import { type Frame, type Means, type Rule, rule } from './rule.ts';
import { numberIn, tagsIn } from './slots.ts';
import type { Tags } from '../grammar/nodes.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { Reading } from './utterance.ts';

const condenser =
  (value: CondenserId): Means =>
  (_tags, frame) => ({
    facts: [{ fact: 'condenser', value, words: frame.wordsOf(frame.span) }],
    names: 'condenser',
  });

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

const DAYS = { day: 1, week: 7 } as const;

const daysAgo =
  (span: keyof typeof DAYS): Means =>
  (tags, frame) => {
    const count = numberIn(tagsIn(tags['count'])?.['number']);
    if (count === null) return null;
    const value = count * DAYS[span];
    const words = frame.wordsOf(frame.span);
    const reading: Reading = {
      quantity: 'sinceLastCharge',
      value,
      unit: 'day',
      unitFrom: 'said',
      place: null,
      words,
    };
    return { readings: [reading] };
  };

const HAS =
  '(it has|it has got|it is got|there is|it is on|with|has|this has|this one has|unit has)';
const IS = '(it is|this is|this one is|the condenser is|condenser is|unit is|the unit is)';
const FANS =
  '[(the|their)] [condenser] (fan|fans|(fan|fan cycle|fan cycling|fan pressure) (control|switch) [(is|is set to)])';
const ON = '(comes on|come on|cuts in|cut in|cycles on|cycle on|kicks on|kick on|starts|start)';
const OFF = '(off|out|cuts out|cut out|goes off|go off|cycles off|cycle off|kicks off|stops|stop)';
const CHARGED =
  '((it was|was) [last] (charged|topped off|filled|gassed up|serviced with gas)|last (charged|topped off|filled|gassed up|charge was|time gas was added)|(somebody|someone|they|we|i) [last] (added (gas|refrigerant|charge|some)|charged it|topped it off|gassed it up))';

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
    { examples: ['leaving air thirty three return forty'] },
  ),
  rule(
    '(return|entering) [air] [(temp|is|at)] <amount:one> [(and|<pause>)] leaving [air] [(temp|is|at)] <amount:other>',
    airPair('boxTemp', 'supplyAirTemp'),
    { examples: ['return forty leaving thirty three'] },
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
    `((${IS}|${HAS}) [a] (remote|roof|rooftop|outdoor) condenser|[the] condenser [(on|for) (this|it) [one]] is [up] (on the roof|outside|outdoors|remote|up top|out back))`,
    condenser('remote'),
    { examples: ['it has a remote condenser', 'the condenser is on the roof'] },
  ),
  rule(
    '[the] unit is [up] (on the roof|on top of the (box|walk in)|out back|outside|in the alley|up top)',
    condenser('remote'),
    { examples: ['unit is on the roof'] },
  ),
  rule(
    `(${HAS}|got) [(a|an|the)] ((head pressure|head) [pressure] [control|regulating] valve|(condenser flooding|flooding) valve|flooded head pressure control|(flooded|flooding) condenser)`,
    headControl('floodingValve'),
    { examples: ['it has a head pressure valve'] },
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
    '((it has|there is|it has got|has|with|unit has) no|no|it does not have [(a|any)]|there is not any) (head pressure (control|valve)|head control|fan cycling|low ambient (control|kit))',
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
  rule(`${FANS} ${ON} at <amount:on> [and] ${OFF} [at] <amount:off>`, fanPair, {
    examples: ['the fan comes on at two twenty and off at one seventy'],
  }),
  rule(
    '[the] [head pressure] valve (holds|is holding|keeps) [the] (head|head pressure|it) at <amount>',
    one('heldHeadPressure'),
    { examples: ['the valve holds head at one eighty'] },
  ),
  rule(
    '(it gets|it will get|it can get|summer gets|it gets up) [up] to <amount> [(here|there|up here|outside|on the roof)] (in [the] summer|on [the] hottest day|in july|in august)',
    one('designAmbientTemp'),
    { examples: ['it gets to a hundred and five here in the summer'] },
  ),
  rule(
    '[the] [run] (capacitor|cap) is [a] (rated|marked|stamped) [(at|for)] <amount>',
    one('ratedCapacitance'),
    { examples: ['the capacitor is rated ten microfarads'] },
  ),
  rule('(it is|this is|that is|it has|it takes) a <amount> [run] (capacitor|cap)', ratedCan, {
    examples: ['it is a ten microfarad cap'],
  }),
  ...(['day', 'week'] as const).map((span) =>
    rule(`${CHARGED} <count:count> (${span}|${span}s) ago`, daysAgo(span), {
      examples: [`last charged three ${span}s ago`],
    }),
  ),
];
