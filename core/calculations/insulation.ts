import { ratio, resistance } from '../units/quantity-values.ts';
import type { Ratio, Resistance, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { INSULATION_FLOORS } from './electrical-defaults.ts';
import type { CompressorBuild } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula, Sourced } from './formula.ts';

/** Up to this rated voltage the maker's rounded floor stands; above it so many ohms a volt. */
const ROUNDED_UP_TO_V = 230;

export interface InsulationVerdict {
  readonly floor: Resistance;
  readonly verdict: 'aboveFloor' | 'belowFloor';
  readonly from: Sourced<unknown>;
}

/** A winding to ground against its maker's floor. One reading condemns nothing above it: the trend does. */
export function insulationFloor(input: {
  readonly measured: Resistance;
  readonly rated: Voltage;
  readonly build: CompressorBuild;
}): Calculated<InsulationVerdict> {
  const { measured, rated, build } = input;
  if (!(measured >= 0 && rated > 0)) return refused('notPositive');
  const from = INSULATION_FLOORS[build];
  const { floor: rounded, ohmsPerVolt } = from.value;
  const floor =
    ohmsPerVolt === undefined || rated <= ROUNDED_UP_TO_V
      ? rounded
      : resistance(ohmsPerVolt * rated);
  return measured < floor
    ? known({ floor, verdict: 'belowFloor', from }, 'insulationTest', 'groundFault')
    : known({ floor, verdict: 'aboveFloor', from }, 'insulationTest');
}

/**
 * The reading after 60 s over the one after 10 s, as one chiller maker asks for. Not the polarisation index of
 * IEEE 43, which is 10 min over 1 min.
 */
export function insulationRatio(input: {
  readonly after10s: Resistance;
  readonly after60s: Resistance;
}): Calculated<Ratio> {
  const { after10s, after60s } = input;
  if (!(after10s > 0 && after60s > 0)) return refused('notPositive');
  return known(ratio(after60s / after10s), 'insulationTest');
}

export const insulationFloorFormula: Formula = {
  id: 'insulationFloor',
  name: 'insulation to ground against the maker’s floor',
  equation: 'R ≥ floor of the build; scroll and semi-hermetic above 230 V: 1,000 Ω · V',
  symbols: symbols(
    ['R', 'winding to ground at the tester’s voltage', 'Ω'],
    ['V', 'rated voltage', 'V'],
  ),
  range:
    'leads off, starter and boards disconnected, not under vacuum; wet oil and liquid refrigerant read low; shown: the floor',
  source: 'each maker’s own: see what was used',
  standing: 'published',
  example: {
    inputs: { measured: '1Mohm', voltage: '460V', build: 'scrollOrSemiHermetic' },
    gives: { value: 0.46, unit: 'Mohm' },
    within: 0.001,
    source: 'a compressor maker’s bulletin AE4-1294: 460 V, 0.46 MΩ',
    standing: 'published',
  },
};

export const insulationRatioFormula: Formula = {
  id: 'insulationRatio',
  name: 'insulation after 60 s over 10 s',
  equation: 'ratio = R60 / R10',
  symbols: symbols(['R60', 'after 60 s', 'Ω'], ['R10', 'after 10 s', 'Ω']),
  range: 'one chiller maker wants 1 or more, each reading at least 50 MΩ',
  source: 'a chiller maker’s 17-19EX manual, page 141',
  standing: 'published',
  example: {
    inputs: { after10s: '100Mohm', after60s: '150Mohm' },
    gives: { value: 1.5, unit: 'ratio' },
    within: 0.001,
    source: '150 / 100 by hand',
    standing: 'computed',
  },
};
