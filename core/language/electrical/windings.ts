import type { Tags } from '../../grammar/nodes.ts';
import { electrical, OHMS_AT, one } from './electrical.ts';
import { pointed } from './meter-figures.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { placeId, tagsIn } from '../slots.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { Reading } from '../utterance.ts';
import { startsClause } from '../words/clause-start.ts';

/** An open winding, or one that no meter sees an end of. */
const openWinding: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (place === null || OHMS_AT[place] === undefined) return null;
  return one(electrical({ overlimit: true }, place, frame));
};

/** Between the windings and the frame: ohms by whatever unit, or past what the meter shows. */
const toGround: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (!amount.overlimit && amount.unit !== 'ohm' && amount.unit !== 'Mohm') return null;
  return one(readingOf('insulationResistance', amount, { place: null, frame }));
};

const megged: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  return one(readingOf('insulationResistance', amountIn(tags), { place, frame }));
};

/** "Run's good, two point two": from common, as both are metered. */
const goodAt =
  (place: 'commonRun' | 'commonStart'): Means =>
  (tags, frame) => {
    const amount = amountIn(tags);
    const isOhms = amount.unit === null || amount.unit === 'ohm';
    const isSmall = amount.value !== null && amount.value < LEAST_VOLTS;
    return isOhms && isSmall ? one(readingOf('resistance', amount, { place, frame })) : null;
  };
/** Ours: windings of these compressors have less, and what meters show in volts is more. */
const LEAST_VOLTS = 50;

/** Windings that are open, and what lies between them and the frame. */
/** "All three windings are one point two": of a motor on three phases. */
const alike: Means = (tags, frame) => {
  const readings = TERMINALS.flatMap((place) => electrical(tags, place, frame) ?? []);
  const areOhms = readings.every(({ quantity }) => quantity === 'resistance');
  return areOhms && readings.length === TERMINALS.length ? { readings } : null;
};
const TERMINALS = ['terminalOneTwo', 'terminalTwoThree', 'terminalOneThree'] as const;

/** "Four point two ohms one to two, five point one two to three": once ohms are said the figures name terminals. */
const betweenNumbers: Means = (tags, frame) => {
  const told = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].filter(
    (each) => each !== null,
  );
  const readings = told.flatMap((each, at) => {
    const place = TERMINALS[at];
    return place === undefined ? [] : (electrical(each, place, frame) ?? []);
  });
  const areOhms = readings.every(({ quantity }) => quantity === 'resistance');
  const saysOhms = told.some((each) => amountIn(each).unit === 'ohm');
  return areOhms && saysOhms && readings.length === told.length ? { readings } : null;
};

/** "One to two one point one, two to three one point two": ohms, where they can be a winding's; of one pair the point tells. */
const betweenPins: Means = (tags, frame) => {
  const told = [tags, tagsIn(tags['second']), tagsIn(tags['third'])].filter(
    (each) => each !== null,
  );
  const readings = told.flatMap((each) => ohmsOf(each, frame) ?? []);
  const places = new Set(readings.map(({ place }) => place));
  if (readings.length < told.length || places.size < told.length) return null;
  if (isOfControl(tags, frame)) return null;
  const isSure = told.length > 1 || SAYS_OHMS.test(frame.wordsOf(frame.span));
  return isSure || (standsAlone(frame) && readings.every(hasPoint)) ? { readings } : null;
};

/** Relays and clocks have terminals by figures, too. */
const isOfControl = (tags: Tags, frame: Frame): boolean => {
  const named = placeId(tagsIn(tags['of'])?.['place']);
  const isMotor = named === null || MOTORS.has(named);
  return (
    !isMotor || /\b(?:relay|timer|clock)\b/i.test(frame.wordsOf({ from: 0, to: frame.span.to }))
  );
};
const MOTORS: ReadonlySet<PlaceId> = new Set<PlaceId>([
  ...(['compressor', 'condenserFan', 'evaporatorFan'] as const),
]);

function ohmsOf(tags: Tags, frame: Frame): Reading | null {
  const amount = amountIn(tags);
  const isOhms =
    amount.unit === 'ohm' || (amount.unit === null && (amount.value ?? 0) < LEAST_VOLTS);
  const isOne = amount.overlimit || amount.value !== null;
  return isOhms && isOne ? electrical(tags, placeId(tags['place']), frame) : null;
}

const SAYS_OHMS = /\b(?:ohm\w*|windings?|terminals?|pins?|resistance)\b/i;
const hasPoint = ({ value }: Reading): boolean => value === undefined || !Number.isInteger(value);
const standsAlone = (frame: Frame): boolean => startsClause(frame) && frame.endsAtPause;

const ohmed: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const place = placeId(tags['place']);
  if (amount.unit !== null) return one(electrical(tags, place, frame));
  const isGround = place !== null && OHMS_AT[place] === 'insulationResistance';
  return isGround ? null : one(readingOf('resistance', amount, { place, frame }));
};

const OF_WINDINGS =
  '[<the> (<place:of>|motor|windings|resistance|terminals|pins)] [(ohms|ohm|ohmed|ohming|windings|terminals|pins|resistance)] [out] [(is|are|at|reads|read|from|across)] [<pause>]';

