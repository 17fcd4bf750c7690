import { indexOf } from './indexed.ts';
import { toSequence } from './conversions.ts';

export interface ObservableArray<Item> {
  /** What the page sees: an array that takes nothing but items, without holes. */
  readonly array: Item[];
  /** What an assignment to the attribute does: all old items go, all new ones come. */
  readonly replace: (value: unknown) => void;
}

/** Web IDL's ObservableArray (3.10): `toItem` throws for what may not stand in it. */
export function observableArray<Item>(toItem: (value: unknown) => Item): ObservableArray<Item> {
  const items: Item[] = [];
  const setLength = (value: unknown): boolean => {
    const length = Number(value);
    if (!Number.isInteger(length) || length < 0) throw new RangeError('Invalid array length');
    if (length > items.length) return false;
    items.length = length;
    return true;
  };
  const setItem = (index: number, value: unknown): boolean => {
    if (index > items.length) return false;
    items[index] = toItem(value);
    return true;
  };
  const array = new Proxy(items, {
    set: (target, key, ...[value, receiver]: readonly [unknown, unknown]) => {
      const index = indexOf(key);
      if (index !== null) return setItem(index, value);
      return key === 'length' ? setLength(value) : Reflect.set(target, key, value, receiver);
    },
    defineProperty: (target, key, descriptor) => {
      const index = indexOf(key);
      if (index === null && key !== 'length') {
        return Reflect.defineProperty(target, key, descriptor);
      }
      if (!isPlainValue(descriptor)) return false;
      return index === null ? setLength(descriptor.value) : setItem(index, descriptor.value);
    },
    deleteProperty: (target, key) => {
      const index = indexOf(key);
      if (index === null) return Reflect.deleteProperty(target, key);
      // Only the last one: an array without holes stays without.
      if (index === items.length - 1) items.length = index;
      return index >= items.length;
    },
    preventExtensions: () => false,
  });
  return {
    array,
    replace: (value) => {
      const replacing = toSequence(value, toItem);
      items.splice(0, items.length, ...replacing);
    },
  };
}

/** Items are always writable, enumerable and configurable values. */
const isPlainValue = (descriptor: PropertyDescriptor): boolean =>
  !('get' in descriptor) &&
  !('set' in descriptor) &&
  descriptor.writable !== false &&
  descriptor.enumerable !== false &&
  descriptor.configurable !== false;
