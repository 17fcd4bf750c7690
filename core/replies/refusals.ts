import type { Members } from '../advice/by-kind.ts';
import type { Needs, Refused } from '../advice/verdict.ts';
import type { SafetyTopic } from '../language/utterance.ts';
import { counted, figure } from './amounts.ts';
import { designation } from './designation.ts';
import { PLACES } from '../terms/names.ts';
import { SHORT_NAMES } from './names.ts';
import { BAR_SENTENCES } from './procedure-sentences.ts';
import { capitalised, line, plain, type Said, sentences } from './said.ts';
import { NO_TIMER } from './timer-sentences.ts';

type Reason = Refused['reason'];
type Refusals = Members<Refused, 'reason'>;
type Worded = { readonly [R in Reason]: (refused: Refusals[R]) => Said };

/** Every refusal says why not, and ends with what to do. */
const WORDED: Worded = {
  aboveCritical: ({ refrigerant, limit, unit }) =>
    line`${designation(refrigerant)} does not condense above ${figure({ value: limit, unit })}: there is no saturation to give. Go by the maker's chart.`,
  belowTriple: ({ refrigerant, limit, unit }) =>
    line`${designation(refrigerant)} has no liquid below ${figure({ value: limit, unit })}: it turns solid. Check the reading and say it again.`,
  belowRange: ({ refrigerant, limit, unit }) =>
    line`My ${designation(refrigerant)} table does not go below ${figure({ value: limit, unit })}. Check the reading and say it again.`,
  aboveRange: ({ refrigerant, limit, unit }) =>
    line`My ${designation(refrigerant)} table does not go above ${figure({ value: limit, unit })}. Check the reading and say it again.`,
  unknownRefrigerant: ({ refrigerant }) =>
    line`I do not have a table for ${designation(refrigerant)}. Use its printed chart, and I will keep your readings.`,
  noTargetKnown: ({ about }) =>
    plain(
      `I do not know a target for ${about === null ? 'that' : SHORT_NAMES[about]}. Go by the nameplate or the maker's sheet.`,
    ),
  targetChangesWithTheCycle: () =>
    plain(
      "An ice machine has no steady target: it changes through the cycle. Go by the maker's chart for the minute you are in.",
    ),
  suctionAboveHead: () =>
    plain('That cannot be worked out: suction reads above head. Read both again.'),
  belowZeroSuperheat: () =>
    plain(
      'That is not a superheat: the line reads colder than saturation by more than the instruments explain. Check the clamp, the gauge and the refrigerant.',
    ),
  belowZeroSubcooling: () =>
    plain(
      'That is not a subcooling: the liquid line reads warmer than saturation by more than the instruments explain. Check the clamp, the gauge and the refrigerant.',
    ),
  impossibleVacuum: () =>
    plain('No gauge can read that: it is below a perfect vacuum. Read it again and say the unit.'),
  nothingRecorded: ({ about }) =>
    plain(
      about === null
        ? 'Nothing is recorded for that yet. Say a reading, like head with its number.'
        : `No ${SHORT_NAMES[about]} is recorded yet. Read it and say it.`,
    ),
  nothingAnsweredYet: () =>
    plain('I have not given an answer yet. Ask what head should be, for example.'),
  whichQuantity: () =>
    plain('I do not know what you mean by that. Name it, like head or superheat.'),
  superheatFloats: () =>
    plain(
      'A cap tube or orifice holds no superheat: it floats with load and head. Charge it by weight and read again near the set point.',
    ),
  pullingDown: () =>
    plain(
      'The box is still pulling down: superheat means nothing yet. Read it again near the set point.',
    ),
  endsThePumpDown: () =>
    plain(
      'On a pump-down the low control only ends the pump-down. Set it by the maker: above a vacuum, and below the coldest day.',
    ),
  headFollowsTheWater: () =>
    plain('Water-cooled: head follows the leaving water, not the day. Read the water instead.'),
  readingsDoNotFit: () =>
    plain('Those readings do not go together. Zero the meter and read them again.'),
  noSettingServes: ({ lowest, limit, unit }) =>
    line`No setting serves: the hottest day needs ${figure({ value: lowest, unit })}, and the plate allows ${figure({ value: limit, unit })}. Clean the condenser or give it more air.`,
  noFillRule: ({ refrigerant }) =>
    line`The eighty percent rule does not hold for ${designation(refrigerant)}. Go by the cylinder's own stamp and its supplier.`,
  notAtRest: () =>
    plain(
      'Only a condenser at rest shows air: compressor off, its fan on until the air in and out are alike. Tell me it is off, then head and the air.',
    ),
  noTimer: () => plain(NO_TIMER),
  seriesTooShort: ({ about, readings, wanted }) =>
    line`${about === null ? 'that' : SHORT_NAMES[about]}: ${counted(readings, 'reading')} so far, and it takes ${String(wanted)}. Read it again in a few minutes.`,
  noTimeFor: ({ about }) =>
    plain(
      `I give a time for the box, its air and the product alone. Ask what ${about === null ? 'it' : SHORT_NAMES[about]} is doing.`,
    ),
  notGettingNearer: ({ about, target, unit }) =>
    line`${about === null ? 'it' : SHORT_NAMES[about]} is not coming down to ${figure({ value: target, unit })} by these readings. Look at doors, defrost and airflow, and read it again.`,
  alreadyThere: ({ about, target, value, unit }) =>
    line`${about === null ? 'it' : SHORT_NAMES[about]} is at ${figure({ value, unit })}: past ${figure({ value: target, unit })} already.`,
  noCircuitKnown: () =>
    plain(
      'I do not have a circuit for that kind of unit. Go by its own wiring diagram, from the line side on, and say the voltages.',
    ),
  noStepsRunning: () => plain('No steps are being told. Ask how to do a job, like a pump-down.'),
  partNotExplained: () =>
    plain(
      'I have no words for that part. Ask what one of the circuit does or where it sits, like the drier or the receiver.',
    ),
  /** Its source is for the screen alone. */
  stepsBarred: ({ bar, source }) => ({
    text: `${BAR_SENTENCES[bar]} (${source})`,
    spoken: BAR_SENTENCES[bar],
  }),
  notASwitch: () =>
    plain('Voltage does not tell whether that is open. Lock out, leads off, and read its ohms.'),
  deferredToTheCode: ({ topic }) => plain(DEFERRED[topic]),
  unitNotNamed: () => plain('Say the unit and the site: I find earlier visits by their names.'),
  whichSite: () => plain('I have units of that name at more than one site. Say the site.'),
  noEarlierVisit: () => plain('I have no earlier visit to this unit on this device.'),
};

