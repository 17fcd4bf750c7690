/** In the hands of this folder only: whoever has it may make what pages may not. */
export const KEY: unique symbol = Symbol('internal');

/** The interface has no constructor in Web IDL: for pages, `new` throws. */
export function requireKey(key: unknown): void {
  if (key !== KEY) throw new TypeError('Illegal constructor');
}
