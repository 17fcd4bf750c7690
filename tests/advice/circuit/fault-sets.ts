import { faultsOf, type Circuit, type Fault } from '../../../core/advice/circuit/circuit.ts';
import { CIRCUITS } from '../../../core/advice/circuit/circuits.ts';

/** Those that the numeric oracle can solve: one source, two legs. */
export const SINGLE_PHASE = CIRCUITS.filter(({ id }) => id !== 'remoteCondensingUnit');

export const singles = (circuit: Circuit): readonly (readonly Fault[])[] =>
  faultsOf(circuit).map((one) => [one]);

/** Every two faults that can be there at once: one device has one. */
export function doubles(circuit: Circuit): readonly (readonly Fault[])[] {
  const faults = faultsOf(circuit);
  return faults.flatMap((one, index) =>
    faults
      .slice(index + 1)
      .filter(({ of }) => of !== one.of)
      .map((other) => [one, other]),
  );
}

export const named = (faults: readonly Fault[]): string =>
  faults.map(({ of, mode }) => `${of} ${mode}`).join(' + ');
