import type { Calculated, Caution } from '../../core/calculations/calculated.ts';

/** The value, where a test's subject is the value and a refusal is a failure. */
export function knownValue<Value>(found: Calculated<Value>): Value {
  if (found.kind === 'refused') throw new Error(`refused: ${found.reason}`);
  return found.value;
}

export function cautionsOf(found: Calculated<unknown>): readonly Caution[] {
  return found.kind === 'known' ? found.cautions : [];
}
