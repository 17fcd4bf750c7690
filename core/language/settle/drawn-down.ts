import type { DraftUtterance } from './told.ts';

/** "Pumped it down to two and it came back up to nine": nothing runs, and the low side stands there. */
export function tellDrawnDown(all: DraftUtterance): void {
  const isPumpedDown = all.work.length > 0 && all.work.every(({ did }) => did === 'pumpDown');
  if (!isPumpedDown) return;
  all.readings = all.readings.map((each) =>
    each.quantity === 'suctionPressure' && each.event === undefined
      ? { ...each, event: 'drawnDown' }
      : each,
  );
}
