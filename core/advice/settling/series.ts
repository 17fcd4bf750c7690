import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { convert } from '../../units/convert.ts';
import type { UnitId } from '../../units/units.ts';
import type { EventId } from '../../visit/events.ts';
import { ONE_BREATH_MS } from '../../visit/one-breath.ts';
import type { VisitState } from '../../visit/state.ts';
import { isOfOneFood } from '../../visit/probed.ts';
import { amountOf, isNewer } from '../../visit/views.ts';
import { currentReading, shownUnit } from '../current.ts';
import { differenceUnit } from '../deviation.ts';
import type { Input } from '../verdict.ts';

export interface Sample {
  readonly id: EventId;
  readonly at: number;
  readonly value: number;
}

/** One quantity at one place, over the visit. */
export interface Series {
  readonly about: QuantityId;
  readonly place: PlaceId | null;
  readonly unit: UnitId;
  readonly changeUnit: UnitId;
  /** In the order read. */
  readonly samples: readonly Sample[];
}

export const minutesBetween = (from: number, to: number): number => (to - from) / 60_000;

/** What was read as a control tripped is not how the unit runs. Null where it was never read. */
export function seriesOf(state: VisitState, about: QuantityId): Series | null {
  const newest = currentReading(state, about);
  if (newest === null) return null;
  const { place } = newest.reading;
  const unit = shownUnit(about, state) ?? newest.reading.unit;
  if (unit === null) return null;
  const samples = state.readings.flatMap(({ id, at, reading }) => {
    if (reading.quantity !== about || reading.place !== place || reading.event !== undefined) {
      return [];
    }
    if (!isOfOneFood(reading, newest.reading)) return [];
    const amount = amountOf(reading);
    const shown = amount && convert(amount, unit);
    return shown ? [{ id, at, value: shown.value }] : [];
  });
  return {
    about,
    place,
    unit,
    changeUnit: differenceUnit(unit, state),
    samples: ofMoments(samples),
  };
}

/** What was read later than an event, up to another. */
export function since(series: Series, from: EventId | null, state: VisitState): Series {
  if (from === null) return series;
  return { ...series, samples: series.samples.filter(({ id }) => isNewer(state, id, from)) };
}

/** Said twice in a breath it was read once, and the later word holds: nothing moved in no time. */
const ofMoments = (samples: readonly Sample[]): readonly Sample[] =>
  samples.filter(({ at }, index) => (samples[index + 1]?.at ?? Infinity) - at >= ONE_BREATH_MS);

export function inputsOf({ about, unit, samples }: Series): readonly Input[] {
  return samples.map(({ at, value }) => ({ name: about, value, unit, from: 'read', at }));
}
