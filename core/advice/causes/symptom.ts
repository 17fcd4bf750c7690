import type { AnswerableId } from '../../terms/quantities.ts';
import type { Arrow } from './arrows.ts';

/** The columns of the symptom matrix. */
export const SYMPTOMS = [
  'headPressure',
  'suctionPressure',
  'superheat',
  'subcooling',
  'split',
  'current',
  'dischargeLineTemp',
  'temperatureDifference',
] as const satisfies readonly AnswerableId[];
export type SymptomId = (typeof SYMPTOMS)[number];

export type Arrows = Readonly<Record<SymptomId, Arrow>>;

/**
 * Two columns that show the same thing: head over its target by 10 °F is the split over by 10 °F. Only the first
 * that can be judged counts, or one dirty condenser would be two pieces of evidence.
 */
export const SAME_READING: readonly (readonly SymptomId[])[] = [
  ['headPressure', 'split'],
  ['suctionPressure', 'temperatureDifference'],
  ['superheat'],
  ['subcooling'],
  ['current'],
  ['dischargeLineTemp'],
];
