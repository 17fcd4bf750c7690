const OUNCES_IN_POUND = 16;
/** So told it is one number, or has its unit. */
const IS_ONE = /\b(?:hundred|thousand|point|half|and|pounds?|ounces?|lbs?|oz|kilos?|grams?)\b|\d/i;

/**
 * Pounds and ounces said without either, in ounces: "thirty six twelve", which numbers are read from as 3612, and "forty one
 * six", as 41.6. `null` where the words are those of one number.
 */
export function clippedOunces(value: number, words: string): number | null {
  if (IS_ONE.test(words)) return null;
  const isTenths = !Number.isInteger(value);
  const pounds = isTenths ? Math.trunc(value) : Math.trunc(value / 100);
  const ounces = isTenths ? Math.round((value - pounds) * 10) : value % 100;
  const isClipped = pounds > 0 && ounces > 0 && ounces < OUNCES_IN_POUND;
  return isClipped ? pounds * OUNCES_IN_POUND + ounces : null;
}
