import { createEndpointer, type EndpointEvent } from '../../core/hearing/endpointer.ts';
import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import { FRAME_MS } from '../../core/hearing/frame.ts';
import { createFramer } from '../../core/hearing/framer.ts';

export interface Timed {
  readonly event: EndpointEvent;
  readonly atMs: number;
}

/** What the endpointer says of a whole sound, and when. */
export function eventsIn(samples: Float32Array, startFloorDb?: number): readonly Timed[] {
  const endpointer = createEndpointer(ENDPOINTER_SETTINGS, startFloorDb);
  return createFramer()(samples).flatMap((frame, index) => {
    const event = endpointer.accept(frame);
    return event === null ? [] : [{ event, atMs: (index + 1) * FRAME_MS }];
  });
}

export const names = (events: readonly Timed[]): readonly EndpointEvent[] =>
  events.map(({ event }) => event);
