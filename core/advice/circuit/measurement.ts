import { loadsOf, suppliesOf, switchesOf, type Circuit, type SuspectId } from './circuit.ts';
import type { DevicePlace, Supply } from './circuit.ts';

/** Where the leads, or the clamp, go. */
export type Measurement =
  /** From one leg to another: the supply itself. */
  | { readonly kind: 'legs'; readonly between: readonly [string, string] }
  /** On the two terminals of a device. */
  | { readonly kind: 'across'; readonly of: SuspectId }
  /** From one side of a switch to the fixed reference. */
  | { readonly kind: 'lineSide' | 'loadSide'; readonly of: SuspectId }
  /** Ohms between its terminals, power off: no path at all is `all`, as open as a meter can show. */
  | { readonly kind: 'ohms'; readonly of: SuspectId }
  /** Whether a load draws current, by clamp, ear or eye. */
  | { readonly kind: 'draws'; readonly of: DevicePlace };

/** None, all of the supply, or something between; for a current none or all of it. */
export type Outcome = 'none' | 'part' | 'all';

export function measurementKey(measurement: Measurement): string {
  const { kind } = measurement;
  return kind === 'legs' ? `${kind} ${measurement.between.join(' ')}` : `${kind} ${measurement.of}`;
}

/** The two legs that the circuit's voltage stands between. */
export const supplyOf = ({ across }: Circuit): Measurement => ({ kind: 'legs', between: across });

const MOTORS = ['compressor', 'condenserFan', 'evaporatorFan'] as const;
const isMotor = (id: SuspectId): id is (typeof MOTORS)[number] => MOTORS.some((one) => one === id);

/**
 * Everything that can be asked for by a name, the easiest first: the supply, whether a motor runs, each load
 * and switch. A contactor's name is its coil's, so its contacts are read from their load side.
 */
export function measurementsOf(circuit: Circuit): readonly Measurement[] {
  const loads = loadsOf(circuit).map(({ id }) => id);
  const switches = switchesOf(circuit)
    .filter(({ isWire }) => isWire === undefined)
    .map(({ id }) => id);
  const named = [...loads, ...switches].filter((id) => id !== 'contacts');
  return [
    supplyOf(circuit),
    ...otherPairs(circuit),
    ...loads.filter(isMotor).map((of) => ({ kind: 'draws' as const, of })),
    ...named.map((of) => ({ kind: 'across' as const, of })),
    ...(switches.includes('contacts')
      ? [{ kind: 'loadSide' as const, of: 'contacts' as const }]
      : []),
  ];
}

function otherPairs(circuit: Circuit): readonly Measurement[] {
  const [one, two, three] = suppliesOf(circuit).map(({ at }: Supply) => at);
  if (one === undefined || two === undefined || three === undefined) return [];
  return [
    { kind: 'legs', between: [two, three] },
    { kind: 'legs', between: [one, three] },
  ];
}
