import { drawn, electrical, one } from './electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';

/** What a meter's figure does: the same verbs as a gauge's, which the other rules know for gauges alone. */
const VERB =
  '(reads|read|says|shows|showed|(came|comes|is coming|are coming|went|goes|dropped|drops|fell|climbed|jumped|shot) [(up|down|in|back|back up|back down)] (to|at)|(settled|settles) [(out|in|down)] at|[is] [holding] steady at|[is] (holding|sitting|riding) at|(is|are) (up|down) to|[(is|are)] (running|reading|showing)|(is|are) now|now|looks like|(measured|measures|checks out|checked out|tested|tests|came out) [(out|in)] [at]|equals|of|(i|we) (have|got|have got|read)|(i am|we are) (reading|getting|seeing|showing)|reading (is|of))';

/** "Condenser fan amps settled at one point one" */
const ofPlace: Means = (tags, frame) => one(drawn(tags, placeId(tags['place']), frame));

/** "Control voltage dropped down to twenty one" */
const ofQuantity: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const place = placeId(tags['place']);
  if (quantity === null || !isElectrical(quantity)) return null;
  return amountIn(tags).unit === null
    ? one(readingOf(quantity, amountIn(tags), { place, frame }))
    : one(electrical(tags, place, frame));
};

/** "Load side one is at one ninety": of the first pole of several. */
const ofPole =
  (side: 'line' | 'load'): Means =>
  (tags, frame) => {
    const { unit } = amountIn(tags);
    return unit === null || unit === 'V'
      ? one(electrical({ ...tags, unit: 'V' }, `${side}Side`, frame))
      : null;
  };

const watts: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === null || unit === 'W' || unit === 'kW'
    ? one(readingOf('power', { ...amountIn(tags), unit: unit ?? 'W' }, { place: null, frame }))
    : null;
};

/** "Line one eighteen, load one seventeen": what comes to it, and what goes on from it. */
const lineAndLoad: Means = (tags, frame) => {
  const [line, load] = [amountIn(tagsIn(tags['line']) ?? {}), amountIn(tags)];
  if ([line, load].some(({ unit }) => unit !== null && unit !== 'V')) return null;
  if (line.unit === null && (line.value ?? 0) < LEAST_MAINS) return null;
  const readings = [
    readingOf('voltage', { ...line, unit: 'V' }, { place: 'lineSide', frame }),
    readingOf('voltage', { ...load, unit: 'V' }, { place: 'loadSide', frame }),
  ].filter((each) => each !== null);
  return readings.length === 2 ? { readings } : null;
};
/** Ours: control circuits have 24 volts, and mains more than this. */
const LEAST_MAINS = 20;

const HAVE =
  '[(i have|i got|i have got|i am reading|i am getting|i am seeing|i see|we have|we have got|we got|seeing|reading|got|getting)]';

/** What a meter reads, by verbs, and told before what it is of. */
export const METER_VERB_RULES: readonly Rule[] = [
  ...(['line', 'load'] as const).map((side) =>
    rule(
      `[(the|on)] ${side} side (one|two|three) (is|is at|reads|has|shows|got|i got|i have|is reading) <amount>`,
      ofPole(side),
      { unheard: true, examples: [`${side} side one is at one ninety`] },
    ),
  ),
  rule(
    '[(the|my)] (watt meter|wattmeter|power meter) (says|reads|shows|is at|is showing|is reading) <amount>',
    watts,
    {
      unheard: true,
      examples: ['watt meter says six forty'],
    },
  ),
  rule(
    '[the] line [side] [(is|at|reads|has|shows)] <amount:line> [<pause>] [(and|but)] [the] load [side] [(is|at|reads|has|shows)] <amount>',
    lineAndLoad,
    {
      unheard: true,
      examples: ['line one eighteen point six volts load one seventeen point nine'],
    },
  ),
  rule(
    `[(for|on)] <the> <place> (amps|amp draw|amperage|current|current draw|amps draw) ${VERB} <amount>`,
    ofPlace,
    { unheard: true, examples: ['condenser fan amps settled at one point one'] },
  ),
  rule(
    `[(for|on)] [the] <quantity> [(at|across|on|to) <the> <place>] ${VERB} <amount>`,
    ofQuantity,
    {
      unheard: true,
      examples: ['control voltage dropped down to twenty one'],
    },
  ),
  rule(
    `${HAVE} <amount> [(for|on|is|was)] [the] <quantity> [(at|across|on|to) <the> <place>]`,
    ofQuantity,
    {
      apart: true,
      unheard: true,
      examples: ['got twenty four on the control voltage', 'two thirty line voltage'],
    },
  ),
  rule(
    `${HAVE} <amount> [(for|on|is|was)] <the> <place> (amps|amp draw|amperage|current)`,
    ofPlace,
    { apart: true, unheard: true, examples: ['nine point one compressor amps'] },
  ),
];
