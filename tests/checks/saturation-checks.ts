import type { Phase } from '../../core/fluids/fluid.ts';
import { saturationTemperature } from '../../core/fluids/saturation.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { absolutePressure } from '../../core/units/quantity-values.ts';
import type { ValueCheck } from './check-row.ts';
import { PUBLISHED_SATURATION } from './published-saturation.ts';

function temperatureAt(refrigerant: RefrigerantId, kPa: number, phase: Phase): number {
  const found = saturationTemperature(refrigerant, absolutePressure(kPa), phase);
  return found.kind === 'known' ? found.value : NaN;
}

export const SATURATION_CHECKS: readonly ValueCheck[] = PUBLISHED_SATURATION.flatMap(
  ({ pairs, source, standing, withinK }) =>
    pairs.map(([refrigerant, phase, tempC, kPa]): ValueCheck => ({
      about: 'saturation',
      title: `${refrigerant} ${phase} at ${kPa} kPa`,
      gives: tempC,
      within: withinK,
      found: () => temperatureAt(refrigerant, kPa, phase),
      source,
      standing,
    })),
);
