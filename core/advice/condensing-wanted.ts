import {
  condensingTemperature,
  condensingTemperatureFormula,
} from '../calculations/coil-temperature.ts';
import { FAN_CYCLE, WATER_APPROACH } from '../calculations/control-defaults.ts';
import { fanCycle, fanCycleFormula, heldHeadFormula } from '../calculations/head-control.ts';
import { DESIGN_SPLITS } from '../calculations/shop-defaults.ts';
import { condensingTarget, condensingTargetFormula } from '../calculations/targets.ts';
import {
  waterCondensingTarget,
  waterCondensingTargetFormula,
} from '../calculations/water-condenser.ts';
import { HEAD_CONTROLS, type EquipmentId } from '../terms/names.ts';
import { degreesF, differenceF, type Temperature } from '../units/quantity-values.ts';
import { headControlOf } from '../visit/head-control.ts';
import type { VisitState } from '../visit/state.ts';
import { isFreezer, isRemote } from '../visit/unit-kind.ts';
import {
  aimpoint,
  assumedInput,
  isPullingDown,
  steadyEquipment,
  type Aimpoint,
} from './aimpoint.ts';
import { absoluteOf, currentReading, refrigerantOf, temperatureOf } from './current.ts';
import { andThen, both, calculated, needing, worked, type Found } from './found.ts';
import type { Input, TargetBasis } from './verdict.ts';

/**
 * What the coil should condense at, by the rule that holds for this condenser today: leaving water plus approach;
 * or the air plus the design split, unless a control holds head above that. Where a box pulls down the split runs
 * above its design, and the band is widened upwards.
 */
export function condensingWanted(state: VisitState): Found<Aimpoint> {
  return andThen(steadyEquipment(state), (equipment) =>
    state.unit.condenser === 'waterCooled'
      ? byWater(state)
      : andThen(byAir(equipment, state), (free) =>
          andThen(heldUp(free, state), (aim) => worked(widened(aim, state))),
        ),
  );
}

/** Table 36-1's approach holds for clean tubes and full flow; 2 °F either way is chosen here. */
const WATER_BAND = differenceF(2);

function byWater(state: VisitState): Found<Aimpoint> {
  return andThen(temperatureOf(state, 'leavingWaterTemp'), (leavingWater) =>
    andThen(
      calculated(waterCondensingTarget({ leavingWater }), waterCondensingTargetFormula, state),
      (value) =>
        worked(
          {
            value,
            low: value - WATER_BAND,
            high: value + WATER_BAND,
            basis: 'leavingWaterPlusApproach',
          },
          {
            inputs: assumedInput('waterApproach', { value: WATER_APPROACH.value }, state),
            sources: [WATER_APPROACH.source],
          },
        ),
    ),
  );
}

/** On a roof the air at the coil may be this much hotter than the day (common practice). */
const ROOF_GAIN = differenceF(5);

/** A condenser apart from its box is sized as a remote one, for a freezer closer still; one in it as a reach-in's. */
export function splitClass(equipment: EquipmentId, { unit }: VisitState): EquipmentId {
  if (unit.condensingUnit === 'selfContained') return 'reachIn';
  if (!isRemote(unit)) return equipment;
  return isFreezer(unit) ? 'walkInFreezer' : 'remoteCondensingUnit';
}

/** The air entering the coil; for a remote condenser, for want of it, the outdoor temperature. */
export function airOf(
  state: VisitState,
): Found<{ readonly air: Temperature; readonly basis: TargetBasis }> {
  const hasOnlyOutdoor =
    currentReading(state, 'ambientTemp') === null && currentReading(state, 'outdoorTemp') !== null;
  return isRemote(state.unit) && hasOnlyOutdoor
    ? andThen(temperatureOf(state, 'outdoorTemp'), (air) =>
        worked({ air, basis: 'outdoorPlusSplit' }),
      )
    : andThen(temperatureOf(state, 'ambientTemp'), (air) =>
        worked({ air, basis: 'ambientPlusSplit' }),
      );
}

function byAir(equipment: EquipmentId, state: VisitState): Found<Aimpoint> {
  const design = splitClass(equipment, state);
  return andThen(airOf(state), ({ air, basis }) =>
    andThen(
      aimpoint(
        calculated(
          condensingTarget({ ambient: air, design: { kind: 'class', equipment: design } }),
          condensingTargetFormula,
          state,
        ),
        basis,
        assumedInput('designSplit', DESIGN_SPLITS[design], state),
      ),
      (aim) => worked(basis === 'outdoorPlusSplit' ? { ...aim, high: aim.high + ROOF_GAIN } : aim),
    ),
  );
}

