import type { Curve } from '../../core/fluids/fluid.ts';

export interface Sample {
  readonly x: number;
  readonly y: number;
}

/** Chebyshev polynomials T0 … Tn at t. */
function chebyshevRow(t: number, degree: number): number[] {
  const row = [1, t];
  for (let n = 2; n <= degree; n += 1) row.push(2 * t * at(row, n - 1) - at(row, n - 2));
  return row.slice(0, degree + 1);
}

const at = (list: readonly number[], index: number): number => list[index] ?? 0;

/** Gaussian elimination with partial pivoting on [A | b]. */
function solve(rows: number[][]): number[] {
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const order = [...rows.keys()].slice(column);
    const pivot = order.reduce((best, row) =>
      Math.abs(at(rows[row] ?? [], column)) > Math.abs(at(rows[best] ?? [], column)) ? row : best,
    );
    [rows[column], rows[pivot]] = [rows[pivot] ?? [], rows[column] ?? []];
    const top = rows[column] ?? [];
    for (let row = column + 1; row < size; row += 1) {
      const factor = at(rows[row] ?? [], column) / at(top, column);
      rows[row] = (rows[row] ?? []).map((value, index) => value - factor * at(top, index));
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    const line = rows[row] ?? [];
    const known = found.reduce((sum, value, index) => sum + value * at(line, index), 0);
    found[row] = (at(line, size) - known) / at(line, row);
  }
  return found;
}

/** Sum of cₙTₙ(t) as plain powers of t: safe in doubles at these degrees (≤ 14) on −1 … 1. */
function toPowers(chebyshev: readonly number[]): number[] {
  let before = [1];
  let now = [0, 1];
  const powers = new Array<number>(chebyshev.length).fill(0);
  chebyshev.forEach((weight, n) => {
    if (n >= 2) {
      const next = [0, ...now.map((value) => 2 * value)].map((value, i) => value - at(before, i));
      [before, now] = [now, next];
    }
    (n === 0 ? [1] : now).forEach((value, i) => (powers[i] = at(powers, i) + weight * value));
  });
  return powers;
}

const eightDigits = (value: number): number => Number(value.toPrecision(8));
const countTo = (count: number): number[] => [...new Array<undefined>(count).keys()];

export interface Shape {
  readonly limit: number;
  readonly degree: number;
  /** Decimals kept of each coefficient: enough that the rounding is a hundredth of the fit's error. */
  readonly decimals: number;
}

/** Least squares of y on powers of √(limit − x). */
export function fitCurve(samples: readonly Sample[], shape: Shape): Curve {
  const { limit, degree, decimals } = shape;
  const roots = samples.map(({ x }) => Math.sqrt(limit - x));
  const [low, high] = [Math.min(...roots), Math.max(...roots)];
  const centre = eightDigits((low + high) / 2);
  const halfWidth = eightDigits((high - low) / 2);
  const rows = roots.map((root) => chebyshevRow((root - centre) / halfWidth, degree));
  const sumOf = (term: (row: readonly number[], index: number) => number): number =>
    rows.reduce((sum, row, index) => sum + term(row, index), 0);
  const normal = countTo(degree + 1).map((i) => [
    ...countTo(degree + 1).map((j) => sumOf((row) => at(row, i) * at(row, j))),
    sumOf((row, index) => at(row, i) * (samples[index]?.y ?? 0)),
  ]);
  const coefficients = toPowers(solve(normal)).map((value) => Number(value.toFixed(decimals)));
  return { limit, centre, halfWidth, coefficients };
}
