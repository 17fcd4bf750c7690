import type { QuantityId } from '../../terms/quantities.ts';

const ELECTRICAL: readonly QuantityId[] = [
  'voltage',
  'current',
  'resistance',
  'insulationResistance',
  'capacitance',
  'power',
];

/** What a meter is put across or around: it has a place. */
export const isElectrical = (quantity: QuantityId): boolean => ELECTRICAL.includes(quantity);
