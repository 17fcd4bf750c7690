import { degreesF, differenceF } from '../../units/quantity-values.ts';

/** In K: one standard deviation of what a reading and its target leave open. */
export const SPREADS = {
  /** Gauge, clamp and table together are good to ±3 °F: 1 psi is 1.4 °F of R-404A at -20 °F (computed). */
  instruments: differenceF(1.5),
  /** Against a class's design band, not the maker's own figure: common practice. */
  classTable: differenceF(3),
  /** A clamp on a hot pipe, six inches from the compressor: common practice. */
  dischargeLine: differenceF(5),
  /** A thermometer in moving air, and how sharp "cold" and "hot" are. */
  air: differenceF(3),
} as const;

/** Liquid stacked up, a starved coil: beyond the band by 10 °F and more (common practice). */
export const FAR_KELVIN = differenceF(10);

/** A fixed restriction holds no superheat, but near zero is flooded and above 30 °F is starved: common practice. */
export const FIXED_SUPERHEAT = { low: differenceF(5), high: differenceF(30) } as const;

/** achrnews.com/articles/104279: at most 225 °F three to six inches from the compressor. */
export const HOTTEST_DISCHARGE = degreesF(225);
/** Less than 30 °F over condensing is liquid coming back: common practice. */
export const LEAST_DISCHARGE_RISE = differenceF(30);

/** Condensers sized at 90 to 95 °F need head control below about 50 °F: coloradocomfortair.com, low head. */
export const COLD_AIR = degreesF(50);
export const HOT_AIR = degreesF(95);

/** A box this far over its set point has more than a cycle's swing to lose: common practice. */
export const WARM_BOX = differenceF(5);
