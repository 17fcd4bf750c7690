import { current } from '../units/quantity-values.ts';
import type { Current } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { CONDUCTOR_SHARE, RATED_LOAD_DIVISOR } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** What the supply conductors of several motors must carry: the largest and a quarter, and the rest. */
export function minimumCircuitAmpacity(input: {
  readonly largest: Current;
  readonly others: Current;
}): Calculated<Current> {
  if (!(input.largest > 0 && input.others >= 0)) return refused('notPositive');
  const found = current(CONDUCTOR_SHARE.value * input.largest + input.others);
  return known(found, 'verifyWithAuthority');
}

export interface RatedLoad {
  readonly value: Current;
  /** By the makers that divide by less. */
  readonly by144: Current;
  readonly by140: Current;
}

/** The plate's rated load current from the current at which the protector would trip: not the amps to expect. */
export function ratedLoadCurrent({
  maximumContinuous,
}: {
  readonly maximumContinuous: Current;
}): Calculated<RatedLoad> {
  if (!(maximumContinuous > 0)) return refused('notPositive');
  const by = (divisor: number): Current => current(maximumContinuous / divisor);
  const found = { value: by(RATED_LOAD_DIVISOR.value), by144: by(1.44), by140: by(1.4) };
  return known(found, 'notRunningAmps');
}

export const minimumCircuitAmpacityFormula: Formula = {
  id: 'minimumCircuitAmpacity',
  name: 'minimum circuit ampacity',
  equation: 'MCA = 1.25 · I1 + ΣI',
  symbols: symbols(
    ['I1', 'rated load current of the largest motor', 'A'],
    ['ΣI', 'rated currents of everything else on the circuit', 'A'],
  ),
  range: 'several motors on one circuit; the plate’s own figure comes first',
  source: CONDUCTOR_SHARE.source,
  standing: 'published',
  example: {
    inputs: { largest: '28.8A', others: '3.8A' },
    gives: { value: 39.8, unit: 'A' },
    within: 0.05,
    source: 'a condensing-unit maker’s 569C sheet, table 4: 28.8 A and 3.8 A, printed 39.8',
    standing: 'published',
  },
};

export const ratedLoadCurrentFormula: Formula = {
  id: 'ratedLoadCurrent',
  name: 'rated load current',
  equation: 'RLA = MCC / 1.56',
  symbols: symbols(['MCC', 'maximum continuous current', 'A']),
  range: 'hermetic compressors; not what it draws at today’s pressures and voltage',
  source: RATED_LOAD_DIVISOR.source,
  standing: 'published',
  example: {
    inputs: { maximumContinuous: '31.2A' },
    gives: { value: 20, unit: 'A' },
    within: 0.005,
    source: '31.2 / 1.56 by hand',
    standing: 'computed',
  },
};
