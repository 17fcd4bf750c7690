import type { Tags } from '../../grammar/nodes.ts';
import { HEATERS, type PartId, type PlaceId } from '../../terms/names.ts';
import { electrical, GOT, one } from './electrical.ts';
import { fanPlace } from '../words/fans.ts';
import { finding, onlyOf } from '../findings/finding-of.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { numberIn, partId, placeId, tagsIn } from '../slots.ts';

/** The meter shows no way from the windings to the frame. */
const clearOfGround: Means = (_tags, frame) => clearAt(null, frame);
const clearAt = (place: PlaceId | null, frame: Frame): Meaning | null =>
  one(readingOf('insulationResistance', amountIn({ overlimit: true }), { place, frame }));

/** What is no winding of the compressor and is held to ground like one. */
const HELD_TO_GROUND: readonly (PlaceId | null)[] = [...HEATERS, 'condenserFan', 'evaporatorFan'];

/** "Third heater's open, nothing to ground on the two good ones": a heater that is clear clears no compressor. */
const nothingToGround: Means = (tags, frame) => {
  const at = (place: PlaceId | null): Meaning | null =>
    clearAt(HELD_TO_GROUND.includes(place) ? place : null, frame);
  const named = placeId(tags['place']);
  if (named !== null) return at(named);
  const means = (part: PartId): Meaning | null => at(FAN_MOTORS[part] ?? placeId(part));
  const isOfIt = !WINDINGS.includes(frame.context.lastPlace);
  return { ofIt: { means, inSentence: !isOfIt, otherwise: at(null) ?? {} } };
};

const WINDINGS: readonly (PlaceId | null)[] = [
  ...(['commonStart', 'commonRun', 'runStart'] as const),
  ...(['commonGround', 'startGround', 'runGround'] as const),
];

/** "No ground" may as well be a wire that is missing: only behind ohms it is what the meter showed. */
const noGround: Means = (tags, frame) => {
  const { lastPlace, lastQuantity } = frame.context;
  const isOhmed =
    lastQuantity === 'resistance' || lastQuantity === 'insulationResistance'
      ? WINDINGS.includes(lastPlace)
      : false;
  return isOhmed ? clearOfGround(tags, frame) : null;
};

/** Of a fan that nothing settles, one that draws nothing stands still: which one is asked. */
export const fanAmps: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const place = fanPlace(frame.context);
  const read = readingOf('current', amount, { place, frame });
  if (read === null) return null;
  const stands = place === null && amount.value === 0;
  return {
    readings: [read],
    ...(stands ? { findings: [finding('fan', 'notRunning', frame)] } : {}),
  };
};

const noAmps: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  if (place === null) return fanAmps({ number: 0, unit: 'A' }, frame);
  return one(readingOf('current', amountIn({ number: 0, unit: 'A' }), { place, frame }));
};

/** Switches that are open where voltage comes in and none goes out. */
const SWITCHES: readonly (PartId | null)[] = [
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'overload',
  'doorSwitch',
];

const inAndOut =
  (out?: Tags): Means =>
  (tags, frame) => {
    const line = electrical(tagsIn(tags['in']) ?? {}, 'lineSide', frame);
    const load = electrical(out ?? tagsIn(tags['out']) ?? {}, 'loadSide', frame);
    const part = partId(placeId(tags['place']) ?? undefined);
    if (line?.quantity !== 'voltage' || load?.quantity !== 'voltage' || part === null) return null;
    const isOpen = SWITCHES.includes(part) && load.value === 0 && line.value !== 0;
    return {
      readings: [line, load],
      names: part,
      ...(isOpen ? { findings: [finding(part, 'open', frame)] } : {}),
    };
  };

const failedAt: Means = (tags, frame: Frame) => {
  const part = partId(tags['part']);
  return part === 'defrostTimer' || part === 'controller'
    ? { findings: [finding(part, 'failed', frame)] }
    : null;
};

/** "Ohmed the sensor, it's thirty two k": thousands of ohms, of what can have them. */
const kilohms: Means = (tags, frame) => {
  const number = numberIn(tags['number']);
  if (number === null) return null;
  const read = (): Meaning | null =>
    one(readingOf('resistance', amountIn({ number, unit: 'kohm' }), { place: null, frame }));
  if (/ohm/i.test(frame.wordsOf(frame.span))) return read();
  const means = (part: PartId): Meaning | null => (part === 'sensor' ? read() : null);
  return { ofIt: { means, inSentence: false, otherwise: { unclaimed: [String(number)] } } };
};

