import { startsClause, wordBefore, wordBehind } from '../words/clause-start.ts';
import { headOverSuction, highAndLow } from './both-gauges.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { type Amounted, amountIn } from '../numbers/measure.ts';
import { fixed, leftToAsk, reading } from './reading-means.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, tagsIn } from '../slots.ts';

const SO = '[(is|at|was|was at|is at|reads|of|running|is running|sitting at)]';

/** Ours: no head of a unit that runs is lower; the low of a day, or of anything else, is no pressure. */
const LEAST_HIGH = 60;
const isOfPressure = ({ unit }: Amounted): boolean =>
  unit === null || ['psi', 'pounds', 'bar', 'kPa', 'inches', 'inHg'].includes(unit);
const OF_A_DAY =
  /^(?:today|tonight|tomorrow|outside|out|this|degrees|percent|for|of|in|on|dollars|bucks|to)$/;

/** "On four oh seven C low's sixty two": of two gauges, and only where nothing but that gauge was named. */
const sideAt =
  (side: 'low' | 'high'): Means =>
  (tags, frame) => {
    const amount = amountIn(tags);
    const { value } = amount;
    if (!isOfPressure(amount) || value === null || OF_A_DAY.test(wordBehind(frame))) return null;
    if (!startsClause(frame) && !LEADS_TO_SIDE.test(wordBefore(frame))) return null;
    const found = fixed(side === 'low' ? 'suctionPressure' : 'headPressure')(tags, frame);
    const isSure = side === 'low' || amount.unit !== null || value > HOTTEST_DAY;
    if (found === null || isSure) return found;
    const means = (last: QuantityId): Meaning | null => (GAUGES.includes(last) ? found : null);
    const { lastQuantity } = frame.context;
    return {
      ofThat: { means, otherwise: (lastQuantity && means(lastQuantity)) ?? leftToAsk(tags) },
    };
  };
/** Ours: a high that is less may be the day's, where no gauge was told of before. */
const HOTTEST_DAY = 130;
const GAUGES: readonly QuantityId[] = ['headPressure', 'suctionPressure'];
const LEADS_TO_SIDE =
  /^(?:a|b|c|d|f|and|but|so|with|now|then|psi|pounds|bar|\d+\w?|\w+ty|\w+teen)$/i;

/** Ours: further apart two figures are no needle that moves between them. */
const NEAR = 15;
const LEAST_LOW = 5;
/** "High two ten two twelve" */
const betweenOn =
  (side: 'low' | 'high'): Means =>
  (tags, frame) => {
    const [low, high] = ['one', 'two'].map((slot) => numberIn(tagsIn(tags[slot])?.['number']));
    if (low == null || high == null || high <= low || high - low > NEAR) return null;
    if (!frame.endsAtPause || low < LEAST_LOW) return null;
    if (side === 'high' && low < LEAST_HIGH) return null;
    const amount = { value: null, low, high, unit: null, hedged: false, overlimit: false };
    const quantity = side === 'low' ? 'suctionPressure' : 'headPressure';
    const found = reading(quantity, amount, frame);
    return found === null ? null : { readings: [found] };
  };

/** "Gauges read twenty two and one eighty": which is which is told by how far they lie apart. */
const bothShown: Means = (tags, frame) => {
  const [one, two] = [
    amountIn(tagsIn(tags['head']) ?? {}),
    amountIn(tagsIn(tags['suction']) ?? {}),
  ];
  const [high, low] = [
    Math.max(one.value ?? 0, two.value ?? 0),
    Math.min(one.value ?? 0, two.value ?? 0),
  ];
  const areSides = isOfPressure(one) && isOfPressure(two) && high >= LEAST_HIGH && low < high / 2;
  return areSides ? headOverSuction(tags, frame) : null;
};

/** "Forty two on the suction line, twenty on the gauge": of the side whose line was told. */
const onGauge: Means = (tags, frame) => {
  const of = (quantity: QuantityId): Meaning | null => fixed(quantity)(tags, frame);
  const means = (read: QuantityId): Meaning | null => {
    if (read === 'suctionLineTemp' || read === 'superheat') return of('suctionPressure');
    return read === 'liquidLineTemp' || read === 'subcooling' ? of('headPressure') : null;
  };
  return isOfPressure(amountIn(tags)) ? { ofThat: { means, otherwise: leftToAsk(tags) } } : null;
};

