import type { Members } from '../advice/by-kind.ts';
import type { OverallRow } from '../advice/led-verdict.ts';
import type {
  BeforeAfterRow,
  Deviation,
  Input,
  Known,
  ReadRow,
  TargetBasis,
} from '../advice/verdict.ts';
import { EQUIPMENT, METERING_DEVICES, PLACES } from '../terms/names.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import { formatAmount, readsNothing } from '../units/format-amount.ts';
import type { UnitId } from '../units/units.ts';
import { figure } from './amounts.ts';
import { causesSaid, nextSaid } from './causes.ts';
import { nextPlaceSaid, switchSaid } from './circuit-sentences.ts';
import { designation } from './designation.ts';
import { GUIDE_SENTENCES } from './guide-sentences.ts';
import { lastDoneSaid, lastVisitSaid, seenBeforeSaid } from './history-sentences.ts';
import { leftOpenSaid, refrigerantMovedSaid } from './left-open-sentences.ts';
import { judgedSaid } from './judged-sentences.ts';
import { hottestDaySaid, limitSaid } from './limit-sentences.ts';
import { placedName, SHORT_NAMES } from './names.ts';
import { PART_SENTENCES } from './part-sentences.ts';
import { stepSaid, stepsDoneSaid } from './procedure-sentences.ts';
import { capitalised, join, line, plain, sentences, type Said } from './said.ts';
import { SECOND_CHANGE, settledSaid, tooSoonSaid, trendSaid } from './settling-sentences.ts';
import { etaSaid, pressureTestSaid, vacuumHoldSaid } from './timed-sentences.ts';
import { timeHereSaid } from './time-here-sentence.ts';
import { timeLeftSaid, timeUpSaid } from './timer-sentences.ts';
import { toComeSaid } from './to-come-sentence.ts';

type Answer = Known['answer'];
type Answers = Members<Known, 'answer'>;
type Worded = { readonly [A in Answer]: (known: Answers[A]) => Said };

const amount = (value: number, unit: UnitId): Said => figure({ value, unit });

/** Without its unit, where the sentence has said it already. */
function bare(value: number, unit: UnitId): Said {
  const { digits } = formatAmount({ value, unit });
  return { text: digits, spoken: digits.replace(/^-/, 'minus ') };
}

/** The answer first, then what it means. */
const WORDED: Worded = {
  target: (known) => sentences([targetSaid(known), ...youAre(known.reading)]),
  value: ({ about, place, of, value, unit }) =>
    line`${of ?? placedName(about, place)} is ${amount(value, unit)}.`,
  compare: (known) =>
    sentences([comparedSaid(known), ...alongsideSaid(known), ...ruleSaid(known.basis)]),
  saturation: ({ refrigerant, given, value, unit, bubble }) =>
    bubble === undefined
      ? line`${designation(refrigerant)} at ${figure(given)}: ${amount(value, unit)}.`
      : line`${designation(refrigerant)} at ${figure(given)}: dew ${amount(value, unit)}, bubble ${amount(bubble, unit)}.`,
  margin: ({ about, measured, limit, value, unit, side, hottest }) =>
    sentences([
      line`${PRESSURE_OF[about]} is ${amount(measured, unit)}, ${SHORT_NAMES[about]} at ${amount(limit, unit)}: ${amount(value, unit)} ${SIDE[side]}.`,
      ...(hottest ? [hottestSaid(hottest, unit)] : []),
    ]),
  judged: (known) => judgedSaid(known),
  limit: (known) => limitSaid(known),
  hottestDay: hottestDaySaid,
  beforeAfter: ({ rows }) => changesSaid(rows),
  before: ({ rows }) => line`Before: ${rowsSaid(rows)}.`,
  readback: ({ rows }) => line`Latest: ${rowsSaid(rows)}.`,
  causes: causesSaid,
  nextCheck: (next) => nextSaid(next),
  switch: (known) => switchSaid(known),
  nextPlace: (known) => nextPlaceSaid(known),
  leftOpen: (known) => leftOpenSaid(known),
  moved: (known) => refrigerantMovedSaid(known),
  step: (known) => stepSaid(known),
  stepsDone: ({ procedure }) => stepsDoneSaid(procedure),
  note: ({ for: reader }) =>
    plain(reader === undefined ? 'Here is the note so far.' : 'For the customer.'),
  guide: ({ guide }) => plain(GUIDE_SENTENCES[guide]),
  explained: ({ part, of }) => plain(PART_SENTENCES[part][of]),
  overall: ({ rows }) => sentences(rows.map(overallSaid)),
  toCome: (known) => toComeSaid(known),
  timeHere: (known) => timeHereSaid(known),
  working: ({ of, ages = [] }) => workingSaid(of, ages),
  trend: (known) => trendSaid(known),
  settled: (known) => settledSaid(known),
  tooSoon: (known) => tooSoonSaid(known),
  secondChange: () => plain(SECOND_CHANGE),
  lastVisit: (known) => lastVisitSaid(known),
  lastDone: (known) => lastDoneSaid(known),
  seenBefore: (known) => seenBeforeSaid(known),
  eta: (known) => etaSaid(known),
  timeLeft: (known) => timeLeftSaid(known),
  timeUp: (known) => timeUpSaid(known),
  vacuumHold: (known) => vacuumHoldSaid(known),
  pressureTest: (known) => pressureTestSaid(known),
};

