import type { SafetyGroup } from '../fluids/fluid.ts';
import { FLUIDS } from '../fluids/fluids.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import { differenceF } from '../units/quantity-values.ts';
import type { Caution } from './calculated.ts';

const GROUP_CAUTIONS: Record<SafetyGroup, readonly Caution[]> = {
  A1: [],
  A2L: ['flammable'],
  A2: ['flammable'],
  A3: ['flammable'],
  B2L: ['toxicAmmonia', 'flammable'],
};

/** Half a degree is the smallest difference that a technician sees between a dial and a printed chart. */
const NOTICED = differenceF(0.5);

/** Below this much glide (R-404A has 1.4 °F) the middle is within a degree of either line: not worth a word. */
const GLIDE_NOTICED = differenceF(2);

export function isZeotrope(id: RefrigerantId): boolean {
  const { glide } = FLUIDS[id];
  return glide !== null && glide >= GLIDE_NOTICED;
}

export const glideCaution = (id: RefrigerantId): Caution[] =>
  isZeotrope(id) ? ['glideBasis'] : [];

/** What goes with any number about this refrigerant. */
export function fluidCautions(id: RefrigerantId): Caution[] {
  const { safetyGroup, chartsDiffer } = FLUIDS[id];
  return [
    ...GROUP_CAUTIONS[safetyGroup],
    ...(id === 'R-744' ? (['highPressureCarbonDioxide'] as const) : []),
    ...(chartsDiffer !== null && chartsDiffer.temperature >= NOTICED
      ? (['chartsDiffer'] as const)
      : []),
  ];
}
