import { FLUIDS } from '../fluids/fluids.ts';
import { saturationPressure, saturationTemperature } from '../fluids/saturation.ts';
import { invariant } from '../unreachable.ts';
import { pressureDifference } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  PressureDifference,
  Temperature,
} from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export type CarbonDioxideState =
  /** Below the triple point: vapour or dry ice, never liquid. */
  | 'noLiquid'
  | 'liquid'
  | 'vapour'
  /** Above the critical temperature: no condensing, no subcooling, no split. */
  | 'transcritical'
  /** Between the points, and no temperature to say which. */
  | 'liquidOrVapour';

export interface CarbonDioxide {
  readonly state: CarbonDioxideState;
  /** Above the triple point; below zero dry ice forms. */
  readonly margin: PressureDifference;
}

const { triple: TRIPLE, critical: CRITICAL } = FLUIDS['R-744'];

function stateOf(pressure: AbsolutePressure, at: Temperature | undefined): CarbonDioxideState {
  invariant(TRIPLE !== null, 'carbon dioxide is a pure substance');
  if (pressure < TRIPLE.pressure) return 'noLiquid';
  if (at !== undefined && at >= CRITICAL.temperature) return 'transcritical';
  if (pressure >= CRITICAL.pressure) return at === undefined ? 'transcritical' : 'liquid';
  if (at === undefined) return 'liquidOrVapour';
  const boiling = saturationPressure('R-744', at, 'bubble');
  if (boiling.kind === 'known') return pressure > boiling.value ? 'liquid' : 'vapour';
  const point = saturationTemperature('R-744', pressure, 'bubble');
  if (point.kind === 'refused') return 'liquidOrVapour';
  return at < point.value ? 'liquid' : 'vapour';
}

/** What carbon dioxide is at a pressure, and how far from dry ice. */
export function carbonDioxide(input: {
  readonly pressure: AbsolutePressure;
  readonly temperature?: Temperature;
}): Calculated<CarbonDioxide> {
  invariant(TRIPLE !== null, 'carbon dioxide is a pure substance');
  if (!(input.pressure > 0)) return refused('notPositive');
  const state = stateOf(input.pressure, input.temperature);
  const cautions: Caution[] = state === 'noLiquid' ? ['dryIce'] : ['trappedLiquid'];
  return known(
    { state, margin: pressureDifference(input.pressure - TRIPLE.pressure) },
    'highPressureCarbonDioxide',
    ...cautions,
  );
}

export const carbonDioxideFormula: Formula = {
  id: 'carbonDioxideState',
  name: 'carbon dioxide: dry ice, liquid or past critical',
  equation: 'margin = p − pt; no liquid while p < pt; no condensing while T ≥ Tc',
  symbols: symbols(
    ['p', 'pressure, absolute', 'kPa'],
    ['pt', 'triple-point pressure, 517.96', 'kPa'],
    ['Tc', 'critical temperature, 30.98', '°C'],
    ['T', 'temperature there, where it is known', '°C'],
  ),
  range:
    'any pressure above nothing; charge vapour until above the triple point before any liquid (from memory)',
  source:
    'equation of state of Span and Wagner 1996 by CoolProp 8.0.1dev; freezeoil.com: 518 kPa, 7.38 MPa',
  standing: 'computed',
  example: {
    inputs: { pressure: '75.1psia' },
    gives: { value: 0, unit: 'psi' },
    within: 0.05,
    source: 'freezeoil.com, liquid carbon dioxide: the triple point is 518 kPa, 75.1 psia',
    standing: 'published',
  },
};
