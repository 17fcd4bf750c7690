import { fluidCautions } from '../calculations/fluid-cautions.ts';
import type { SafetyTopic } from '../language/utterance.ts';
import type { PartId } from '../terms/names.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { saysStuckClosed } from '../terms/stuck-closed.ts';
import { isAltered } from '../visit/alterations.ts';
import { chargeBalance, plateMissed } from '../visit/charge-balance.ts';
import { lastChange } from '../visit/changes.ts';
import { leftOpen } from '../visit/left-open.ts';
import { hasBaseline } from '../visit/baseline.ts';
import type { VisitState } from '../visit/state.ts';
import { isNewer } from '../visit/views.ts';
import { currentReading } from './current.ts';
import { dischargeIsShut, isUnderVacuum, liquidIsTrapped } from './hazards.ts';
import { isGrounded } from './grounded.ts';
import { measured } from './measured.ts';
import { standingFindings } from './standing-findings.ts';
import type { CautionId } from './verdict.ts';

/** Everything the state of the visit calls for, asked or not: what can kill first. */
export function cautionsFor(state: VisitState): readonly CautionId[] {
  const all: readonly (readonly CautionId[])[] = [
    isGrounded(state) ? ['groundFault'] : [],
    fluidCautionsOf(state),
    leaksWhatBurns(state) ? ['gasPoolsLow'] : [],
    nearZero(state),
    keepsTripping(state) ? ['repeatedReset'] : [],
    resetAgain(state) ? ['resetAgain'] : [],
    isLive(state) ? ['liveWork'] : [],
    isOvercharged(state) ? ['chargeByNameplate'] : [],
    missesThePlate(state) ? ['chargeOffPlate'] : [],
    workedBlind(state) ? ['workBeforeBaseline'] : [],
    ...hazardCautions(state),
  ];
  return [...new Set(all.flat())];
}

/** Volts were read, or a contactor is welded: behind it all stays live, whatever the controls do. */
const isLive = (state: VisitState): boolean =>
  state.readings.some(({ reading }) => reading.quantity === 'voltage') ||
  standingFindings(state).some(
    ({ finding: { part, words } }) => part === 'contactor' && saysStuckClosed(words),
  );

/** Each with the state of the visit that brings it about: gone with it, and due again when it returns. */
function hazardCautions(state: VisitState): readonly (readonly CautionId[])[] {
  const hasRead = (...ids: readonly QuantityId[]): boolean =>
    state.readings.some(({ reading }) => ids.includes(reading.quantity));
  const left = leftOpen(state);
  return [
    dischargeIsShut(state) ? ['frontSeatedDischarge'] : [],
    liquidIsTrapped(state) ? ['trappedLiquid'] : [],
    isUnderVacuum(state) ? [hasRead('vacuum') ? 'noPowerInVacuum' : 'openUnderVacuum'] : [],
    hasRead('testPressure') ? ['pressureTest'] : [],
    hasFilled(state) ? ['neverOverfill'] : [],
    hasRead('capacitance') ? ['capacitorCharge'] : [],
    hasRead('resistance', 'insulationResistance') ? ['deadAndDisconnected'] : [],
    left.some(({ part }) => part === 'gauges') ? ['liquidBurns'] : [],
    left.some(({ part, as }) => as === 'bypassed' && BYPASSED.has(part)) ? ['bypassedSafety'] : [],
    leaksIndoors(state) ? ['airDisplaced'] : [],
  ];
}

/** Something went into a cylinder: "recovered nothing" fills none. */
const hasFilled = ({ readings }: VisitState): boolean =>
  readings.some(
    ({ reading: { quantity, value } }) =>
      quantity === 'cylinderWeight' || (quantity === 'refrigerantRecovered' && value !== 0),
  );

/** Hazards that can go and come back within one visit. */
export const COMES_BACK: ReadonlySet<CautionId> = new Set<CautionId>([
  'flashGas',
  'liquidAboveBubble',
  'frontSeatedDischarge',
  'trappedLiquid',
  'openUnderVacuum',
  'noPowerInVacuum',
  'bypassedSafety',
  'liquidMayReturn',
  'chargeOffPlate',
]);

const BYPASSED: ReadonlySet<PartId> = new Set<PartId>([
  'highPressureSwitch',
  'lowPressureSwitch',
  'overload',
  'doorSwitch',
  'defrostTermination',
]);

/** A walk-in holds what leaks into it. */
function leaksIndoors({ findings, unit: { equipment } }: VisitState): boolean {
  const walksIn = equipment === 'walkInCooler' || equipment === 'walkInFreezer';
  return (
    walksIn &&
    findings.some(({ finding }) => finding.state === 'leaking' && INSIDE.has(finding.part))
  );
}

const INSIDE: ReadonlySet<PartId> = new Set<PartId>([
  'evaporator',
  'expansionValve',
  'suctionLine',
  'liquidLine',
  'joint',
]);

/** What is told while it is done, and nothing to whoever reads of it later. */
const OF_THE_MOMENT: ReadonlySet<CautionId> = new Set<CautionId>([
  'neverOverfill',
  'capacitorCharge',
  'deadAndDisconnected',
  'pressureTest',
  'liquidBurns',
  'liveWork',
  'workBeforeBaseline',
]);

/** The cautions that the note carries on. */
export function cautionsToWrite(state: VisitState): readonly CautionId[] {
  return cautionsFor(state).filter((id) => !OF_THE_MOMENT.has(id));
}

