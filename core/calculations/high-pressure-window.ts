import { STANDARD_ATMOSPHERE } from '../units/atmosphere.ts';
import { absolutePressure, raise } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  PressureDifference,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { CUT_OUT_MARGIN, SHARE_OF_RELIEF } from './control-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationPressure } from './saturation.ts';

export interface PressureWindow {
  /** Above the hottest day's head. */
  readonly lowest: AbsolutePressure;
  /** Below every limit given. */
  readonly highest: AbsolutePressure;
  /** `empty`: no setting serves, and none is picked. */
  readonly window: 'open' | 'empty';
}

/**
 * Between which pressures a high-pressure cut-out may stand: above the head of the hottest day with a margin,
 * below the lowest component's rating and below nine tenths of the relief valve's setting (gauge).
 */
export function highPressureWindow(input: {
  readonly refrigerant: RefrigerantId;
  readonly hottest: Temperature;
  readonly split: TemperatureDifference;
  /** The lowest of the plate and every component. */
  readonly rating: AbsolutePressure;
  readonly relief?: AbsolutePressure;
  readonly margin?: PressureDifference;
  readonly atmosphere?: AbsolutePressure;
}): Calculated<PressureWindow> {
  const { refrigerant, hottest, split, rating, relief } = input;
  const atmosphere = input.atmosphere ?? STANDARD_ATMOSPHERE;
  const condensing = raise(hottest, split);
  const head = saturationPressure({ refrigerant, temperature: condensing, phase: 'bubble' });
  return andThen(head, (hottestHead) => {
    const lowest = absolutePressure(hottestHead + (input.margin ?? CUT_OUT_MARGIN.value));
    const highest = absolutePressure(Math.min(rating, belowRelief(relief, atmosphere)));
    const window = lowest < highest ? 'open' : 'empty';
    return known({ lowest, highest, window }, 'repeatedReset', 'pressureLimit');
  });
}

function belowRelief(relief: AbsolutePressure | undefined, atmosphere: AbsolutePressure): number {
  if (relief === undefined) return Infinity;
  return SHARE_OF_RELIEF.value * (relief - atmosphere) + atmosphere;
}

export const highPressureWindowFormula: Formula = {
  id: 'highPressureWindow',
  name: 'window for a high-pressure cut-out',
  equation: 'Pbubble(Thot + split) + margin < Pset < min(rating, 0.9 · relief)',
  symbols: symbols(
    ['Thot', 'hottest air entering the condenser', '°C'],
    ['split', 'condensing temperature less entering air', 'K'],
    ['margin', 'above that day’s head', 'kPa'],
    ['rating', 'lowest of plate and components', 'kPa'],
    ['relief', 'relief valve’s setting, gauge', 'kPa'],
  ),
  range:
    'air-cooled, subcritical; an empty window is reported and nothing picked; shown: its low end',
  source: 'the limit: ANSI/ASHRAE Standard 15, from memory; the margin: common practice',
  standing: 'from memory',
  example: {
    inputs: {
      refrigerant: 'R-404A',
      hottestTemp: '110F',
      split: '15dF',
      rating: '450psi',
      margin: '0psi',
    },
    gives: { value: 333, unit: 'psi' },
    within: 0.5,
    source: 'CoolProp 8.0: R-404A at 125 °F boils at 333 psig',
    standing: 'computed',
  },
};
