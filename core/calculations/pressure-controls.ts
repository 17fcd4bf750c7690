import { STANDARD_ATMOSPHERE } from '../units/atmosphere.ts';
import { absolutePressure, lower, pressureDifference } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  PressureDifference,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { TRIP_TOLERANCES } from './control-defaults.ts';
import type { ControlSide } from './control-defaults.ts';
import { glideCaution } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { saturationPressure } from './saturation.ts';

/** Dew: what a suction gauge is read against. */
function dewPressure(
  refrigerant: RefrigerantId,
  temperature: Temperature,
): Calculated<AbsolutePressure> {
  return andThen(saturationPressure({ refrigerant, temperature, phase: 'dew' }), (pressure) =>
    known(pressure, ...glideCaution(refrigerant)),
  );
}

/**
 * Where a low-pressure control that cycles the box closes again: the pressure of a coil warm enough to have
 * cleared itself of frost and cold enough for the box.
 */
export function lowPressureCutIn(input: {
  readonly refrigerant: RefrigerantId;
  readonly coil: Temperature;
}): Calculated<AbsolutePressure> {
  return dewPressure(input.refrigerant, input.coil);
}

/** Where it opens: the coil under the lowest wanted box, less what the suction line loses up to the control. */
export function lowPressureCutOut(input: {
  readonly refrigerant: RefrigerantId;
  readonly lowestBox: Temperature;
  readonly difference: TemperatureDifference;
  readonly lineDrop: PressureDifference;
  /** Below it the control pulls a vacuum. */
  readonly atmosphere?: AbsolutePressure;
}): Calculated<AbsolutePressure> {
  const { refrigerant, lowestBox, difference, lineDrop } = input;
  if (!(lineDrop >= 0)) return refused('notPositive');
  return andThen(dewPressure(refrigerant, lower(lowestBox, difference)), (coil) =>
    lessDrop(coil, lineDrop, input.atmosphere ?? STANDARD_ATMOSPHERE),
  );
}

function lessDrop(
  coil: AbsolutePressure,
  lineDrop: PressureDifference,
  atmosphere: AbsolutePressure,
): Calculated<AbsolutePressure> {
  const found = absolutePressure(coil - lineDrop);
  if (found <= 0) {
    return { kind: 'refused', reason: 'impossibleVacuum', value: found, unit: 'kPaa' };
  }
  return found < atmosphere ? known(found, 'pullsVacuum') : known(found);
}

/** Where a control that closes on a rise opens again: low-pressure and fan-cycling controls alike. */
export function controlCutOut(input: {
  readonly cutIn: AbsolutePressure;
  readonly differential: PressureDifference;
  readonly atmosphere?: AbsolutePressure;
}): Calculated<AbsolutePressure> {
  const { cutIn, differential } = input;
  if (!(differential > 0)) return refused('notPositive');
  return lessDrop(cutIn, differential, input.atmosphere ?? STANDARD_ATMOSPHERE);
}

/** What to set on a control that has a differential instead of a cut-out. */
export function controlDifferential(input: {
  readonly cutIn: AbsolutePressure;
  readonly cutOut: AbsolutePressure;
}): Calculated<PressureDifference> {
  const found = pressureDifference(input.cutIn - input.cutOut);
  return found > 0 ? known(found) : refused('notPositive');
}

export interface ColdStart {
  /** What the low side comes to on the coldest day. */
  readonly standing: AbsolutePressure;
  readonly start: 'starts' | 'staysOff';
}

/** Whether an outdoor unit reaches its cut-in on the coldest day: liquid gathers where it is coldest. */
export function coldStart(input: {
  readonly refrigerant: RefrigerantId;
  readonly cutIn: AbsolutePressure;
  readonly coldest: Temperature;
}): Calculated<ColdStart> {
  const { refrigerant, cutIn, coldest } = input;
  return andThen(dewPressure(refrigerant, coldest), (standing) =>
    standing > cutIn
      ? known<ColdStart>({ standing, start: 'starts' })
      : known({ standing, start: 'staysOff' }, 'coldStart'),
  );
}

export interface ControlTrip {
  /** Past its setting; early is negative. */
  readonly past: PressureDifference;
  readonly verdict: 'whereSet' | 'early' | 'late';
}

/** Whether a control opened where it is set: a high one early below it, a low one early above it. */
export function controlTrip(input: {
  readonly side: ControlSide;
  readonly setting: AbsolutePressure;
  readonly opened: AbsolutePressure;
}): Calculated<ControlTrip> {
  const { side, setting, opened } = input;
  const past = pressureDifference(side === 'high' ? opened - setting : setting - opened);
  const tolerance = TRIP_TOLERANCES[side].value;
  // A hair for the binary fraction: exactly at the tolerance is still where it is set.
  const verdict = Math.abs(past) <= tolerance + 1e-6 ? 'whereSet' : past < 0 ? 'early' : 'late';
  const cautions: Caution[] = side === 'high' ? ['repeatedReset'] : [];
  return known({ past, verdict }, ...cautions, ...(verdict === 'late' ? LATE : []));
}

