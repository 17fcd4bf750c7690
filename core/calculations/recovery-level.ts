/** How far to recover before opening: US federal law, as data. */
import { FLUIDS } from '../fluids/fluids.ts';
import { saturationPressure } from '../fluids/saturation.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { STANDARD_ATMOSPHERE, vacuumOfInches } from '../units/atmosphere.ts';
import { toAbsolutePressure } from '../units/branding.ts';
import { absolutePressure, degreesF, gaugePressure, ratio } from '../units/quantity-values.ts';
import type { AbsolutePressure, Mass, Ratio } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { fluidCautions } from './fluid-cautions.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { microns } from './vacuum-defaults.ts';

export const PRESSURE_CLASSES = ['low', 'medium', 'high', 'veryHigh'] as const;
export type PressureClass = (typeof PRESSURE_CLASSES)[number];

const KPA_PER_PSI = 6.894757293168; // NIST SP 811, appendix B.8
const CLASS_TEMPERATURE = degreesF(104);
/** 40 CFR 82.152, from memory: low below 45 psia, medium to 170, high to 355. */
const CLASS_LIMITS_PSIA = { low: 45, medium: 170, high: 355 } as const;

export interface Classified {
  readonly pressure: AbsolutePressure;
  readonly pressureClass: PressureClass;
}

/** By the pressure of the saturated liquid at 104 °F; what is critical below that is very high. */
export function pressureClass(refrigerant: RefrigerantId): Calculated<Classified> {
  const { critical } = FLUIDS[refrigerant];
  const cautions = fluidCautions(refrigerant);
  if (critical.temperature < CLASS_TEMPERATURE) {
    return known({ pressure: critical.pressure, pressureClass: 'veryHigh' }, ...cautions);
  }
  const found = saturationPressure(refrigerant, CLASS_TEMPERATURE, 'bubble');
  if (found.kind === 'refused') return found;
  const psia = found.value / KPA_PER_PSI;
  const pressureClass = (['low', 'medium', 'high'] as const).find(
    (each) => psia < CLASS_LIMITS_PSIA[each],
  );
  return known({ pressure: found.value, pressureClass: pressureClass ?? 'veryHigh' }, ...cautions);
}

const LARGE_CHARGE = 200 * 453.59237;

export type RecoveryMachine = 'before1993Nov15' | 'since1993Nov15';
interface Level {
  readonly small: number;
  /** From 200 lb. */
  readonly large: number;
}

/** Inches of vacuum. 40 CFR 82.156, table 1, read 2026-11. Low pressure stands apart: 25 mmHg absolute. */
export const RECOVERY_INCHES: Record<
  Exclude<PressureClass, 'low'>,
  Record<RecoveryMachine, Level>
> = {
  veryHigh: {
    before1993Nov15: { small: 0, large: 0 },
    since1993Nov15: { small: 0, large: 0 },
  },
  high: {
    before1993Nov15: { small: 0, large: 4 },
    since1993Nov15: { small: 0, large: 10 },
  },
  medium: {
    before1993Nov15: { small: 4, large: 4 },
    since1993Nov15: { small: 10, large: 15 },
  },
};
const LOW_PRESSURE_LEVEL = microns(25_000);

export interface RecoveryLevel {
  readonly level: AbsolutePressure;
  readonly otherSource: string | null;
}

