/** 95 % of a normal distribution lies within so many deviations. */
const Z = 1.96;

/** Wilson's score interval for a share (E. B. Wilson, JASA 22, 1927), 0..1. */
export function wilson(hits: number, of: number): readonly [low: number, high: number] {
  if (of === 0) return [0, 1];
  const share = hits / of;
  const spread = Z * Math.sqrt((share * (1 - share)) / of + Z ** 2 / (4 * of ** 2));
  const scale = 1 + Z ** 2 / of;
  const middle = share + Z ** 2 / (2 * of);
  return [Math.max(0, (middle - spread) / scale), Math.min(1, (middle + spread) / scale)];
}