/** Every flammable refrigerant in the list is heavier than air. */
function leaksWhatBurns(state: VisitState): boolean {
  return (
    fluidCautionsOf(state).includes('flammable') &&
    standingFindings(state).some(({ finding }) => finding.state === 'leaking')
  );
}

/** More went in since the last evacuation than the plate allows. */
function isOvercharged(state: VisitState): boolean {
  const { addedSince, nameplate } = chargeBalance(state);
  return addedSince !== null && nameplate !== null && addedSince.value > nameplate.value;
}

/** Common practice: a critical charge is held to a tenth of this, by the maker. */
const OFF_PLATE = 0.05;

const missesThePlate = (state: VisitState): boolean =>
  Math.abs(plateMissed(state) ?? 0) > OFF_PLATE;

/** What burns, poisons or stands at extreme pressure: it goes with every number about the unit. */
export function fluidCautionsOf({ unit: { refrigerant } }: VisitState): readonly CautionId[] {
  if (refrigerant === null) return [];
  return fluidCautions(refrigerant).filter((id) => id !== 'chartsDiffer');
}

function nearZero(state: VisitState): readonly CautionId[] {
  return (['superheat', 'subcooling'] as const).flatMap((about) => {
    const found = measured(about, state);
    if (found.kind === 'needs') return [];
    return (found.cautions ?? []).filter(
      (id) => NEAR_ZERO.has(id) && (id !== 'liquidAboveBubble' || !isHeadAlone(state)),
    );
  });
}

/** A head that was only read once more, as one does with the unit standing, belongs to no line of before. */
function isHeadAlone(state: VisitState): boolean {
  const [head, line] = [
    currentReading(state, 'headPressure'),
    currentReading(state, 'liquidLineTemp'),
  ];
  if (!head || !line || !isNewer(state, head.id, line.id) || head.at === line.at) return false;
  const since = lastChange(state)?.id;
  return state.readings.some(
    ({ id, reading }) =>
      reading.quantity === 'headPressure' &&
      id !== head.id &&
      (since === undefined || isNewer(state, id, since)),
  );
}

const NEAR_ZERO: ReadonlySet<CautionId> = new Set<CautionId>([
  'liquidMayReturn',
  'flashGas',
  'wetOrWrongRefrigerant',
  'liquidAboveBubble',
]);

const SAFETIES: ReadonlySet<PartId> = new Set<PartId>([
  'highPressureSwitch',
  'overload',
  'breaker',
  'fuse',
]);

function keepsTripping({ findings, work }: VisitState): boolean {
  return (
    findings.some(({ finding }) => finding.state === 'tripped' && SAFETIES.has(finding.part)) ||
    work.some(({ work: { did, part } }) => did === 'reset' && part !== null && SAFETIES.has(part))
  );
}

/** Once is how it is found; twice is running it back into what opened it. */
function resetAgain({ work }: VisitState): boolean {
  const resets = work.filter(
    ({ work: { did, part } }) => did === 'reset' && (part === null || SAFETIES.has(part)),
  );
  return resets.length > 1;
}

/** Charge moved counts as work: what it changed can no longer be read. */
function workedBlind(state: VisitState): boolean {
  return isAltered(state) && !hasBaseline(state);
}

const SAFETY_CAUTIONS: Record<SafetyTopic, readonly CautionId[]> = {
  brazing: ['brazing', 'neverOxygen'],
  opening: ['openingTheSystem'],
  charging: ['chargeByNameplate'],
  venting: ['noVenting'],
  resetting: ['repeatedReset'],
  bypassing: ['noBypass', 'liveWork'],
  energising: ['liveWork', 'compressorTerminals'],
  underVacuum: ['noPowerInVacuum', 'insulationTest'],
  nitrogen: ['neverOxygen', 'pressureTest'],
  capacitor: ['capacitorCharge'],
  terminals: ['compressorTerminals', 'lockOut'],
  cylinder: ['heatedCylinder', 'neverOverfill'],
  air: ['airDisplaced'],
  touching: ['hotSurface', 'liquidBurns'],
  lockOut: ['lockOut', 'liveWork'],
  handling: ['liquidBurns', 'airDisplaced'],
};

/** What must be heard with a question about safety, whatever the answer: of the matter, and of this unit now. */
export function safetyCautions(topic: SafetyTopic, state: VisitState): readonly CautionId[] {
  const opens = topic === 'opening' || topic === 'brazing';
  const fluid = fluidCautionsOf(state);
  // Told that it burns and that no torch may come near it, nobody is to hear how to braze it after all.
  const ofTopic = topic === 'brazing' && fluid.includes('flammable') ? [] : SAFETY_CAUTIONS[topic];
  const powers = topic === 'resetting' || topic === 'energising';
  const ofState: readonly (readonly CautionId[])[] = [
    powers && isGrounded(state) ? ['groundFault'] : [],
    fluid,
    topic === 'handling' && state.unit.refrigerant === null ? ['mayBurn'] : [],
    opens && isUnderVacuum(state) ? ['openUnderVacuum'] : [],
    opens && liquidIsTrapped(state) ? ['trappedLiquid'] : [],
    (opens || topic === 'charging') && state.unit.refrigerant === 'R-744' ? ['dryIce'] : [],
    topic === 'energising' && dischargeIsShut(state) ? ['frontSeatedDischarge'] : [],
    topic === 'energising' && isUnderVacuum(state) ? ['noPowerInVacuum'] : [],
  ];
  return [...new Set([...ofState.flat(), ...ofTopic])];
}
