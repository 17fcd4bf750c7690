import { coilPressure, coilPressureFormula } from '../calculations/coil-temperature.ts';
import { splitFormula, temperatureDifferenceFormula } from '../calculations/coil-differences.ts';
import type { Formula } from '../calculations/formula.ts';
import {
  DESIGN_SPLITS,
  DESIGN_TEMPERATURE_DIFFERENCES,
  type Default,
  type DefaultTable,
} from '../calculations/shop-defaults.ts';
import {
  condensingTarget,
  condensingTargetFormula,
  evaporatingTarget,
  evaporatingTargetFormula,
  subcoolingTarget,
  subcoolingTargetFormula,
  superheatTarget,
  superheatTargetFormula,
  type Metered,
  type Target,
} from '../calculations/targets.ts';
import type { EquipmentId, MeteringId } from '../terms/names.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { toGaugeReading } from '../units/branding.ts';
import { fromBase } from '../units/convert.ts';
import { temperature, type GaugePressure, type Temperature } from '../units/quantity-values.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import {
  currentReading,
  equipmentOf,
  meteringOf,
  refrigerantOf,
  shownUnit,
  temperatureOf,
} from './current.ts';
import { both, calculated, andThen, worked, type Found } from './found.ts';
import { localAirInput, localAir } from './local-air.ts';
import type { Figure, Input, Refused, TargetBasis } from './verdict.ts';

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
  | 'boxTemp';

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

/** A target in base units with its band, and what it was built on. */
interface Aimpoint {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: TargetBasis;
}

/** An ice machine freezes and harvests: nothing it shows has one right value. */
const CYCLES: Refused = { kind: 'refused', about: null, reason: 'targetChangesWithTheCycle' };

function steadyEquipment(state: VisitState): Found<EquipmentId> {
  return andThen(equipmentOf(state), (equipment) =>
    equipment === 'iceMachine' ? CYCLES : worked(equipment),
  );
}

/** The table's row becomes an input of its own, marked as assumed, and its source comes along. */
function aimpoint<Value extends number>(
  found: Found<Target<Value>>,
  basis: TargetBasis,
  assumed: readonly Input[] = [],
): Found<Aimpoint> {
  return andThen(found, ({ value, low, high, from }) =>
    worked(
      { value, low, high, basis },
      { inputs: assumed, sources: from === null ? [] : [from.source] },
    ),
  );
}

function assumedInput(
  name: 'designSplit' | 'temperatureDifference',
  row: Default | null,
  state: VisitState,
): readonly Input[] {
  if (row === null) return [];
  const unit = shownUnit('temperatureDifference', state) ?? 'dC';
  return [{ name, ...fromBase(row.value, unit), from: 'assumed' }];
}

function condensingWanted(state: VisitState): Found<Aimpoint> {
  return andThen(
    both(steadyEquipment(state), temperatureOf(state, 'ambientTemp')),
    ([equipment, ambient]) =>
      aimpoint(
        calculated(
          condensingTarget({ ambient, design: { kind: 'class', equipment } }),
          condensingTargetFormula,
          state,
        ),
        'ambientPlusSplit',
        assumedInput('designSplit', DESIGN_SPLITS[equipment], state),
      ),
  );
}

function evaporatingWanted(state: VisitState): Found<Aimpoint> {
  return andThen(both(steadyEquipment(state), meteringOf(state)), ([equipment, metering]) =>
    andThen(meteredAir(metering, state), (metered) =>
      aimpoint(
        calculated(
          evaporatingTarget({ ...metered, design: { kind: 'class', equipment } }),
          evaporatingTargetFormula,
          state,
        ),
        'box' in metered ? 'boxLessTemperatureDifference' : 'setpointLessTemperatureDifference',
        assumedInput('temperatureDifference', DESIGN_TEMPERATURE_DIFFERENCES[equipment], state),
      ),
    ),
  );
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
  return andThen(both(steadyEquipment(state), meteringOf(state)), ([equipment, metering]) =>
    metering === 'capTube' || metering === 'orifice'
      ? NO_TARGET
      : aimpoint(
          calculated(superheatTarget({ equipment }), superheatTargetFormula, state),
          'table',
        ),
  );
}

const NO_TARGET: Refused = { kind: 'refused', about: null, reason: 'noTargetKnown' };

function subcoolingWanted(state: VisitState): Found<Aimpoint> {
  const { equipment } = state.unit;
  if (equipment === 'iceMachine') return CYCLES;
  return aimpoint(calculated(subcoolingTarget(), subcoolingTargetFormula, state), 'table');
}

function designSplit(state: VisitState): Found<Aimpoint> {
  return andThen(steadyEquipment(state), (equipment) =>
    designRow(DESIGN_SPLITS, equipment, splitFormula),
  );
}

function designTemperatureDifference(state: VisitState): Found<Aimpoint> {
  return andThen(steadyEquipment(state), (equipment) =>
    designRow(DESIGN_TEMPERATURE_DIFFERENCES, equipment, temperatureDifferenceFormula),
  );
}

function designRow(table: DefaultTable, equipment: EquipmentId, formula: Formula): Found<Aimpoint> {
  const row = table[equipment];
  if (row === null) return NO_TARGET;
  const { value, low, high, source } = row;
  return worked(
    { value, low, high, basis: 'table' },
    { formula, cautions: ['designTableOnly'], sources: [source] },
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

function gaugeAt(
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
