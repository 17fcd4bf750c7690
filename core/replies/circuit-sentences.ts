import type { Fault, FaultMode, SuspectId } from '../advice/circuit/circuit.ts';
import type {
  LeadsAt,
  NextPlaceAnswer,
  SwitchAnswer,
  SwitchState,
} from '../advice/circuit/circuit-verdict.ts';
import { PLACES, type PlaceId } from '../terms/names.ts';
import { figure } from './amounts.ts';
import { line, plain, sentences, type Said } from './said.ts';

/** What an open one wants looked at before it is closed again. */
export const WHY_OPEN: Partial<Record<PlaceId | SuspectId, string>> = {
  highPressureSwitch: 'Find what drove head up before it is reset.',
  lowPressureSwitch:
    'Low suction opens it: short of gas, a shut valve, or its setting. Read suction.',
  temperatureControl: 'It may only be satisfied: compare the box with its set point.',
  defrostTimer: 'It may be in defrost: turn it through by hand.',
  doorSwitch: 'Check that the door holds it in.',
  overload: 'Let it cool, then find what heated it.',
};

const SWITCH_WORDED: Record<SwitchState, (of: SwitchAnswer) => Said> = {
  open: ({ place, across }) =>
    sentences([
      line`${volts(across)} across the ${PLACES[place]} with power at the line: it is open.`,
      plain(WHY_OPEN[place] ?? ''),
    ]),
  passing: ({ place }) =>
    plain(`The ${PLACES[place]} passes power: what is behind it gets its voltage.`),
  undetermined: ({ next }) =>
    sentences([
      plain('Zero there settles nothing: another one open reads the same.'),
      ...nextSaid(next),
    ]),
  partial: ({ place, across }) =>
    line`${volts(across)} at the ${PLACES[place]} is only part of it: a burnt contact, or a ghost. Read it again with a low-impedance meter.`,
  noPath: ({ place }) =>
    sentences([
      plain(`No path through the ${PLACES[place]}: it is open.`),
      plain(WHY_OPEN[place] ?? ''),
    ]),
  path: ({ place, ohms }) =>
    line`${ohmsSaid(ohms)} through the ${PLACES[place]}: closed now, if nothing beside it bridges it.`,
  ohmsRead: ({ place, ohms }) =>
    line`${ohmsSaid(ohms)} through the ${PLACES[place]}: neither open nor a clean contact. Compare it with the maker's.`,
  noSupply: ({ place }) =>
    plain(
      `No power at the line side, so the ${PLACES[place]} cannot be judged. Look at the plug, the breaker and the fuses.`,
    ),
  fed: ({ place, across }) =>
    line`${volts(across)} at the ${PLACES[place]}: power gets there. If it does nothing, it is the ${PLACES[place]} itself${START_GEAR[place] ?? ''}.`,
  notFed: ({ place, next }) =>
    sentences([
      plain(`No power gets to the ${PLACES[place]}: something before it is open.`),
      ...nextSaid(next),
    ]),
};

/** On single phase the start gear is looked at before a motor is condemned. */
export const START_GEAR: Partial<Record<PlaceId | SuspectId, string>> = {
  compressor: ', its start gear or its overload',
  condenserFan: ' or its capacitor',
  evaporatorFan: ' or its capacitor',
};

const ohmsSaid = (value = 0): Said => figure({ value, unit: 'ohm' });
const volts = (value: number): Said => figure({ value, unit: 'V' });

export const switchSaid = (of: SwitchAnswer): Said => SWITCH_WORDED[of.state](of);

const LEADS: Record<LeadsAt['how'], (place: string) => string> = {
  across: (place) => `put the leads across the ${place}`,
  at: (place) => `put the leads on the ${place}`,
  runs: (place) => `see whether the ${place} runs`,
};

/** "Put the leads across the door switch", in the middle of a sentence. */
export const leadsWords = ({ how, place }: LeadsAt): string => LEADS[how](nameOf(place));

const nextSaid = (next: LeadsAt | null): readonly Said[] =>
  next === null ? [] : [plain(`Next, ${leadsWords(next)}.`)];

/** A load side is asked for as the contactor's: that of a switch is told after its name. */
const nameOf = (place: PlaceId): string =>
  place === 'loadSide' ? 'load side of the contactor' : PLACES[place];

/** More than this in one breath is a list that nobody keeps. */
const MOST_NAMED = 3;

const FOUND_WORDED: Record<NextPlaceAnswer['found'], (of: NextPlaceAnswer) => Said> = {
  searching: ({ suspects, together, next }) =>
    sentences([
      ...(together ? [plain('No single fault reads like that: two things are wrong.')] : []),
      ...(suspects.length > MOST_NAMED
        ? []
        : [plain(`It can be ${suspectsSaid(suspects, together)}.`)]),
      ...nextSaid(next),
    ]),
  suspects: (of) => settledSaid(of),
  sound: () =>
    plain(
      'Power gets everywhere it should. If something still stands still, it is that load or its start gear.',
    ),
  contradiction: () =>
    plain(
      'Those voltages do not fit one circuit. Prove the meter, read the line side again, and walk it from there.',
    ),
};

export const nextPlaceSaid = (of: NextPlaceAnswer): Said => FOUND_WORDED[of.found](of);

function settledSaid({ suspects, together }: NextPlaceAnswer): Said {
  const [only] = suspects;
  if (only && suspects.length === 1) return plain(onlySaid(only));
  return plain(
    `It is ${suspectsSaid(suspects, together)}. Voltage cannot tell them apart: lock out, leads off, and read the ohms.`,
  );
}

const ONLY: Record<FaultMode, (of: SuspectId) => string> = {
  open: (of) =>
    [`It is ${SUSPECTS[of]}: open.`, WHY_OPEN[of] ?? ''].filter((part) => part !== '').join(' '),
  burnt: (of) =>
    `It is a burnt contact in ${SUSPECTS[of]}: it drops part of the voltage. Lock out before you look at it.`,
  dead: (of) =>
    `There is no power at ${SUSPECTS[of]}: look at the plug, the breaker and the fuses.`,
};

function onlySaid({ of, mode }: Fault): string {
  const gear = START_GEAR[of];
  if (gear !== undefined) {
    return `Power gets to ${SUSPECTS[of]} and it draws nothing: it is ${SUSPECTS[of]} itself${gear}. Lock out, bleed the capacitors, and read the ohms.`;
  }
  return ONLY[mode](of);
}

/** As a technician names what is wrong: a load is suspected itself, a contact as open or burnt. */
export const SUSPECTS: Record<SuspectId, string> = {
  highPressureSwitch: 'the high-pressure switch',
  lowPressureSwitch: 'the low-pressure switch',
  temperatureControl: 'the temperature control',
  defrostTimer: 'the defrost timer',
  doorSwitch: 'the door switch',
  overload: 'the overload',
  contactor: "the contactor's coil",
  contacts: "the contactor's contacts",
  liquidLineSolenoid: "the solenoid's coil",
  compressor: 'the compressor',
  condenserFan: 'the condenser fan',
  evaporatorFan: 'the evaporator fan',
  supply: 'the line side',
  returnPath: 'the neutral',
  legOne: 'line one',
  legTwo: 'line two',
  legThree: 'line three',
};

/** A switch that may be open or burnt is named once. */
export function suspectsSaid(suspects: readonly Fault[], together: boolean): string {
  const names = [...new Set(suspects.map(({ of }) => SUSPECTS[of]))];
  const last = names.at(-1) ?? '';
  const link = together ? 'and' : 'or';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} ${link} ${last}`;
}
