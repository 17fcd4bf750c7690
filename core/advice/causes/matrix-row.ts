import type { CauseId } from '../../terms/causes.ts';
import type { Arrow } from './arrows.ts';
import type { Arrows } from './symptom.ts';

/** A valve holds its superheat; a capillary tube or orifice lets it float: the same fault shows otherwise. */
export type Feed = 'valve' | 'fixed';

export interface MatrixRow {
  readonly cause: CauseId;
  /** Null where the row holds for either. */
  readonly feed: Feed | null;
  readonly arrows: Arrows;
  /** No reading against its target shows it: it is no candidate until something seen, heard or clamped speaks for it. */
  readonly onSight?: true;
  /** Head, suction, superheat and subcooling are the source's; amps and discharge may be from memory. */
  readonly source: string;
}

/** In the order the trade's tables print them: head, suction, superheat, subcooling, split, amps, discharge, TD. */
export function arrows(
  ...each: readonly [Arrow, Arrow, Arrow, Arrow, Arrow, Arrow, Arrow, Arrow]
): Arrows {
  const [headPressure, suctionPressure, superheat, subcooling, split, amps, discharge, td] = each;
  return {
    headPressure,
    suctionPressure,
    superheat,
    subcooling,
    split,
    current: amps,
    dischargeLineTemp: discharge,
    temperatureDifference: td,
  };
}

export const CUSTOM = 'common practice';
export const MEMORY = 'from memory';
