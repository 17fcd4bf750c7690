import type { Members } from '../advice/by-kind.ts';
import type { Fact, NameplateItem, Reading } from '../language/utterance.ts';
import {
  CONDENSERS,
  CONDENSING_UNITS,
  equipmentName,
  FINDING_STATES,
  HEAD_CONTROLS,
  METERING_DEVICES,
  PARTS,
  PLACES,
  SIGHT_GLASS_STATES,
} from '../terms/names.ts';
import { seenName } from '../terms/solenoid-coils.ts';
import { properName } from '../terms/proper-name.ts';
import { CAUSES } from '../terms/causes.ts';
import { CHARGE_DOUBTS, VALVE_KINDS } from '../terms/procedures.ts';
import type { UnitHabit } from '../units/shown-unit.ts';
import { type UnitId, unitRow } from '../units/units.ts';
import type { Acknowledgement, TakenBack } from '../visit/acknowledgement.ts';
import type { TurnedTo } from '../visit/events.ts';
import { counted, figure, heardDigits, heardNumber, poundsAndOunces } from './amounts.ts';
import { designation } from './designation.ts';
import { doubtSaid } from './doubts.ts';
import {
  finishedAnywaySaid,
  finishHeldSaid,
  putBackAsked,
  stillOpenSaid,
} from './left-open-sentences.ts';
import { heardSaid, readingSaid, valueSaid } from './readings.ts';
import { placedName } from './names.ts';
import { recommendationSaid } from './recommendation-sentences.ts';
import { join, line, plain, type Said, sentences } from './said.ts';
import { hoursSaid } from './time-here-sentence.ts';
import {
  minutesSaid,
  NO_TIMER,
  timerName,
  timerSaid,
  timerTitle,
  timerTitles,
} from './timer-sentences.ts';
import { workDone, workDoneAt, workTodo, workTodoAt } from './work-words.ts';

type Kind = Acknowledgement['kind'];
type Kinds = Members<Acknowledgement, 'kind'>;
type Worded = { readonly [K in Kind]: (kept: Kinds[K], units: UnitHabit) => Said };

const FIRST_READINGS = 'Read head, suction and box.';

