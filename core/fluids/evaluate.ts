import type { Curve } from './fluid.ts';

export function evaluate({ limit, centre, halfWidth, coefficients }: Curve, at: number): number {
  const x = (Math.sqrt(limit - at) - centre) / halfWidth;
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
