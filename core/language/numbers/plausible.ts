import type { QuantityId } from '../../terms/quantities.ts';
import type { RefrigerantId } from '../../terms/refrigerants.ts';
import type { Amount } from '../../units/amount.ts';
import { thermalSystem, type UnitHabit } from '../../units/shown-unit.ts';
import { UNITS, type UnitSystem } from '../../units/units.ts';

/** What a quantity can physically be on this job, in its unit; whether a value is good is advice's to say. */
interface Range {
  readonly low: number;
  readonly high: number;
  readonly unit: Amount['unit'];
}

const range = (low: number, high: number, unit: Amount['unit']): Range => ({ low, high, unit });

type PressureClass = 'low' | 'usual' | 'high' | 'carbonDioxide';

/** Refrigerants by how high their pressures run; those not named are usual. From memory of their saturation curves. */
const CLASS_OF: Partial<Record<RefrigerantId, PressureClass>> = {
  'R-12': 'low',
  'R-134a': 'low',
  'R-450A': 'low',
  'R-513A': 'low',
  'R-600a': 'low',
  'R-1234yf': 'low',
  'R-1234zeE': 'low',
  'R-32': 'high',
  'R-125': 'high',
  'R-410A': 'high',
  'R-454B': 'high',
  'R-744': 'carbonDioxide',
};

/**
 * Common practice: the high side ends near the component rating of its class, and no service compressor holds
 * a low side above what the class does standing in a hot room.
 */
const SIDES: Record<PressureClass, { readonly head: Range; readonly suction: Range }> = {
  low: { head: range(-15, 500, 'psi'), suction: range(-15, 200, 'psi') },
  usual: { head: range(-15, 650, 'psi'), suction: range(-15, 300, 'psi') },
  high: { head: range(-15, 800, 'psi'), suction: range(-15, 450, 'psi') },
  carbonDioxide: { head: range(-15, 2200, 'psi'), suction: range(-15, 1100, 'psi') },
};

const AIR = range(-60, 180, 'degF');
const REFRIGERATED = range(-60, 130, 'degF');
const WATER = range(20, 212, 'degF');
const WEIGHT = range(0, 500, 'lb');

/** Common practice where no source is named; a pressure's range comes from its side. */
const RANGES: Record<QuantityId, Range | 'head' | 'suction'> = {
  headPressure: 'head',
  suctionPressure: 'suction',
  highCutoutPressure: 'head',
  lowCutoutPressure: 'suction',
  lowCutinPressure: 'suction',
  // Nitrogen from a regulator; standing tests stay under the component rating.
  testPressure: range(0, 1000, 'psi'),
  condensingTemp: range(-40, 200, 'degF'),
  evaporatingTemp: range(-80, 120, 'degF'),
  ambientTemp: range(-40, 160, 'degF'),
  condenserLeavingAirTemp: AIR,
  outdoorTemp: range(-60, 140, 'degF'),
  boxTemp: REFRIGERATED,
  supplyAirTemp: REFRIGERATED,
  productTemp: range(-60, 212, 'degF'),
  setpointTemp: range(-50, 90, 'degF'),
  suctionLineTemp: range(-80, 150, 'degF'),
  liquidLineTemp: range(-40, 200, 'degF'),
  dischargeLineTemp: range(-20, 350, 'degF'),
  superheat: range(-20, 120, 'dF'),
  subcooling: range(-20, 80, 'dF'),
  voltage: range(0, 700, 'V'),
  current: range(0, 400, 'A'),
  resistance: range(0, 20_000_000, 'ohm'),
  insulationResistance: range(0, 10_000, 'Mohm'),
  capacitance: range(0, 1500, 'uF'),
  power: range(0, 100_000, 'W'),
  refrigerantAdded: WEIGHT,
  refrigerantRecovered: WEIGHT,
  refrigerantLost: WEIGHT,
  refrigerantCharge: WEIGHT,
  cylinderWeight: range(0, 1500, 'lb'),
  // 760,000 micron is one atmosphere.
  vacuum: range(0, 760_000, 'micron'),
  enteringWaterTemp: WATER,
  leavingWaterTemp: WATER,
  designAmbientTemp: range(-20, 150, 'degF'),
  heldHeadPressure: 'head',
  fanCutinPressure: 'head',
  fanCutoutPressure: 'head',
  ratedCapacitance: range(0, 1500, 'uF'),
  waterCapacity: range(0, 3000, 'lb'),
  tareWeight: range(0, 1500, 'lb'),
  sinceLastCharge: range(0, 7300, 'day'),
};

export function isPlausible(
  quantity: QuantityId,
  { value, unit }: Amount,
  refrigerant: RefrigerantId | null,
): boolean {
  const side = SIDES[(refrigerant === null ? undefined : CLASS_OF[refrigerant]) ?? 'usual'];
  const found = RANGES[quantity];
  const {
    low,
    high,
    unit: inUnit,
  } = found === 'head' ? side.head : found === 'suction' ? side.suction : found;
  const base = toBase(value, unit);
  return toBase(low, inUnit) <= base && base <= toBase(high, inUnit);
}

/** Ours: what is kept warmer than that is no cold box; said without a unit, the number is of something else. */
export const canBeColdBox = (value: number, units: UnitHabit): boolean =>
  value <= WARMEST_BOX[thermalSystem(units)];
const WARMEST_BOX: Record<UnitSystem, number> = { us: 65, si: 18 };

/** Suction cannot lie above head in one running or standing system. */
export function liesAbove(suction: Amount, head: Amount): boolean {
  return toBase(suction.value, suction.unit) > toBase(head.value, head.unit);
}

function toBase(value: number, unit: Amount['unit']): number {
  const { factor, offset } = UNITS[unit];
  return value * factor + offset;
}
