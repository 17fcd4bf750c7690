import type { RefrigerantId } from '../terms/refrigerants.ts';
import {
  aboveDew,
  belowBubble,
  differenceF,
  temperatureDifference,
} from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationTemperature } from './saturation.ts';

/**
 * What a gauge and a pipe clamp together may be off by: 1 psi alone is 1.4 °F for R-404A at −20 °F and 2 °F
 * for R-134a at 0 °F.
 */
export const INSTRUMENT_UNCERTAINTY = differenceF(3);

/**
 * How far the suction line is above dew at the pressure of the same place. Down to the instruments'
 * uncertainty below zero the answer is zero, with the caution that liquid may be coming back; below that the
 * reading cannot be: a wrong refrigerant, a clamp off the pipe, or liquid.
 */
export function superheat(input: {
  readonly refrigerant: RefrigerantId;
  readonly suction: AbsolutePressure;
  readonly suctionLine: Temperature;
}): Calculated<TemperatureDifference> {
  const { refrigerant, suction, suctionLine } = input;
  return andThen(saturationTemperature({ refrigerant, pressure: suction, phase: 'dew' }), (dew) =>
    withinUncertainty(aboveDew(suctionLine, dew), {
      reason: 'belowZeroSuperheat',
      nearZero: 'liquidMayReturn',
    }),
  );
}

/**
 * How far the liquid line is below bubble at the pressure of the same place. Near zero, vapour may be
 * flashing in the line: zero with that caution, refused below the instruments' uncertainty.
 */
export function subcooling(input: {
  readonly refrigerant: RefrigerantId;
  readonly head: AbsolutePressure;
  readonly liquidLine: Temperature;
}): Calculated<TemperatureDifference> {
  const { refrigerant, head, liquidLine } = input;
  return andThen(
    saturationTemperature({ refrigerant, pressure: head, phase: 'bubble' }),
    (bubble) =>
      withinUncertainty(belowBubble(liquidLine, bubble), {
        reason: 'belowZeroSubcooling',
        nearZero: 'flashGas',
      }),
  );
}

function withinUncertainty(
  found: TemperatureDifference,
  words: {
    readonly reason: 'belowZeroSuperheat' | 'belowZeroSubcooling';
    readonly nearZero: Caution;
  },
): Calculated<TemperatureDifference> {
  // A hair for the binary fraction: exactly 3 °F below is still within.
  if (found < -(INSTRUMENT_UNCERTAINTY + 1e-9)) {
    return { kind: 'refused', reason: words.reason, value: found, unit: 'dC' };
  }
  if (found < INSTRUMENT_UNCERTAINTY) {
    return known(temperatureDifference(Math.max(0, found)), words.nearZero);
  }
  return known(found);
}

const RANGE =
  'below critical; −3 to 0 °F answers zero with a caution, lower is refused (instrument uncertainty, common practice)';

export const superheatFormula: Formula = {
  id: 'superheat',
  name: 'superheat',
  equation: 'SH = T − Tdew(P)',
  symbols: symbols(
    ['T', 'suction line temperature', '°C'],
    ['P', 'suction pressure at the same point, absolute', 'kPa'],
    ['Tdew', 'dew temperature', '°C'],
  ),
  range: RANGE,
  source: 'achrnews.com/articles/96890, Understanding superheat',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', suctionPressure: '20psi', suctionLineTemp: '30F' },
    gives: { value: 7, unit: 'dF' },
    within: 1,
    source: 'achrnews.com/articles/96890: 30 °F less 23 °F at 20 psig (equation of state: 22.2 °F)',
    standing: 'published',
  },
};

export const subcoolingFormula: Formula = {
  id: 'subcooling',
  name: 'subcooling',
  equation: 'SC = Tbubble(P) − T',
  symbols: symbols(
    ['T', 'liquid line temperature', '°C'],
    ['P', 'head pressure at the same point, absolute', 'kPa'],
    ['Tbubble', 'bubble temperature', '°C'],
  ),
  range: RANGE,
  source: 'acservicetech.com, Clogged liquid line filter drier: saturation less liquid line',
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', headPressure: '172psi', liquidLineTemp: '90F' },
    gives: { value: 30, unit: 'dF' },
    within: 0.6,
    source: 'achrnews.com/articles/133927: 120 °F at 172 psig less 90 °F',
    standing: 'published',
  },
};
