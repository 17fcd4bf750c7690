import type { RefrigerantId } from '../../core/terms/refrigerants.ts';

/**
 * What the equations of state claim for their own saturation pressures, percent: another formulation may differ by
 * as much without either being wrong. R-32: 0.02 (Tillner-Roth & Yokozeki 1997, abstract). Bubble and dew pressures
 * of R-404A, R-407C, R-410A and R-507A: 0.5 (Lemmon 2003, in the R404A file of NIST REFPROP 10). The rest is from
 * memory of the papers: 0.1 for a single substance, 0.2 for the older equations of and ammonia, 0.5 for
 * other blends of HFCs, 1 where an HFO's mixing parameters are estimated.
 */
export const PRESSURE_UNCERTAINTY_PERCENT: Record<RefrigerantId, number> = {
  'R-12': 0.2,
  'R-22': 0.2,
  'R-32': 0.1,
  'R-125': 0.1,
  'R-134a': 0.1,
  'R-143a': 0.1,
  'R-152a': 0.1,
  'R-290': 0.1,
  'R-404A': 0.5,
  'R-407A': 0.5,
  'R-407C': 0.5,
  'R-407F': 0.5,
  'R-410A': 0.5,
  'R-422D': 0.5,
  'R-448A': 1,
  'R-449A': 1,
  'R-450A': 1,
  'R-452A': 1,
  'R-454A': 1,
  'R-454B': 1,
  'R-454C': 1,
  'R-455A': 1,
  'R-507A': 0.5,
  'R-513A': 1,
  'R-600a': 0.1,
  'R-717': 0.2,
  'R-744': 0.1,
  'R-1234yf': 0.1,
  'R-1234zeE': 0.1,
  'R-1270': 0.1,
};
