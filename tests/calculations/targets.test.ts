import { describe, expect, it } from 'vitest';
import { condensingTarget, evaporatingTarget } from '../../core/calculations/targets.ts';
import { degreesF, differenceF } from '../../core/units/quantity-values.ts';
import { knownValue } from './known-value.ts';

const reachIn = { kind: 'class', equipment: 'reachIn' } as const;
const given = (degF: number) => ({ kind: 'given', difference: differenceF(degF) }) as const;

describe('condensing target', () => {
  it('says that a class default is only a default, with its band and source', () => {
    const found = condensingTarget({ ambient: degreesF(75), design: reachIn });
    expect(found).toMatchObject({ cautions: ['designTableOnly'] });
    const { low, high, from } = knownValue(found);
    expect(low).toBeCloseTo(degreesF(100), 9);
    expect(high).toBeCloseTo(degreesF(110), 9);
    expect(from?.standing).toBe('common practice');
  });

  it('is what head pressure control holds, where that is higher', () => {
    const cold = {
      ambient: degreesF(20),
      design: given(15),
      headControl: degreesF(82),
    };
    expect(knownValue(condensingTarget(cold)).value).toBeCloseTo(degreesF(82), 9);
    const warm = { ...cold, ambient: degreesF(95) };
    expect(knownValue(condensingTarget(warm)).value).toBeCloseTo(degreesF(110), 9);
  });

  it('has no steady value for an ice machine', () => {
    const design = { kind: 'class', equipment: 'iceMachine' } as const;
    expect(condensingTarget({ ambient: degreesF(75), design })).toEqual({
      kind: 'refused',
      reason: 'noTargetKnown',
    });
  });
});

describe('evaporating target', () => {
  it('follows the box with a valve', () => {
    const box = degreesF(44);
    const found = evaporatingTarget({ metering: 'txv', box, design: given(20) });
    expect(knownValue(found).value).toBeCloseTo(degreesF(24), 9);
  });

  it('stands at the set point with a capillary tube, at design load only', () => {
    const setpoint = degreesF(36);
    const found = evaporatingTarget({ metering: 'capTube', setpoint, design: reachIn });
    expect(knownValue(found).value).toBeCloseTo(degreesF(16), 9);
    expect(found).toMatchObject({ cautions: ['designTableOnly', 'designLoadOnly'] });
  });

  it('warns while a box far above its set point is pulling down', () => {
    const at = (degF: number) =>
      evaporatingTarget({
        metering: 'txv',
        box: degreesF(degF),
        setpoint: degreesF(36),
        design: given(20),
      });
    expect(at(60)).toMatchObject({ cautions: ['pullDown'] });
    expect(at(40)).toMatchObject({ cautions: [] });
  });
});
