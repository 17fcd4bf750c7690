import { describe, expect, it } from 'vitest';
import { LATENT_HEATS } from '../../core/fluids/latent-heats.ts';
import { LIQUID_DENSITIES } from '../../core/fluids/liquid-densities.ts';
import { latentHeat, liquidDensity, vapourDensity } from '../../core/fluids/properties.ts';
import type { Saturation } from '../../core/fluids/saturation.ts';
import { VAPOUR_DENSITIES } from '../../core/fluids/vapour-densities.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { temperature } from '../../core/units/quantity-values.ts';
import { unseenPoints } from '../checks/reference.ts';

const PROPERTIES = [
  { of: liquidDensity, table: LIQUID_DENSITIES, column: 'rhoLiquid' },
  { of: vapourDensity, table: VAPOUR_DENSITIES, column: 'rhoVapour' },
  { of: latentHeat, table: LATENT_HEATS, column: 'latentHeat' },
] as const;

const percentOff = (found: Saturation<number>, from: number): number =>
  found.kind === 'known' ? Math.abs(100 * (found.value / from - 1)) : Infinity;

describe.each(PROPERTIES)('$column along the curve', ({ of, table, column }) => {
  it.each(REFRIGERANTS)('%s is within the error it states on points that no fit has seen', (id) => {
    const off = unseenPoints(id).map((point) =>
      percentOff(of(id, temperature(point.tempC)), point[column]),
    );
    expect(Math.max(...off)).toBeLessThanOrEqual(table[id].maxErrorPercent);
    expect(table[id].maxErrorPercent).toBeLessThanOrEqual(0.2);
  });

  it('is refused where the saturation curve is', () => {
    expect(of('R-744', temperature(35))).toMatchObject({ reason: 'aboveCritical' });
    expect(of('R-744', temperature(-60))).toMatchObject({ reason: 'belowTriple' });
    expect(of('R-134a', temperature(-61))).toMatchObject({ reason: 'belowRange' });
  });
});