const WORDED: Worded = {
  reading: ({ reading }, units) => line`${readingSaid(reading, units)}.`,
  amended: ({ from, to }, units) =>
    line`${readingSaid(to, units)} now, was ${valueSaid(from, units)}.`,
  fact: ({ fact, inAll }) =>
    inAll === undefined
      ? line`${factSaid(fact)}.`
      : line`${factSaid(fact)}, ${hoursSaid(inAll)} in all.`,
  finding: ({ finding }) =>
    finding.unresolved
      ? plain(`Fan ${FINDING_STATES[finding.state]}. Which fan: condenser, or evaporator?`)
      : plain(`${seenName(finding)}.`),
  work: ({ work, beforeBaseline }) =>
    plain(
      `${workDoneAt(work)}.` +
        (beforeBaseline
          ? ' No readings were taken before it: the note will say so. Read the unit now, before going on.'
          : ''),
    ),
  recommendation: ({ today, ...made }) => recommendationSaid(made, today),
  unitsTaken: ({ units }) =>
    line`Taking ${join(units.map(scaleName), ' and ')} from here on; say otherwise.`,
  memo: () => plain('Kept for the note.'),
  doubt: ({ doubt }, units) => doubtSaid(doubt, units),
  leftOver: ({ digits }) => line`${heardDigits(digits)}? Say what that is of.`,
  turnedTo: ({ to, was }, units) => turnedToSaid(to, was, units),
  legsLeftOver: ({ digits }) => line`${join(digits.map(heardDigits), ', ')}: volts, line to line?`,
  takenBack: ({ what }, units) => line`Taken back: ${takenBackSaid(what, units)}.`,
  nothingToTakeBack: () => plain('There is nothing to take back.'),
  nothingToAmend: () => plain('There is no reading to change. Say the reading with its name.'),
  nothingToConfirm: () => plain('Nothing is waiting for a yes.'),
  heardAgain: ({ value }) =>
    line`${heardDigits(heardNumber(value))} again? Say it once more to keep it, or say it another way.`,
  whichOne: () => plain('Which one? Say it with its name and the right number.'),
  // What only should be so was said right: there is nothing to say again.
  doubtDropped: ({ doubt }, units) =>
    doubt.why === 'expected'
      ? line`Left out: ${heardSaid(doubt, units)}.`
      : line`Left out: ${heardSaid(doubt, units)}. Say it again.`,
  leftOverDropped: ({ digits }) =>
    line`Left out: ${join(digits.split(', ').map(heardDigits), ', ')}.`,
  marked: ({ mark, readings }) =>
    readings === 0
      ? plain(`Marked as ${mark}, with nothing read yet. ${FIRST_READINGS}`)
      : line`Marked as ${mark}: ${counted(readings, 'reading')}.`,
  opened: ({ named }) =>
    plain(named ? 'New visit.' : 'New visit. Tell me the unit and its refrigerant.'),
  finished: ({ open }) =>
    open === 0
      ? plain('Finished. The note is ready.')
      : line`Finished. ${counted(open, 'open question')} in the note: settle ${open === 1 ? 'it' : 'them'} there.`,
  nothingToFinish: () => plain('There is no visit to finish yet. Name the unit, or say a reading.'),
  alreadyFinished: () => plain('This visit is finished already. The note is ready.'),
  finishHeld: ({ left, asked }) => finishHeldSaid(left, asked),
  putBackAsked: ({ parts }) => plain(putBackAsked(parts)),
  putBack: ({ parts }) => sentences(parts.map((part) => plain(`${workDone('restore', part)}.`))),
  leftSo: ({ parts }) => plain(`Still off: ${parts.map((part) => PARTS[part]).join(', ')}.`),
  stillOpen: ({ left }) => stillOpenSaid(left),
  finishedAnyway: ({ left }) => finishedAnywaySaid(left),
  leftOut: () => plain('All right, left out.'),
  stepsLeft: () => plain('Steps left.'),
  paused: () => plain('Holding. Say go on when you want me.'),
  resumed: () => plain('Listening.'),
  help: () =>
    plain(
      'Say a reading, like head or suction with its number. Ask what it should be, or how far off it is. Say what you found and did. Say take that back to undo.',
    ),
  timerStarted: ({ timer, minutes }) => line`${timerSaid(timer, minutes)}, from now.`,
  timerExtended: ({ timer, minutes }) =>
    line`${minutesSaid(minutes)} more on the ${timerName(timer)}.`,
  timerStopped: ({ timers }) => plain(`Stopped: ${timerTitles(timers)}.`),
  noTimer: () => plain(NO_TIMER),
};

/** "Head? It was 210.": the number is waited for; of a part nothing need be told. */
function turnedToSaid(
  { part, quantity, place }: TurnedTo,
  was: Reading | null,
  units: UnitHabit,
): Said {
  const called = part === null ? null : PARTS[part];
  if (quantity === null) return plain(called === null ? '' : `${called}.`);
  const asked = plain(`${called ?? placedName(quantity, place)}?`);
  return was === null ? asked : line`${asked} It was ${valueSaid(was, units)}.`;
}

/** "Bar", "Celsius": as a gauge or a thermometer is called by it. */
function scaleName(unit: UnitId): Said {
  const { symbol, spoken } = unitRow(unit);
  const name = spoken.many.replace('degrees ', '');
  return { text: symbol.startsWith('°') ? name : symbol, spoken: name };
}

/** What was kept, said back. */
export function acknowledgementSaid(kept: Acknowledgement, units: UnitHabit): Said {
  return worded(kept, units);
}

function worded<K extends Kind>(kept: Kinds[K] & { readonly kind: K }, units: UnitHabit): Said {
  const sentence: Worded[K] = WORDED[kept.kind];
  return sentence(kept, units);
}

