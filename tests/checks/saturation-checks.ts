import type { Phase } from '../../core/fluids/fluid.ts';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import { saturationPressure, saturationTemperature } from '../../core/fluids/saturation.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { absolutePressure, temperature } from '../../core/units/quantity-values.ts';
import type { ValueCheck } from './check-row.ts';
import { CORRELATIONS } from './correlations.ts';
import { PRESSURE_UNCERTAINTY_PERCENT } from './equation-uncertainty.ts';
import { KNOWN_DIFFERENCES } from './known-differences.ts';
import { PUBLISHED_SATURATION } from './published-saturation.ts';
import type { PublishedSaturation, SaturationPair } from './published-saturation.ts';
import { REMEMBERED_SATURATION } from './remembered-saturation.ts';

export function temperatureAt([refrigerant, phase, , kPa]: SaturationPair): number {
  const found = saturationTemperature(refrigerant, absolutePressure(kPa), phase);
  return found.kind === 'known' ? found.value : NaN;
}

/** kPa a K. */
function slopeAt(refrigerant: RefrigerantId, phase: Phase, tempC: number): number {
  const [below, above] = [-0.1, 0.1].map((by) => {
    const found = saturationPressure(refrigerant, temperature(tempC + by), phase);
    return found.kind === 'known' ? found.value : NaN;
  });
  return ((above ?? NaN) - (below ?? NaN)) / 0.2;
}

export const SATURATION_SOURCES: readonly PublishedSaturation[] = [
  ...PUBLISHED_SATURATION,
  ...CORRELATIONS,
  ...REMEMBERED_SATURATION,
];

/** Half the print's steps, what both equations are unsure of, and the fit's stated error, in K. */
export function allowedK(
  pair: SaturationPair,
  { printed, uncertaintyPercent = 0 }: Pick<PublishedSaturation, 'printed' | 'uncertaintyPercent'>,
): number {
  const [refrigerant, phase, tempC, kPa] = pair;
  const unsurePercent = PRESSURE_UNCERTAINTY_PERCENT[refrigerant] + uncertaintyPercent;
  const unsureKPa = (kPa * unsurePercent) / 100;
  const slope = slopeAt(refrigerant, phase, tempC);
  const fitK = FLUIDS[refrigerant].maxError.temperature;
  return printed.tempC / 2 + (printed.kPa / 2 + unsureKPa) / slope + fitK;
}

export const isKnownDifference = (pair: SaturationPair): boolean =>
  KNOWN_DIFFERENCES.some((row) => row.pair.join() === pair.join());

/** Every pair, but those that the known differences hold with their figure. */
export const SATURATION_CHECKS: readonly ValueCheck[] = SATURATION_SOURCES.flatMap((group) =>
  group.pairs
    .filter((pair) => !isKnownDifference(pair))
    .map((pair): ValueCheck => {
      const [refrigerant, phase, tempC, kPa] = pair;
      return {
        about: 'saturation',
        title: `${refrigerant} ${phase} at ${kPa} kPa`,
        gives: tempC,
        within: allowedK(pair, group),
        found: () => temperatureAt(pair),
        source: group.source,
        standing: group.standing,
      };
    }),
);
