/** What the generator adds to the fitted curves from other sources than the equation of state. */
import type { SafetyGroup } from '../../core/fluids/fluid.ts';
import { BOILING_POINTS } from '../../core/fluids/sources.ts';
import type * as sources from '../../core/fluids/sources.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';

/** Those whose group was read; the rest is from memory. */
export const SAFETY_READ_OF: readonly RefrigerantId[] = ['R-404A', 'R-448A', 'R-454B', 'R-513A'];

export const SAFETY_GROUPS: Record<RefrigerantId, SafetyGroup> = {
  'R-12': 'A1',
  'R-22': 'A1',
  'R-32': 'A2L',
  'R-125': 'A1',
  'R-134a': 'A1',
  'R-143a': 'A2L',
  'R-152a': 'A2',
  'R-290': 'A3',
  'R-404A': 'A1',
  'R-407A': 'A1',
  'R-407C': 'A1',
  'R-407F': 'A1',
  'R-410A': 'A1',
  'R-422D': 'A1',
  'R-448A': 'A1',
  'R-449A': 'A1',
  'R-450A': 'A1',
  'R-452A': 'A1',
  'R-454A': 'A2L',
  'R-454B': 'A2L',
  'R-454C': 'A2L',
  'R-455A': 'A2L',
  'R-507A': 'A1',
  'R-513A': 'A1',
  'R-600a': 'A3',
  'R-717': 'B2L',
  'R-744': 'A1',
  'R-1234yf': 'A2L',
  'R-1234zeE': 'A2L',
  'R-1270': 'A3',
};

interface ChartNote {
  readonly against: string;
  readonly pressurePercent: number;
  readonly degF: number;
  readonly fromMemory: boolean;
  readonly readAt: string | null;
}

const boilingPoint = (pressurePercent: number, degF: number): ChartNote => ({
  against: BOILING_POINTS,
  pressurePercent,
  degF,
  fromMemory: true,
  readAt: null,
});

/** The largest difference found between a printed value and the curve, signs dropped. */
export const CHART_NOTES: Partial<Record<RefrigerantId, ChartNote>> = {
  'R-404A': boilingPoint(1.8, 0.68),
  'R-407A': boilingPoint(0.93, 0.35),
  'R-407C': {
    against:
      "a supplier's 11.7 bar at 77 °F; an equipment maker's printed liquid table, 40 to 120 °F, is up to 1.08 °F off",
    pressurePercent: 1.74,
    degF: 1.14,
    fromMemory: false,
    readAt: 'mutkar.com/en/r407c-2; office.manualsonline.com/manuals/mfg/liebert/itr.html?p=63',
  },
  'R-410A': {
    against: "an equipment maker's printed R-410A saturation table, −22 to 104 °F",
    pressurePercent: 1.35,
    degF: 0.59,
    fromMemory: false,
    readAt: 'www.easymanua.ls/fujitsu/auxb12ga-h/manual?p=223',
  },
  'R-422D': boilingPoint(0.93, 0.35),
  'R-448A': {
    against: 'a transcribed R-448A dew chart, −40 to 140 °F',
    pressurePercent: 1.65,
    degF: 0.61,
    fromMemory: false,
    readAt: 'app.unpkg.com/coolprop-node@1.0.20/files/src/refData.js',
  },
  'R-449A': {
    against: "the refrigerant maker's mixing parameters in NIST REFPROP, −40 to 32 °F",
    pressurePercent: 0.84,
    degF: 0.31,
    fromMemory: false,
    readAt: 'github.com/CoolProp/CoolProp/issues/921',
  },
  'R-450A': boilingPoint(1.1, 0.44),
  'R-452A': boilingPoint(1.49, 0.56),
  'R-454A': boilingPoint(1.47, 0.55),
  'R-454B': boilingPoint(2.33, 0.85),
  'R-454C': boilingPoint(2.93, 1.13),
  'R-455A': boilingPoint(2.6, 0.99),
  'R-507A': boilingPoint(1.72, 0.65),
  'R-513A': boilingPoint(1.11, 0.44),
};

interface Warming {
  readonly value: number;
  readonly source: keyof typeof sources;
}

/** Of the substances alone; a blend's is their mean by mass. */
export const WARMING: Readonly<Record<string, Warming>> = {
  '12': { value: 10_900, source: 'WARMING_BULLETIN' },
  '22': { value: 1810, source: 'WARMING_AR4' },
  '32': { value: 675, source: 'WARMING_CFR' },
  '125': { value: 3500, source: 'WARMING_CFR' },
  '134a': { value: 1430, source: 'WARMING_CFR' },
  '143a': { value: 4470, source: 'WARMING_CFR' },
  '152a': { value: 124, source: 'WARMING_CFR' },
  '290': { value: 3, source: 'WARMING_EU' },
  '600a': { value: 3, source: 'WARMING_EU' },
  '717': { value: 0, source: 'WARMING_EU' },
  '744': { value: 1, source: 'WARMING_CFR' },
  '1234yf': { value: 4, source: 'WARMING_EU' },
  '1234ze(E)': { value: 7, source: 'WARMING_EU' },
  '1270': { value: 2, source: 'WARMING_EU' },
};