/** Against a standard atmosphere, as the table is printed. */
export function recoveryLevel(input: {
  readonly pressureClass: PressureClass;
  readonly charge: Mass;
  readonly machine: RecoveryMachine;
  /** A repair that is not major and is not followed by an evacuation to the air. */
  readonly minorRepair: boolean;
}): Calculated<RecoveryLevel> {
  if (!(input.charge > 0)) return refused('notPositive');
  const { pressureClass: of, machine } = input;
  const cautions = ['recoverFirst', 'verifyWithAuthority'] as const;
  if (of === 'low') return known({ level: LOW_PRESSURE_LEVEL, otherSource: null }, ...cautions);
  const size = input.charge >= LARGE_CHARGE ? 'large' : 'small';
  const inches = input.minorRepair ? 0 : RECOVERY_INCHES[of][machine][size];
  const printedOtherwise = inches === 15;
  return known(
    {
      level: toAbsolutePressure(
        inches === 0 ? gaugePressure(0) : vacuumOfInches(inches),
        STANDARD_ATMOSPHERE,
      ),
      otherSource: printedOtherwise
        ? 'an archived EPA web table prints 10 inHg for this row; the regulation’s 15 is used'
        : null,
    },
    ...cautions,
  );
}

/** Factory sealed, 5 lb or less: a share of the charge, or 4 inHg, whichever is reached. */
export function smallApplianceRecovery(input: {
  readonly charge: Mass;
  readonly compressorRuns: boolean;
}): Calculated<{ readonly share: Ratio; readonly orLevel: AbsolutePressure }> {
  if (!(input.charge > 0)) return refused('notPositive');
  if (input.charge > SMALL_APPLIANCE) return refused('ruleDoesNotApply');
  return known(
    {
      share: ratio(input.compressorRuns ? 0.9 : 0.8),
      orLevel: absolutePressure(toAbsolutePressure(vacuumOfInches(4), STANDARD_ATMOSPHERE)),
    },
    'recoverFirst',
    'verifyWithAuthority',
  );
}

const SMALL_APPLIANCE = 5 * 453.59237;

export const pressureClassFormula: Formula = {
  id: 'pressureClass',
  name: 'pressure class of a refrigerant in US law',
  equation: 'class by Pbubble(104 °F): low < 45 ≤ medium < 170 ≤ high < 355 ≤ very high',
  symbols: symbols(['Pbubble', 'pressure of the saturated liquid, absolute', 'psia']),
  range: 'very high as well where the critical temperature is below 104 °F',
  source:
    '40 CFR 82.152, from memory: verify with the authority; pressures from the equation of state',
  standing: 'from memory',
  example: {
    inputs: { refrigerant: 'R-134a' },
    gives: { value: 147.4, unit: 'psia' },
    within: 0.5,
    source: 'CoolProp 8.0.1dev, worked apart from the fits: 147 psia, medium',
    standing: 'computed',
  },
};

export const recoveryLevelFormula: Formula = {
  id: 'recoveryLevel',
  name: 'recovery level before opening, US federal',
  equation: 'level = table 1 by class, charge (from 200 lb) and the machine’s date of manufacture',
  symbols: symbols(['level', 'gauge pressure to reach and hold, against 29.9 inHg of air', 'inHg']),
  range:
    'other than small appliances and vehicles; a minor repair not followed by evacuation to the air: 0 psig unless low-pressure',
  source: '40 CFR 82.156, table 1, read 2026-11: verify with the authority',
  standing: 'published',
  example: {
    inputs: { pressureClass: 'medium', charge: '250lb', machine: 'since1993Nov15' },
    gives: { value: -15, unit: 'inHg' },
    within: 0.001,
    source: '40 CFR 82.156, table 1',
    standing: 'published',
  },
};

export const smallApplianceRecoveryFormula: Formula = {
  id: 'smallApplianceRecovery',
  name: 'recovery from a small appliance, US federal',
  equation: 'share = 0.9 with the compressor running, 0.8 without; or 4 inHg',
  symbols: symbols(['share', 'of the charge to be recovered', '1']),
  range: 'factory charged and sealed, 5 lb or less; recovery machines made since 15 November 1993',
  source: '40 CFR 82.156(b), from memory: verify with the authority',
  standing: 'from memory',
  example: {
    inputs: { charge: '10oz', compressor: 'runs' },
    gives: { value: 90, unit: 'percent' },
    within: 0.001,
    source: '40 CFR 82.156(b), from memory',
    standing: 'from memory',
  },
};
