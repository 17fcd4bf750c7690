import { FLUIDS } from '../../core/fluids/fluids.ts';
import { saturationPressure, saturationTemperature } from '../../core/fluids/saturation.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import { absolutePressure, temperature } from '../../core/units/quantity-values.ts';

const BATCHES = 301;
const CALLS = 4096;

interface Call {
  readonly id: RefrigerantId;
  readonly share: number;
}

/** Every refrigerant in turn, at places that no two calls in a row share. */
const CALLS_MADE: readonly Call[] = [...new Array<undefined>(CALLS).keys()].map((index) => ({
  id: REFRIGERANTS[index % REFRIGERANTS.length] ?? 'R-134a',
  share: (index * 0.618034) % 1,
}));

/** The median over batches of the mean time of one call, in nanoseconds; the sum keeps the calls alive. */
function medianNs(work: () => number): number {
  let kept = 0;
  const times = [...new Array<undefined>(BATCHES)].map(() => {
    const start = process.hrtime.bigint();
    kept += work();
    return Number(process.hrtime.bigint() - start) / CALLS;
  });
  if (Number.isNaN(kept)) throw new Error('a benchmarked call was refused');
  return times.sort((a, b) => a - b)[Math.floor(BATCHES / 2)] ?? NaN;
}

/** ln P on even steps of temperature, straight lines between: 1 K keeps within 0.01 %, as the fits do. */
interface Table {
  readonly low: number;
  readonly step: number;
  readonly logs: Float64Array;
}

const TABLE_STEP_K = 1;

function tableOf(id: RefrigerantId): Table {
  const { range } = FLUIDS[id];
  const count = Math.floor((range.high - range.low) / TABLE_STEP_K) + 1;
  const logs = Float64Array.from({ length: count }, (_, index) => {
    const found = saturationPressure(id, temperature(range.low + index * TABLE_STEP_K), 'dew');
    return found.kind === 'known' ? Math.log(found.value) : NaN;
  });
  return { low: range.low, step: TABLE_STEP_K, logs };
}

function lookUp({ low, step, logs }: Table, tempC: number): number {
  const place = (tempC - low) / step;
  const index = Math.min(Math.floor(place), logs.length - 2);
  const before = logs[index] ?? NaN;
  return Math.exp(before + ((logs[index + 1] ?? NaN) - before) * (place - index));
}

/** Times of one saturation call, beside an interpolated table of about the same accuracy. */
export function benchSaturation(): {
  pressureNs: number;
  temperatureNs: number;
  tableNs: number;
} {
  const tables = new Map(REFRIGERANTS.map((id) => [id, tableOf(id)]));
  const points = CALLS_MADE.map(({ id, share }) => {
    const { range, lines } = FLUIDS[id];
    return {
      id,
      at: temperature(range.low + share * (range.high - range.low - 1)),
      under: absolutePressure(lines.dew.low * (lines.dew.high / lines.dew.low) ** share),
      table: tables.get(id) ?? tableOf(id),
    };
  });
  const sum = (each: (point: (typeof points)[number]) => number) => (): number => {
    let total = 0;
    for (const point of points) total += each(point);
    return total;
  };
  return {
    pressureNs: medianNs(
      sum(({ id, at }) => {
        const found = saturationPressure(id, at, 'dew');
        return found.kind === 'known' ? found.value : NaN;
      }),
    ),
    temperatureNs: medianNs(
      sum(({ id, under }) => {
        const found = saturationTemperature(id, under, 'dew');
        return found.kind === 'known' ? found.value : NaN;
      }),
    ),
    tableNs: medianNs(sum(({ table, at }) => lookUp(table, at))),
  };
}
