/** What a page written in JavaScript does: any member of anything, with any arguments. */
type Callable = (this: unknown, ...given: readonly unknown[]) => unknown;
type Constructor = new (...given: readonly unknown[]) => unknown;

const isCallable = (value: unknown): value is Callable => typeof value === 'function';
const isConstructor = (value: unknown): value is Constructor => typeof value === 'function';

export const get = (holder: object, member: PropertyKey): unknown => Reflect.get(holder, member);

export function call(fn: unknown, self: unknown, given: readonly unknown[]): unknown {
  if (!isCallable(fn)) throw new Error('there is no function to call');
  return Reflect.apply(fn, self, given);
}

export function make(face: unknown, given: readonly unknown[]): unknown {
  if (!isConstructor(face)) throw new Error('there is no class to make one of');
  return Reflect.construct(face, given);
}

/** As Object.getOwnPropertyDescriptor, without types that it cannot know. */
export function descriptorOf(holder: object, member: PropertyKey): Descriptor {
  return Object.getOwnPropertyDescriptor(holder, member) ?? {};
}

interface Descriptor {
  readonly value?: unknown;
  readonly get?: unknown;
  readonly set?: unknown;
  readonly writable?: boolean;
  readonly enumerable?: boolean;
  readonly configurable?: boolean;
}

/** By its interface's name, as any object prints. */
export const printed = (object: unknown): unknown =>
  call(get(Object.prototype, 'toString'), object, []);