function overallSaid({ about, measured, target, unit, isRight }: OverallRow): Said {
  const name = capitalised(plain(SHORT_NAMES[about]));
  if (measured === null) return line`${name} should be about ${amount(target, unit)}.`;
  const read = amount(measured, unit);
  return isRight
    ? line`${name} ${read}: as it should be.`
    : line`${name} ${read}, should be about ${bare(target, unit)}.`;
}

const SIDE = { inside: 'inside it', past: 'past it' } as const;
const PRESSURE_OF = { highCutoutPressure: 'head', lowCutoutPressure: 'suction' } as const;

type Hottest = NonNullable<Answers['margin']['hottest']>;

const hottestSaid = ({ head, room, side }: Hottest, unit: UnitId): Said =>
  line`On the hottest day head about ${amount(head, unit)}: ${amount(room, unit)} ${SIDE[side]}.`;

/** What is said with an answer word for word, in a sentence of its own, however the rest is phrased. */
export function saidWithIt(known: Known): Said | null {
  if (known.answer === 'margin') {
    return known.hottest ? hottestSaid(known.hottest, known.unit) : null;
  }
  if (known.answer !== 'target' && known.answer !== 'compare') return null;
  const said = [...ruleSaid(known.basis), ...supposedSaid(known)];
  return said.length === 0 ? null : sentences(said);
}

export function answerSaid(known: Known): Said {
  return capitalised(worded(known));
}

function worded<A extends Answer>(known: Answers[A] & { readonly answer: A }): Said {
  const sentence: Worded[A] = WORDED[known.answer];
  return sentence(known);
}

function targetSaid(known: Answers['target']): Said {
  return sentences([targetFigure(known), ...ruleSaid(known.basis), ...supposedSaid(known)]);
}

function supposedSaid(known: Answers['target'] | Answers['compare']): readonly Said[] {
  if (known.answer !== 'target' || known.supposed === undefined) return [];
  const { value, unit } = known.supposed;
  return [line`That is with the air at ${amount(value, unit)}.`];
}

function targetFigure(known: Answers['target']): Said {
  const { about, basis, value, unit, through, low, high } = known;
  const name = SHORT_NAMES[about];
  const band = low === undefined || high === undefined ? null : { low, high };
  if (band && isBandOnly(basis)) {
    return line`${name} should be from ${amount(band.low, unit)} to ${amount(band.high, unit)}.`;
  }
  if (through) {
    return line`${name} should be about ${amount(value, unit)}, ${SHORT_NAMES[through.about]} at ${figure(through)}.`;
  }
  if (band === null) return line`${name} should be about ${amount(value, unit)}.`;
  return line`${name} should be about ${amount(value, unit)}, from ${amount(band.low, unit)} to ${amount(band.high, unit)}.`;
}

