import { coilPressure, coilPressureFormula } from '../calculations/coil-temperature.ts';
import { splitFormula, temperatureDifferenceFormula } from '../calculations/coil-differences.ts';
import { DESIGN_SPLITS, DESIGN_TEMPERATURE_DIFFERENCES } from '../calculations/shop-defaults.ts';
import {
  evaporatingTarget,
  evaporatingTargetFormula,
  subcoolingTarget,
  subcoolingTargetFormula,
  superheatTarget,
  superheatTargetFormula,
  type Metered,
} from '../calculations/targets.ts';
import type { MeteringId } from '../terms/names.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { toGaugeReading } from '../units/branding.ts';
import { fromBase } from '../units/convert.ts';
import { temperature, type GaugePressure, type Temperature } from '../units/quantity-values.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import {
  aimpoint,
  assumedInput,
  CYCLES,
  designRow,
  isPullingDown,
  NO_TARGET,
  steadyEquipment,
  type Aimpoint,
} from './aimpoint.ts';
import { condensingWanted, splitClass } from './condensing-wanted.ts';
import { highCutoutWanted, lowCutinWanted, lowCutoutWanted } from './cutout-wanted.ts';
import { fanCycleWanted } from './fan-cycle-wanted.ts';
import { currentReading, meteringOf, refrigerantOf, shownUnit, temperatureOf } from './current.ts';
import { both, calculated, andThen, worked, type Found } from './found.ts';
import { localAirInput, localAir } from './local-air.ts';
import type { Figure, Refused, TargetBasis } from './verdict.ts';

/** What a quantity should be, in the visit's unit. */
export interface Wanted {
  readonly value: number;
  readonly unit: UnitId;
  readonly basis: TargetBasis;
  readonly low?: number;
  readonly high?: number;
  readonly through?: Figure;
}

type Aim = (state: VisitState) => Found<Wanted>;
type Aimed =
  | 'headPressure'
  | 'condensingTemp'
  | 'suctionPressure'
  | 'evaporatingTemp'
  | 'superheat'
  | 'subcooling'
  | 'split'
  | 'temperatureDifference'
  | 'boxTemp'
  | 'highCutoutPressure'
  | 'lowCutoutPressure'
  | 'lowCutinPressure'
  | 'fanCutinPressure'
  | 'fanCutoutPressure';

const TARGETS: Record<Aimed, Aim> = {
  headPressure: (state) => pressureAt('condensingTemp', condensingWanted(state), state),
  condensingTemp: (state) => shown('condensingTemp', condensingWanted(state), state),
  suctionPressure: (state) => pressureAt('evaporatingTemp', evaporatingWanted(state), state),
  evaporatingTemp: (state) => shown('evaporatingTemp', evaporatingWanted(state), state),
  superheat: (state) => shown('superheat', superheatWanted(state), state),
  subcooling: (state) => shown('subcooling', subcoolingWanted(state), state),
  split: (state) => shown('split', designSplit(state), state),
  temperatureDifference: (state) =>
    shown('temperatureDifference', designTemperatureDifference(state), state),
  highCutoutPressure: highCutoutWanted,
  lowCutoutPressure: lowCutoutWanted,
  lowCutinPressure: lowCutinWanted,
  fanCutinPressure: (state) => pressureAt('condensingTemp', fanCycleWanted('on', state), state),
  fanCutoutPressure: (state) => pressureAt('condensingTemp', fanCycleWanted('off', state), state),
  boxTemp: (state) =>
    andThen(temperatureOf(state, 'setpointTemp'), (setpoint) =>
      worked({
        ...fromBase(setpoint, shownUnit('boxTemp', state) ?? 'degC'),
        basis: 'setpoint' as const,
      }),
    ),
};

const isAimed = (about: AnswerableId): about is Aimed => about in TARGETS;

/** What it should be, what is needed to say so, or that no target is known. */
export function wanted(about: AnswerableId, state: VisitState): Found<Wanted> {
  if (isAimed(about)) return TARGETS[about](state);
  return { kind: 'refused', about, reason: 'noTargetKnown' };
}

function evaporatingWanted(state: VisitState): Found<Aimpoint> {
  return andThen(both(steadyEquipment(state), meteringOf(state)), ([equipment, metering]) =>
    andThen(meteredAir(metering, state), (metered) =>
      andThen(
        aimpoint(
          calculated(
            evaporatingTarget({ ...metered, design: { kind: 'class', equipment } }),
            evaporatingTargetFormula,
            state,
          ),
          'box' in metered ? 'boxLessTemperatureDifference' : 'setpointLessTemperatureDifference',
          assumedInput('temperatureDifference', DESIGN_TEMPERATURE_DIFFERENCES[equipment], state),
        ),
        (aim) => whilePullingDown(aim, state),
      ),
    ),
  );
}

/**
 * No rule gives one suction while a box pulls down: the difference is larger than at design, and a valve with a
 * pressure limit holds it down. What holds are the ends: not below the coil at the set point, not above the box's.
 */
