import type { Calculated } from '../calculations/calculated.ts';
import { CUT_OUT_MARGIN } from '../calculations/control-defaults.ts';
import {
  highPressureWindow,
  highPressureWindowFormula,
} from '../calculations/high-pressure-window.ts';
import {
  lowPressureCutIn,
  lowPressureCutInFormula,
  lowPressureCutOut,
  lowPressureCutOutFormula,
} from '../calculations/pressure-controls.ts';
import { DESIGN_SPLITS, DESIGN_TEMPERATURE_DIFFERENCES } from '../calculations/shop-defaults.ts';
import { toAbsolutePressure, toGaugePressure, toGaugeReading } from '../units/branding.ts';
import { fromBase } from '../units/convert.ts';
import { degreesF, pressureDifference, type AbsolutePressure } from '../units/quantity-values.ts';
import type { VisitState } from '../visit/state.ts';
import { assumedInput, NO_TARGET, steadyEquipment } from './aimpoint.ts';
import { splitClass } from './condensing-wanted.ts';
import { refrigerantOf, shownUnit, temperatureOf } from './current.ts';
import { andThen, both, calculated, worked, type Found } from './found.ts';
import { brandedAs, needPlate, plateOf } from './judged/read-at.ts';
import { localAir, localAirInput } from './local-air.ts';
import type { Wanted } from './targets.ts';
import type { Refused } from './verdict.ts';

const gaugeOf = (absolute: AbsolutePressure, state: VisitState) =>
  fromBase(toGaugeReading(absolute, localAir(state)), shownUnit('headPressure', state) ?? 'psi');

/** Above the hottest day's head with a margin, below the lowest rating: where that leaves no room none is picked. */
export function highCutoutWanted(state: VisitState): Found<Wanted> {
  const known = both(refrigerantOf(state), steadyEquipment(state));
  const told = both(temperatureOf(state, 'designAmbientTemp'), ratingOf(state));
  return andThen(both(known, told), ([[refrigerant, equipment], [hottest, rating]]) => {
    const split = DESIGN_SPLITS[splitClass(equipment, state)];
    if (split === null) return NO_TARGET;
    const window = highPressureWindow({
      refrigerant,
      hottest,
      split: split.value,
      rating,
      atmosphere: localAir(state),
    });
    return andThen(calculated(withoutReset(window), highPressureWindowFormula, state), (found) => {
      const lowest = gaugeOf(found.lowest, state);
      const highest = gaugeOf(found.highest, state);
      if (found.window === 'empty') return noSetting(lowest, highest.value);
      return worked(
        { ...lowest, basis: 'hottestDayHead', low: lowest.value, high: highest.value },
        {
          inputs: [...assumedInput('designSplit', split, state), ...localAirInput(state)],
          sources: [split.source, CUT_OUT_MARGIN.source],
        },
      );
    });
  });
}

/** Nothing was reset: it is asked where to set it. */
const withoutReset = <Value>(found: Calculated<Value>): Calculated<Value> =>
  found.kind === 'refused'
    ? found
    : { ...found, cautions: found.cautions.filter((id) => id !== 'repeatedReset') };

const noSetting = (lowest: ReturnType<typeof gaugeOf>, limit: number): Refused => ({
  kind: 'refused',
  about: 'highCutoutPressure',
  reason: 'noSettingServes',
  lowest: lowest.value,
  limit,
  unit: lowest.unit,
  cautions: ['pressureLimit'],
});

function ratingOf(state: VisitState): Found<AbsolutePressure> {
  const gauge = brandedAs(
    plateOf(state, 'highSide'),
    toGaugePressure,
    needPlate('nameplateHighSide'),
  );
  return andThen(gauge, (rating) => worked(toAbsolutePressure(rating, localAir(state))));
}

/** Where the thermostat pumps the unit down, the low control only ends the pump-down: the box is not its business. */
const PUMPS_DOWN: Refused = { kind: 'refused', about: null, reason: 'endsThePumpDown' };

const isPumpDown = ({ unit: { equipment } }: VisitState): boolean =>
  equipment === 'walkInCooler' || equipment === 'walkInFreezer';

/** A control that holds the box by suction: the coil under the box wanted, less nothing for a short suction line. */
export function lowCutoutWanted(state: VisitState): Found<Wanted> {
  const known = both(refrigerantOf(state), steadyEquipment(state));
  return andThen(known, ([refrigerant, equipment]) => {
    if (isPumpDown(state)) return PUMPS_DOWN;
    const row = DESIGN_TEMPERATURE_DIFFERENCES[equipment];
    if (row === null) return NO_TARGET;
    return andThen(temperatureOf(state, 'setpointTemp'), (lowestBox) => {
      const found = lowPressureCutOut({
        refrigerant,
        lowestBox,
        difference: row.value,
        lineDrop: pressureDifference(0),
        atmosphere: localAir(state),
      });
      return andThen(calculated(found, lowPressureCutOutFormula, state), (pressure) =>
        worked(
          { ...gaugeOf(pressure, state), basis: 'setpointLessTemperatureDifference' },
          {
            inputs: [...assumedInput('temperatureDifference', row, state), ...localAirInput(state)],
            cautions: ['designTableOnly'],
            sources: [row.source],
          },
        ),
      );
    });
  });
}

/** achrnews.com/articles/142973: at 38 °F a coil has cleared itself of frost, and a cooler's food is still safe. */
const CLEAR_COIL = degreesF(38);
/** A colder box never lets its coil get that warm: it is defrosted some other way. */
const LEAST_SETPOINT = degreesF(32);

export function lowCutinWanted(state: VisitState): Found<Wanted> {
  return andThen(both(refrigerantOf(state), steadyEquipment(state)), ([refrigerant]) => {
    if (isPumpDown(state)) return PUMPS_DOWN;
    return andThen(temperatureOf(state, 'setpointTemp'), (setpoint) => {
      if (setpoint < LEAST_SETPOINT) return NO_TARGET;
      const found = lowPressureCutIn({ refrigerant, coil: CLEAR_COIL });
      return andThen(calculated(found, lowPressureCutInFormula, state), (pressure) =>
        worked({ ...gaugeOf(pressure, state), basis: 'coilClearOfFrost' }),
      );
    });
  });
}
