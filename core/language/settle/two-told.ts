import type { Context } from '../context.ts';
import { isPlausible } from '../numbers/plausible.ts';
import type { Reading } from '../utterance.ts';

/** So far apart two values of one needle lie at most that nobody joins by a word. Ours. */
const MOST_APART = 2;

/** "Box thirty eight thirty nine" is no 3,839: a needle that moves is read twice, and both are kept as its range. */
export function asTwoTold(reading: Reading, { refrigerant }: Context): Reading {
  const { value, unit, quantity } = reading;
  if (value === undefined || unit === null || isPlausible(quantity, { value, unit }, refrigerant)) {
    return reading;
  }
  const [low, high] = twoIn(value) ?? [];
  if (low === undefined || high === undefined) return reading;
  const canBe = [low, high].every((each) =>
    isPlausible(quantity, { value: each, unit }, refrigerant),
  );
  if (!canBe) return reading;
  const { value: _joined, ...others } = reading;
  return { ...others, low, high };
}

/** The two numbers whose figures those of a number are, where they lie near each other. */
function twoIn(value: number): readonly [number, number] | null {
  const figures = String(value);
  if (!/^\d{3,6}$/.test(figures)) return null;
  for (let cut = 1; cut < figures.length; cut += 1) {
    const [low, high] = [Number(figures.slice(0, cut)), Number(figures.slice(cut))];
    if (figures[cut] !== '0' && high > low && high - low <= MOST_APART) return [low, high];
  }
  return null;
}
