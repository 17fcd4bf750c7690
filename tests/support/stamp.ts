import type { Stamp } from '../../core/turn/turn.ts';

const CROCKFORD = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A well-formed ULID that counts up: ids in tests sort in the order they were made. */
export function ulidOf(count: number): string {
  let rest = count;
  let digits = '';
  for (let place = 0; place < 26; place += 1) {
    digits = CROCKFORD.charAt(rest % 32) + digits;
    rest = Math.floor(rest / 32);
  }
  return digits;
}

export const DEVICE = ulidOf(1);
export const VISIT = ulidOf(2);

/** Stamps events as one device would on one visit: from seq 1, a minute apart. */
export function createStamp(fromSeq = 1): Stamp {
  return createClockedStamp(fromSeq).stamp;
}

/** The same, on a clock that can be moved on. */
export function createClockedStamp(fromSeq = 1): {
  readonly stamp: Stamp;
  readonly now: () => number;
  readonly pass: (minutes: number) => void;
} {
  let seq = fromSeq;
  let passed = 0;
  const now = (): number => 1_700_000_000_000 + (seq + passed) * 60_000;
  return {
    now,
    pass: (minutes) => {
      passed += minutes;
    },
    stamp: (body) => {
      const event = {
        ...body,
        id: ulidOf(1000 + seq),
        device: DEVICE,
        visit: VISIT,
        seq,
        at: now(),
      };
      seq += 1;
      return event;
    },
  };
}
