import type { CauseId } from '../../terms/causes.ts';
import type { MeteringId } from '../../terms/names.ts';
import { likelihood, type Levels } from './arrows.ts';
import { HIGH_SIDE_ROWS } from './high-side-rows.ts';
import { LOW_SIDE_ROWS } from './low-side-rows.ts';
import { STOPPED_ROWS } from './stopped-rows.ts';
import type { Feed, MatrixRow } from './matrix-row.ts';
import type { SymptomId } from './symptom.ts';

export const MATRIX: readonly MatrixRow[] = [...HIGH_SIDE_ROWS, ...LOW_SIDE_ROWS, ...STOPPED_ROWS];

const FEEDS: Record<MeteringId, Feed> = {
  txv: 'valve',
  eev: 'valve',
  capTube: 'fixed',
  orifice: 'fixed',
};

export const feedOf = (metering: MeteringId | null): Feed | null =>
  metering === null ? null : FEEDS[metering];

/** The rows of a cause that this feed allows: none where the part is not there, both where it is not known. */
export function rowsOf(cause: CauseId, feed: Feed | null): readonly MatrixRow[] {
  return MATRIX.filter(
    (row) => row.cause === cause && (feed === null || row.feed === null || row.feed === feed),
  );
}

/** How likely what was seen of a symptom is under the cause; an unknown feed counts its rows alike. */
export function likelihoodUnder(
  rows: readonly MatrixRow[],
  symptom: SymptomId,
  seen: Levels,
): number {
  const each = rows.map((row) => likelihood(row.arrows[symptom], seen));
  return each.reduce((sum, one) => sum + one, 0) / each.length;
}
