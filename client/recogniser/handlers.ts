import type { RecognitionEvents } from './events.ts';
import { isObject } from './web-idl/conversions.ts';
import { defineAttribute } from './web-idl/expose-interface.ts';

export type Handler<Name extends keyof RecognitionEvents> =
  ((event: RecognitionEvents[Name]) => void) | null;

interface Registered {
  handler: object;
  readonly dispatch: (event: Event) => void;
}

/**
 * Gives a prototype its `on…` attributes. A handler that replaces another keeps its place among the
 * listeners; one set to null loses it (HTML standard, event handler attributes). Any object is kept, as the
 * standard's EventHandler takes one; what cannot be called is not.
 */
export function defineHandlers(
  prototype: EventTarget,
  names: readonly string[],
  targetOf: (object: object) => EventTarget,
): void {
  for (const name of names) defineHandler(prototype, name, targetOf);
}

function defineHandler(
  prototype: EventTarget,
  name: string,
  targetOf: (object: object) => EventTarget,
): void {
  const registered = new WeakMap<EventTarget, Registered>();
  defineAttribute(prototype, `on${name}`, {
    get() {
      return registered.get(targetOf(this))?.handler ?? null;
    },
    set(handler) {
      const target = targetOf(this);
      const before = registered.get(target);
      if (!isObject(handler)) {
        if (before) target.removeEventListener(name, before.dispatch);
        registered.delete(target);
      } else if (before) {
        before.handler = handler;
      } else {
        const entry = register(target, handler);
        registered.set(target, entry);
        target.addEventListener(name, entry.dispatch);
      }
    },
  });
}

function register(target: EventTarget, handler: object): Registered {
  const entry: Registered = {
    handler,
    dispatch: (event) => {
      if (typeof entry.handler === 'function') Reflect.apply(entry.handler, target, [event]);
    },
  };
  return entry;
}
