/** The pairs of legs of a three-phase supply, in the order that they are read. */
export const LEG_PAIRS = ['lineOneTwo', 'lineTwoThree', 'lineOneThree'] as const;

/** Ours: three that differ by more are no three of one kind. */
export const MOST_UNLIKE = 1.25;
/** Between the lowest and the highest supply of the trade. */
export const LEAST_SUPPLY = 100;
export const MOST_SUPPLY = 620;

/** Ours: between the legs of three phases less is no supply's, and three pressures may well be as near to each other. */
const LEAST_LINE_TO_LINE = 180;

/** Whether three numbers may be what stands between the legs of one supply. */
export function mayBeLegVolts(values: readonly number[]): boolean {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const isInRange = least >= LEAST_LINE_TO_LINE && most <= MOST_SUPPLY;
  return values.length === LEG_PAIRS.length && isInRange && most <= least * MOST_UNLIKE;
}
