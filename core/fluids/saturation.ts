import type { RefrigerantId } from '../terms/refrigerants.ts';
import { absolutePressure, saturationTemperature as onLine } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  SaturationTemperature,
  Temperature,
} from '../units/quantity-values.ts';
import { evaluate } from './evaluate.ts';
import type { Fluid, Phase } from './fluid.ts';
import { FLUIDS } from './fluids.ts';

/** Why there is no saturation state there, with the limit that was passed in its own unit. */
export interface OutOfRange {
  readonly kind: 'refused';
  /**
   * Above critical there is no condensing, below the triple point no liquid; between those and the range's ends
   * the curves are not fitted.
   */
  readonly reason: 'aboveCritical' | 'belowTriple' | 'belowRange' | 'aboveRange';
  readonly refrigerant: RefrigerantId;
  readonly limit: number;
  readonly unit: 'degC' | 'kPaa';
}

export type Saturation<Value> = { readonly kind: 'known'; readonly value: Value } | OutOfRange;

/** The pressure at which it boils (bubble) or condenses (dew) at a temperature; refused beyond the range. */
export function saturationPressure(
  refrigerant: RefrigerantId,
  at: Temperature,
  phase: Phase,
): Saturation<AbsolutePressure> {
  const fluid = FLUIDS[refrigerant];
  if (!(at >= fluid.range.low && at <= fluid.range.high)) return temperatureRefused(fluid, at);
  const log = evaluate(fluid.lines[phase].logPressure, at);
  return { kind: 'known', value: absolutePressure(Math.exp(log)) };
}

/** The temperature at which it boils (bubble) or condenses (dew) at a pressure; refused beyond the range. */
export function saturationTemperature<Line extends Phase>(
  refrigerant: RefrigerantId,
  at: AbsolutePressure,
  phase: Line,
): Saturation<SaturationTemperature<Line>> {
  const fluid = FLUIDS[refrigerant];
  const line = fluid.lines[phase];
  if (!(at >= line.low && at <= line.high)) return pressureRefused(fluid, at, phase);
  return { kind: 'known', value: onLine(evaluate(line.temperature, Math.log(at))) };
}

export function temperatureRefused(fluid: Fluid, at: Temperature): OutOfRange {
  const { id, range, critical, triple } = fluid;
  const refused = { kind: 'refused', refrigerant: id, unit: 'degC' } as const;
  if (at >= critical.temperature) {
    return { ...refused, reason: 'aboveCritical', limit: critical.temperature };
  }
  if (triple !== null && at < triple.temperature) {
    return { ...refused, reason: 'belowTriple', limit: triple.temperature };
  }
  return at > range.high
    ? { ...refused, reason: 'aboveRange', limit: range.high }
    : { ...refused, reason: 'belowRange', limit: range.low };
}

function pressureRefused(fluid: Fluid, at: AbsolutePressure, phase: Phase): OutOfRange {
  const refused = { kind: 'refused', refrigerant: fluid.id, unit: 'kPaa' } as const;
  if (at >= fluid.critical.pressure) {
    return { ...refused, reason: 'aboveCritical', limit: fluid.critical.pressure };
  }
  const { triple } = fluid;
  if (triple !== null && at < triple.pressure) {
    return { ...refused, reason: 'belowTriple', limit: triple.pressure };
  }
  const { low, high } = fluid.lines[phase];
  return at > high
    ? { ...refused, reason: 'aboveRange', limit: high }
    : { ...refused, reason: 'belowRange', limit: low };
}
