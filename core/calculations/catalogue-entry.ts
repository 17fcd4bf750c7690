import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { toGaugeReading } from '../units/branding.ts';
import * as values from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import type { Amount } from '../units/amount.ts';
import type { UnitId, UnitSystem } from '../units/units.ts';
import type { Calculated } from './calculated.ts';
import { atmosphereOf, baseOf, needBase, needChoice } from './catalogue-inputs.ts';
import type { BadInput, InputValues } from './catalogue-inputs.ts';
import type { Key } from './catalogue-keys.ts';
import type { Formula, Standing } from './formula.ts';

/** A branded value stripped to its base unit, for the entry's own units to show. */
export interface Answer {
  readonly base: number;
  /** Further values of the same unit: a target's band, a cylinder's net content. */
  readonly also?: Readonly<Record<string, number>>;
  /** What the value comes to, by name: `state: ['closed', 'openElsewhere']`, `common: '3'`. Ids, not wording. */
  readonly findings?: Findings;
  /** Further values of other units: an expected pressure beside a drop, a deadline beside a limit. */
  readonly beside?: Readonly<Record<string, Amount>>;
  /** Where a default that was looked up comes from. */
  readonly source?: string;
  /** Where what was looked up stands on less than the formula does. */
  readonly standing?: Standing;
  /** What another source says instead, where two conflict. */
  readonly otherSource?: string;
}

/** One id, or every one that the inputs leave possible. */
export type Findings = Readonly<Record<string, string | readonly string[]>>;

export interface Entry {
  readonly formula: Formula;
  readonly keys: readonly Key[];
  /** What its value is shown in. */
  readonly units: Record<UnitSystem, UnitId>;
  readonly run: (inputs: InputValues) => Calculated<Answer> | BadInput;
}

export const GAUGE = { us: 'psi', si: 'bar' } as const;
export const TEMPERATURE = { us: 'degF', si: 'degC' } as const;
export const DIFFERENCE = { us: 'dF', si: 'dC' } as const;
export const WEIGHT = { us: 'lb', si: 'kg' } as const;
export const both = (unit: UnitId): Record<UnitSystem, UnitId> => ({ us: unit, si: unit });

export function answer<Value>(
  found: Calculated<Value>,
  toAnswer: (value: Value) => Answer,
): Calculated<Answer> {
  return found.kind === 'refused' ? found : { ...found, value: toAnswer(found.value) };
}

export const plain = (found: Calculated<number>): Calculated<Answer> =>
  answer(found, (base) => ({ base }));

/** Gauge against the altitude given. */
export const gauge = (
  inputs: InputValues,
  found: Calculated<AbsolutePressure>,
): Calculated<Answer> =>
  answer(found, (absolute) => ({ base: toGaugeReading(absolute, atmosphereOf(inputs)) }));

export const refrigerantOf = (inputs: InputValues): RefrigerantId =>
  needChoice(inputs, 'refrigerant', REFRIGERANTS);

export const temperatureOf = (inputs: InputValues, key: string): Temperature =>
  values.temperature(needBase(inputs, key));

export const temperatureIfGiven = (inputs: InputValues, key: string): Temperature | undefined => {
  const base = baseOf(inputs, key);
  return base === undefined ? undefined : values.temperature(base);
};
