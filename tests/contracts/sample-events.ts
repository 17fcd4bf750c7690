import type { EventBody, VisitEvent } from '../../core/visit/events.ts';
import { DEFAULT_SETTINGS } from '../../core/visit/events.ts';

export const VISIT = '01KAXV1S1T0000000000000001';
export const OTHER_VISIT = '01KAXV1S1T0000000000000002';
const FIRST_MOMENT = 1_780_000_000_000;

/** Events of one device as the page would stamp them: ids, places and moments follow from `seq`. */
export function stampFor(device: string, visit: string = VISIT) {
  return (seq: number, body: EventBody): VisitEvent => ({
    id: `01KAXEVENT${String(seq).padStart(16, '0')}`,
    device,
    seq,
    visit,
    at: FIRST_MOMENT + seq * 1000,
    ...body,
  });
}

export const opened: EventBody = { type: 'visitOpened', v: 1, settings: DEFAULT_SETTINGS };
export const finished: EventBody = { type: 'visitFinished', v: 1 };

export function reading(value: number): EventBody {
  return {
    type: 'readingTaken',
    v: 1,
    reading: {
      quantity: 'headPressure',
      value,
      unit: 'psi',
      unitFrom: 'implied',
      place: null,
      words: `head ${value}`,
    },
  };
}
