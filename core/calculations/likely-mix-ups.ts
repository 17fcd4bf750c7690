import type { CalculationRefusal } from './calculated.ts';

/** What is usually behind readings that cannot be true, as ids: the likeliest first (common practice). */
export type MixUp =
  | 'instrumentOrProbeSlipped'
  | 'otherRefrigerant'
  | 'liquidComingBack'
  | 'hosesSwapped'
  | 'compressorOff'
  | 'otherAltitude';

const MIX_UPS: Partial<Record<CalculationRefusal['reason'], readonly MixUp[]>> = {
  belowZeroSuperheat: ['instrumentOrProbeSlipped', 'otherRefrigerant', 'liquidComingBack'],
  belowZeroSubcooling: ['instrumentOrProbeSlipped', 'otherRefrigerant'],
  suctionAboveHead: ['hosesSwapped', 'compressorOff', 'instrumentOrProbeSlipped'],
  impossibleVacuum: ['instrumentOrProbeSlipped', 'otherAltitude'],
};

/** Nothing where a limit was passed rather than a reading impossible. */
export function likelyMixUps({ reason }: CalculationRefusal): {
  readonly likely?: readonly MixUp[];
} {
  const likely = MIX_UPS[reason];
  return likely === undefined ? {} : { likely };
}
