import { isZeotrope } from '../calculations/fluid-cautions.ts';
import {
  saturationPressure,
  saturationPressureFormula,
  saturationTemperature,
  saturationTemperatureFormula,
} from '../calculations/saturation.ts';
import type { Phase } from '../fluids/fluid.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { toAnyPressure, toGaugeReading, toTemperature } from '../units/branding.ts';
import type { Amount } from '../units/amount.ts';
import { fromBase } from '../units/convert.ts';
import { SHOWN_UNITS } from '../units/shown-unit.ts';
import type { VisitState } from '../visit/state.ts';
import { refrigerantOf } from './current.ts';
import { both, calculated, andThen, worked, type Found } from './found.ts';
import { localAirInput, localAir } from './local-air.ts';
import type { Refused } from './verdict.ts';

export interface Saturated {
  readonly refrigerant: RefrigerantId;
  readonly given: Amount;
  readonly value: number;
  readonly unit: Amount['unit'];
  readonly bubble?: number;
}

/** A temperature asked about gives the pressure, a pressure the temperature; a blend with glide gives both ends. */
export function saturated(
  given: Amount,
  asked: RefrigerantId | null,
  state: VisitState,
): Found<Saturated> {
  const refrigerant: Found<RefrigerantId> =
    asked === null
      ? refrigerantOf(state)
      : worked(asked, {
          inputs: [{ name: 'refrigerant', value: asked, unit: null, from: 'set' }],
        });
  return andThen(refrigerant, (id) => {
    const end = (phase: Phase): Found<Amount> => saturationAt({ id, given, phase }, state);
    if (!isZeotrope(id))
      return andThen(end('dew'), (dew) => worked({ refrigerant: id, given, ...dew }));
    return andThen(both(end('dew'), end('bubble')), ([dew, bubble]) =>
      worked(
        { refrigerant: id, given, ...dew, bubble: bubble.value },
        { cautions: ['glideBasis'] },
      ),
    );
  });
}

interface Asked {
  readonly id: RefrigerantId;
  readonly given: Amount;
  readonly phase: Phase;
}

const NOT_SATURATION: Refused = { kind: 'refused', about: null, reason: 'whichQuantity' };

function saturationAt({ id, given, phase }: Asked, state: VisitState): Found<Amount> {
  const shown = SHOWN_UNITS[state.settings.units];
  const air = localAir(state);
  const point = toTemperature(given);
  if (point !== null) {
    return andThen(
      calculated(
        saturationPressure({ refrigerant: id, temperature: point, phase }),
        saturationPressureFormula,
        state,
      ),
      (pressure) =>
        worked(fromBase(toGaugeReading(pressure, air), shown.gaugePressure), {
          inputs: localAirInput(state),
        }),
    );
  }
  const pressure = toAnyPressure(given, air);
  if (pressure === null) return NOT_SATURATION;
  return andThen(
    calculated(
      saturationTemperature({ refrigerant: id, pressure, phase }),
      saturationTemperatureFormula,
      state,
    ),
    (found) => worked(fromBase(found, shown.temperature), { inputs: localAirInput(state) }),
  );
}