const CANNOT_CLEAR = 'I cannot clear that for you.';

const DEFERRED: Record<SafetyTopic, string> = {
  brazing: `${CANNOT_CLEAR} Go by the nameplate, the maker and the local code, within your licence.`,
  opening: `${CANNOT_CLEAR} Go by the maker's procedure and the local code, within your licence.`,
  charging: `${CANNOT_CLEAR} Go by the nameplate charge and the maker's sheet.`,
  venting: `${CANNOT_CLEAR} Go by the local law, within your licence.`,
  resetting: `${CANNOT_CLEAR} Find what opened it, then go by the maker's sheet, and stay with it as it starts.`,
  bypassing: `${CANNOT_CLEAR} Test it with the power off, or with a meter across it, and never leave it bypassed.`,
  underVacuum: `${CANNOT_CLEAR} Break the vacuum first, then go by the compressor maker's sheet.`,
  nitrogen: `${CANNOT_CLEAR} Go by the lowest rating in the circuit and the maker's test pressure.`,
  capacitor: `${CANNOT_CLEAR} Power off, bleed it through a resistor, wait, and measure it before a hand goes near.`,
  terminals: `${CANNOT_CLEAR} Go by the compressor maker's sheet, within your licence.`,
  cylinder: `${CANNOT_CLEAR} Go by the cylinder's own plate and the rules for it.`,
  air: `${CANNOT_CLEAR} Go by an oxygen monitor and the gas detector, and leave if either sounds.`,
  touching: `${CANNOT_CLEAR} Measure it before you touch it.`,
  lockOut: `${CANNOT_CLEAR} Go by the site's lock-out rules.`,
  handling: `${CANNOT_CLEAR} Go by its safety data sheet and the nameplate.`,
  energising: `${CANNOT_CLEAR} Go by the nameplate, the site's lock-out rules and the local code.`,
};

export function refusedSaid(refused: Refused): Said {
  return capitalised(worded(refused));
}

function worded<R extends Reason>(refused: Refusals[R] & { readonly reason: R }): Said {
  const sentence: Worded[R] = WORDED[refused.reason];
  return sentence(refused);
}

