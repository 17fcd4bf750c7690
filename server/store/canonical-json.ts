/** JSON with its keys sorted: two equal values give one text whatever order their keys were written in. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => (isRecord(part) ? sorted(part) : part));
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const sorted = (record: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
