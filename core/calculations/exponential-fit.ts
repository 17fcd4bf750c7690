/** y = end + size · e^(−x/constant), by least squares. */
export interface Sample {
  readonly x: number;
  readonly y: number;
}

export interface Exponential {
  readonly end: number;
  readonly size: number;
  readonly constant: number;
}

/** With the time constant held the rest is a straight line in e^(−x/constant). */
function lineFor(
  samples: readonly Sample[],
  constant: number,
  end: number | undefined,
): Exponential {
  const shares = samples.map(({ x, y }) => ({ e: Math.exp(-x / constant), y }));
  const sum = (of: (each: { e: number; y: number }) => number): number =>
    shares.reduce((total, each) => total + of(each), 0);
  if (end !== undefined) {
    const size = sum(({ e, y }) => e * (y - end)) / sum(({ e }) => e * e);
    return { end, size, constant };
  }
  const [meanE, meanY] = [sum(({ e }) => e) / shares.length, sum(({ y }) => y) / shares.length];
  const size = sum(({ e, y }) => (e - meanE) * (y - meanY)) / sum(({ e }) => (e - meanE) ** 2);
  return { end: meanY - size * meanE, size, constant };
}

const residual = (samples: readonly Sample[], { end, size, constant }: Exponential): number =>
  samples.reduce((total, { x, y }) => total + (y - end - size * Math.exp(-x / constant)) ** 2, 0);

const STEPS = 80;
/** Beyond 20 times the span of the readings a curve cannot be told from a straight line. */
const SPANS = { low: 0.05, high: 20 } as const;

/** Null where the best constant lies at an end of what the readings can tell. `x` starts at zero. */
export function fitExponential(samples: readonly Sample[], end?: number): Exponential | null {
  const span = samples.at(-1)?.x ?? 0;
  const ratio = (SPANS.high / SPANS.low) ** (1 / STEPS);
  const miss = (constant: number): number => residual(samples, lineFor(samples, constant, end));
  const constants = Array.from({ length: STEPS + 1 }, (_, at) => SPANS.low * span * ratio ** at);
  const best = constants.reduce((least, each) => (miss(each) < miss(least) ? each : least));
  if (best === constants[0] || best === constants.at(-1)) return null;
  let [low, high] = [best / ratio, best * ratio];
  for (let round = 0; round < 60; round += 1) {
    const [first, second] = [low + 0.382 * (high - low), low + 0.618 * (high - low)];
    if (miss(first) < miss(second)) high = second;
    else low = first;
  }
  return lineFor(samples, (low + high) / 2, end);
}