/** What to do to fill the gap. */
export const NEED_SENTENCES: Record<Needs['need'], string> = {
  headPressure: 'Tell me the head pressure.',
  suctionPressure: 'Tell me the suction pressure.',
  condensingTemp: 'Tell me the condensing temperature.',
  evaporatingTemp: 'Tell me the evaporating temperature.',
  ambientTemp: 'Tell me the ambient at the condenser.',
  condenserLeavingAirTemp: 'Tell me the condenser leaving air.',
  outdoorTemp: 'Tell me the outdoor temperature.',
  boxTemp: 'Tell me the box temperature.',
  supplyAirTemp: 'Tell me the supply air.',
  productTemp: 'Tell me the product temperature.',
  setpointTemp: 'Tell me the set point.',
  suctionLineTemp: 'Tell me the suction line temperature, at the bulb.',
  liquidLineTemp: 'Tell me the liquid line temperature.',
  dischargeLineTemp: 'Tell me the discharge line temperature.',
  superheat: 'Tell me the superheat.',
  subcooling: 'Tell me the subcooling.',
  highCutoutPressure: 'Tell me the high-pressure cut-out.',
  lowCutoutPressure: 'Tell me the low-pressure cut-out.',
  lowCutinPressure: 'Tell me the low-pressure cut-in.',
  voltage: 'Tell me the voltage.',
  current: 'Tell me the amps.',
  resistance: 'Tell me the ohms.',
  insulationResistance: 'Tell me the insulation resistance.',
  capacitance: 'Tell me the microfarads.',
  power: 'Tell me the watts.',
  refrigerantAdded: 'Tell me the refrigerant added.',
  refrigerantRecovered: 'Tell me the refrigerant recovered.',
  refrigerantLost: 'Tell me the refrigerant lost.',
  refrigerantCharge: 'Tell me the nameplate charge.',
  cylinderWeight: 'Tell me the cylinder weight.',
  vacuum: 'Tell me the vacuum in microns.',
  testPressure: 'Tell me the test pressure.',
  enteringWaterTemp: 'Tell me the entering water.',
  leavingWaterTemp: 'Tell me the leaving water.',
  designAmbientTemp: 'Tell me how hot the hottest day gets there.',
  heldHeadPressure: 'Tell me what the head pressure valve is set at.',
  fanCutinPressure: 'Tell me the head at which the fan comes on.',
  fanCutoutPressure: 'Tell me the head at which the fan goes off.',
  ratedCapacitance: 'Tell me the microfarads printed on the can.',
  waterCapacity: 'Tell me the water capacity stamped on the cylinder.',
  tareWeight: 'Tell me the tare weight stamped on the cylinder.',
  sinceLastCharge: 'Tell me how many days ago it was last charged.',
  refrigerant: 'Tell me the refrigerant, from the nameplate.',
  metering: 'Tell me the metering device: expansion valve, cap tube or orifice.',
  equipment: 'Tell me what the unit is: a reach-in, a walk-in, a prep table.',
  headControl:
    'Tell me what holds head up in the cold: a head pressure valve, fan cycling, or no head control.',
  nameplateCharge: 'Tell me the nameplate charge, with its unit.',
  nameplateVoltage: 'Tell me the nameplate voltage.',
  nameplateAmps: 'Tell me the rated load amps, from the plate.',
  nameplateHighSide: 'Tell me the design high side, from the plate.',
  nameplateLowSide: 'Tell me the design low side, from the plate.',
  highTripPressure:
    'Watch the gauge as it opens, then say: high-pressure switch opened at, and the number.',
  lowTripPressure:
    'Watch the gauge as it opens, then say: low-pressure switch opened at, and the number.',
  gasTemp: 'Say the pressure with the temperature of the gas, like nitrogen at so many degrees.',
  valves: 'Tell me which valves: service valves with a stem, or access fittings.',
  supplyVoltage:
    'Without the supply no voltage settles anything. Put the leads on the line side first.',
  powerFirst:
    'It stands still, so follow the power first: read the line side, then its controls in order.',
  voltageAcross: 'Put the leads across it.',
  whichSwitch: 'Which one? Say: is the high-pressure switch open.',
  before: 'Mark the before first: read head, suction and box, then say that is the before.',
  after: 'Read it again now, and mark the after.',
};

export function needsSaid({ again, ...needs }: Needs): Said {
  const asked = needSaid(needs);
  return again === true ? sentences([asked, plain('Or say leave the steps.')]) : asked;
}

function needSaid({ about, need, place }: Omit<Needs, 'again'>): Said {
  if (need === 'voltageAcross' && place !== undefined) {
    return plain(`Put the leads across the ${PLACES[place]}.`);
  }
  if (place !== undefined && AT_A_PLACE.has(need)) {
    return plain(`${NEED_SENTENCES[need].replace(/[.]$/, '')}, ${PLACES[place]}.`);
  }
  const purpose = about === null ? '' : ` I need it for ${SHORT_NAMES[about]}.`;
  return plain(`${NEED_SENTENCES[need]}${about === need ? '' : purpose}`);
}

/** What a meter reads: where it is to be put is told with it. */
const AT_A_PLACE: ReadonlySet<Needs['need']> = new Set<Needs['need']>([
  'voltage',
  'current',
  'resistance',
  'insulationResistance',
  'capacitance',
  'power',
]);
