import type { CauseId } from '../../terms/causes.ts';
import type { EvidenceRow, Input } from '../verdict.ts';
import { NEUTRAL, type Levels } from './arrows.ts';
import { CAUSE_IDS } from './cause-ids.ts';
import { likelihoodUnder, rowsOf } from './matrix.ts';
import type { Feed } from './matrix-row.ts';
import type { SymptomId } from './symptom.ts';

/** How many times likelier something is under a cause than under none; a cause left out is left as it is. */
export type Ratios = ReadonlyMap<CauseId, number>;

/** One thing that was read or seen, weighed. */
export interface Evidence {
  readonly shown: EvidenceRow;
  readonly ratios: Ratios;
  readonly inputs: readonly Input[];
}

/** What was seen of a symptom: how likely it is at each level. */
export interface Seen {
  readonly symptom: SymptomId;
  readonly levels: Levels;
}

/** A symptom with the row that shows it. */
export interface Judged extends Seen {
  readonly shown: EvidenceRow;
}

/** By the matrix: above one it fits the cause, below one it contradicts it, at one the sources leave it open. */
export function ratiosOfSeen({ symptom, levels }: Seen, feed: Feed | null): Ratios {
  return new Map(
    CAUSE_IDS.flatMap((cause) => {
      const rows = rowsOf(cause, feed);
      if (rows.length === 0) return [];
      return [[cause, likelihoodUnder(rows, symptom, levels) / NEUTRAL] as const];
    }),
  );
}

/** A quarter up or down is within what the shares in the data file are worth. */
export const SPEAKS = 1.25;

export const speaksFor = (ratios: Ratios, cause: CauseId): boolean =>
  (ratios.get(cause) ?? 1) >= SPEAKS;

export const speaksAgainst = (ratios: Ratios, cause: CauseId): boolean =>
  (ratios.get(cause) ?? 1) <= 1 / SPEAKS;
