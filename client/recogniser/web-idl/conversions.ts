/** JavaScript values as the types of Web IDL (webidl.spec.whatwg.org, 3.2), as far as these interfaces need them. */
export function toDomString(value: unknown): string {
  if (typeof value === 'symbol') throw new TypeError('A symbol cannot be made a string.');
  return String(value);
}

export const toBoolean = (value: unknown): boolean => Boolean(value);

/** Modulo 2³², and 0 for what is no number: 3.2.4.6. */
export const toUnsignedLong = (value: unknown): number => toNumber(value) >>> 0;

/** The nearest single-precision number; infinite and too large ones are refused: 3.2.6. */
export function toFloat(value: unknown): number {
  const rounded = Math.fround(toNumber(value));
  if (!Number.isFinite(rounded)) throw new TypeError('The number is not finite.');
  return rounded;
}

function toNumber(value: unknown): number {
  // Number() takes a BigInt, Web IDL's conversion does not.
  if (typeof value === 'bigint') throw new TypeError('A BigInt cannot be made a number.');
  return Number(value);
}

export type Read = (member: string) => unknown;

/** Reads the members of a dictionary; nothing at all is an empty one. */
export function toDictionary(value: unknown): Read {
  if (value === undefined || value === null) return () => undefined;
  if (!isObject(value)) throw new TypeError('A dictionary must be an object.');
  return (member): unknown => Reflect.get(value, member);
}

export function requiredMember(read: Read, member: string): unknown {
  const value = read(member);
  if (value === undefined) throw new TypeError(`The member ${member} is required.`);
  return value;
}

export function toEnum<Value extends string>(value: unknown, values: readonly Value[]): Value {
  const text = toDomString(value);
  const found = values.find((each) => each === text);
  if (found === undefined) throw new TypeError(`“${text}” is not one of ${values.join(', ')}.`);
  return found;
}

export function toSequence<Item>(value: unknown, toItem: (item: unknown) => Item): Item[] {
  if (!isIterable(value)) throw new TypeError('A sequence must be an iterable object.');
  return Array.from(value, toItem);
}

export const isObject = (value: unknown): value is object =>
  (typeof value === 'object' && value !== null) || typeof value === 'function';

const isIterable = (value: unknown): value is Iterable<unknown> =>
  isObject(value) && typeof Reflect.get(value, Symbol.iterator) === 'function';
