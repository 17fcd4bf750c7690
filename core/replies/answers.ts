import type { Members } from '../advice/by-kind.ts';
import type {
  BeforeAfterRow,
  Deviation,
  Direction,
  Input,
  Known,
  ReadRow,
} from '../advice/verdict.ts';
import { EQUIPMENT, METERING_DEVICES, PLACES } from '../terms/names.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { UnitId } from '../units/units.ts';
import { figure } from './amounts.ts';
import { causesSaid, nextSaid } from './causes.ts';
import { nextPlaceSaid, switchSaid } from './circuit-sentences.ts';
import { designation } from './designation.ts';
import { leftOpenSaid, refrigerantMovedSaid } from './left-open-sentences.ts';
import { placedName, SHORT_NAMES } from './names.ts';
import { capitalised, join, line, plain, sentences, type Said } from './said.ts';

type Answer = Known['answer'];
type Answers = Members<Known, 'answer'>;
type Worded = { readonly [A in Answer]: (known: Answers[A]) => Said };

const amount = (value: number, unit: UnitId): Said => figure({ value, unit });

/** The answer first, then what it means. */
const WORDED: Worded = {
  target: (known) => sentences([targetSaid(known), ...youAre(known.reading)]),
  value: ({ about, place, value, unit }) =>
    line`${placedName(about, place)} is ${amount(value, unit)}.`,
  compare: (known) => sentences([comparedSaid(known), ...alongsideSaid(known), ...bandSaid(known)]),
  saturation: ({ refrigerant, given, value, unit, bubble }) =>
    bubble === undefined
      ? line`${designation(refrigerant)} at ${figure(given)}: ${amount(value, unit)}.`
      : line`${designation(refrigerant)} at ${figure(given)}: dew ${amount(value, unit)}, bubble ${amount(bubble, unit)}.`,
  margin: ({ about, measured, limit, value, unit, side }) =>
    line`${PRESSURE_OF[about]} is ${amount(measured, unit)}, ${SHORT_NAMES[about]} at ${amount(limit, unit)}: ${amount(value, unit)} ${side === 'inside' ? 'inside it' : 'past it'}.`,
  beforeAfter: ({ rows }) => sentences(rows.map(changeSaid)),
  before: ({ rows }) => line`Before: ${rowsSaid(rows)}.`,
  readback: ({ rows }) => line`Latest: ${rowsSaid(rows)}.`,
  causes: causesSaid,
  nextCheck: nextSaid,
  switch: (known) => switchSaid(known),
  nextPlace: (known) => nextPlaceSaid(known),
  leftOpen: (known) => leftOpenSaid(known),
  moved: (known) => refrigerantMovedSaid(known),
  note: () => plain('Here is the note so far.'),
  working: ({ of }) => workingSaid(of),
};

const PRESSURE_OF = { highCutoutPressure: 'head', lowCutoutPressure: 'suction' } as const;

export function answerSaid(known: Known): Said {
  return capitalised(worded(known));
}

function worded<A extends Answer>(known: Answers[A] & { readonly answer: A }): Said {
  const sentence: Worded[A] = WORDED[known.answer];
  return sentence(known);
}

function targetSaid({ about, value, unit, through, low, high }: Answers['target']): Said {
  const name = SHORT_NAMES[about];
  if (through) {
    return line`${SHORT_NAMES[through.about]} should be ${figure(through)}, so ${name} about ${amount(value, unit)}.`;
  }
  if (low === undefined || high === undefined) {
    return line`${name} should be about ${amount(value, unit)}.`;
  }
  return line`${name} should be about ${amount(value, unit)}, from ${amount(low, unit)} to ${amount(high, unit)}.`;
}

function youAre(reading: Deviation | undefined): readonly Said[] {
  if (!reading) return [];
  const { value, unit, direction } = reading;
  return [
    direction === 'on'
      ? plain('You are on it.')
      : line`You are ${amount(value, unit)} ${direction}.`,
  ];
}

function comparedSaid(known: Answers['compare']): Said {
  const { about, measured, target, measuredUnit, value, unit, direction } = known;
  const is = line`${SHORT_NAMES[about]} is ${amount(measured, measuredUnit)}, should be ${amount(target, measuredUnit)}`;
  return line`${is}: ${offBy(value, unit, direction)}.`;
}

function offBy(value: number, unit: UnitId, direction: Direction): Said {
  return direction === 'on' ? plain('on target') : line`${amount(value, unit)} ${direction}`;
}

function alongsideSaid({ alongside }: Answers['compare']): readonly Said[] {
  if (!alongside || alongside.direction === 'on') return [];
  const { about, value, unit, direction } = alongside;
  return [line`That is ${SHORT_NAMES[about]} ${offBy(value, unit, direction)}.`];
}

/** Off the middle of a band is not off: said, so that nobody chases a degree. */
function bandSaid(known: Answers['compare']): readonly Said[] {
  return isInBand(known) && known.direction !== 'on'
    ? [plain('That is within the usual range.')]
    : [];
}

export function isInBand({ measured, low, high }: Answers['compare']): boolean {
  return low !== undefined && high !== undefined && measured >= low && measured <= high;
}

function changeSaid(row: BeforeAfterRow): Said {
  const { about, place, before, after, unit } = row;
  const name = placedName(about, place);
  if (before === null && after === null) return plain('');
  if (before === null) return line`${name} ${amount(after ?? 0, unit)} after, still blank before.`;
  if (after === null) return line`${name} ${amount(before, unit)} before, still blank after.`;
  return line`${name} ${amount(before, unit)} before, ${amount(after, unit)} after${movedSaid(row)}.`;
}

function movedSaid({ change, changeUnit }: BeforeAfterRow): Said {
  if (change === null) return plain('');
  const moved = amount(Math.abs(change), changeUnit);
  if (change === 0) return plain(': the same');
  return line`: ${change > 0 ? 'up' : 'down'} ${moved}`;
}

function rowsSaid(rows: readonly ReadRow[]): Said {
  const each = rows.map(
    ({ about, place, value, unit }) => line`${placedName(about, place)} ${amount(value, unit)}`,
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
};
const INPUT_LABELS: Record<Input['name'], string> = { ...SHORT_NAMES, ...INPUT_NAMES };

const FROM: Record<Input['from'], string> = {
  read: 'as read',
  set: 'as told',
  assumed: 'from my table',
  computed: 'worked out',
};

const PRINTED_TERMS: Readonly<Record<string, string>> = { ...EQUIPMENT, ...METERING_DEVICES };

/** A source is an address or a title: it is for the eye, and the voice says where it is. */
function workingSaid(of: Known): Said {
  if (of.inputs.length === 0) return plain('That was read, as you said it.');
  const inputs = join(of.inputs.map(inputSaid), '; ');
  const source =
    of.source === null
      ? plain('')
      : { text: `Source: ${of.source}.`, spoken: 'The source is on the screen.' };
  return sentences([line`From ${inputs}.`, source]);
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
