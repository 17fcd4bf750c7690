/**
 * An object with numbered properties as Web IDL has them (3.9, legacy platform objects): read-only, as many as
 * there are items, and `undefined` beyond them where `item()` says null.
 */
export function indexed<Target extends object>(
  target: Target,
  items: () => readonly unknown[],
): Target {
  const holds = (key: string | symbol): key is string => {
    const index = indexOf(key);
    return index !== null && index < items().length;
  };
  const at = (key: string): unknown => items()[Number(key)];
  return new Proxy(target, {
    get: (of, key, receiver): unknown => (holds(key) ? at(key) : Reflect.get(of, key, receiver)),
    has: (of, key) => holds(key) || Reflect.has(of, key),
    getOwnPropertyDescriptor: (of, key) =>
      holds(key)
        ? { value: at(key), writable: false, enumerable: true, configurable: true }
        : Reflect.getOwnPropertyDescriptor(of, key),
    ownKeys: (of) => [...Object.keys([...items()]), ...Reflect.ownKeys(of)],
    set: (of, key, ...[value, receiver]: readonly [unknown, unknown]) =>
      indexOf(key) === null && Reflect.set(of, key, value, receiver),
    defineProperty: (of, key, descriptor) =>
      indexOf(key) === null && Reflect.defineProperty(of, key, descriptor),
    deleteProperty: (of, key) =>
      indexOf(key) === null ? Reflect.deleteProperty(of, key) : !holds(key),
    preventExtensions: () => false,
  });
}

/** Array indices (ECMAScript 6.1.7): whole numbers below 2³² − 1, written the usual way. */
export function indexOf(key: string | symbol): number | null {
  if (typeof key === 'symbol') return null;
  const index = Number(key) >>> 0;
  return String(index) === key && index !== 2 ** 32 - 1 ? index : null;
}
