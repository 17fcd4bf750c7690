import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runCalculation } from '../../core/calculations/catalogue.ts';
import {
  chargeByWeight,
  lineContent,
  receiverCapacity,
} from '../../core/calculations/charge-weights.ts';
import { cylinderFill, liquidShare } from '../../core/calculations/cylinder-fill.ts';
import { DOT_FILLING_DENSITIES, FILL_SHARE } from '../../core/calculations/cylinder-fill.ts';
import { leakRate, rollingLeakRate } from '../../core/calculations/leak-rate.ts';
import { leakCheckInterval, leakThreshold } from '../../core/calculations/leak-rules.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import {
  degreesF,
  duration,
  length,
  mass,
  ratio,
  volume,
} from '../../core/units/quantity-values.ts';
import { cautionsOf, knownValue } from './known-value.ts';

const LIQUID = REFRIGERANTS.filter((id) => id !== 'R-744');

describe('a recovery cylinder', () => {
  it.each(LIQUID)(
    'of %s keeps room for vapour at 130 °F, or is not filled that far',
    (refrigerant) => {
      const share = liquidShare({ refrigerant, filled: FILL_SHARE, at: degreesF(130) });
      expect(knownValue(share)).toBeLessThan(1);
      expect(cautionsOf(share)).toContain('neverOverfill');
    },
  );

  it('is never filled past either rule', () => {
    for (const refrigerant of LIQUID) {
      const { net } = knownValue(
        cylinderFill({ refrigerant, waterCapacity: mass(1000), tare: mass(0) }),
      );
      expect(net / 1000).toBeLessThanOrEqual(DOT_FILLING_DENSITIES[refrigerant] ?? Infinity);
    }
  });

  it('of carbon dioxide is refused whichever way it is asked', () => {
    const inputs = { refrigerant: 'R-744', waterCapacity: '50lb', tare: '30lb' };
    const refused = { refused: { reason: 'ruleDoesNotApply' } };
    expect(runCalculation('cylinderFill', inputs)).toMatchObject(refused);
    expect(runCalculation('cylinderRemaining', { ...inputs, present: '40lb' })).toMatchObject(
      refused,
    );
    expect(runCalculation('specificGravity', { refrigerant: 'R-744' })).toMatchObject(refused);
  });

  it('says what the trade prints where it differs', () => {
    const result = runCalculation('specificGravity', { refrigerant: 'R-22' });
    expect('otherSource' in result && result.otherSource).toContain('1.197');
  });

  it('is refused a weight below its tare', () => {
    const inputs = { refrigerant: 'R-22', waterCapacity: '50lb', tare: '30lb', present: '29lb' };
    expect(runCalculation('cylinderRemaining', inputs)).toMatchObject({
      refused: { reason: 'notPositive' },
    });
  });
});

describe('liquid in a line or a vessel', () => {
  it('doubles with the length and goes four times with the bore', () => {
    const content = (metres: number, bore: number) =>
      knownValue(lineContent({ refrigerant: 'R-290', length: length(metres), bore: length(bore) }));
    expect(content(2, 0.006) / content(1, 0.006)).toBeCloseTo(2, 10);
    expect(content(1, 0.012) / content(1, 0.006)).toBeCloseTo(4, 10);
  });

  it('warns of fire and of liquid shut in', () => {
    const found = lineContent({ refrigerant: 'R-290', length: length(1), bore: length(0.006) });
    expect(cautionsOf(found)).toEqual(['flammable', 'trappedLiquid']);
    const receiver = receiverCapacity({ refrigerant: 'R-404A', room: volume(5) });
    expect(cautionsOf(receiver)).toEqual(
      expect.arrayContaining(['neverOverfill', 'trappedLiquid']),
    );
  });

  it('is refused where there is none', () => {
    const at = {
      refrigerant: 'R-744',
      at: degreesF(95),
      length: length(1),
      bore: length(0.006),
    } as const;
    expect(lineContent(at)).toMatchObject({ reason: 'aboveCritical' });
  });
});

describe('a charge by weight', () => {
  it('is never above the nameplate', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), (grams) => {
        const { low, high } = knownValue(chargeByWeight({ nameplate: mass(grams), step: mass(1) }));
        expect(high).toBe(grams);
        expect(low).toBeLessThan(high);
      }),
    );
  });

  it('of 150 g needs better than a tenth of an ounce', () => {
    const found = chargeByWeight({ nameplate: mass(150), step: mass(2.835) });
    expect(knownValue(found).scale).toBe('tooCoarse');
    expect(cautionsOf(found)).toEqual(['chargeByNameplate', 'scaleTooCoarse']);
  });
});

describe('leak rates', () => {
  it('agree between both methods for one addition after a whole year', () => {
    const grams = fc.double({ min: 1, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(grams, grams, (added, charge) => {
        const annual = leakRate({
          added: mass(added),
          charge: mass(charge),
          since: duration(365 * 1440),
        });
        const rolling = rollingLeakRate({
          additions: [{ daysAgo: 0, added: mass(added) }],
          charge: mass(charge),
        });
        expect(knownValue(annual)).toBeCloseTo(knownValue(rolling), 10);
      }),
    );
  });

  it('exactly at the threshold are not over it', () => {
    const verdict = (rate: number) =>
      knownValue(
        leakThreshold({
          refrigerant: 'R-448A',
          charge: mass(20_000),
          use: 'commercialRefrigeration',
          rate: ratio(rate),
        }),
      );
    expect(verdict(0.2).verdict).toBe('within');
    expect(verdict(0.2001)).toMatchObject({ verdict: 'overThreshold', repairDays: 30 });
    expect(verdict(0.2).repairDays).toBeNull();
  });

  it('send to the authority every time', () => {
    const inputs = { refrigerant: 'R-404A', charge: '100lb' };
    for (const result of [
      runCalculation('leakCheckInterval', inputs),
      runCalculation('carbonDioxideEquivalent', inputs),
      runCalculation('leakThreshold', { ...inputs, use: 'comfortCooling', rate: '12%' }),
      runCalculation('rollingLeakRate', { additions: '1day:1lb', charge: '100lb' }),
    ]) {
      expect('cautions' in result && result.cautions).toContain('verifyWithAuthority');
    }
  });

  it('are checked half as often with fixed detection', () => {
    const months = (detection: boolean) =>
      knownValue(
        leakCheckInterval({
          refrigerant: 'R-404A',
          charge: mass(20_000),
          hermetic: false,
          detection,
        }),
      ).months;
    expect([months(false), months(true)]).toEqual([6, 12]);
  });
});
