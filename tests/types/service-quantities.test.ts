/** What must not compile, of tests, weights, gas in air and sensors: `tsc -p tests` decides. */
import { describe, expectTypeOf, it } from 'vitest';
import type { chargeByWeight, lineContent } from '../../core/calculations/charge-weights.ts';
import type { roomConcentration, shareOfAir } from '../../core/calculations/gas-in-air.ts';
import type { leakRate } from '../../core/calculations/leak-rate.ts';
import type { equivalentOf } from '../../core/calculations/leak-rules.ts';
import type { nitrogenTest } from '../../core/calculations/nitrogen-test.ts';
import type { platinumTemperature } from '../../core/calculations/platinum.ts';
import type { iceBathCheck } from '../../core/calculations/thermometer-checks.ts';
import type { dryingVacuum } from '../../core/calculations/vacuum.ts';
import type {
  CarbonDioxideEquivalent,
  Concentration,
  GaugePressure,
  Length,
  Mass,
  Ratio,
  Resistance,
  Temperature,
  TemperatureDifference,
  Volume,
} from '../../core/units/quantity-values.ts';

type First<F extends (...args: never[]) => unknown> = Parameters<F>[0];
type With<F extends (...args: never[]) => unknown, Key extends keyof First<F>, Value> = Omit<
  First<F>,
  Key
> &
  Record<Key, Value>;

describe('what must not compile', () => {
  it('a gauge reading where a pressure test or a vacuum takes an absolute one', () => {
    expectTypeOf<With<typeof nitrogenTest, 'found', GaugePressure>>().not.toExtend<
      First<typeof nitrogenTest>
    >();
    expectTypeOf<With<typeof dryingVacuum, 'vacuum', GaugePressure>>().not.toExtend<
      First<typeof dryingVacuum>
    >();
  });

  it('a mass for a volume, a length or what warms as much', () => {
    expectTypeOf<Mass>().not.toExtend<Volume>();
    expectTypeOf<Mass>().not.toExtend<Concentration>();
    expectTypeOf<CarbonDioxideEquivalent>().not.toExtend<Mass>();
    expectTypeOf<With<typeof roomConcentration, 'room', Mass>>().not.toExtend<
      First<typeof roomConcentration>
    >();
    expectTypeOf<With<typeof lineContent, 'length', Mass>>().not.toExtend<
      First<typeof lineContent>
    >();
    expectTypeOf<With<typeof equivalentOf, 'charge', CarbonDioxideEquivalent>>().not.toExtend<
      First<typeof equivalentOf>
    >();
  });

  it('a share of the air where grams for a cubic metre belong', () => {
    expectTypeOf<With<typeof shareOfAir, 'concentration', Ratio>>().not.toExtend<
      First<typeof shareOfAir>
    >();
  });

  it('ohms for degrees, a degree for a tolerance', () => {
    expectTypeOf<With<typeof platinumTemperature, 'resistance', Temperature>>().not.toExtend<
      First<typeof platinumTemperature>
    >();
    expectTypeOf<Resistance>().not.toExtend<Temperature>();
    expectTypeOf<{ reading: TemperatureDifference }>().not.toExtend<First<typeof iceBathCheck>>();
    expectTypeOf<{ reading: Temperature; tolerance: Temperature }>().not.toExtend<
      First<typeof iceBathCheck>
    >();
  });

  it('a bare number of days, grams or metres', () => {
    expectTypeOf<With<typeof leakRate, 'since', number>>().not.toExtend<First<typeof leakRate>>();
    expectTypeOf<With<typeof chargeByWeight, 'nameplate', number>>().not.toExtend<
      First<typeof chargeByWeight>
    >();
    expectTypeOf<number>().not.toExtend<Length>();
  });
});
