interface InterfaceObject {
  readonly prototype: object;
}

/** What every function has of its own, whatever class it is. */
const OF_FUNCTIONS: ReadonlySet<string> = new Set(['length', 'name', 'prototype']);

/**
 * Makes a class what Web IDL calls an interface (3.7): members are enumerable, a method called with too few
 * arguments throws, objects print by the interface's name. The name is given, as a minifier shortens classes'.
 */
export function exposeInterface(constructor: InterfaceObject, name: string): void {
  Object.defineProperty(constructor, 'name', { value: name, configurable: true });
  for (const member of Object.getOwnPropertyNames(constructor)) {
    // Static ones promise something: too few arguments reject, where their own conversions say so.
    if (!OF_FUNCTIONS.has(member)) redefine(constructor, member, {});
  }
  const { prototype } = constructor;
  for (const member of Object.getOwnPropertyNames(prototype)) {
    if (member !== 'constructor') redefine(prototype, member, countingIn(prototype, member));
  }
  Object.defineProperty(prototype, Symbol.toStringTag, { value: name, configurable: true });
}

/** A list with `length` and numbers is walked by the array's own iterator: 3.7.10. */
export function walkAsArray(prototype: object): void {
  Object.defineProperty(prototype, Symbol.iterator, {
    value: Array.prototype[Symbol.iterator],
    writable: true,
    configurable: true,
  });
}

interface Accessor {
  readonly get: (this: object) => unknown;
  readonly set?: (this: object, value: unknown) => void;
}

export function defineAttribute(prototype: object, name: string, { get, set }: Accessor): void {
  Object.defineProperty(prototype, name, {
    configurable: true,
    enumerable: true,
    get: named(get, `get ${name}`),
    ...(set ? { set: named(set, `set ${name}`) } : {}),
  });
}

function redefine(holder: object, member: string, changed: PropertyDescriptor): void {
  const descriptor = Object.getOwnPropertyDescriptor(holder, member);
  Object.defineProperty(holder, member, { ...descriptor, ...changed, enumerable: true });
}

function countingIn(prototype: object, member: string): PropertyDescriptor {
  const value: unknown = Object.getOwnPropertyDescriptor(prototype, member)?.value;
  return isMethod(value) && value.length > 0 ? { value: counting(value, member) } : {};
}

type Method = (this: unknown, ...given: readonly unknown[]) => unknown;

const isMethod = (value: unknown): value is Method => typeof value === 'function';

function counting(method: Method, name: string): Method {
  const { length } = method;
  const counted: Method = function (...given) {
    if (given.length < length) throw new TypeError(`${name} needs ${length} arguments.`);
    return Reflect.apply(method, this, given);
  };
  Object.defineProperty(counted, 'length', { value: length, configurable: true });
  return named(counted, name);
}

function named<Fn extends object>(fn: Fn, name: string): Fn {
  return Object.defineProperty(fn, 'name', { value: name, configurable: true });
}
