import type { UnitId } from '../units/units.ts';
import type { Figure } from './verdict.ts';

/** The most that may be put on, or in. */
export type LimitAnswer = { readonly answer: 'limit' } & (
  | {
      readonly about: 'testPressure';
      readonly value: number;
      readonly unit: UnitId;
      /** The lowest rating in the circuit, as far as the plate tells. */
      readonly ruledBy: 'lowSide' | 'highSide';
    }
  | {
      readonly about: 'cylinderFill';
      /** What the scale shows when it is full. */
      readonly value: number;
      readonly unit: UnitId;
      readonly net: number;
      /** What may still go in by the weight last read; below zero it is overfilled. */
      readonly room: number | null;
    }
  | {
      readonly about: 'charge';
      readonly value: number;
      readonly unit: UnitId;
      /** What is left of it to weigh in; null where nobody knows what is still inside. */
      readonly left: number | null;
    }
);

/** What head will be on the hottest day, and whether it stays inside its cut-out. */
export interface HottestDayAnswer {
  readonly answer: 'hottestDay';
  readonly value: number;
  readonly unit: UnitId;
  readonly through: Figure;
  readonly ambient: Figure;
  readonly split: Figure;
  /** Today's own split, or the table's where today's is not known. */
  readonly splitFrom: 'measured' | 'design';
  readonly cutout: {
    readonly limit: number;
    readonly room: number;
    readonly side: 'inside' | 'past';
  } | null;
}
