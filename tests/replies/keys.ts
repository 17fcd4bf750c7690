import fc from 'fast-check';

/** One of the ids of a closed table. */
export function keyOf<Table extends object>(table: Table): fc.Arbitrary<keyof Table & string> {
  const isKey = (key: string): key is keyof Table & string => key in table;
  return fc.constantFrom(...Object.keys(table).filter(isKey));
}
