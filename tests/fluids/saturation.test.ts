import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import type { Phase } from '../../core/fluids/fluid.ts';
import { saturationPressure, saturationTemperature } from '../../core/fluids/saturation.ts';
import type { Saturation } from '../../core/fluids/saturation.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { absolutePressure, temperature } from '../../core/units/quantity-values.ts';
import { loadReference, unseenPoints } from '../checks/reference.ts';

const PHASES: readonly Phase[] = ['bubble', 'dew'];

function valueOf<Value>(found: Saturation<Value>): Value {
  if (found.kind === 'refused') throw new Error(`refused: ${found.reason} ${found.refrigerant}`);
  return found.value;
}

const percentOff = (value: number, from: number): number => Math.abs(100 * (value / from - 1));

describe.each(REFRIGERANTS)('%s against its equation of state', (id) => {
  const { points, critical } = loadReference(id);
  const { range, maxError } = FLUIDS[id];
  const unseen = unseenPoints(id);

  it('states an error within 0.05 % and 0.02 K', () => {
    expect(maxError.pressurePercent).toBeLessThan(0.05);
    expect(maxError.temperature).toBeLessThan(0.02);
  });

  it.each(PHASES)('is within it on the %s points that no fit has seen', (phase) => {
    expect(unseen.length).toBeGreaterThan(15);
    for (const point of unseen) {
      const pressure = valueOf(saturationPressure(id, temperature(point.tempC), phase));
      expect(percentOff(pressure, point[phase])).toBeLessThanOrEqual(maxError.pressurePercent);
      const found = valueOf(saturationTemperature(id, absolutePressure(point[phase]), phase));
      expect(Math.abs(found - point.tempC)).toBeLessThanOrEqual(maxError.temperature);
    }
  });

  it('covers the whole reference', () => {
    expect([range.low, range.high]).toEqual([points[0]?.tempC, points.at(-1)?.tempC]);
    expect(critical.tempC - range.high).toBeLessThan(4.6);
  });

  it.each(PHASES)('rises all the way along the %s line', (phase) => {
    const steps = [...new Array<undefined>(2000).keys()].map((step) =>
      temperature(range.low + ((range.high - range.low) * step) / 1999),
    );
    const pressures = steps.map((at) => valueOf(saturationPressure(id, at, phase)));
    expect(pressures.every((p, step) => step === 0 || p > (pressures[step - 1] ?? p))).toBe(true);
    const { low, high } = FLUIDS[id].lines[phase];
    const climbs = [...new Array<undefined>(2000).keys()].map((step) =>
      valueOf(
        saturationTemperature(id, absolutePressure(low + ((high - low) * step) / 1999), phase),
      ),
    );
    expect(climbs.every((t, step) => step === 0 || t > (climbs[step - 1] ?? t))).toBe(true);
  });

  it('never has its dew line above its bubble line', () => {
    for (const { tempC } of points) {
      const [bubble, dew] = PHASES.map((phase) =>
        valueOf(saturationPressure(id, temperature(tempC), phase)),
      );
      // Azeotropes touch: there the two fits may cross by their errors.
      expect(dew).toBeLessThanOrEqual((bubble ?? 0) * (1 + maxError.pressurePercent / 50));
    }
  });
});

/** Mulberry32: a property runner's own overhead would take a minute over so many points. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const POINTS_A_RUN = 100_000;

/** Where the trip there and back is not what the stated error allows, or the curve does not rise. */
function faultAt(id: RefrigerantId, phase: Phase, share: number): string | null {
  const { lines, maxError } = FLUIDS[id];
  const { low, high } = lines[phase];
  const pressure = absolutePressure(low * (high / low) ** share);
  const at = valueOf(saturationTemperature(id, pressure, phase));
  const back = valueOf(saturationPressure(id, at, phase));
  const above = absolutePressure(Math.min(high, pressure * 1.0001));
  const rises = valueOf(saturationTemperature(id, above, phase)) > at || above === pressure;
  if (percentOff(back, pressure) > 2 * maxError.pressurePercent || !rises) {
    return `${id} ${phase} at ${pressure} kPa: ${at} °C and back ${back} kPa, ${rises ? '' : 'falling'}`;
  }
  const warmer = temperature(at + 0.001);
  const higher = saturationPressure(id, warmer, phase);
  return higher.kind === 'refused' || higher.value > back
    ? null
    : `${id} ${phase} falls at ${at} °C`;
}

describe('there and back', () => {
  it('returns to the pressure within twice the stated error and rises, at 100,000 random points', () => {
    const seed = fc.sample(fc.integer(), 1)[0] ?? 1;
    const random = randomFrom(seed);
    const faults: string[] = [];
    for (let point = 0; point < POINTS_A_RUN; point += 1) {
      const id = REFRIGERANTS[Math.floor(random() * REFRIGERANTS.length)] ?? 'R-134a';
      const fault = faultAt(id, random() < 0.5 ? 'dew' : 'bubble', 0.0001 + 0.9998 * random());
      if (fault !== null) faults.push(`seed ${seed}: ${fault}`);
    }
    expect(faults).toEqual([]);
  });
});

describe('beyond the range', () => {
  it.each(REFRIGERANTS)('%s is refused with the limit that was passed', (id) => {
    const { range, critical, lines } = FLUIDS[id];
    const refused = { kind: 'refused', refrigerant: id };
    expect(saturationPressure(id, temperature(range.low - 0.1), 'dew')).toEqual({
      ...refused,
      reason: 'belowRange',
      limit: range.low,
      unit: 'degC',
    });
    expect(saturationPressure(id, temperature(range.high + 0.1), 'dew')).toMatchObject({
      ...refused,
      reason: 'aboveRange',
    });
    expect(saturationPressure(id, critical.temperature, 'bubble')).toEqual({
      ...refused,
      reason: 'aboveCritical',
      limit: critical.temperature,
      unit: 'degC',
    });
    expect(saturationTemperature(id, absolutePressure(0.99 * lines.dew.low), 'dew')).toEqual({
      ...refused,
      reason: 'belowRange',
      limit: lines.dew.low,
      unit: 'kPaa',
    });
    expect(
      saturationTemperature(id, absolutePressure(critical.pressure * 1.01), 'bubble'),
    ).toMatchObject({ ...refused, reason: 'aboveCritical', limit: critical.pressure });
  });

  it('has no condensing for carbon dioxide at 95 °F', () => {
    expect(saturationPressure('R-744', temperature(35), 'bubble')).toMatchObject({
      reason: 'aboveCritical',
      limit: 30.9782,
    });
  });

  it('has no liquid carbon dioxide below 75 psia or −70 °F', () => {
    expect(saturationPressure('R-744', temperature(-57), 'dew')).toMatchObject({
      reason: 'belowTriple',
      limit: -56.558,
    });
    expect(saturationTemperature('R-744', absolutePressure(517), 'bubble')).toMatchObject({
      reason: 'belowTriple',
      limit: 517.9643,
    });
  });

  it('does not take what is not a number for a temperature', () => {
    expect(saturationPressure('R-134a', temperature(NaN), 'dew').kind).toBe('refused');
  });
});
