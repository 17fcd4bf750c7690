import type { Amount } from './amount.ts';
import { fromGaugePressure } from './branding.ts';
import type { GaugePressure } from './quantity-values.ts';
import { type UnitId, type UnitSystem, UNITS } from './units.ts';

const FAHRENHEIT = { temperature: 'degF', temperatureDifference: 'dF', mass: 'lb' } as const;
const CELSIUS = { temperature: 'degC', temperatureDifference: 'dC', mass: 'kg' } as const;
const PSI = { gaugePressure: 'psi', absolutePressure: 'psia' } as const;
const BAR = { gaugePressure: 'bar', absolutePressure: 'bara' } as const;
const KILOPASCAL = { gaugePressure: 'kPa', absolutePressure: 'kPaa' } as const;

/**
 * The unit each kind of computed value is shown in, and what a bare number of it means: by one of the two systems, or by
 * the gauge of the one and the thermometer of the other.
 */
export const SHOWN_UNITS = {
  us: { ...PSI, ...FAHRENHEIT },
  si: { ...BAR, ...CELSIUS },
  psiAndCelsius: { ...PSI, ...CELSIUS },
  barAndFahrenheit: { ...BAR, ...FAHRENHEIT },
  kilopascalAndCelsius: { ...KILOPASCAL, ...CELSIUS },
  kilopascalAndFahrenheit: { ...KILOPASCAL, ...FAHRENHEIT },
} as const satisfies Record<string, Record<string, UnitId>>;

/** What a bare number means on a visit. */
export type UnitHabit = keyof typeof SHOWN_UNITS;
export const UNIT_HABITS = [
  'us',
  'si',
  'psiAndCelsius',
  'barAndFahrenheit',
  'kilopascalAndCelsius',
  'kilopascalAndFahrenheit',
] as const satisfies readonly UnitHabit[];

/** By the thermometer alone: lengths, weights and bounds in degrees go by it. */
export const thermalSystem = (habit: UnitHabit): UnitSystem =>
  SHOWN_UNITS[habit].temperature === 'degF' ? 'us' : 'si';

/** The same habit once values of this unit's kind are told in it; itself where the unit belongs to none. */
export function habitWith(habit: UnitHabit, told: UnitId): UnitHabit {
  const unit = told === 'dC' ? 'degC' : told === 'dF' ? 'degF' : told;
  const { gaugePressure, temperature } = SHOWN_UNITS[habit];
  const turned = UNIT_HABITS.find((each) => {
    const shown = SHOWN_UNITS[each];
    return (
      (shown.gaugePressure === unit && shown.temperature === temperature) ||
      (shown.temperature === unit && shown.gaugePressure === gaugePressure)
    );
  });
  return turned ?? habit;
}

/** "psi and °F" */
export function habitWords(habit: UnitHabit): string {
  const { gaugePressure, temperature } = SHOWN_UNITS[habit];
  return `${UNITS[gaugePressure].symbol} and ${UNITS[temperature].symbol}`;
}

/** As a dial of that habit shows it: below the atmosphere a US gauge is marked in inches of mercury. */
export function dialAmount(p: GaugePressure, habit: UnitHabit): Amount {
  const { gaugePressure } = SHOWN_UNITS[habit];
  return fromGaugePressure(p, gaugePressure === 'psi' && p < 0 ? 'inHg' : gaugePressure);
}
