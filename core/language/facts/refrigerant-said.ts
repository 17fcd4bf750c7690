import type { Frame } from '../rule.ts';

const CARBON_DIOXIDE = /c ?o ?(?:2|two)|carbon dioxide/i;

/** Whether its letter or its name is said in words about it: "four oh four" may be anything else. */
export const isNamedSurely = (words: string, frame: Frame): boolean =>
  saysItsName(words, frame) || LETTERED.test(words);
const LETTERED =
  /\b(?:r[\s-]?\d|r (?:one|two|four|five|six|seven|twelve|twenty))|(?:[\d\s-])(?:[a-f]|y ?f|z ?e)\b(?! (?:bit|little|touch|good|bad|hair))/i;

/** A designation is recognisable alone by its letter, before the figures or behind them, or by what it belongs to. */
export function saysItsName(words: string, { span }: Frame): boolean {
  // "Brushed it, then CO2" cleans with it.
  if (CARBON_DIOXIDE.test(words) && span.from > 1) return false;
  return (
    /^r[\s-]*\S/i.test(words) ||
    /[\d\s-](?:[a-f]|y ?f|z ?e)$/i.test(words) ||
    /propane|ammonia|butane|propylene|c ?o ?(?:2|two)|carbon dioxide/i.test(words) ||
    /\b(?:system|unit|refrigerant|freon|machine)$/i.test(words)
  );
}
