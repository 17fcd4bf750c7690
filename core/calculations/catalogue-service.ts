/** Catalogue entries of weights. */
import * as values from '../units/quantity-values.ts';
import { WEIGHT, answer, both, plain, refrigerantOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { baseOf, needBase } from './catalogue-inputs.ts';
import { REFRIGERANT, counted, mass, optional } from './catalogue-keys.ts';
import { cylinderFill, cylinderFillFormula } from './refrigerant-weights.ts';
import { leakRate, leakRateFormula } from './refrigerant-weights.ts';

export const SERVICE_ENTRIES: readonly Entry[] = [
  {
    formula: leakRateFormula,
    keys: [mass('added'), mass('charge'), counted('days', 'duration', 'day')],
    units: both('percent'),
    run: (inputs) =>
      plain(
        leakRate({
          added: values.mass(needBase(inputs, 'added')),
          charge: values.mass(needBase(inputs, 'charge')),
          since: values.duration(needBase(inputs, 'days')),
        }),
      ),
  },
  {
    formula: cylinderFillFormula,
    keys: [
      REFRIGERANT,
      mass('waterCapacity'),
      mass('tare'),
      optional(counted('specificGravity', 'ratio', 'ratio')),
    ],
    units: WEIGHT,
    run: (inputs) => {
      const given = baseOf(inputs, 'specificGravity');
      const found = cylinderFill({
        refrigerant: refrigerantOf(inputs),
        waterCapacity: values.mass(needBase(inputs, 'waterCapacity')),
        tare: values.mass(needBase(inputs, 'tare')),
        ...(given === undefined ? {} : { specificGravity: values.ratio(given) }),
      });
      return answer(found, ({ net, gross }) => ({ base: gross, also: { net } }));
    },
  },
];
