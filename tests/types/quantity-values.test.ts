/** What must not compile. The compiler decides (`tsc -p tests`); running it only shows that the file is there. */
import { describe, expectTypeOf, it } from 'vitest';
import type {
  coilPressure,
  condensingTemperature,
} from '../../core/calculations/coil-temperature.ts';
import type { compressionRatio } from '../../core/calculations/compression-ratio.ts';
import type { runCapacitance } from '../../core/calculations/capacitors.ts';
import type { voltageImbalance } from '../../core/calculations/imbalance.ts';
import type { switchAcross, switchToGround } from '../../core/calculations/switch-voltage.ts';
import type { apparentPower, power } from '../../core/calculations/power.ts';
import type {
  controlCutOut,
  lowPressureCutOut,
} from '../../core/calculations/pressure-controls.ts';
import type { superheat } from '../../core/calculations/superheat.ts';
import type { condensingTarget, evaporatingTarget } from '../../core/calculations/targets.ts';
import type { saturationPressure, saturationTemperature } from '../../core/fluids/saturation.ts';
import type { Amount } from '../../core/units/amount.ts';
import type { fromTemperatureDifference, toAbsolutePressure } from '../../core/units/branding.ts';
import type {
  AbsolutePressure,
  Current,
  GaugePressure,
  Length,
  Mass,
  SaturationTemperature,
  Temperature,
  TemperatureDifference,
  Voltage,
  VoltageToGround,
  aboveDew,
  belowBubble,
  difference,
  lower,
  raise,
} from '../../core/units/quantity-values.ts';

type First<F extends (...args: never[]) => unknown> = Parameters<F>[0];
type With<F extends (...args: never[]) => unknown, Key extends keyof First<F>, Value> = Omit<
  First<F>,
  Key
> &
  Record<Key, Value>;

