import type { Circuit, CircuitPart, Fault, Load } from '../../../core/advice/circuit/circuit.ts';
import type { Measurement, Outcome } from '../../../core/advice/circuit/measurement.ts';

/**
 * The same circuits as ohms and volts, solved by nodal analysis with the meter in the circuit: it shares no
 * reasoning with the solver it checks. What nobody can know (how burnt a contact is, what couples into a loose
 * wire, whether a weak coil holds, which side of an open neutral the lead is on) is tried each way.
 */
const VOLTS = 115;
const SIEMENS = { closed: 1e2, load: 1e-2, meter: 1e-7, coupling: 1e-7, leak: 1e-11 } as const;
/** Against loads of 100 ohms: a hundredth of their voltage, so that two still leave them most, and a third of it. */
const BURNT_OHMS = [1.2, 60] as const;

interface Edge {
  readonly from: string;
  readonly to: string;
  readonly siemens: number;
}

type Volts = (point: string) => number;

interface Trial {
  readonly faults: readonly Fault[];
  readonly burntOhms: number;
  readonly weakCoilHolds: boolean;
}

/** Everything that a measurement may show under these faults. */
export function measuredOutcomes(
  circuit: Circuit,
  faults: readonly Fault[],
): (measurement: Measurement) => ReadonlySet<Outcome> {
  const isBurnt = faults.some(({ mode }) => mode === 'burnt');
  const trials = (isBurnt ? BURNT_OHMS : [1]).flatMap((burntOhms) =>
    (isBurnt ? [true, false] : [true]).map((weakCoilHolds) => ({
      faults,
      burntOhms,
      weakCoilHolds,
    })),
  );
  const settled = trials.map((trial) => ({ trial, edges: settledEdges(circuit, trial) }));
  return (measurement) =>
    new Set(
      settled.flatMap(({ trial, edges }) => outcomes({ circuit, trial, edges }, measurement)),
    );
}

const has = ({ faults }: Trial, of: string, mode: Fault['mode']): boolean =>
  faults.some((fault) => fault.of === of && fault.mode === mode);

const isLoad = (part: CircuitPart): part is Load => part.kind === 'load';

function edgesOf(circuit: Circuit, trial: Trial, pulled: ReadonlySet<string>): readonly Edge[] {
  return circuit.parts.flatMap((part): readonly Edge[] => {
    if (part.kind === 'supply' || has(trial, part.id, 'open')) return [];
    if (part.kind === 'load') return [{ ...part, siemens: SIEMENS.load }];
    if (part.operatedBy !== undefined && !pulled.has(part.operatedBy)) return [];
    const burnt = has(trial, part.id, 'burnt');
    return [{ ...part, siemens: burnt ? 1 / trial.burntOhms : SIEMENS.closed }];
  });
}

/** Pulls in whatever gets its voltage, until nothing more does. */
function settledEdges(circuit: Circuit, trial: Trial): readonly Edge[] {
  const enough = trial.weakCoilHolds ? 0.2 : 0.999;
  let pulled: ReadonlySet<string> = new Set();
  for (;;) {
    const edges = edgesOf(circuit, trial, pulled);
    const volts = solve(circuit, trial, edges);
    const now = circuit.parts
      .filter(isLoad)
      .filter(({ id, from, to }) => !has(trial, id, 'open') && share(volts, from, to) > enough);
    if (now.length === pulled.size) return edges;
    pulled = new Set(now.map(({ id }) => id));
  }
}

const share = (volts: Volts, from: string, to: string): number =>
  Math.abs(volts(from) - volts(to)) / VOLTS;

interface Case {
  readonly circuit: Circuit;
  readonly trial: Trial;
  readonly edges: readonly Edge[];
}

function outcomes(at: Case, measurement: Measurement): readonly Outcome[] {
  const { circuit, trial, edges } = at;
  const [line, reference] = circuit.across;
  if (measurement.kind === 'legs') return metered(at, line, reference);
  const part = circuit.parts.find(({ id }) => id === measurement.of);
  if (!part || part.kind === 'supply') throw new Error(`nothing at ${measurement.of}`);
  if (measurement.kind === 'across') return metered(at, part.from, part.to);
  if (measurement.kind === 'draws') {
    const volts = share(solve(circuit, trial, edges), part.from, part.to);
    return [volts > 0.2 && !has(trial, part.id, 'open') ? 'all' : 'none'];
  }
  const point = measurement.kind === 'lineSide' ? part.from : part.to;
  return [...metered(at, point, reference), ...metered(at, point, 'return')];
}

/** With the meter between two points, and something or nothing coupling into each of them. */
function metered({ circuit, trial, edges }: Case, one: string, other: string): readonly Outcome[] {
  const meter = { from: one, to: other, siemens: SIEMENS.meter };
  const couplings = [one, other].flatMap((from) =>
    circuit.across.map((to) => [{ from, to, siemens: SIEMENS.coupling }]),
  );
  return [[], ...couplings].map((coupling) => {
    const volts = solve(circuit, trial, [...edges, meter, ...coupling]);
    return bandOf(share(volts, one, other));
  });
}

const bandOf = (portion: number): Outcome =>
  portion < 0.01 ? 'none' : portion >= 0.9 ? 'all' : 'part';

/** Volts at every point, by elimination on the conductance matrix. */
function solve(circuit: Circuit, trial: Trial, edges: readonly Edge[]): Volts {
  const [line, reference] = circuit.across;
  const held = new Map([[reference, 0]]);
  held.set(line, has(trial, 'supply', 'dead') ? 0 : VOLTS);
  const points = [
    ...new Set(
      circuit.parts.flatMap((part) => (part.kind === 'supply' ? [] : [part.from, part.to])),
    ),
  ].filter((point) => !held.has(point));
  const index = new Map(points.map((point, place) => [point, place]));
  const rows = points.map((_point, place) =>
    [...points, ''].map((_other, column): number => (column === place ? SIEMENS.leak : 0)),
  );
  const add = (row: string, column: string, siemens: number): void => {
    const cells = rows[index.get(row) ?? -1];
    if (!cells) return;
    const at = index.get(column) ?? points.length;
    const known = held.get(column);
    cells[at] = (cells[at] ?? 0) + (known === undefined ? siemens : -siemens * known);
  };
  for (const { from, to, siemens } of edges) {
    add(from, from, siemens);
    add(from, to, -siemens);
    add(to, to, siemens);
    add(to, from, -siemens);
  }
  const solved = eliminate(rows);
  return (point) => held.get(point) ?? solved[index.get(point) ?? -1] ?? 0;
}

export function eliminate(rows: readonly number[][]): readonly number[] {
  rows.forEach((pivotRow, pivot) => {
    const head = pivotRow[pivot] ?? 1;
    rows.forEach((row, place) => {
      const factor = (row[pivot] ?? 0) / head;
      if (place === pivot || factor === 0) return;
      for (let column = pivot; column < row.length; column += 1) {
        row[column] = (row[column] ?? 0) - factor * (pivotRow[column] ?? 0);
      }
    });
  });
  return rows.map((row, place) => (row.at(-1) ?? 0) / (row[place] ?? 1));
}
