import type { UnitId } from './units.ts';

/** A value as it was said or is to be shown: a plain number with its unit beside it. */
export interface Amount {
  readonly value: number;
  readonly unit: UnitId;
}
