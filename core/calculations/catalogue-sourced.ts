import type { Calculated } from './calculated.ts';
import { answer } from './catalogue-entry.ts';
import type { Answer } from './catalogue-entry.ts';
import type { Sourced } from './formula.ts';

/** What the defaults used were taken from, and what conflicts with them. */
export const sourced = (
  ...of: readonly Sourced<unknown>[]
): Pick<Answer, 'source' | 'otherSource'> => {
  const others = of.flatMap(({ otherSource }) => otherSource ?? []);
  return {
    source: of.map(({ source, standing }) => `default: ${source} (${standing})`).join('; '),
    ...(others.length === 0 ? {} : { otherSource: others.join('; ') }),
  };
};

/** Only what conflicts, where the formula's own source names the value already. */
export const other = ({ otherSource }: Sourced<unknown>): Pick<Answer, 'otherSource'> =>
  otherSource === undefined ? {} : { otherSource };

/** With what the default leans on, where the input did not give its own. */
export const orDefault = <Value extends number>(
  found: Calculated<Value>,
  given: unknown,
  { of, toBase }: { of: Sourced<unknown>; toBase: (value: Value) => number },
): Calculated<Answer> =>
  answer(found, (value) => ({
    base: toBase(value),
    ...(given === undefined ? sourced(of) : {}),
  }));
