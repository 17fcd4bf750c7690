/** A map of mostly one entry: of tens of thousands, each with a table of its own, the tables took most of the memory. */
export class SmallMap<Key, Value> {
  private readonly key: Key;
  private readonly value: Value;
  private more: Map<Key, Value> | null = null;

  constructor(key: Key, value: Value) {
    this.key = key;
    this.value = value;
  }

  get(key: Key): Value | undefined {
    return key === this.key ? this.value : this.more?.get(key);
  }

  /** Of a key that it does not hold yet. */
  add(key: Key, value: Value): void {
    this.more ??= new Map();
    this.more.set(key, value);
  }
}

/** With one entry more. */
export function withOneMore<Key, Value>(
  map: SmallMap<Key, Value> | null,
  key: Key,
  value: Value,
): SmallMap<Key, Value> {
  if (map === null) return new SmallMap(key, value);
  map.add(key, value);
  return map;
}
