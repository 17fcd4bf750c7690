import { describe, expect, it } from 'vitest';
import { timeToTarget } from '../../core/calculations/time-to-target.ts';
import { temperature } from '../../core/units/quantity-values.ts';
import { seeded } from '../language/random.ts';

const degreesF = (value: number) => temperature(((value - 32) * 5) / 9);

interface Box {
  readonly start: number;
  /** Where the coil would take the air in the end, and how fast, in minutes. */
  readonly end: number;
  readonly constant: number;
  /** How strongly what is stored holds the air up. */
  readonly stored: number;
}

/** Air and what is stored in it, a tenth of a minute at a time: two bodies, where the fit knows of one. */
function* airOf({
  start,
  end,
  constant,
  stored,
}: Box): Generator<{ minutes: number; air: number }> {
  const step = 0.1;
  let [air, product] = [start, start];
  for (let minutes = 0; minutes < 3000; minutes += step) {
    yield { minutes, air };
    const between = (air - product) / 60;
    air -= step * ((air - end) / constant + stored * between);
    product += step * 0.5 * between;
  }
}

interface Asked {
  readonly every: number;
  readonly count: number;
  readonly target: number;
}

/** What a display to the degree showed, and when the box truly came down to the target after that. */
function simulated(box: Box, { every, count, target }: Asked) {
  const readings: { minutes: number; box: ReturnType<typeof degreesF> }[] = [];
  for (const { minutes, air } of airOf(box)) {
    if (readings.length < count && minutes >= readings.length * every - 1e-6) {
      readings.push({ minutes, box: degreesF(Math.round(air)) });
    }
    if (air > target) continue;
    const last = readings.at(-1)?.minutes ?? 0;
    return readings.length === count ? { readings, truth: minutes - last } : null;
  }
  return null;
}

function boxes(count: number) {
  const random = seeded(11);
  const between = (low: number, high: number): number => low + random() * (high - low);
  return Array.from({ length: count }, () => {
    const box: Box = {
      start: between(55, 85),
      end: between(26, 34),
      constant: between(30, 150),
      stored: random() < 0.5 ? 0 : between(0, 0.4),
    };
    const asked: Asked = {
      every: between(5, 20),
      count: Math.floor(between(3, 9)),
      target: between(36, 42),
    };
    return { box, asked };
  });
}

const answers = boxes(400).flatMap(({ box, asked }) => {
  const seen = simulated(box, asked);
  if (seen === null) return [];
  const found = timeToTarget({ readings: seen.readings, target: degreesF(asked.target) });
  return found.kind === 'known' ? [{ ...found.value, truth: seen.truth }] : [];
});

describe('the time to a target, against boxes simulated with what is stored in them', () => {
  it('is answered for most of them, some by their curve', () => {
    expect(answers.length).toBeGreaterThan(250);
    expect(answers.filter(({ basis }) => basis === 'curve').length).toBeGreaterThan(20);
  });

  it('lies within twice its uncertainty, nineteen times in twenty', () => {
    const curves = answers.filter(({ basis }) => basis === 'curve');
    const inside = curves.filter(
      ({ toTarget, uncertainty, truth }) =>
        Math.abs(toTarget - truth) <= 2 * (uncertainty ?? 0) + 1,
    );
    expect(inside.length / curves.length).toBeGreaterThanOrEqual(0.95);
  });

  it('is never too late where it is called the earliest, beyond what a display rounds', () => {
    const late = answers
      .filter(({ basis }) => basis === 'earliest')
      .filter(({ toTarget, truth }) => toTarget > truth * 1.15 + 3);
    expect(late.length / answers.length).toBeLessThan(0.02);
  });
});
