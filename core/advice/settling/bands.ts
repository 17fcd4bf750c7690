import type { Sourced } from '../../calculations/formula.ts';
import { STEADY } from '../../calculations/control-defaults.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Amount } from '../../units/amount.ts';

/** What "steady" means for a quantity. */
export interface Band {
  /** Its readings may lie this far apart … */
  readonly within: Amount;
  /** … or this share of what is read, where that is more: 2 psi is half a needle's width at 1,000. */
  readonly share?: number;
  /** … for this long at least. */
  readonly minutes: number;
}

/** Two readings agree by chance: with a third somebody has looked in between. */
export const FEWEST_READINGS = 3;

/** Until then nothing is called settled, whatever it reads. */
export const SETTLING_MINUTES = 10;

/** Product and box move slowly: ten minutes within a degree may still be a pull-down. */
const SLOW_MINUTES = 20;
const DEGREE: Amount = { value: 1, unit: 'dF' };
const TWO_DEGREES: Amount = { value: 2, unit: 'dF' };

const common = (value: Band): Sourced<Band> => ({
  value,
  source: 'a gauge is read to the pound and a clamp to the degree; ten minutes is the habit',
  standing: 'common practice',
});
const sourced = (value: Band): Sourced<Band> => ({
  value,
  source: STEADY.source,
  standing: STEADY.standing,
});

/** Null: nobody says what steady is for it, or it is set, weighed, or judged by a test of its own. */
export const BANDS: Partial<Record<QuantityId, Sourced<Band>>> = {
  headPressure: common({
    within: { value: 2, unit: 'psi' },
    share: 0.01,
    minutes: SETTLING_MINUTES,
  }),
  suctionPressure: common({
    within: { value: 2, unit: 'psi' },
    share: 0.02,
    minutes: SETTLING_MINUTES,
  }),
  condensingTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  evaporatingTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  suctionLineTemp: common({ within: TWO_DEGREES, minutes: SETTLING_MINUTES }),
  liquidLineTemp: common({ within: TWO_DEGREES, minutes: SETTLING_MINUTES }),
  dischargeLineTemp: common({ within: { value: 3, unit: 'dF' }, minutes: SETTLING_MINUTES }),
  superheat: common({ within: TWO_DEGREES, minutes: SETTLING_MINUTES }),
  subcooling: common({ within: TWO_DEGREES, minutes: SETTLING_MINUTES }),
  supplyAirTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  condenserLeavingAirTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  boxTemp: sourced({ within: DEGREE, minutes: SLOW_MINUTES }),
  productTemp: sourced({ within: DEGREE, minutes: SLOW_MINUTES }),
  enteringWaterTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  leavingWaterTemp: sourced({ within: DEGREE, minutes: SETTLING_MINUTES }),
  current: common({ within: { value: 0.2, unit: 'A' }, share: 0.03, minutes: 5 }),
};

/** By these the cycle is judged: once they hold, the after can be read. The box takes its own time. */
export const OF_THE_CYCLE: readonly QuantityId[] = [
  'headPressure',
  'suctionPressure',
  'condensingTemp',
  'evaporatingTemp',
];
