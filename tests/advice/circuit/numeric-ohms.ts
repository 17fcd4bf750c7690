import type { Circuit, CircuitPart, Fault } from '../../../core/advice/circuit/circuit.ts';
import type { Outcome } from '../../../core/advice/circuit/measurement.ts';
import { eliminate } from './numeric-circuit.ts';

/**
 * The same circuits as ohms alone, power off, by nodal analysis: what nobody can know is tried each way. The leads of
 * the device are lifted or left, something else hangs across the legs or nothing does, its winding is that of a coil
 * or of a large motor, and a burnt contact has a little or a lot.
 */
const OHMS = { closed: 0.01, load: 100, largeMotor: 0.3, acrossTheLegs: 100 } as const;
const BURNT_OHMS = [0.3, 1.2, 60] as const;
const LEAK = 1e-11;

interface Edge {
  readonly from: string;
  readonly to: string;
  readonly ohms: number;
}

interface Trial {
  readonly burnt: number;
  readonly own: number;
  readonly isLifted: boolean;
  readonly isLoaded: boolean;
}

type Device = Exclude<CircuitPart, { kind: 'supply' }>;

/** Whatever a meter may show on the terminals of a device that nothing else pulls in. */
export function ohmsOutcomes(
  circuit: Circuit,
  faults: readonly Fault[],
  of: Device,
): ReadonlySet<Outcome> {
  const trials = BURNT_OHMS.flatMap((burnt) =>
    [OHMS.load, OHMS.largeMotor].flatMap((own) =>
      [true, false].flatMap((isLifted) =>
        [true, false].map((isLoaded): Trial => ({ burnt, own, isLifted, isLoaded })),
      ),
    ),
  );
  return new Set(
    trials.map((trial) => bandOf(between(of, edgesOf(circuit, faults, { of, trial })))),
  );
}

const bandOf = (ohms: number): Outcome => (ohms <= 0.5 ? 'none' : ohms >= 1e5 ? 'all' : 'part');

function edgesOf(
  circuit: Circuit,
  faults: readonly Fault[],
  { of, trial }: { readonly of: Device; readonly trial: Trial },
): readonly Edge[] {
  const has = (id: string, mode: Fault['mode']): boolean =>
    faults.some((fault) => fault.of === id && fault.mode === mode);
  const [from, to] = circuit.across;
  const all = circuit.parts.flatMap((part): readonly Edge[] => {
    if (part.kind === 'supply' || has(part.id, 'open')) return [];
    if (trial.isLifted && part.id !== of.id) return [];
    if (part.kind === 'load') return [{ ...part, ohms: part.id === of.id ? trial.own : OHMS.load }];
    if (part.operatedBy !== undefined) return [];
    return [{ ...part, ohms: has(part.id, 'burnt') ? trial.burnt : OHMS.closed }];
  });
  const isAlongside = trial.isLoaded && !trial.isLifted;
  return isAlongside ? [...all, { from, to, ohms: OHMS.acrossTheLegs }] : all;
}

/** One ampere into one terminal and out of the other: the volts between them are the ohms. */
function between({ from, to }: Device, edges: readonly Edge[]): number {
  const points = [...new Set([from, ...edges.flatMap((edge) => [edge.from, edge.to])])].filter(
    (point) => point !== to,
  );
  const index = new Map(points.map((point, place) => [point, place]));
  const rows = points.map((point, place) =>
    [...points, ''].map((_other, column): number => {
      if (column === points.length) return point === from ? 1 : 0;
      return column === place ? LEAK : 0;
    }),
  );
  const add = (row: string, column: string, siemens: number): void => {
    const cells = rows[index.get(row) ?? -1];
    const at = index.get(column);
    if (cells && at !== undefined) cells[at] = (cells[at] ?? 0) + siemens;
  };
  for (const edge of edges) {
    add(edge.from, edge.from, 1 / edge.ohms);
    add(edge.to, edge.to, 1 / edge.ohms);
    add(edge.from, edge.to, -1 / edge.ohms);
    add(edge.to, edge.from, -1 / edge.ohms);
  }
  return eliminate(rows)[index.get(from) ?? -1] ?? 0;
}
