import type { TemperatureDifference } from '../units/quantity-values.ts';
import { known } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { PRODUCT_DIFFERENCES } from './shop-defaults.ts';
import type { ProductId } from './shop-defaults.ts';

/**
 * The coil's temperature difference for what is kept. Looked up: the humidity of a box cannot be worked out from
 * its coil temperature, which only bounds it from below.
 */
export function productDifference({
  product,
}: {
  readonly product: ProductId;
}): Calculated<TemperatureDifference> {
  return known(PRODUCT_DIFFERENCES[product], 'designTableOnly');
}

const SOURCE =
  'fliphtml5.com/gshwa/gmim, Refrigeration and Air-Conditioning, 4th edition, section 10.3, page 135';

export const productDifferenceFormula: Formula = {
  id: 'productDifference',
  name: 'coil temperature difference by product',
  equation:
    'looked up: dries quickly 4 K, about 85 % 6 K, 80 % or drier 8 K, insensitive 10 K and more',
  symbols: symbols(['TD', 'air entering the coil less evaporating temperature', 'K']),
  range: 'forced air, medium temperature, unsealed products',
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { product: 'driesQuickly' },
    gives: { value: 7.2, unit: 'dF' },
    within: 0.05,
    source: `${SOURCE}: most fruits and vegetables, 4 K`,
    standing: 'published',
  },
};