/** "Amps on it point four": at what was spoken of. */
const onIt: Means = (tags, frame) => {
  const amount = amountIn(tags);
  const at = (place: PlaceId | null): Meaning | null =>
    one(readingOf('current', amount, { place, frame }));
  const means = (part: PartId): Meaning | null => at(FAN_MOTORS[part] ?? placeId(part));
  return { ofIt: { means, inSentence: false, otherwise: at(null) ?? {} } };
};
const FAN_MOTORS: Partial<Record<PartId, PlaceId>> = {
  condenserFanMotor: 'condenserFan',
  evaporatorFanMotor: 'evaporatorFan',
};

const DRAWS = '(amps|amp draw|amperage|current|draw|amps draw)';
const IN = '((coming|going) in|in)';
const NOTHING = '(nothing|zero voltage|no (voltage|power|volts))';
const AT = '(at|on|into|to|in to|going into|going to|across)';
/** The side of a defrost clock that cools. */
const COOLING = '(refrigeration|refrigerating|cooling|cool|freeze|run|refrigerate)';

/** What a meter shows, told in fewer words than by its place and unit. */
export const METERED_RULES: readonly Rule[] = [
  rule(
    '(it is|it reads|it reads out|that is|i got|i have|reads|reading|is|<pause>) [at] <number> (k|kilo) [(ohm|ohms)]',
    kilohms,
    { examples: ['it reads thirty two k ohms'] },
  ),
  rule('[the] (amps|amp draw|amperage|current) (on|of|at) it <link> <amount>', onIt, {
    examples: ['amps on it point four'],
  }),
  rule(
    '<the> [(start|run|common)] (winding|windings|motor windings) (is|are) [dead] (grounded|shorted to ground|going to ground|to ground)',
    onlyOf('compressor', 'grounded'),
    { examples: ['run winding is grounded'] },
  ),
  rule(
    `[(i have|i got|got|it has|there is|reads|reading|shows|showing|getting)] (nothing|no (continuity|reading|resistance|path|short|shorts)|not a thing) to ground [(on|at|~~from|~~in) ((any|all|either|each|none) [(three|two)] [of (them|the (windings|pins|terminals))]|~~[(the|those)] [(other|two|three|other two)] [good] (one|ones|two)|~~(it|that|them|those)|~~[(either|both|any|all|any of)] <the> <place>)]`,
    nothingToGround,
    { examples: ['nothing to ground', 'no continuity to ground'] },
  ),
  rule(
    '[(it is|the (windings|motor|compressor) (is|are)|windings|motor|they are|all [three]|all three are)] (clear|clean|good|not (going|shorted|grounded)) (to|of|from) ground|[the] ground is (clear|clean|open)|all [(three|of them)] [(are|is)] open to ground',
    clearOfGround,
    { examples: ['clear to ground', 'not going to ground'] },
  ),
  rule('(no ground|no grounds|not grounded)', noGround, { apart: true }),
  rule('<pause> [and] (no ground|no grounds|not grounded)', noGround),
  rule(
    '[(it is|i have|i have got|i got|reads|reading|shows|there is|got|has)] [a] [dead] short [all the way] to ground',
    onlyOf('compressor', 'grounded'),
    { examples: ['dead short to ground'] },
  ),
  rule(
    '[(i have|i got|i am getting|getting|there is|it has)] [got] (no|zero) (amps|amp draw|current) (on|at|to) <the> (<place>|fan|fans|fan motor|fan motors)',
    noAmps,
    { examples: ['no amps on the condenser fan'] },
  ),
  rule(`<the> (fan|fans|fan motor|fan motors) ${DRAWS} <link> <amount>`, fanAmps, {
    examples: ['fan motor amps zero'],
  }),
  rule(
    `${GOT} <amount:in> [${IN}] ${AT} <the> <place> [${IN}] [(and|but)] <amount:out> [(coming|going)] (out|out of it|back out|leaving)`,
    inAndOut(),
    {
      examples: [
        'one eighteen at the thermostat in zero out',
        'one twenty into the timer and zero out',
      ],
    },
  ),
  rule(
    `${GOT} <amount:in> [${IN}] ${AT} <the> <place> [${IN}] [(and|but)] ${NOTHING} [(coming|going)] (out|out of it|back out|leaving)`,
    inAndOut({ number: 0 }),
    { examples: ['one twenty into the low pressure switch and nothing out'] },
  ),
  rule(
    `<the> <part> [is] (stuck|hung [up]|stopped|locked) (in|on) [the] ${COOLING} [(mode|side|cycle|position)]`,
    failedAt,
    { examples: ['defrost timer stuck in refrigeration'] },
  ),
  rule(
    '<the> <part> (will not|does not|did not|is not|never) (advance|advancing|move on|moving on|go into defrost|going into defrost|turn over|advances|goes into defrost)',
    failedAt,
    { examples: ['defrost timer will not advance'] },
  ),
];
