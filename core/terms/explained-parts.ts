import type { PartId } from './names.ts';

/** Of what it can be told what it does and where it usually sits. */
export const EXPLAINED_PARTS = [
  'nameplate',
  'compressor',
  'condenser',
  'evaporator',
  'receiver',
  'accumulator',
  'filterDrier',
  'sightGlass',
  'expansionValve',
  'expansionValveBulb',
  'capillaryTube',
  'liquidLineSolenoid',
  'headPressureValve',
  'kingValve',
  'serviceValve',
  'accessFitting',
  'highPressureSwitch',
  'lowPressureSwitch',
  'temperatureControl',
  'contactor',
  'overload',
  'startRelay',
  'startCapacitor',
  'runCapacitor',
  'defrostTimer',
  'defrostHeater',
  'defrostTermination',
  'drainHeater',
  'crankcaseHeater',
  'fanControl',
  'disconnect',
  'transformer',
] as const satisfies readonly (PartId | 'nameplate')[];
export type ExplainedPartId = (typeof EXPLAINED_PARTS)[number];

/** Asked of a part: what it does, or where to look for it. */
export const EXPLAINS = ['does', 'sits'] as const;
export type Explains = (typeof EXPLAINS)[number];
