import type { OutOfRange } from '../fluids/saturation.ts';
import type { UnitId } from '../units/units.ts';

/** What must be said with a number because it could mislead or hurt. */
export type Caution =
  | 'flammable'
  | 'mayBurn'
  | 'highPressureCarbonDioxide'
  | 'toxicAmmonia'
  | 'liquidMayReturn'
  | 'flashGas'
  | 'glideBasis'
  | 'chartsDiffer'
  | 'designTableOnly'
  | 'designLoadOnly'
  | 'pullDown'
  | 'compressionRatioHigh'
  | 'idealGas'
  | 'aboveCompressorLimit'
  | 'doNotOperate'
  | 'liveWork'
  | 'verifyWithAuthority'
  | 'neverOverfill'
  | 'repeatedReset'
  | 'pressureLimit'
  | 'pullsVacuum'
  | 'coldStart'
  | 'tripsLate'
  | 'winterCharge'
  | 'zeroProvesNothing'
  | 'notProvenDead'
  | 'ghostVoltage'
  | 'outsideNameplateVoltage'
  | 'deadAndDisconnected'
  | 'overloadMayBeOpen'
  | 'sumDoesNotAdd'
  | 'capacitorCharge'
  | 'insulationTest'
  | 'groundFault'
  | 'notRunningAmps'
  | 'fanStaysLive'
  | 'trappedLiquid'
  | 'hotSurface'
  | 'pressureTest'
  | 'testAboveRating'
  | 'useMicronGauge'
  | 'iceInSystem'
  | 'noPowerInVacuum'
  | 'recoverFirst'
  | 'chargeByNameplate'
  | 'scaleTooCoarse'
  | 'gasPoolsLow'
  | 'dryIce'
  | 'toxicGas'
  | 'probeTheProduct'
  | 'operatorDecides'
  | 'householdGuidance'
  | 'steamBurns';

/** Why there is no number, with the numbers its sentence needs. */
export type CalculationRefusal =
  | OutOfRange
  | { readonly kind: 'refused'; readonly reason: 'noTargetKnown' }
  | { readonly kind: 'refused'; readonly reason: 'suctionAboveHead' }
  | {
      readonly kind: 'refused';
      readonly reason: 'belowZeroSuperheat' | 'belowZeroSubcooling' | 'impossibleVacuum';
      readonly value: number;
      readonly unit: UnitId;
    }
  /** Outside where the formula holds, with the limit in the unit given. */
  | {
      readonly kind: 'refused';
      readonly reason: 'belowLimit' | 'aboveLimit';
      readonly limit: number;
      readonly unit: UnitId;
    }
  /** Fewer than the fit takes, or readings that never went the way the formula needs. */
  | { readonly kind: 'refused'; readonly reason: 'tooFewReadings' | 'readingsDoNotFit' }
  /** The rule does not cover it: a carbon dioxide cylinder, two additions on one day, a dead leg. */
  | { readonly kind: 'refused'; readonly reason: 'ruleDoesNotApply' | 'notPositive' };

/** The outcome of every calculation: a value with its cautions, or the reason there is none. */
export type Calculated<Value> =
  | { readonly kind: 'known'; readonly value: Value; readonly cautions: readonly Caution[] }
  | CalculationRefusal;

export function known<Value>(value: Value, ...cautions: Caution[]): Calculated<Value> {
  return { kind: 'known', value, cautions: [...new Set(cautions)] };
}

export function refused(
  reason:
    | 'noTargetKnown'
    | 'suctionAboveHead'
    | 'ruleDoesNotApply'
    | 'notPositive'
    | 'tooFewReadings'
    | 'readingsDoNotFit',
): CalculationRefusal {
  return { kind: 'refused', reason };
}

export interface Limits {
  readonly low: number;
  readonly high: number;
  readonly unit: UnitId;
}

/** The refusal of a value outside the limits; null where it lies between them. */
export function outside(value: number, { low, high, unit }: Limits): CalculationRefusal | null {
  if (value >= low && value <= high) return null;
  return value > high
    ? { kind: 'refused', reason: 'aboveLimit', limit: high, unit }
    : { kind: 'refused', reason: 'belowLimit', limit: low, unit };
}

/** Goes on with the value, carrying its cautions along; a refusal passes through. */
export function andThen<From, To>(
  from: Calculated<From>,
  next: (value: From) => Calculated<To>,
): Calculated<To> {
  if (from.kind === 'refused') return from;
  const to = next(from.value);
  return to.kind === 'refused' ? to : known(to.value, ...from.cautions, ...to.cautions);
}