const NAMEPLATE_ITEMS: Record<NameplateItem, string> = {
  charge: 'charge',
  voltage: 'voltage',
  upperVoltage: 'upper voltage',
  ratedLoadAmps: 'rated load amps',
  lockedRotorAmps: 'locked rotor amps',
  minimumCircuitAmps: 'minimum circuit amps',
  maximumFuse: 'maximum fuse',
  highSide: 'high side',
  lowSide: 'low side',
};

type Facts = Members<Fact, 'fact'>;
type FactWorded = { readonly [K in Fact['fact']]: (fact: Facts[K]) => Said };

const FACT_WORDED: FactWorded = {
  refrigerant: ({ value }) => designation(value),
  timeOnSite: ({ value }) => line`on site for ${hoursSaid(value)}`,
  labor: ({ value }) => line`labor ${hoursSaid(value)}`,
  travel: ({ value }) => line`travel ${hoursSaid(value)}`,
  hereSince: ({ value }) => plain(`here since ${value}`),
  metering: ({ value }) => plain(METERING_DEVICES[value]),
  cameTo: ({ do: kind, value }) => plain(`here to ${workTodo(kind, value)}`),
  valves: ({ value }) => plain(VALVE_KINDS[value]),
  cause: ({ value, empty }) => plain(empty === true ? 'system empty' : `cause: ${CAUSES[value]}`),
  chargeDoubt: ({ value }) => plain(`the charge is ${CHARGE_DOUBTS[value]}`),
  sightGlass: ({ value }) => plain(`sight glass ${SIGHT_GLASS_STATES[value]}`),
  condenser: ({ value }) => plain(CONDENSERS[value]),
  condensingUnit: ({ value }) => plain(CONDENSING_UNITS[value]),
  headControl: ({ value }) => plain(HEAD_CONTROLS[value]),
  equipment: ({ value, doors, freezer = false }) =>
    doors === undefined
      ? plain(equipmentName(value, freezer))
      : line`${equipmentName(value, freezer)}, ${counted(doors, 'door')}`,
  nameplate: ({ item, value, unit, words }) =>
    line`nameplate ${NAMEPLATE_ITEMS[item]} ${poundsAndOunces({ value, unit, words }) ?? figure({ value, unit })}`,
  heaterRating: ({ heater, value, unit }) =>
    line`${PLACES[heater]} rated ${figure({ value, unit })}`,
  unit: ({ value }) => plain(`unit: ${value}`),
  site: ({ value }) => plain(`site: ${properName(value)}`),
};

export function factSaid(fact: Fact): Said {
  return factWorded(fact);
}

function factWorded<K extends Fact['fact']>(fact: Facts[K] & { readonly fact: K }): Said {
  const sentence: FactWorded[K] = FACT_WORDED[fact.fact];
  return sentence(fact);
}

type Taken = Members<TakenBack, 'of'>;
type TakenWorded = {
  readonly [K in TakenBack['of']]: (what: Taken[K], units: UnitHabit) => Said;
};

const TAKEN_WORDED: TakenWorded = {
  reading: ({ reading }, units) => readingSaid(reading, units),
  finding: ({ finding }) => plain(seenName(finding)),
  work: ({ work }) => plain(workDoneAt(work)),
  recommendation: ({ recommendation }) => plain(workTodoAt(recommendation)),
  memo: () => plain('the last memo'),
  settings: () => plain('the last change of settings'),
  fact: ({ fact }) => factSaid(fact),
  mark: ({ mark }) => plain(`the ${mark} mark`),
  timer: ({ timer }) => plain(timerTitle(timer)),
};

function takenBackSaid<K extends TakenBack['of']>(
  what: Taken[K] & { readonly of: K },
  units: UnitHabit,
): Said {
  const sentence: TakenWorded[K] = TAKEN_WORDED[what.of];
  return sentence(what, units);
}
