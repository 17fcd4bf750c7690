import type { RecognitionEvents } from './events.ts';

export type Handler<Name extends keyof RecognitionEvents> =
  ((event: RecognitionEvents[Name]) => void) | null;

type AnyHandler = (event: Event) => void;

interface Registered {
  handler: AnyHandler;
  readonly dispatch: AnyHandler;
}

/**
 * Gives a prototype its `on…` attributes. A handler that replaces another keeps its place among the
 * listeners; one set to null loses it (HTML standard, event handler attributes).
 */
export function defineHandlers(prototype: EventTarget, names: readonly string[]): void {
  for (const name of names) defineHandler(prototype, name);
}

function defineHandler(prototype: EventTarget, name: string): void {
  const registered = new WeakMap<EventTarget, Registered>();
  Object.defineProperty(prototype, `on${name}`, {
    configurable: true,
    enumerable: true,
    get(this: EventTarget): AnyHandler | null {
      return registered.get(this)?.handler ?? null;
    },
    set(this: EventTarget, handler: unknown) {
      const before = registered.get(this);
      if (!isHandler(handler)) {
        if (before) this.removeEventListener(name, before.dispatch);
        registered.delete(this);
      } else if (before) {
        before.handler = handler;
      } else {
        const entry: Registered = {
          handler,
          dispatch: (event) => entry.handler.call(this, event),
        };
        registered.set(this, entry);
        this.addEventListener(name, entry.dispatch);
      }
    },
  });
}

const isHandler = (value: unknown): value is AnyHandler => typeof value === 'function';