/** Ours: so far off in ohms at most, two windings still add up to what both read. */
const MOST_OFF = 0.3;
const SHOWN = (slot: string): string =>
  `[(is|reads|at|was|it is)] (<tenths:${slot}>|<dropped:${slot}>)`;

/** "Run's one point one, start's three eight and across the two it's four nine": the sum tells where the points are. */
const addedUp: Means = (tags, frame) => {
  const pairs = { run: 'commonRun', start: 'commonStart', both: 'runStart' } as const;
  const readings = Object.entries(pairs).flatMap(([slot, place]) => {
    const shown = { ...pointed(tagsIn(tags[slot]) ?? {}), unit: 'ohm' };
    return electrical(shown, place, frame) ?? [];
  });
  const [run, start, both] = readings.map(({ value }) => value);
  if (run === undefined || start === undefined || both === undefined) return null;
  return Math.abs(run + start - both) <= MOST_OFF ? { readings } : null;
};

export const WINDING_RULES: readonly Rule[] = [
  rule(
    `[the] run [winding] ${SHOWN('run')} [<pause>] [and] [the] start [winding] ${SHOWN('start')} [<pause>] [and] (across (the two|both|them)|run to start|start to run|end to end|both together) ${SHOWN('both')}`,
    addedUp,
    {
      unheard: true,
      examples: ['run is one point one start is three eight and across the two it is four nine'],
    },
  ),
  rule(
    `${OF_WINDINGS} <pinsShown> [[<pause>] [and] <pinsShown:second> [[<pause>] [and] <pinsShown:third>]]`,
    betweenPins,
    { unheard: true, examples: ['compressor ohms two to three one point one'] },
  ),
  rule(
    '[(i have|i got|i read|reading|i am (reading|getting)|showing)] <amount> [(on|from|across)] one to two [and] <amount:second> [(on|from|across)] two to three [[and] <amount:third> [(on|from|across)] one to three]',
    betweenNumbers,
    { examples: ['four point two ohms one to two five point one two to three'] },
  ),
  rule('<the> <place> [is] (ohms|ohmed|ohming|ohm) [out] [(at|to)] <amount>', ohmed, {
    examples: ['defrost heater is ohming out at twenty two'],
  }),
  rule(
    '[(the|all)] (three|all three) windings (are|read|all read|check|ohm) [(the same|all|out at|at|all at)] <amount> [(each|apiece)]',
    alike,
    { examples: ['all three windings are one point two ohms'] },
  ),
  rule(
    '<the> <place> [(is|reads|reading|shows|tests|is reading|showing|measures)] [all the way] (open|wide open|infinite)',
    openWinding,
    {
      examples: ['common to start reads open'],
    },
  ),
  ...(['commonRun', 'commonStart'] as const).map((place) =>
    rule(
      `[the] ${place === 'commonRun' ? 'run' : 'start'} [winding] (is|looks|reads|checks) (good|fine|ok|all right) [<pause>] [(at|it is|i have|i got|with)] <amount>`,
      goodAt(place),
      { examples: [`${place === 'commonRun' ? 'run' : 'start'} is good two point two`] },
    ),
  ),
  rule(
    `[(i have|i have got|i got|i get|i am getting|i am reading|there is|got|getting|reading|showing|shows|it shows)] (nothing|no (continuity|reading|ohms|resistance|path|circuit)) [(at|on|from|between|across|in|through)] <the> <place>`,
    openWinding,
    { examples: ['nothing between common and start', 'no continuity common to run'] },
  ),
  rule(
    '[(i am|i have|i have got|i got|it is)] [(reading|getting|showing)] [an] open (at|on|from|between|across|in|<pause>) <the> <place>',
    openWinding,
    { examples: ['reading open on common to run'] },
  ),
  rule(
    '[(i am|i have|i have got|i got|it is)] (reading|getting|showing) open <place>',
    openWinding,
    {
      examples: ['reading open common to run'],
    },
  ),
  rule(
    '[(i am|it is|i have|i have got|i got)] [(reading|reads|getting|megs|megged|megs out at|megged at|showing)] <amount> to ground',
    toGround,
    {
      examples: ['ol to ground', 'fifty megohms to ground'],
    },
  ),
  rule(
    '[(i|we)] (megged|meggered) (it|them|<the> <place>|the (windings|motor)) [out] [(at|and got|and it is|to)] <amount> [to ground]',
    megged,
    { examples: ['i megged it at fifty'] },
  ),
  // What the instrument puts on them was read off nothing.
  rule(
    '[(i|we)] (megged|meggered|insulation tested) [(it|them|<the> <place>|the (windings|motor))] [out] (at|with|on) <number> (volts|v)',
    () => ({}),
    { examples: ['megged it at five hundred volts'] },
  ),
  rule(
    '<the> <place> (megged|megs|meggered|meg) [out] [(at|is|reads)] <amount> [to ground]',
    megged,
    {
      examples: ['compressor megged at one hundred'],
    },
  ),
];
