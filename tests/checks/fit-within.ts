import { evaluate } from '../../core/fluids/evaluate.ts';
import type { Curve } from '../../core/fluids/fluid.ts';
import { fitCurve } from './polynomial-fit.ts';
import type { Sample } from './polynomial-fit.ts';
import { pointRole } from './reference.ts';
import type { PointRole } from './reference.ts';

const MAX_DEGREE = 11;

/** How close, and how many decimals of a coefficient that takes. */
export interface Closeness {
  readonly tolerance: number;
  readonly decimals: number;
}

export interface Fitted {
  readonly curve: Curve;
  readonly error: number;
}

/** The lowest degree that is close enough, with its error, as seen by the points that are not kept back. */
export function fitWithin(
  samples: readonly Sample[],
  limit: number,
  { tolerance, decimals }: Closeness,
): Fitted {
  const withRole = (...roles: readonly PointRole[]): Sample[] =>
    samples.filter((_, index) => roles.includes(pointRole(index, samples.length)));
  const fitted = withRole('fitted');
  const judged = withRole('fitted', 'chosenBy');
  for (let degree = 4; degree <= MAX_DEGREE; degree += 1) {
    const curve = fitCurve(fitted, { limit, degree, decimals });
    const error = Math.max(...judged.map(({ x, y }) => Math.abs(evaluate(curve, x) - y)));
    if (error < tolerance) return { curve, error };
  }
  throw new Error(`no fit within ${tolerance} up to degree ${MAX_DEGREE}`);
}

/**
 * Twice what the judged points show, rounded up to two figures: the latent heat of R-1234yf is off by 1.6 times
 * as much between the last two points below critical as on them.
 */
export function stated(worst: number): number {
  const error = 2 * worst;
  const unit = 10 ** (Math.floor(Math.log10(error)) - 1);
  return Number((Math.ceil(error / unit) * unit).toPrecision(2));
}