function whilePullingDown(aim: Aimpoint, state: VisitState): Found<Aimpoint> {
  if (!isPullingDown(state)) return worked(aim);
  const air = both(temperatureOf(state, 'boxTemp'), temperatureOf(state, 'setpointTemp'));
  return andThen(air, ([box, setpoint]) => {
    const isByBox = aim.basis === 'boxLessTemperatureDifference';
    const warmer = box - setpoint;
    const [low, high] = isByBox ? [aim.low - warmer, aim.high] : [aim.low, aim.high + warmer];
    const basis = 'pullDown' as const;
    return worked({ value: (low + high) / 2, low, high, basis }, { cautions: ['pullDown'] });
  });
}

/** A valve follows the box as it is; a fixed restriction has its design point at the set point only. */
function meteredAir(metering: MeteringId, state: VisitState): Found<Metered> {
  if (metering === 'capTube' || metering === 'orifice') {
    return andThen(temperatureOf(state, 'setpointTemp'), (setpoint) =>
      worked({ metering, setpoint }),
    );
  }
  return andThen(temperatureOf(state, 'boxTemp'), (box) => {
    if (currentReading(state, 'setpointTemp') === null) return worked({ metering, box });
    return andThen(temperatureOf(state, 'setpointTemp'), (setpoint) =>
      worked({ metering, box, setpoint }),
    );
  });
}

/** A fixed restriction holds no superheat: it floats with load and head, so there is none to aim at. */
function superheatWanted(state: VisitState): Found<Aimpoint> {
  const isFreezer = state.unit.freezer;
  return andThen(both(steadyEquipment(state), meteringOf(state)), ([equipment, metering]) =>
    metering === 'capTube' || metering === 'orifice'
      ? FLOATS
      : isPullingDown(state)
        ? PULLING_DOWN
        : aimpoint(
            calculated(superheatTarget({ equipment, isFreezer }), superheatTargetFormula, state),
            'table',
          ),
  );
}

const FLOATS: Refused = { kind: 'refused', about: 'superheat', reason: 'superheatFloats' };
/** A valve's superheat is set near the box's design temperature: far above it, it says nothing. */
const PULLING_DOWN: Refused = { kind: 'refused', about: 'superheat', reason: 'pullingDown' };

function subcoolingWanted(state: VisitState): Found<Aimpoint> {
  const { equipment } = state.unit;
  if (equipment === 'iceMachine') return CYCLES;
  return aimpoint(calculated(subcoolingTarget(), subcoolingTargetFormula, state), 'table');
}

/** What a control holds makes the split: on a cold day it is far above the design one, and right. */
function designSplit(state: VisitState): Found<Aimpoint> {
  const aim = condensingWanted(state);
  const isHeld = aim.kind === 'known' && HELD.has(aim.value.basis);
  if (!isHeld) {
    return andThen(steadyEquipment(state), (equipment) =>
      state.unit.condenser === 'waterCooled'
        ? NO_TARGET
        : designRow(DESIGN_SPLITS, splitClass(equipment, state), splitFormula),
    );
  }
  return andThen(both(aim, temperatureOf(state, 'ambientTemp')), ([coil, air]) =>
    worked({
      value: coil.value - air,
      low: coil.low - air,
      high: coil.high - air,
      basis: coil.basis,
    }),
  );
}

const HELD: ReadonlySet<TargetBasis> = new Set<TargetBasis>(['headControl', 'fanCycling']);

function designTemperatureDifference(state: VisitState): Found<Aimpoint> {
  return andThen(steadyEquipment(state), (equipment) =>
    designRow(DESIGN_TEMPERATURE_DIFFERENCES, equipment, temperatureDifferenceFormula),
  );
}

function shown(about: AnswerableId, found: Found<Aimpoint>, state: VisitState): Found<Wanted> {
  const unit = shownUnit(about, state) ?? 'degC';
  const inUnit = (base: number): number => fromBase(base, unit).value;
  return andThen(found, ({ value, low, high, basis }) =>
    worked({ value: inUnit(value), unit, basis, low: inUnit(low), high: inUnit(high) }),
  );
}

/** What the gauge shows when the coil is at its target, and at the ends of its band. */
function pressureAt(
  coil: 'condensingTemp' | 'evaporatingTemp',
  found: Found<Aimpoint>,
  state: VisitState,
): Found<Wanted> {
  const pressure = coil === 'condensingTemp' ? 'headPressure' : 'suctionPressure';
  const unit = shownUnit(pressure, state) ?? 'kPa';
  const through = (value: number): Figure => ({
    about: coil,
    ...fromBase(value, shownUnit(coil, state) ?? 'degC'),
  });
  return andThen(
    both(refrigerantOf(state), found),
    ([refrigerant, { value, low, high, basis }]) => {
      const gauge = (at: number): Found<number> => gaugeAt(refrigerant, temperature(at), state);
      const ends = both(gauge(low), gauge(high));
      const [least, most] = ends.kind === 'known' ? ends.value : [];
      return andThen(gauge(value), (found) =>
        worked({
          ...fromBase(found, unit),
          basis,
          through: through(value),
          ...(least === undefined || most === undefined
            ? {}
            : { low: fromBase(least, unit).value, high: fromBase(most, unit).value }),
        }),
      );
    },
  );
}

export function gaugeAt(
  refrigerant: RefrigerantId,
  at: Temperature,
  state: VisitState,
): Found<GaugePressure> {
  return andThen(
    calculated(coilPressure({ refrigerant, temperature: at }), coilPressureFormula, state),
    (absolute) =>
      worked(toGaugeReading(absolute, localAir(state)), { inputs: localAirInput(state) }),
  );
}
