export interface PushAnswer {
  /** The server's claim: every event of this device up to here is on its disk. */
  readonly confirmed: number;
  /** The last place of the batch it answered. */
  readonly last: number;
  /** Places that hold no readable event on this device, as far as they have been read. */
  readonly damaged: ReadonlySet<number>;
  /** Where this run has already gone back to. */
  readonly wentBack: ReadonlySet<number>;
}

export type Settlement =
  | {
      readonly kind: 'confirm';
      readonly seq: number;
      /** Damaged places up to it that the server does not hold: they count as left out, never as sent. */
      readonly leftOut: readonly number[];
    }
  /** The server holds less than was sent (restored from a backup, an answer that came late): send again. */
  | { readonly kind: 'goBack'; readonly seq: number }
  | { readonly kind: 'stuck'; readonly seq: number };

/**
 * What an accepted batch settles. A place damaged here is a gap on the server for ever, and its count stops
 * before it: what was accepted beyond it is taken as kept. Never confirms more than was sent, so that a server
 * that claims too much costs a repeated push and not an event.
 */
export function settlePush({ confirmed, last, damaged, wentBack }: PushAnswer): Settlement {
  if (confirmed >= last || damaged.has(confirmed + 1)) {
    const leftOut = [...damaged].filter((seq) => seq > confirmed && seq <= last);
    return { kind: 'confirm', seq: last, leftOut };
  }
  return { kind: wentBack.has(confirmed) ? 'stuck' : 'goBack', seq: confirmed };
}
