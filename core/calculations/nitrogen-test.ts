import { absolutePressure, pressureDifference } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  PressureDifference,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { KELVIN_AT_ZERO_C, nitrogenPressure } from './nitrogen-pressure.ts';
import { NITROGEN_TEST } from './vacuum-defaults.ts';

/** Rising means that the gas was not at the temperature read, or that liquid refrigerant is in there. */
export type TestVerdict = 'holds' | 'leaks' | 'rises';

export interface NitrogenTest {
  /** Found less expected: below zero is lost. */
  readonly change: PressureDifference;
  readonly expected: AbsolutePressure;
  /** What gauge and thermometer together leave open. */
  readonly uncertainty: PressureDifference;
  readonly verdict: TestVerdict;
}

interface Instruments {
  readonly gaugeError: PressureDifference;
  readonly temperatureError: TemperatureDifference;
}

/** Two readings of the gauge and two of the thermometer: each error counts twice, in quadrature. */
function uncertaintyOf(expected: AbsolutePressure, to: Temperature, by: Instruments): number {
  const perKelvin = expected / (to + KELVIN_AT_ZERO_C);
  return Math.SQRT2 * Math.hypot(by.gaugeError, perKelvin * by.temperatureError);
}

function verdictOf(change: number, uncertainty: number): TestVerdict {
  if (Math.abs(change) <= uncertainty) return 'holds';
  return change < 0 ? 'leaks' : 'rises';
}

/** Whether a nitrogen test held, once the change of temperature is taken off. */
export function nitrogenTest(input: {
  readonly pressure: AbsolutePressure;
  readonly from: Temperature;
  readonly to: Temperature;
  readonly found: AbsolutePressure;
  readonly rating?: AbsolutePressure;
  readonly instruments?: Partial<Instruments>;
}): Calculated<NitrogenTest> {
  const by = { ...NITROGEN_TEST, ...input.instruments };
  return andThen(nitrogenPressure(input), ({ pressure: expected }) => {
    const change = input.found - expected;
    const uncertainty = uncertaintyOf(expected, input.to, by);
    const { rating } = input;
    const over: Caution[] =
      rating !== undefined && Math.max(input.pressure, input.found) > rating
        ? ['testAboveRating']
        : [];
    return known(
      {
        change: pressureDifference(change),
        expected: absolutePressure(expected),
        uncertainty: pressureDifference(uncertainty),
        verdict: verdictOf(change, uncertainty),
      },
      ...over,
    );
  });
}

export const nitrogenTestFormula: Formula = {
  id: 'nitrogenTest',
  name: 'whether a nitrogen pressure test held',
  equation: 'change = P − P2(P1, T1, T2); holds while |change| ≤ √2 · √(g² + (P2/T2 · t)²)',
  symbols: symbols(
    ['P', 'pressure found, absolute', 'kPa'],
    ['P1, P2', 'pressure at the start, and what it should have become, absolute', 'kPa'],
    ['T1, T2', 'gas temperature at the start and now', 'K'],
    ['g', 'error of the gauge', 'kPa'],
    ['t', 'error of the thermometer', 'K'],
  ),
  range: 'as nitrogenPressure; the gauge and thermometer errors are a shop’s setting',
  source:
    'achrnews.com/articles/153295 for the temperature; uncertainties added in quadrature (JCGM 100:2008, 5.1)',
  standing: 'computed',
  example: {
    inputs: { pressure: '500psi', from: '95F', to: '60F', found: '465psi' },
    gives: { value: -0.035, unit: 'psi' },
    within: 0.1,
    source: 'the equation of state has 465.035 psig; the ideal law would call 2.5 psi lost',
    standing: 'computed',
  },
};
