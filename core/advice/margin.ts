import type { AnswerableId } from '../terms/quantities.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import { readAmount } from './current.ts';
import { both, andThen, worked, type Found } from './found.ts';

type Limit = 'highCutoutPressure' | 'lowCutoutPressure';

const LOW_SIDE: ReadonlySet<AnswerableId> = new Set<AnswerableId>([
  'suctionPressure',
  'evaporatingTemp',
  'lowCutoutPressure',
  'lowCutinPressure',
]);

/** The cut-out meant by a question about that quantity: asked of nothing in particular, the high one. */
export function limitOf(about: AnswerableId | null): Limit {
  return about !== null && LOW_SIDE.has(about) ? 'lowCutoutPressure' : 'highCutoutPressure';
}

interface Margin {
  readonly measured: number;
  readonly limit: number;
  readonly value: number;
  readonly unit: UnitId;
  readonly side: 'inside' | 'past';
}

/** How far the pressure is from where its control opens, and on which side of it. */
export function marginTo(limit: Limit, state: VisitState): Found<Margin> {
  const isHigh = limit === 'highCutoutPressure';
  const pressure = readAmount(state, isHigh ? 'headPressure' : 'suctionPressure');
  return andThen(both(pressure, readAmount(state, limit)), ([now, cutout]) => {
    const room = isHigh ? cutout.value - now.value : now.value - cutout.value;
    return worked(
      {
        measured: now.value,
        limit: cutout.value,
        value: Math.abs(room),
        unit: now.unit,
        side: room >= 0 ? 'inside' : 'past',
      },
      { sources: ['by definition: the control’s setting less what is read'] },
    );
  });
}
