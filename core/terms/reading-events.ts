/**
 * How a value was come by that is none of the unit as it runs. `tripped`: as a control did; `standing`: with the compressor
 * at rest; `drawnDown`: what the low side was pumped down or recovered to.
 */
export const READING_EVENTS = ['tripped', 'standing', 'drawnDown'] as const;
export type ReadingEvent = (typeof READING_EVENTS)[number];

/** Whether the unit ran, if only up to its trip: what is read at rest tells nothing of how it does. */
export const isOfRun = ({ event }: { readonly event?: ReadingEvent }): boolean =>
  event === undefined || event === 'tripped';
