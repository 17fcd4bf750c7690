import type { SpokenSound } from './flite.ts';

/** What the page says to the spare voice's worker. */
export type ToVoice =
  | { readonly kind: 'load'; readonly url: string }
  | { readonly kind: 'say'; readonly request: number; readonly text: string };

/** What the worker answers. */
export type FromVoice =
  | { readonly kind: 'loaded' }
  | { readonly kind: 'loadFailed'; readonly message: string }
  /** Null where it could not be said. */
  | { readonly kind: 'said'; readonly request: number; readonly sound: SpokenSound | null };