const LATE: readonly Caution[] = ['tripsLate'];

const PRESSURE_SOURCE = 'achrnews.com/articles/142973, Understanding low-pressure controls';

export const lowPressureCutInFormula: Formula = {
  id: 'lowPressureCutIn',
  name: 'low-pressure cut-in as a temperature control',
  equation: 'Pin = Pdew(Tcoil)',
  symbols: symbols(
    ['Tcoil', 'coil clear of frost and safe for the box', '°C'],
    ['Pdew', 'dew pressure, absolute', 'kPa'],
  ),
  range: 'medium temperature, off-cycle defrost, unit no colder than the box',
  source: PRESSURE_SOURCE,
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', coilTemp: '38F' },
    gives: { value: 33, unit: 'psi' },
    within: 0.5,
    source: `${PRESSURE_SOURCE}: 38 °F, 33 psig`,
    standing: 'published',
  },
};

export const lowPressureCutOutFormula: Formula = {
  id: 'lowPressureCutOut',
  name: 'low-pressure cut-out as a temperature control',
  equation: 'Pout = Pdew(Tbox − TD) − ΔP',
  symbols: symbols(
    ['Tbox', 'lowest box temperature wanted', '°C'],
    ['TD', 'air entering the coil less evaporating temperature', 'K'],
    ['ΔP', 'drop of the suction line up to the control', 'kPa'],
  ),
  range: 'medium temperature, near the set point',
  source: PRESSURE_SOURCE,
  standing: 'published',
  example: {
    inputs: { refrigerant: 'R-134a', boxTemp: '35F', temperatureDifference: '20dF' },
    gives: { value: 15, unit: 'psi' },
    within: 0.5,
    source: `${PRESSURE_SOURCE}: a 35 °F box over 20 °F, 15 psig`,
    standing: 'published',
  },
};

export const controlCutOutFormula: Formula = {
  id: 'controlCutOut',
  name: 'cut-out from cut-in and differential',
  equation: 'Pout = Pin − differential',
  symbols: symbols(
    ['Pin', 'cut-in: closes on the rise', 'kPa'],
    ['differential', 'as set on the control', 'kPa'],
  ),
  range: 'controls that close on a rise: low pressure, condenser fan cycling',
  source: 'real-world-refrigeration.com, Refrigeration control: cut-out = cut-in − differential',
  standing: 'published',
  example: {
    inputs: { cutIn: '30psi', differential: '20psi' },
    gives: { value: 10, unit: 'psi' },
    within: 0.001,
    source: 'real-world-refrigeration.com, Refrigeration control: 30 − 20 = 10',
    standing: 'published',
  },
};

export const controlDifferentialFormula: Formula = {
  id: 'controlDifferential',
  name: 'differential from cut-in and cut-out',
  equation: 'differential = Pin − Pout',
  symbols: symbols(['Pin', 'cut-in', 'kPa'], ['Pout', 'cut-out', 'kPa']),
  range: 'controls that close on a rise',
  source: controlCutOutFormula.source,
  standing: 'published',
  example: {
    inputs: { cutIn: '30psi', cutOut: '10psi' },
    gives: { value: 20, unit: 'psi' },
    within: 0.001,
    source: 'scribd.com/document/610292100, Pressure controls: 30 in, 10 out, differential 20',
    standing: 'published',
  },
};

export const coldStartFormula: Formula = {
  id: 'coldStart',
  name: 'low-pressure cut-in against the coldest day',
  equation: 'starts if Pdew(Tcoldest) > Pin',
  symbols: symbols(
    ['Tcoldest', 'coldest air around the condensing unit', '°C'],
    ['Pin', 'cut-in, absolute', 'kPa'],
  ),
  range: 'the whole unit soaked at that temperature; shown: what the low side then stands at',
  source: 'an outdoor unit is as cold as the weather',
  standing: 'common practice',
  example: {
    inputs: { refrigerant: 'R-134a', cutIn: '33psi', coldestTemp: '38F' },
    gives: { value: 33, unit: 'psi' },
    within: 0.5,
    source: `${PRESSURE_SOURCE}: 38 °F is 33 psig, so below about 38 °F it is never reached`,
    standing: 'published',
  },
};

export const controlTripFormula: Formula = {
  id: 'controlTrip',
  name: 'where a pressure control opened against its setting',
  equation: 'high: past = Popened − Pset; low: past = Pset − Popened',
  symbols: symbols(['Popened', 'gauge when it opened', 'kPa'], ['Pset', 'as set or marked', 'kPa']),
  range: 'a gauge proved first; high ±10 psi, low ±5 psi',
  source: 'definition',
  standing: 'computed',
  example: {
    inputs: { side: 'high', setting: '470psi', opened: '477psi' },
    gives: { value: 7, unit: 'psi' },
    within: 0.001,
    source: 'a transport maker’s CSR manual, page 127: 470 ± 7 psig',
    standing: 'published',
  },
};
