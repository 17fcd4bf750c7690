import type { RefrigerantId } from '../terms/refrigerants.ts';
import { density, specificEnthalpyDifference } from '../units/quantity-values.ts';
import type { Density, SpecificEnthalpyDifference, Temperature } from '../units/quantity-values.ts';
import { evaluate } from './evaluate.ts';
import type { FittedProperty } from './fluid.ts';
import { FLUIDS } from './fluids.ts';
import { LATENT_HEATS } from './latent-heats.ts';
import { LIQUID_DENSITIES } from './liquid-densities.ts';
import { temperatureRefused } from './saturation.ts';
import type { Saturation } from './saturation.ts';
import { VAPOUR_DENSITIES } from './vapour-densities.ts';

/** Of the liquid about to boil, kg/m³; refused beyond the range of the saturation curves. */
export const liquidDensity = (id: RefrigerantId, at: Temperature): Saturation<Density> =>
  along(id, at, (value) => ({ property: LIQUID_DENSITIES[value], brand: density }));

/** Of the vapour about to condense, kg/m³; refused beyond the range of the saturation curves. */
export const vapourDensity = (id: RefrigerantId, at: Temperature): Saturation<Density> =>
  along(id, at, (value) => ({ property: VAPOUR_DENSITIES[value], brand: density }));

/**
 * What boiling takes, kJ/kg: from the bubble line to the dew line at one temperature. A zeotrope boils at one
 * pressure instead, over its glide.
 */
export const latentHeat = (
  id: RefrigerantId,
  at: Temperature,
): Saturation<SpecificEnthalpyDifference> =>
  along(id, at, (value) => ({
    property: LATENT_HEATS[value],
    brand: specificEnthalpyDifference,
  }));

function along<Value>(
  id: RefrigerantId,
  at: Temperature,
  of: (id: RefrigerantId) => { property: FittedProperty; brand: (value: number) => Value },
): Saturation<Value> {
  const fluid = FLUIDS[id];
  if (!(at >= fluid.range.low && at <= fluid.range.high)) return temperatureRefused(fluid, at);
  const { property, brand } = of(id);
  return { kind: 'known', value: brand(Math.exp(evaluate(property.log, at))) };
}