/** Condensers sized at 90 to 95 °F need head control below about 50 °F: coloradocomfortair.com, low head. */
const COLD_AIR = degreesF(50);
/** Above this no valve or fan control holds head: 90 to 100 °F saturated is the usual setting (common practice). */
const NEVER_HELD = degreesF(105);

/** The larger of what the air makes and what a control holds: N12's R-404A at 180 psi on a 20 °F day is right. */
function heldUp(free: Aimpoint, state: VisitState): Found<Aimpoint> {
  switch (headControlOf(state)) {
    case null:
      return isCold(state) ? needing('headControl') : worked(free);
    case 'none':
      return worked(free, isCold(state) ? { cautions: ['coldHeadStarves'] } : {});
    case 'floodingValve':
    case 'fanSpeed':
      return free.value >= NEVER_HELD ? worked(free) : heldAt(free, state);
    case 'fanCycling':
      return free.low >= NEVER_HELD ? worked(free) : cycled(free, state);
  }
}

function isCold(state: VisitState): boolean {
  const air = airOf(state);
  return air.kind === 'known' && air.value.air < COLD_AIR;
}

/** 3 °F either way: a valve's own band (common practice). */
const HELD_BAND = differenceF(3);

function heldAt(free: Aimpoint, state: VisitState): Found<Aimpoint> {
  const setting = both(refrigerantOf(state), absoluteOf(state, 'heldHeadPressure'));
  return andThen(setting, ([refrigerant, head]) =>
    andThen(
      calculated(condensingTemperature({ refrigerant, head }), condensingTemperatureFormula, state),
      (held) =>
        held <= free.value
          ? worked(free)
          : worked<Aimpoint>(
              { value: held, low: held - HELD_BAND, high: held + HELD_BAND, basis: 'headControl' },
              {
                formula: heldHeadFormula,
                cautions: headControlOf(state) === 'floodingValve' ? ['winterCharge'] : [],
                inputs: controlInput(state),
              },
            ),
    ),
  );
}

function controlInput(state: VisitState): readonly Input[] {
  const control = headControlOf(state);
  if (control === null) return [];
  return [{ name: 'headControl', value: HEAD_CONTROLS[control], unit: null, from: 'set' }];
}

/** Between where the fan goes off and where it comes on, anything is right; a hotter day keeps the fan running. */
function cycled(free: Aimpoint, state: VisitState): Found<Aimpoint> {
  return andThen(fanBand(state), ({ low, high }) =>
    free.value >= high
      ? worked(free)
      : worked<Aimpoint>(
          {
            value: (low + high) / 2,
            low: Math.max(low, Math.min(free.low, high)),
            high: Math.max(high, free.high),
            basis: 'fanCycling',
          },
          { inputs: controlInput(state) },
        ),
  );
}

interface FanBand {
  readonly low: number;
  readonly high: number;
}

/** The unit's own pair of pressures, else the usual one. */
function fanBand(state: VisitState): Found<FanBand> {
  const isTold =
    currentReading(state, 'fanCutinPressure') !== null ||
    currentReading(state, 'fanCutoutPressure') !== null;
  if (!isTold) {
    const { on, off } = FAN_CYCLE.value;
    return worked(
      { low: off[0], high: on[1] },
      { formula: fanCycleFormula, cautions: ['designTableOnly'], sources: [FAN_CYCLE.source] },
    );
  }
  const pair = both(absoluteOf(state, 'fanCutinPressure'), absoluteOf(state, 'fanCutoutPressure'));
  return andThen(both(refrigerantOf(state), pair), ([refrigerant, [on, off]]) =>
    andThen(calculated(fanCycle({ refrigerant, on, off }), fanCycleFormula, state), (found) =>
      worked({ low: found.off, high: found.on }),
    ),
  );
}

/** What pull-down may add to a design split (common practice). */
const PULL_DOWN_GAIN = differenceF(10);

function widened(aim: Aimpoint, state: VisitState): Aimpoint {
  const isByLoad = aim.basis === 'ambientPlusSplit' || aim.basis === 'outdoorPlusSplit';
  return isByLoad && isPullingDown(state) ? { ...aim, high: aim.high + PULL_DOWN_GAIN } : aim;
}
