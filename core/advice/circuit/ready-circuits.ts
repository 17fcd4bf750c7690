import { CIRCUITS } from './circuits.ts';
import type { Circuit } from './circuit.ts';
import { doublesOf, isSound, singlesOf } from './explanations.ts';
import { measurementsOf, supplyOf } from './measurement.ts';
import { nextMeasurement } from './next-measurement.ts';

/**
 * Works out what every fault of a circuit shows, and the best order of measurements, before it is asked: the first
 * question about a circuit costs some 20 ms, every one after it under one. One step a circuit, for whoever has
 * idle moments between them.
 */
export const CIRCUIT_STEPS: readonly (() => void)[] = CIRCUITS.map((circuit) => () => {
  readyCircuit(circuit);
});

function readyCircuit(circuit: Circuit): void {
  const supplied = { measurement: supplyOf(circuit), outcome: 'all' } as const;
  nextMeasurement(circuit, [supplied]);
  isSound(circuit, [supplied]);
  const measurements = measurementsOf(circuit);
  for (const { shows } of [...singlesOf(circuit), ...doublesOf(circuit)]) {
    for (const measurement of measurements) shows(measurement);
  }
}
