/** What a technician asks to have judged, from readings: good, bad, or not yet to be said. */
export const JUDGED = {
  runCapacitor: 'run capacitor',
  startCapacitor: 'start capacitor',
  windings: 'compressor windings',
  insulation: 'insulation to ground',
  compressorCurrent: 'compressor amps',
  supplyVoltage: 'supply voltage',
  voltageImbalance: 'voltage imbalance',
  currentImbalance: 'current imbalance',
  nonCondensables: 'air in the system',
  food: 'food temperature',
  pressureTest: 'pressure test',
  highPressureSwitch: 'high-pressure switch',
  lowPressureSwitch: 'low-pressure switch',
  dischargeLine: 'discharge line',
  leakRate: 'leak rate',
  defrostHeater: 'defrost heater',
  doorHeater: 'door heater',
} as const;
export type JudgedId = keyof typeof JUDGED;
