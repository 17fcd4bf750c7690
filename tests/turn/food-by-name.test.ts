import { describe, expect, it } from 'vitest';
import { timedVisit, type TimedLine } from '../support/timed-visit.ts';

const told = (...lines: readonly TimedLine[]): string => timedVisit(...lines).last.reply.text;

const BOTH: TimedLine = [0, 'milk is forty two, cheese is forty four'];

describe('food that was probed', () => {
  it('is said back and said again by its name', () => {
    expect(told(BOTH)).toBe('Milk 42, cheese 44.');
    expect(told(BOTH, [1, 'say that again'])).toBe('Milk 42, cheese 44.');
    expect(told(BOTH, [1, 'no, make it forty five'])).toBe('Cheese 45 now, was 44.');
    expect(told(BOTH, [1, 'take that back'])).toBe('Taken back: cheese 44.');
  });

  it('is told by its name when it is asked for, each that was probed', () => {
    const milk: TimedLine = [0, 'milk is forty two'];
    expect(told(milk, [1, 'what is the product'])).toBe('Milk is 42 °F.');
    expect(told(BOTH, [1, 'what is the product'])).toBe('Latest: milk 42 °F, cheese 44 °F.');
    expect(told(BOTH, [1, 'milk is forty one'], [2, 'read back my readings'])).toBe(
      'Latest: milk 41 °F, cheese 44 °F.',
    );
  });

  it('is never held against another food', () => {
    const lettuce: TimedLine = [20, 'the lettuce is fifty'];
    expect(told(BOTH, lettuce, [21, 'what is the product doing'])).not.toMatch(/up|over|steady/i);
    const after: TimedLine = [21, 'mark this as after'];
    const compared = told(BOTH, [1, 'that is my before'], lettuce, after, [22, 'compare']);
    expect(compared).not.toMatch(/product/i);
  });
});
