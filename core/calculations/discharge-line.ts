import { degreesF, difference, differenceF, raise } from '../units/quantity-values.ts';
import type { Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula, Sourced } from './formula.ts';

/** On the line, a hand's width from the compressor. */
export const DISCHARGE_LINE_LIMIT: Sourced<Temperature> = {
  value: degreesF(225),
  source: 'achrnews.com/articles/104279, Superheated discharge temperatures: at most 225 °F',
  standing: 'published',
  otherSource: 'achrnews.com/articles/115055 calls 225 to 250 °F the maximum',
};

/** How much hotter the discharge valve is than the line outside. */
const VALVE_ABOVE_LINE = differenceF(75);

/** Discharge less condensing below this: liquid is coming back and evaporating in the compressor. */
export const FLOOD_BACK_MARGIN: Sourced<TemperatureDifference> = {
  value: differenceF(30),
  source: 'discharge line less condensing temperature under about 30 °F: flood-back',
  standing: 'common practice',
};

export interface DischargeLine {
  /** At the valve, by the line. */
  readonly valve: Temperature;
  readonly verdict: 'withinLimit' | 'aboveLimit' | 'floodBack';
}

/** Whether the discharge is too hot for the oil, or too cool for a dry suction. */
export function dischargeLine(input: {
  readonly line: Temperature;
  readonly condensing?: Temperature;
}): Calculated<DischargeLine> {
  const { line, condensing } = input;
  const valve = raise(line, VALVE_ABOVE_LINE);
  if (line > DISCHARGE_LINE_LIMIT.value) {
    return known({ valve, verdict: 'aboveLimit' }, 'hotSurface', 'aboveCompressorLimit');
  }
  const isCool = condensing !== undefined && difference(line, condensing) < FLOOD_BACK_MARGIN.value;
  return isCool
    ? known({ valve, verdict: 'floodBack' }, 'hotSurface', 'liquidMayReturn')
    : known({ valve, verdict: 'withinLimit' }, 'hotSurface');
}

export const dischargeLineFormula: Formula = {
  id: 'dischargeLine',
  name: 'discharge line temperature',
  equation: 'Tvalve = Tline + 75 °F; Tline ≤ 225 °F; Tline − SCT ≥ 30 °F',
  symbols: symbols(
    ['Tline', 'discharge line 3 to 6 in. from the compressor', '°C'],
    ['SCT', 'condensing temperature', '°C'],
  ),
  range:
    'reciprocating compressors running steadily; the maker’s limit comes first; shown: the valve',
  source: DISCHARGE_LINE_LIMIT.source,
  standing: 'published',
  example: {
    inputs: { dischargeLineTemp: '225F' },
    gives: { value: 300, unit: 'degF' },
    within: 0.5,
    source: 'achrnews.com/articles/104279: 225 °F on the line is about 300 °F at the valve',
    standing: 'published',
  },
};
