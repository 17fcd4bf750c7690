import { describe, expect, it } from 'vitest';

import { minimise, type Slope } from '../../../core/hearing/voice/minimise.ts';

const FAR = { steps: 200, least: 1e-14 };

describe('minimise', () => {
  it('finds the bottom of a bowl that is steep one way and flat the other', () => {
    const bowl: Slope = (place) => {
      const [x = 0, y = 0] = place;
      return {
        value: 50 * (x - 1) ** 2 + 0.5 * (y + 2) ** 2,
        gradient: Float64Array.of(100 * (x - 1), y + 2),
      };
    };
    const [x, y] = minimise(bowl, Float64Array.of(5, 5), FAR);
    expect(x).toBeCloseTo(1, 4);
    expect(y).toBeCloseTo(-2, 4);
  });

  // H. H. Rosenbrock, The Computer Journal 3 (1960), 175: a bent valley with its bottom at (1, 1).
  it('follows a bent valley', () => {
    const valley: Slope = (place) => {
      const [x = 0, y = 0] = place;
      return {
        value: 100 * (y - x * x) ** 2 + (1 - x) ** 2,
        gradient: Float64Array.of(-400 * x * (y - x * x) - 2 * (1 - x), 200 * (y - x * x)),
      };
    };
    const [x, y] = minimise(valley, Float64Array.of(-1.2, 1), FAR);
    expect(x).toBeCloseTo(1, 3);
    expect(y).toBeCloseTo(1, 3);
  });

  it('stays where it is when no step goes down', () => {
    const peak: Slope = (place) => ({ value: 0, gradient: place.map(() => 1) });
    const flat: Slope = (place) => ({
      value: place[0] === 3 ? 0 : 1,
      gradient: Float64Array.of(1),
    });
    expect([...minimise(flat, Float64Array.of(3), FAR)]).toEqual([3]);
    expect(minimise(peak, Float64Array.of(3), { steps: 0, least: 0 })[0]).toBe(3);
  });
});
