import { readFileSync } from 'node:fs';
import { z } from 'zod';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';

const COLUMNS = [
  'tempC',
  'pBubble',
  'pDew',
  'rhoLiquid',
  'rhoVapour',
  'hLiquid',
  'hVapour',
] as const;

const referenceSchema = z.object({
  refrigerant: z.string(),
  composition: z.string(),
  model: z.string(),
  source: z.string(),
  units: z.string(),
  molarMass: z.number(),
  critical: z.object({ tempC: z.number(), kPa: z.number() }),
  normalBoiling: z.object({ bubbleC: z.number(), dewC: z.number() }).nullable(),
  columns: z.array(z.enum(COLUMNS)).length(COLUMNS.length),
  points: z.array(z.array(z.number()).length(COLUMNS.length)),
});

export interface ReferencePoint {
  readonly tempC: number;
  readonly bubble: number;
  readonly dew: number;
  readonly rhoLiquid: number;
}

/** One refrigerant's saturation states as an equation-of-state library computes them. */
export interface Reference extends Omit<z.infer<typeof referenceSchema>, 'points' | 'columns'> {
  readonly points: readonly ReferencePoint[];
}

export function loadReference(id: RefrigerantId): Reference {
  const text = readFileSync(new URL(`reference/${id}.json`, import.meta.url), 'utf8');
  const { points, ...rest } = referenceSchema.parse(JSON.parse(text));
  return {
    ...rest,
    points: points.map(([tempC = NaN, bubble = NaN, dew = NaN, rhoLiquid = NaN]) => ({
      tempC,
      bubble,
      dew,
      rhoLiquid,
    })),
  };
}

/** The fit sees every other point and both ends; the rest are kept back to test it on. */
export function isFitted(at: number, count: number): boolean {
  return at % 2 === 0 || at === count - 1;
}
