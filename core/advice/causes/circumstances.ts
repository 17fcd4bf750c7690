import type { CauseId } from '../../terms/causes.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { headControlOf } from '../../visit/head-control.ts';
import type { VisitState } from '../../visit/state.ts';
import { airOf } from '../condensing-wanted.ts';
import { supplyVoltage } from '../judged/electrical.ts';
import { readAmount, temperatureOf } from '../current.ts';
import { levelsOf } from './levels-of.ts';
import { RATIOS } from './finding-rules.ts';
import type { Evidence } from './observation.ts';
import { COLD_AIR, FAR_KELVIN, HOT_AIR, SPREADS, WARM_BOX } from './spreads.ts';

/** What the weather and the box itself say, apart from any reading's target (weights from memory). */
export function circumstances(state: VisitState): readonly Evidence[] {
  return [...airEvidence(state), ...boxEvidence(state), ...supplyEvidence(state)];
}

/** Outside what the plate allows it is found out as much as a plugged coil is; within it, it is not the cause. */
function supplyEvidence(state: VisitState): readonly Evidence[] {
  const supply = supplyVoltage(state);
  if (supply.kind !== 'known') return [];
  const { finding, value, unit } = supply.value;
  if (value === null) return [];
  const ratio = finding === 'within' ? 1 / RATIOS.shows : RATIOS.shows;
  const shown = { kind: 'reading', about: 'voltage', value, unit } as const;
  return [{ shown, ratios: new Map([['badSupply', ratio]]), inputs: supply.inputs }];
}

/** Cold air starves a valve, hot air lifts head where the split is right; in neither, neither is the cause. */
function airEvidence(state: VisitState): readonly Evidence[] {
  const found = airOf(state);
  if (found.kind !== 'known') return [];
  const { air, basis } = found.value;
  const { low, farLow, high, farHigh } = levelsOf({
    value: air,
    low: COLD_AIR,
    high: HOT_AIR,
    spread: SPREADS.air,
    far: FAR_KELVIN,
  });
  const cold = 0.05 + 5 * (low + farLow);
  return reading(basis === 'outdoorPlusSplit' ? 'outdoorTemp' : 'ambientTemp', state, [
    ['lowAmbient', cold * (isControlled(state) ? 1 / RATIOS.shows : 1)],
    [
      'fanControlStuckOn',
      cold * (isControlled(state) || headControlOf(state) === null ? 1 : 1 / RATIOS.shows),
    ],
    ['hotRoom', 0.2 + 6 * (high + farHigh)],
  ]);
}

/** A control that should take the fan off in the cold, and does not, is at fault and not the cold. */
function isControlled(state: VisitState): boolean {
  const control = headControlOf(state);
  return control === 'fanCycling' || control === 'fanSpeed';
}

/** A box well over its set point has a reason; at its set point it has no load to pull down. */
function boxEvidence(state: VisitState): readonly Evidence[] {
  const box = temperatureOf(state, 'boxTemp');
  const setpoint = temperatureOf(state, 'setpointTemp');
  if (box.kind !== 'known' || setpoint.kind !== 'known') return [];
  const { high, farHigh } = levelsOf({
    value: box.value - setpoint.value,
    low: 0 - WARM_BOX,
    high: WARM_BOX,
    spread: SPREADS.air,
    far: FAR_KELVIN,
  });
  const warm = high + farHigh;
  return reading('boxTemp', state, [
    ['nothingWrong', 1.3 - 1.1 * warm],
    ['heavyLoad', 0.5 + warm],
    ['openBox', 0.5 + warm],
  ]);
}

function reading(
  about: QuantityId,
  state: VisitState,
  ratios: readonly (readonly [CauseId, number])[],
): readonly Evidence[] {
  const found = readAmount(state, about);
  if (found.kind !== 'known') return [];
  const { value, inputs } = found;
  return [{ shown: { kind: 'reading', about, ...value }, ratios: new Map(ratios), inputs }];
}
