import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listCalculations, runCalculation } from '../../core/calculations/catalogue.ts';
import type { ListedCalculation } from '../../core/calculations/catalogue.ts';
import { parseAmount } from '../../core/units/parse-amount.ts';

const numbers = fc.oneof(
  fc.integer({ min: -500, max: 5000 }),
  fc.constantFrom(0, -0.0001, 1e-9, 1e15),
);

const plain = (value: number): string => value.toFixed(9).replace(/\.?0+$/, '');
const isUnit = (word: string): boolean => parseAmount(`1${word}`).kind === 'amount';

/** Mostly what the key accepts, sometimes anything. */
function inputsFor({ keys }: ListedCalculation): fc.Arbitrary<Record<string, string>> {
  const entries = keys.map(({ key, accepts, optional }) => {
    const words = accepts.split(', ');
    const usual = accepts.includes(':')
      ? seriesLike(accepts)
      : !words.every(isUnit)
        ? fc.constantFrom(...words)
        : fc
            .tuple(numbers, fc.constantFrom(...words, ''))
            .map(([value, unit]) => `${plain(value)}${unit}`);
    const text = fc.oneof({ weight: 20, arbitrary: usual }, { weight: 1, arbitrary: fc.string() });
    return [key, optional ? fc.option(text, { nil: undefined }) : text] as const;
  });
  return fc
    .record(Object.fromEntries(entries))
    .map((record) =>
      Object.fromEntries(
        Object.entries(record).filter((entry): entry is [string, string] => entry[1] !== undefined),
      ),
    );
}

/** The example with other numbers in it, in any length. */
function seriesLike(example: string): fc.Arbitrary<string> {
  const [pair = ''] = example.split(',');
  const [at = '', value = ''] = pair.split(':').map((part) => part.replace(/^[-\d.]+/, ''));
  return fc
    .array(fc.tuple(numbers, numbers), { minLength: 1, maxLength: 8 })
    .map((points) => points.map(([x, y]) => `${plain(x)}${at}:${plain(y)}${value}`).join(','));
}

describe.each(listCalculations())('$name of any inputs', (listed) => {
  it('answers with a finite number, a refusal or what to write instead', () => {
    fc.assert(
      fc.property(inputsFor(listed), (inputs) => {
        const result = runCalculation(listed.name, inputs);
        if ('value' in result) {
          expect(Number.isFinite(result.value)).toBe(true);
          return;
        }
        if ('badInput' in result) {
          expect(result.badInput.message.length).toBeGreaterThan(10);
          return;
        }
        expect(result.refused.reason).not.toBe('');
      }),
      { numRuns: 500 },
    );
  });
});
