import type { RefrigerantId } from '../terms/refrigerants.ts';
import { absolutePressure, temperature } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { glideCaution } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationPressure, saturationTemperature } from './saturation.ts';

interface Coil {
  readonly refrigerant: RefrigerantId;
  readonly pressure: AbsolutePressure;
}

/**
 * A coil full of a blend has no one temperature: it glides between bubble and dew. Split and temperature
 * difference are taken to the middle of the two, about what the air meets on average. In an evaporator the
 * liquid comes in a quarter to a third boiled already, so the true middle lies nearer to dew by half of that
 * share: a sixth of the glide, 2 °F for R-448A. The caution `glideBasis` goes with every such number.
 */
function coilTemperature({ refrigerant, pressure }: Coil): Calculated<Temperature> {
  return andThen(saturationTemperature({ refrigerant, pressure, phase: 'bubble' }), (bubble) =>
    andThen(saturationTemperature({ refrigerant, pressure, phase: 'dew' }), (dew) =>
      known(temperature((bubble + dew) / 2), ...glideCaution(refrigerant)),
    ),
  );
}

/** The middle of bubble and dew at the head pressure. */
export function condensingTemperature(input: {
  readonly refrigerant: RefrigerantId;
  readonly head: AbsolutePressure;
}): Calculated<Temperature> {
  return coilTemperature({ refrigerant: input.refrigerant, pressure: input.head });
}

/** The middle of bubble and dew at the suction pressure. */
export function evaporatingTemperature(input: {
  readonly refrigerant: RefrigerantId;
  readonly suction: AbsolutePressure;
}): Calculated<Temperature> {
  return coilTemperature({ refrigerant: input.refrigerant, pressure: input.suction });
}

/** Each halves the bracket: 30 leave a billionth of the glide. */
const HALVINGS = 30;

/**
 * The pressure whose coil temperature it is: the target for the gauge. The middle of two lines has no curve
 * of its own, so it is bracketed by the two lines' pressures at that temperature and halved.
 */
export function coilPressure(input: {
  readonly refrigerant: RefrigerantId;
  readonly temperature: Temperature;
}): Calculated<AbsolutePressure> {
  return andThen(saturationPressure({ ...input, phase: 'bubble' }), (high) =>
    andThen(saturationPressure({ ...input, phase: 'dew' }), (low) =>
      high === low ? known(high) : closeIn(input, { high, low }),
    ),
  );
}

function closeIn(
  { refrigerant, temperature: wanted }: Parameters<typeof coilPressure>[0],
  { high, low }: { readonly high: AbsolutePressure; readonly low: AbsolutePressure },
): Calculated<AbsolutePressure> {
  let [above, below] = [high, low];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = absolutePressure((above + below) / 2);
    const found = coilTemperature({ refrigerant, pressure: middle });
    if (found.kind === 'refused') return found;
    if (found.value > wanted) above = middle;
    else below = middle;
  }
  return known(absolutePressure((above + below) / 2), ...glideCaution(refrigerant));
}

const COIL_SYMBOLS = symbols(
  ['P', 'pressure in the coil, absolute', 'kPa'],
  ['Tb, Td', 'bubble and dew temperature at P', '°C'],
);
const COIL_RANGE = 'as saturationTemperature; within half the glide of its ends refused';
const COIL_SOURCE =
  'the refrigerant’s saturation curve; of a blend the middle of bubble and dew as the mean coil temperature, from memory of makers’ guidance';

export const condensingTemperatureFormula: Formula = {
  id: 'condensingTemperature',
  name: 'condensing temperature',
  equation: 'SCT = (Tb(P) + Td(P)) / 2',
  symbols: COIL_SYMBOLS,
  range: COIL_RANGE,
  source: COIL_SOURCE,
  standing: 'from memory',
  example: {
    inputs: { refrigerant: 'R-134a', headPressure: '172psi' },
    gives: { value: 120, unit: 'degF' },
    within: 0.6,
    source: 'achrnews.com/articles/133927: 172 psig of R-134a is 120 °F',
    standing: 'published',
  },
};

export const evaporatingTemperatureFormula: Formula = {
  id: 'evaporatingTemperature',
  name: 'evaporating temperature',
  equation: 'SST = (Tb(P) + Td(P)) / 2',
  symbols: COIL_SYMBOLS,
  range: COIL_RANGE,
  source: COIL_SOURCE,
  standing: 'from memory',
  example: {
    inputs: { refrigerant: 'R-134a', suctionPressure: '15psi' },
    gives: { value: 15, unit: 'degF' },
    within: 0.6,
    source: 'achrnews.com/articles/142973: 15 psig of R-134a is 15 °F',
    standing: 'published',
  },
};

export const coilPressureFormula: Formula = {
  id: 'coilPressure',
  name: 'pressure at a coil temperature',
  equation: 'P with (Tb(P) + Td(P)) / 2 = T',
  symbols: COIL_SYMBOLS,
  range: COIL_RANGE,
  source: COIL_SOURCE,
  standing: 'from memory',
  example: {
    inputs: { refrigerant: 'R-134a', temperature: '38F' },
    gives: { value: 33, unit: 'psi' },
    within: 0.3,
    source: 'achrnews.com/articles/142973: 33 psig of R-134a is 38 °F',
    standing: 'published',
  },
};
