import type { CatalogueCheck } from './check-row.ts';

/** One check of a calculation, its name left to the list it stands in. */
export type Row = Omit<CatalogueCheck, 'name'>;

export const checksOf = (name: string, rows: readonly Row[]): CatalogueCheck[] =>
  rows.map((row) => ({ name, ...row }));
