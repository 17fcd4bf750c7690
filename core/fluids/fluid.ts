import type { RefrigerantId } from '../terms/refrigerants.ts';
import type {
  AbsolutePressure,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';

/** The first vapour bubble in liquid, or the last liquid drop in vapour: one line for a pure substance. */
export type Phase = 'dew' | 'bubble';

/**
 * A polynomial in x = (√(limit − argument) − centre) / halfWidth, which runs over −1 … 1 within the range;
 * the coefficients stand lowest power first. The root straightens the bend towards the critical point, just
 * below `limit`: 0.002 K then takes 6 to 9 coefficients where plain powers of the argument need over 16.
 */
export interface Curve {
  readonly limit: number;
  readonly centre: number;
  readonly halfWidth: number;
  readonly coefficients: readonly number[];
}

/** A property along the saturation line, and how far the curve is from its source at most. */
export interface FittedProperty {
  readonly log: Curve;
  readonly maxErrorPercent: number;
}

/** One saturation line, fitted both ways so that neither way iterates. */
export interface SaturationLine {
  /** °C → ln(kPa absolute). */
  readonly logPressure: Curve;
  /** ln(kPa absolute) → °C. */
  readonly temperature: Curve;
  /** The pressures at the ends of the temperature range. */
  readonly low: AbsolutePressure;
  readonly high: AbsolutePressure;
}

/** ANSI/ASHRAE Standard 34: A low, B higher toxicity; 1 no flame, 2L hardly, 2 yes, 3 fiercely. */
export type SafetyGroup = 'A1' | 'A2L' | 'A2' | 'A3' | 'B2L';

/** How far a printed chart or handbook value lies from these curves, at most. */
export interface ChartDifference {
  readonly against: string;
  readonly pressurePercent: number;
  readonly temperature: TemperatureDifference;
  /** The other value was recalled, not read. */
  readonly fromMemory: boolean;
  /** Where it was read. */
  readonly readAt: string | null;
}

/** Warming over 100 years, against the same mass of carbon dioxide. */
export interface WarmingPotential {
  readonly value: number;
  readonly source: string;
}

export interface SinglePoint {
  readonly temperature: Temperature;
  readonly pressure: AbsolutePressure;
}

export interface Fluid {
  readonly id: RefrigerantId;
  /** Mass percent. */
  readonly composition: string;
  readonly safetyGroup: SafetyGroup;
  readonly safetyGroupSource: string;
  readonly range: { readonly low: Temperature; readonly high: Temperature };
  readonly critical: SinglePoint;
  /** Below it there is no liquid; null for a blend, which has no one such point. */
  readonly triple: SinglePoint | null;
  /** g/mol. */
  readonly molarMass: number;
  readonly gwp: WarmingPotential;
  /** Dew less bubble at 101.325 kPa; null where it is solid at that pressure. */
  readonly glide: TemperatureDifference | null;
  /** Saturated liquid at 25 °C (77 °F), kg/m³; null where the source has no value there. */
  readonly liquidDensity25: number | null;
  readonly lines: Record<Phase, SaturationLine>;
  /** Against the source, on points that the fit has not seen as well as on those it has. */
  readonly maxError: {
    readonly pressurePercent: number;
    readonly temperature: TemperatureDifference;
  };
  readonly source: string;
  readonly chartsDiffer: ChartDifference | null;
}
