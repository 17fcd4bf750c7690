/** A smooth function at a place: its value and its gradient there. */
export type Slope = (place: Float64Array) => {
  readonly value: number;
  readonly gradient: Float64Array;
};

export interface MinimiseSettings {
  readonly steps: number;
  /** A step that gains less than this share of the value is the last. */
  readonly least: number;
}

/** Pairs of steps and changes of the gradient that are remembered. */
const MEMORY = 8;
/** Of what the slope promises, the share that a step must keep (Armijo's rule). */
const KEPT = 1e-4;
const HALVINGS = 12;
const FIRST_STEP = 0.1;

interface Pair {
  readonly step: Float64Array;
  readonly change: Float64Array;
  readonly curvature: number;
}

/** Downhill by limited-memory BFGS (Nocedal and Wright, Numerical Optimization, 2nd ed., algorithm 7.4 and 7.5). */
export function minimise(
  slope: Slope,
  start: Float64Array,
  { steps, least }: MinimiseSettings,
): Float64Array {
  let place = start;
  let here = slope(place);
  const pairs: Pair[] = [];
  for (let done = 0; done < steps; done += 1) {
    const direction = downhill(here.gradient, pairs);
    const next = walk(slope, { place, here, direction });
    if (next === null) return place;
    const pair = pairOf(minus(next.place, place), minus(next.here.gradient, here.gradient));
    if (pair.curvature > 0) pairs.push(pair);
    if (pairs.length > MEMORY) pairs.shift();
    const gained = here.value - next.here.value;
    ({ place, here } = next);
    if (gained < least * Math.abs(here.value)) return place;
  }
  return place;
}

interface Walk {
  readonly place: Float64Array;
  readonly here: ReturnType<Slope>;
  readonly direction: Float64Array;
}

/** Half as far each time until it is lower; null where it never is. */
function walk(slope: Slope, { place, here, direction }: Walk) {
  const promised = dot(here.gradient, direction);
  for (let tried = 0, far = 1; tried < HALVINGS; tried += 1, far /= 2) {
    const reached = place.map((each, at) => each + far * (direction[at] ?? 0));
    const there = slope(reached);
    if (there.value <= here.value + KEPT * far * promised) return { place: reached, here: there };
  }
  return null;
}

function downhill(gradient: Float64Array, pairs: readonly Pair[]): Float64Array {
  const direction = gradient.slice();
  const shares = pairs.map(() => 0);
  for (const [at, { step, change, curvature }] of [...pairs.entries()].reverse()) {
    const share = dot(step, direction) / curvature;
    shares[at] = share;
    add(direction, change, -share);
  }
  const last = pairs.at(-1);
  const scale = last
    ? last.curvature / dot(last.change, last.change)
    : FIRST_STEP / Math.max(1, Math.sqrt(dot(gradient, gradient)));
  for (let at = 0; at < direction.length; at += 1) direction[at] = (direction[at] ?? 0) * scale;
  for (const [at, { step, change, curvature }] of pairs.entries()) {
    add(direction, step, (shares[at] ?? 0) - dot(change, direction) / curvature);
  }
  return direction.map((each) => -each);
}

const pairOf = (step: Float64Array, change: Float64Array): Pair => ({
  step,
  change,
  curvature: dot(step, change),
});

const minus = (one: Float64Array, other: Float64Array): Float64Array =>
  one.map((each, at) => each - (other[at] ?? 0));

function add(to: Float64Array, what: Float64Array, times: number): void {
  for (let at = 0; at < to.length; at += 1) to[at] = (to[at] ?? 0) + times * (what[at] ?? 0);
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < one.length; at += 1) sum += (one[at] ?? 0) * (other[at] ?? 0);
  return sum;
}
