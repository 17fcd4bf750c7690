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
  let seq = fromSeq;
  return (body) => {
    const event = {
      ...body,
      id: ulidOf(1000 + seq),
      device: DEVICE,
      visit: VISIT,
      seq,
      at: 1_700_000_000_000 + seq * 60_000,
    };
    seq += 1;
    return event;
  };
}
