import type { JudgedId } from '../../terms/judged.ts';

/** What is judged, by names that are those of no reading and no finding. */
export const JUDGED_NAMES: Partial<Record<JudgedId, readonly string[]>> = {
  runCapacitor: ['(run|running) (capacitor|cap)'],
  startCapacitor: ['start (capacitor|cap)'],
  windings: ['[compressor] windings'],
  insulation: ['(insulation [to ground]|megger [reading]|meg reading|megger readings)'],
  compressorCurrent: [
    '(compressor (amps|amp draw|current|amperage)|(amps|amp draw|current) on the compressor)',
  ],
  supplyVoltage: ['(supply|line|incoming) (voltage|power)'],
  voltageImbalance: [
    '(voltage (imbalance|unbalance|balance)|(imbalance|unbalance) on the voltage)',
  ],
  currentImbalance: [
    '((current|amp) (imbalance|unbalance|balance)|(imbalance|unbalance) on the (amps|current))',
  ],
  leakRate: ['leak rate'],
  defrostHeater: [
    '(defrost heater (ohms|resistance|amps|reading)|(ohms|resistance|amps) on the defrost heater)',
  ],
  doorHeater: [
    '(door heater (ohms|resistance|amps|reading)|(ohms|resistance|amps) on the door heater)',
  ],
};
