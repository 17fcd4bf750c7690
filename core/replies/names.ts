import type { AnswerableId } from '../terms/quantities.ts';
import type { PlaceId } from '../terms/names.ts';
import { PLACES } from '../terms/names.ts';

/** What is said of each quantity between two people on the job. */
export const SHORT_NAMES: Record<AnswerableId, string> = {
  headPressure: 'head',
  suctionPressure: 'suction',
  condensingTemp: 'condensing',
  evaporatingTemp: 'evaporating',
  ambientTemp: 'ambient',
  condenserLeavingAirTemp: 'condenser leaving air',
  outdoorTemp: 'outdoor',
  boxTemp: 'box',
  supplyAirTemp: 'supply air',
  productTemp: 'product',
  setpointTemp: 'set point',
  suctionLineTemp: 'suction line',
  liquidLineTemp: 'liquid line',
  dischargeLineTemp: 'discharge line',
  superheat: 'superheat',
  subcooling: 'subcooling',
  highCutoutPressure: 'high-pressure cut-out',
  lowCutoutPressure: 'low-pressure cut-out',
  lowCutinPressure: 'low-pressure cut-in',
  voltage: 'voltage',
  current: 'current',
  resistance: 'resistance',
  insulationResistance: 'insulation resistance',
  capacitance: 'capacitance',
  power: 'power',
  refrigerantAdded: 'refrigerant added',
  refrigerantRecovered: 'refrigerant recovered',
  refrigerantLost: 'refrigerant lost',
  refrigerantCharge: 'refrigerant charge',
  cylinderWeight: 'cylinder weight',
  vacuum: 'vacuum',
  testPressure: 'test pressure',
  enteringWaterTemp: 'entering water',
  leavingWaterTemp: 'leaving water',
  designAmbientTemp: 'hottest day',
  heldHeadPressure: 'head pressure valve',
  fanCutinPressure: 'fan cut-in',
  fanCutoutPressure: 'fan cut-out',
  ratedCapacitance: 'rated capacitance',
  waterCapacity: 'water capacity',
  tareWeight: 'tare weight',
  sinceLastCharge: 'last charged',
  split: 'condenser split',
  temperatureDifference: 'temperature difference',
  compressionRatio: 'compression ratio',
};

/** Quantities whose unit names them well enough: "208 V at the contactor". */
const NAMED_BY_UNIT: ReadonlySet<AnswerableId> = new Set<AnswerableId>([
  'voltage',
  'current',
  'resistance',
  'insulationResistance',
  'capacitance',
  'power',
]);

/** A quantity where it was read: "contactor voltage", "head". */
export function placedName(about: AnswerableId, place: PlaceId | null): string {
  return place === null ? SHORT_NAMES[about] : `${PLACES[place]} ${SHORT_NAMES[about]}`;
}

export function isNamedByUnit(about: AnswerableId): boolean {
  return NAMED_BY_UNIT.has(about);
}
