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
  triple: z.object({ tempC: z.number(), kPa: z.number() }).nullable(),
  normalBoiling: z.object({ bubbleC: z.number(), dewC: z.number() }).nullable(),
  columns: z.array(z.enum(COLUMNS)).length(COLUMNS.length),
  points: z.array(z.array(z.number()).length(COLUMNS.length)),
});

export interface ReferencePoint {
  readonly tempC: number;
  readonly bubble: number;
  readonly dew: number;
  readonly rhoLiquid: number;
  readonly rhoVapour: number;
  /** kJ/kg from the bubble line to the dew line at this temperature. */
  readonly latentHeat: number;
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
    points: points.map((row) => {
      const [tempC = NaN, bubble = NaN, dew = NaN, rhoLiquid = NaN] = row;
      const [rhoVapour = NaN, hLiquid = NaN, hVapour = NaN] = row.slice(4);
      return { tempC, bubble, dew, rhoLiquid, rhoVapour, latentHeat: hVapour - hLiquid };
    }),
  };
}

const offGridSchema = z.object({
  source: z.string(),
  columns: z.array(z.string()),
  points: z.record(z.string(), z.array(z.array(z.number()).length(6))),
});

/** States at temperatures between the reference's steps, which no fit has seen. */
export function loadOffGrid(id: RefrigerantId): readonly ReferencePoint[] {
  const text = readFileSync(new URL('reference/off-grid.json', import.meta.url), 'utf8');
  const rows = offGridSchema.parse(JSON.parse(text)).points[id] ?? [];
  return rows.map((row) => {
    const [tempC = NaN, bubble = NaN, dew = NaN] = row;
    const [rhoLiquid = NaN, rhoVapour = NaN, latentHeat = NaN] = row.slice(3);
    return { tempC, bubble, dew, rhoLiquid, rhoVapour, latentHeat };
  });
}

/** Those of the reference that no fit has seen, and those between its steps. */
export function unseenPoints(id: RefrigerantId): readonly ReferencePoint[] {
  const { points } = loadReference(id);
  const keptBack = points.filter((_, index) => pointRole(index, points.length) === 'keptBack');
  return [...keptBack, ...loadOffGrid(id)];
}

/**
 * The fit sees every other point and both ends. Of those between, every other one helps to choose the degree and
 * to state the error; the rest, a quarter of all, are seen by nothing but the tests.
 */
export type PointRole = 'fitted' | 'chosenBy' | 'keptBack';

export function pointRole(at: number, count: number): PointRole {
  // Counted from the critical end, so that the first step there, where the curves bend most, is judged.
  const fromTop = count - 1 - at;
  if (fromTop % 2 === 0 || at === 0) return 'fitted';
  return fromTop % 4 === 1 ? 'chosenBy' : 'keptBack';
}
