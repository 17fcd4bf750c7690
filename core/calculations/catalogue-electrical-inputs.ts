/** Electrical inputs of the catalogue, branded. */
import * as values from '../units/quantity-values.ts';
import { baseOf, needBase } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';

export const volts = (inputs: InputValues, key: string): values.Voltage =>
  values.voltage(needBase(inputs, key));
export const amps = (inputs: InputValues, key: string): values.Current =>
  values.current(needBase(inputs, key));
export const ohms = (inputs: InputValues, key: string): values.Resistance =>
  values.resistance(needBase(inputs, key));

/** An input as a property of its own name, or nothing at all where it was not given. */
export const ifGiven = <Name extends string, Value>(
  inputs: InputValues,
  name: Name,
  brand: (base: number) => Value,
): Partial<Record<Name, Value>> => {
  const base = baseOf(inputs, name);
  const given: Partial<Record<Name, Value>> = {};
  if (base !== undefined) given[name] = brand(base);
  return given;
};