/** Which rule holds, where it is not the everyday one; the everyday ones have their cautions. */
const RULES: Record<TargetBasis, string | null> = {
  ambientPlusSplit: null,
  boxLessTemperatureDifference: null,
  setpointLessTemperatureDifference: null,
  setpoint: null,
  table: null,
  leavingWaterPlusApproach: 'By leaving water plus its approach: the air has no say.',
  outdoorPlusSplit: 'By outdoor air: read the air at the coil for a closer figure.',
  headControl: 'The head control holds it there, not the air.',
  fanCycling: 'The fan cycles, so anything between is right.',
  pullDown: 'The box is far above its set point, so only the ends hold.',
  hottestDayHead: 'Above the hottest day, below the plate.',
  usualFanPair: null,
  coilClearOfFrost: 'There the coil has cleared itself of frost.',
};

const ruleSaid = (basis: TargetBasis): readonly Said[] => {
  const rule = RULES[basis];
  return rule === null ? [] : [plain(rule)];
};

function youAre(reading: Deviation | undefined): readonly Said[] {
  if (!reading) return [];
  const { value, unit, direction } = reading;
  return [
    direction === 'on'
      ? plain('You are on it.')
      : line`You are ${amount(value, unit)} ${direction}.`,
  ];
}

/** How far off first: that is what was asked. Off the middle of a band is not off, so that nobody chases a degree. */
function comparedSaid(known: Answers['compare']): Said {
  const { about, measured, target, measuredUnit, value, unit, direction } = known;
  const name = SHORT_NAMES[about];
  const band = bandOf(known);
  const should = band
    ? line`from ${bare(band.low, measuredUnit)} to ${bare(band.high, measuredUnit)}`
    : bare(target, measuredUnit);
  const read = amount(measured, measuredUnit);
  if (direction === 'on') return line`${name} is on target: ${read}, should be ${should}.`;
  return isInBand(known)
    ? line`${name} is ${read}, within the usual range: it should be ${band ? '' : 'about '}${should}.`
    : line`${name} is ${amount(value, unit)} ${direction}: ${bare(measured, measuredUnit)}, should be ${should}.`;
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Where anything between the ends is right, a middle would be chased. */
function bandOf({
  basis,
  low,
  high,
}: Pick<Answers['compare'], 'basis' | 'low' | 'high'>): Ends | null {
  const hasEnds = low !== undefined && high !== undefined;
  return hasEnds && isBandOnly(basis) ? { low, high } : null;
}

const BAND_ONLY: Partial<Record<TargetBasis, true>> = {
  fanCycling: true,
  pullDown: true,
  hottestDayHead: true,
  usualFanPair: true,
};

export const isBandOnly = (basis: TargetBasis): boolean => BAND_ONLY[basis] === true;

function alongsideSaid(known: Answers['compare']): readonly Said[] {
  const { alongside } = known;
  if (!alongside || alongside.direction === 'on' || isInBand(known)) return [];
  const { about, value, unit, direction } = alongside;
  return [line`${SHORT_NAMES[about]} is ${amount(value, unit)} ${direction}.`];
}

export function isInBand({ measured, low, high }: Answers['compare']): boolean {
  return low !== undefined && high !== undefined && measured >= low && measured <= high;
}

/** In the order that a technician waits for them: the box is what was complained of. */
const FIRST: readonly AnswerableId[] = [
  'boxTemp',
  'headPressure',
  'suctionPressure',
  'superheat',
  'subcooling',
  'split',
];

const placeInLine = ({ about }: BeforeAfterRow): number =>
  FIRST.includes(about) ? FIRST.indexOf(about) : FIRST.length;

function changesSaid(rows: readonly BeforeAfterRow[]): Said {
  const blank = (column: 'before' | 'after'): readonly Said[] => {
    const names = blankNames(rows, column);
    return names === '' ? [] : [plain(`Still blank ${column}: ${names}.`)];
  };
  return sentences([...inOrder(rows).flatMap(changeSaid), ...blank('before'), ...blank('after')]);
}

const inOrder = (rows: readonly BeforeAfterRow[]): readonly BeforeAfterRow[] =>
  rows.toSorted((one, other) => placeInLine(one) - placeInLine(other));

/** A sentence for each that has both columns, the first without its capital and the last without its stop. */
export function movedSaid(rows: readonly BeforeAfterRow[]): Said {
  const { text, spoken } = join(inOrder(rows).flatMap(changeSaid), ' ');
  return { text: text.replace(/\.$/, ''), spoken: spoken.replace(/\.$/, '') };
}

export function blankNames(rows: readonly BeforeAfterRow[], column: 'before' | 'after'): string {
  const blank = inOrder(rows).filter((row) => row[column] === null);
  return blank.map(nameOf).join(', ');
}

const nameOf = ({ about, place }: BeforeAfterRow): string => placedName(about, place);

function changeSaid(row: BeforeAfterRow): readonly Said[] {
  const { before, after, unit, change, changeUnit } = row;
  if (before === null || after === null || change === null) return [];
  const columns = line`${bare(before, unit)} before, ${bare(after, unit)} after`;
  if (readsNothing({ value: change, unit: changeUnit }))
    return [line`${nameOf(row)} the same: ${columns}.`];
  const moved = amount(Math.abs(change), changeUnit);
  return [line`${nameOf(row)} ${change > 0 ? 'up' : 'down'} ${moved}: ${columns}.`];
}

export function rowsSaid(rows: readonly ReadRow[]): Said {
  const each = rows.map(
    ({ about, place, of, value, unit }) =>
      line`${of ?? placedName(about, place)} ${amount(value, unit)}`,
  );
  return join(each, ', ');
}

const INPUT_NAMES: Record<Exclude<Input['name'], keyof typeof SHORT_NAMES>, string> = {
  refrigerant: 'refrigerant',
  metering: 'metering device',
  equipment: 'unit',
  designSplit: 'design split',
  altitude: 'altitude',
  barometer: 'barometer',
  frequency: 'mains frequency',
  gasTemp: 'nitrogen temperature',
  headControl: 'head control',
  condenser: 'condenser',
  waterApproach: 'approach to leaving water',
  cutOutMargin: 'margin',
  nameplateCharge: 'nameplate charge',
  nameplateVoltage: 'nameplate voltage',
  nameplateAmps: 'rated load amps',
  nameplateHighSide: 'high-side rating',
  nameplateLowSide: 'low-side rating',
};
const INPUT_LABELS: Record<Input['name'], string> = { ...SHORT_NAMES, ...INPUT_NAMES };

const FROM: Record<Input['from'], string> = {
  read: 'as read',
  set: 'as told',
  assumed: 'from my table',
  computed: 'worked out',
};

const PRINTED_TERMS: Readonly<Record<string, string>> = { ...EQUIPMENT, ...METERING_DEVICES };

/** Inputs aloud; when each was read, the equation and the source are for the eye, and the voice says where they are. */
function workingSaid(of: Known, ages: readonly (number | null)[]): Said {
  if (of.inputs.length === 0 && of.source === null) return plain('That was read, as you said it.');
  const inputs = join(
    of.inputs.map((input, index) => join([inputSaid(input), ageShown(ages[index] ?? null)], '')),
    '; ',
  );
  const from = of.inputs.length === 0 ? plain('') : line`From ${inputs}.`;
  return sentences([from, onScreen(of)]);
}

function ageShown(minutes: number | null): Said {
  if (minutes === null || minutes === 0) return plain('');
  return { text: ` ${minutes} min ago`, spoken: '' };
}

function onScreen({ equation, source }: Known): Said {
  const lines = [
    ...(equation === undefined ? [] : [`By ${equation}.`]),
    ...(source === null ? [] : [`Source: ${source}.`]),
  ];
  if (lines.length === 0) return plain('');
  const what = equation === undefined ? 'The source is' : 'The formula and the source are';
  return { text: lines.join(' '), spoken: `${what} on the screen.` };
}

export function inputSaid({ name, value, unit, from, place }: Input): Said {
  const at = place === undefined ? '' : `${PLACES[place]} `;
  return line`${at}${INPUT_LABELS[name]} ${inputValue(value, unit)}, ${FROM[from]}`;
}

function inputValue(value: number | string, unit: UnitId | null): Said {
  if (typeof value === 'number') return unit === null ? plain(String(value)) : amount(value, unit);
  const refrigerant = REFRIGERANTS.find((id) => id === value);
  return refrigerant ? designation(refrigerant) : plain(PRINTED_TERMS[value] ?? value);
}
