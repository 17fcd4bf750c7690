/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import { r12 } from './data/r-12.ts';
import { r22 } from './data/r-22.ts';
import { r32 } from './data/r-32.ts';
import { r125 } from './data/r-125.ts';
import { r134a } from './data/r-134a.ts';
import { r143a } from './data/r-143a.ts';
import { r152a } from './data/r-152a.ts';
import { r290 } from './data/r-290.ts';
import { r404a } from './data/r-404a.ts';
import { r407a } from './data/r-407a.ts';
import { r407c } from './data/r-407c.ts';
import { r407f } from './data/r-407f.ts';
import { r410a } from './data/r-410a.ts';
import { r422d } from './data/r-422d.ts';
import { r448a } from './data/r-448a.ts';
import { r449a } from './data/r-449a.ts';
import { r450a } from './data/r-450a.ts';
import { r452a } from './data/r-452a.ts';
import { r454a } from './data/r-454a.ts';
import { r454b } from './data/r-454b.ts';
import { r454c } from './data/r-454c.ts';
import { r455a } from './data/r-455a.ts';
import { r507a } from './data/r-507a.ts';
import { r513a } from './data/r-513a.ts';
import { r600a } from './data/r-600a.ts';
import { r717 } from './data/r-717.ts';
import { r744 } from './data/r-744.ts';
import { r1234yf } from './data/r-1234yf.ts';
import { r1234zee } from './data/r-1234zee.ts';
import { r1270 } from './data/r-1270.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { Fluid } from './fluid.ts';

export const FLUIDS: Record<RefrigerantId, Fluid> = {
  'R-12': r12,
  'R-22': r22,
  'R-32': r32,
  'R-125': r125,
  'R-134a': r134a,
  'R-143a': r143a,
  'R-152a': r152a,
  'R-290': r290,
  'R-404A': r404a,
  'R-407A': r407a,
  'R-407C': r407c,
  'R-407F': r407f,
  'R-410A': r410a,
  'R-422D': r422d,
  'R-448A': r448a,
  'R-449A': r449a,
  'R-450A': r450a,
  'R-452A': r452a,
  'R-454A': r454a,
  'R-454B': r454b,
  'R-454C': r454c,
  'R-455A': r455a,
  'R-507A': r507a,
  'R-513A': r513a,
  'R-600a': r600a,
  'R-717': r717,
  'R-744': r744,
  'R-1234yf': r1234yf,
  'R-1234zeE': r1234zee,
  'R-1270': r1270,
};
