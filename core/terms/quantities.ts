import type { Dimension } from '../units/dimensions.ts';

interface QuantityTerm {
  readonly dimension: Dimension;
  /** The trade's own name for it, as printed on the sheet and in the note. */
  readonly name: string;
}

/** Everything that can be read off an instrument, a plate or a scale on a visit. */
export const QUANTITIES = {
  headPressure: { dimension: 'gaugePressure', name: 'head pressure' },
  suctionPressure: { dimension: 'gaugePressure', name: 'suction pressure' },
  condensingTemp: { dimension: 'temperature', name: 'condensing temperature' },
  evaporatingTemp: { dimension: 'temperature', name: 'evaporating temperature' },
  ambientTemp: { dimension: 'temperature', name: 'ambient' },
  condenserLeavingAirTemp: { dimension: 'temperature', name: 'condenser leaving air' },
  outdoorTemp: { dimension: 'temperature', name: 'outdoor temperature' },
  boxTemp: { dimension: 'temperature', name: 'box temperature' },
  supplyAirTemp: { dimension: 'temperature', name: 'supply air' },
  productTemp: { dimension: 'temperature', name: 'product temperature' },
  setpointTemp: { dimension: 'temperature', name: 'set point' },
  suctionLineTemp: { dimension: 'temperature', name: 'suction line' },
  liquidLineTemp: { dimension: 'temperature', name: 'liquid line' },
  dischargeLineTemp: { dimension: 'temperature', name: 'discharge line' },
  superheat: { dimension: 'temperatureDifference', name: 'superheat' },
  subcooling: { dimension: 'temperatureDifference', name: 'subcooling' },
  highCutoutPressure: { dimension: 'gaugePressure', name: 'high-pressure cut-out' },
  lowCutoutPressure: { dimension: 'gaugePressure', name: 'low-pressure cut-out' },
  lowCutinPressure: { dimension: 'gaugePressure', name: 'low-pressure cut-in' },
  voltage: { dimension: 'voltage', name: 'voltage' },
  current: { dimension: 'current', name: 'current' },
  resistance: { dimension: 'resistance', name: 'resistance' },
  insulationResistance: { dimension: 'resistance', name: 'insulation resistance' },
  capacitance: { dimension: 'capacitance', name: 'capacitance' },
  power: { dimension: 'power', name: 'power' },
  refrigerantAdded: { dimension: 'mass', name: 'refrigerant added' },
  refrigerantRecovered: { dimension: 'mass', name: 'refrigerant recovered' },
  refrigerantLost: { dimension: 'mass', name: 'refrigerant lost' },
  refrigerantCharge: { dimension: 'mass', name: 'refrigerant charge' },
  cylinderWeight: { dimension: 'mass', name: 'cylinder weight' },
  vacuum: { dimension: 'absolutePressure', name: 'vacuum' },
  testPressure: { dimension: 'gaugePressure', name: 'test pressure' },
  enteringWaterTemp: { dimension: 'temperature', name: 'entering water' },
  leavingWaterTemp: { dimension: 'temperature', name: 'leaving water' },
  designAmbientTemp: { dimension: 'temperature', name: 'hottest day' },
  heldHeadPressure: { dimension: 'gaugePressure', name: 'head pressure valve' },
  fanCutinPressure: { dimension: 'gaugePressure', name: 'fan cut-in' },
  fanCutoutPressure: { dimension: 'gaugePressure', name: 'fan cut-out' },
  ratedCapacitance: { dimension: 'capacitance', name: 'rated capacitance' },
  waterCapacity: { dimension: 'mass', name: 'water capacity' },
  tareWeight: { dimension: 'mass', name: 'tare weight' },
  sinceLastCharge: { dimension: 'duration', name: 'time since the last charge' },
} as const satisfies Record<string, QuantityTerm>;

export type QuantityId = keyof typeof QUANTITIES;

/** Set, printed or told: said by the technician, but not measured. */
export const SETTINGS = [
  'setpointTemp',
  'highCutoutPressure',
  'lowCutoutPressure',
  'lowCutinPressure',
  'designAmbientTemp',
  'heldHeadPressure',
  'fanCutinPressure',
  'fanCutoutPressure',
  'ratedCapacitance',
  'waterCapacity',
  'tareWeight',
  'sinceLastCharge',
] as const satisfies readonly QuantityId[];
export type SettingId = (typeof SETTINGS)[number];

export const isSetting = (id: QuantityId): id is SettingId => SETTINGS.some((own) => own === id);

/** Quantities that are only ever answered, never recorded. */
export const DERIVED_QUANTITIES = {
  split: { dimension: 'temperatureDifference', name: 'condenser split' },
  temperatureDifference: { dimension: 'temperatureDifference', name: 'temperature difference' },
  compressionRatio: { dimension: 'ratio', name: 'compression ratio' },
} as const satisfies Record<string, QuantityTerm>;

export type DerivedQuantityId = keyof typeof DERIVED_QUANTITIES;
export type AnswerableId = QuantityId | DerivedQuantityId;

const ANSWERABLE: Record<AnswerableId, QuantityTerm> = { ...QUANTITIES, ...DERIVED_QUANTITIES };

export function quantityTerm(id: AnswerableId): QuantityTerm {
  return ANSWERABLE[id];
}

/** What is read off a scale, or stamped on what stands on it. */
export const isOnScale = (quantity: QuantityId): boolean =>
  quantity === 'cylinderWeight' || quantity === 'tareWeight' || quantity === 'waterCapacity';