/** "Low thirty, high two ten" */
const eachSide: Means = (tags, frame) => {
  const sides = [amountIn(tagsIn(tags['head']) ?? {}), amountIn(tagsIn(tags['suction']) ?? {})];
  const isHead = sides.some(({ unit }) => unit !== null) || (sides[0]?.value ?? 0) >= LEAST_HIGH;
  return isHead && sides.every(isOfPressure) ? highAndLow(tags, frame) : null;
};

/** As they were said. */
const lowFirst: Means = (tags, frame) => {
  const told = eachSide(tags, frame);
  return told?.readings === undefined ? told : { readings: told.readings.toReversed() };
};

/** The two sides of one gauge set, told by "low" and "high" and by each other. */
export const SIDE_RULES: readonly Rule[] = [
  ...(['low', 'high'] as const).map((side) =>
    rule(
      `[(and|but|so|now|then)] [(the|my)] ${side} (is|was|reads|at|reading|running|says|shows|has been|came (up|down) to|dropped to|went to|climbed to) [(at|running|sitting|reading|holding|showing|now|back|still|only|just|up|down)] [(at|to|up to|down to)] <amount>`,
      sideAt(side),
      {
        unheard: true,
        examples: [side === 'low' ? 'low is at twenty eight' : 'the high is at two forty'],
      },
    ),
  ),
  ...(['low', 'high'] as const).map((side) =>
    rule(
      `[(the|my|uh)] ${side} [(is|at|is at|was|reads)] <short:one> [(or|to|<pause>)] <short:two>`,
      betweenOn(side),
      { unheard: true, only: startsClause, examples: [] },
    ),
  ),
  rule(
    `[the] low ${SO} <amount:suction> [<pause>] [(and|with|but)] [the] high ${SO} <amount:head>`,
    eachSide,
    { unheard: true, only: startsClause, examples: ['low thirty high two ten'] },
  ),
  rule(
    `[the] high ${SO} <amount:head> [<pause>] [(and|with|but)] [the] low ${SO} <amount:suction>`,
    eachSide,
    { unheard: true, only: startsClause, examples: ['high is two ten and low is thirty'] },
  ),
  rule(
    '[(it|she|he|compressor|the compressor)] [is] (sucking|pulling|drawing) [(at|down to)] <amount:suction> [<pause>] [and] [(it|she)] [is] (pushing|discharging|pumping [out]) [(at|up to)] <amount:head>',
    eachSide,
    {
      unheard: true,
      only: startsClause,
      examples: ['sucking at two point one bar and pushing twelve'],
    },
  ),
  rule(
    '<got> [(at|looking at)] <amount:suction> (on [the] low [side]|down low|on [the] bottom|on the suction) [<pause>] [(and|with)] <amount:head> (up (high|top)|on [the] top)',
    lowFirst,
    { unheard: true, examples: ['looking at thirty one on the low and one ninety eight up top'] },
  ),
  rule(
    '<got> [(at|looking at)] <amount:head> (up (high|top)|on [the] top) [<pause>] [(and|with)] <amount:suction> (on [the] low [side]|down low|on [the] bottom|on the suction)',
    eachSide,
    { unheard: true, examples: ['one ninety up top and thirty down low'] },
  ),
  rule(
    '[(the|my|both)] (gages|pressures|manifold) (read|reads|say|says|show|shows|are|are at|are reading|reading|at|sitting at|running) <amount:head> (and|<pause>) <amount:suction>',
    bothShown,
    { unheard: true, examples: ['gages read twenty two and one eighty'] },
  ),
  rule('[(and|it is|i have|i got|i have got|with)] <amount> on (the|my) (gage|gages)', onGauge, {
    unheard: true,
    examples: [],
  }),
  rule(
    '[(now|and|so|and now)] [(she|it|they|everything|the (unit|system)|i|we)] [(is|has|are|have|am|all)] [now] (leveled (off|out)|settled [(out|in|down)]|sat|sitting|holding|held|steadied [(out|up)]|stabilized|balanced [out]|steady|(come|came|gone|went) (down|up|back)|dropped|climbed) [(at|to|around|out at)] <amount:head> over <amount:suction>',
    headOverSuction,
    {
      unheard: true,
      only: startsClause,
      examples: ['now she is leveled off at one sixty eight over eleven'],
    },
  ),
];