describe('what must not compile', () => {
  it('one kind of value for another', () => {
    expectTypeOf<GaugePressure>().not.toExtend<AbsolutePressure>();
    expectTypeOf<AbsolutePressure>().not.toExtend<GaugePressure>();
    expectTypeOf<Temperature>().not.toExtend<TemperatureDifference>();
    expectTypeOf<TemperatureDifference>().not.toExtend<Temperature>();
    expectTypeOf<Voltage>().not.toExtend<Current>();
    expectTypeOf<Length>().not.toExtend<Mass>();
  });

  it('a plain number where a quantity belongs', () => {
    expectTypeOf<number>().not.toExtend<GaugePressure>();
    expectTypeOf<number>().not.toExtend<Temperature>();
    expectTypeOf<number>().not.toExtend<TemperatureDifference>();
  });

  it('a gauge reading in a saturation table or in a ratio', () => {
    expectTypeOf<GaugePressure>().not.toExtend<Parameters<typeof saturationTemperature>[1]>();
    expectTypeOf<TemperatureDifference>().not.toExtend<Parameters<typeof saturationPressure>[1]>();
    expectTypeOf<With<typeof superheat, 'suction', GaugePressure>>().not.toExtend<
      First<typeof superheat>
    >();
    expectTypeOf<With<typeof compressionRatio, 'head', GaugePressure>>().not.toExtend<
      First<typeof compressionRatio>
    >();
    expectTypeOf<With<typeof condensingTemperature, 'head', GaugePressure>>().not.toExtend<
      First<typeof condensingTemperature>
    >();
  });

  it('a difference where a point belongs, and a point where a difference does', () => {
    expectTypeOf<With<typeof superheat, 'suctionLine', TemperatureDifference>>().not.toExtend<
      First<typeof superheat>
    >();
    expectTypeOf<With<typeof coilPressure, 'temperature', TemperatureDifference>>().not.toExtend<
      First<typeof coilPressure>
    >();
    expectTypeOf<With<typeof condensingTarget, 'ambient', TemperatureDifference>>().not.toExtend<
      First<typeof condensingTarget>
    >();
    expectTypeOf<{ kind: 'given'; difference: Temperature }>().not.toExtend<
      First<typeof condensingTarget>['design']
    >();
    expectTypeOf<Temperature>().not.toExtend<Parameters<typeof raise>[1]>();
    expectTypeOf<Temperature>().not.toExtend<Parameters<typeof lower>[1]>();
    expectTypeOf<TemperatureDifference>().not.toExtend<Parameters<typeof difference>[1]>();
  });

  it('a gauge reading made absolute without the local air, or twice', () => {
    expectTypeOf<Parameters<typeof toAbsolutePressure>>().toEqualTypeOf<
      [gauge: GaugePressure, atmosphere: AbsolutePressure]
    >();
    expectTypeOf<AbsolutePressure>().not.toExtend<Parameters<typeof toAbsolutePressure>[0]>();
  });

  it('a difference written in a unit of temperature', () => {
    expectTypeOf<'degF'>().not.toExtend<Parameters<typeof fromTemperatureDifference>[1]>();
    expectTypeOf<'dF'>().toExtend<Parameters<typeof fromTemperatureDifference>[1]>();
    expectTypeOf<'furlong'>().not.toExtend<Amount['unit']>();
  });

  it('a fixed restriction judged by the box as it is now', () => {
    expectTypeOf<
      Omit<First<typeof evaporatingTarget>, 'metering' | 'box'> & {
        metering: 'capTube';
        box: Temperature;
      }
    >().not.toExtend<First<typeof evaporatingTarget>>();
  });

  it('amps where volts belong', () => {
    expectTypeOf<With<typeof voltageImbalance, 'ab', Current>>().not.toExtend<
      First<typeof voltageImbalance>
    >();
    expectTypeOf<With<typeof runCapacitance, 'current', Voltage>>().not.toExtend<
      First<typeof runCapacitance>
    >();
  });

  it('dew where bubble belongs, bubble where dew does, or a line nobody chose', () => {
    type Dew = SaturationTemperature<'dew'>;
    type Bubble = SaturationTemperature<'bubble'>;
    expectTypeOf<Bubble>().not.toExtend<Dew>();
    expectTypeOf<Dew>().not.toExtend<Bubble>();
    expectTypeOf<Bubble>().not.toExtend<Parameters<typeof aboveDew>[1]>();
    expectTypeOf<Dew>().not.toExtend<Parameters<typeof belowBubble>[1]>();
    expectTypeOf<SaturationTemperature<'dew' | 'bubble'>>().not.toExtend<Dew>();
    expectTypeOf<Temperature>().not.toExtend<Parameters<typeof aboveDew>[1]>();
    expectTypeOf<Dew>().toExtend<Parameters<typeof aboveDew>[1]>();
    expectTypeOf<Dew>().toExtend<Temperature>();
  });

  it('volts to ground where volts across belong, and the other way', () => {
    expectTypeOf<VoltageToGround>().not.toExtend<Voltage>();
    expectTypeOf<Voltage>().not.toExtend<VoltageToGround>();
    expectTypeOf<With<typeof switchAcross, 'across', VoltageToGround>>().not.toExtend<
      First<typeof switchAcross>
    >();
    expectTypeOf<With<typeof switchToGround, 'before', Voltage>>().not.toExtend<
      First<typeof switchToGround>
    >();
    expectTypeOf<With<typeof voltageImbalance, 'ab', VoltageToGround>>().not.toExtend<
      First<typeof voltageImbalance>
    >();
  });

  it('volts to ground where volts across belong, and the other way round', () => {
    expectTypeOf<With<typeof switchAcross, 'across', VoltageToGround>>().not.toExtend<
      First<typeof switchAcross>
    >();
    expectTypeOf<With<typeof switchToGround, 'before', Voltage>>().not.toExtend<
      First<typeof switchToGround>
    >();
  });

  it('a pressure where a drop or a differential belongs', () => {
    expectTypeOf<With<typeof lowPressureCutOut, 'lineDrop', AbsolutePressure>>().not.toExtend<
      First<typeof lowPressureCutOut>
    >();
    expectTypeOf<With<typeof controlCutOut, 'differential', GaugePressure>>().not.toExtend<
      First<typeof controlCutOut>
    >();
    expectTypeOf<ReturnType<typeof apparentPower>>().not.toEqualTypeOf<ReturnType<typeof power>>();
  });

  it('but the right kinds do', () => {
    expectTypeOf<With<typeof superheat, 'suction', AbsolutePressure>>().toExtend<
      First<typeof superheat>
    >();
    expectTypeOf<AbsolutePressure>().toExtend<Parameters<typeof saturationTemperature>[1]>();
  });
});
