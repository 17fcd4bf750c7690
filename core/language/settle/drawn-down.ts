import type { Context } from '../context.ts';
import type { Reading } from '../utterance.ts';
import type { DraftUtterance } from './told.ts';

/**
 * "Pumped it down to two and it came back up to nine": nothing runs, and the low side stands there. With the power off
 * no compressor draws it below the air: "it's in a vacuum ten inches" was drawn by the recovery machine.
 */
export function tellDrawnDown(all: DraftUtterance, { powerIsOff }: Context): void {
  const isPumpedDown = all.work.length > 0 && all.work.every(({ did }) => did === 'pumpDown');
  if (!isPumpedDown && !powerIsOff) return;
  all.readings = all.readings.map((each) =>
    each.quantity === 'suctionPressure' &&
    each.event === undefined &&
    (isPumpedDown || isBelowAir(each))
      ? { ...each, event: 'drawnDown' }
      : each,
  );
}

const isBelowAir = ({ value = 0, unit }: Reading): boolean => unit === 'inHg' || value < 0;
