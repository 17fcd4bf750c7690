const ENTRY = 3;
const FEWEST = 1024;
const UNKNOWN = -1;

/**
 * Where each state leads over each kind of token, as far as it was found out. One flat table, looked into once a token:
 * as maps of states the tables of a large grammar lie all over the memory, and most of the time went to fetching them.
 */
export class Transitions {
  private size = 0;
  private mask = FEWEST - 1;
  private table = freshTable(FEWEST);

  /** A number from 0 on; below it where it is not known. */
  get(state: number, symbol: number): number {
    const { table, mask } = this;
    for (let slot = slotOf(state, symbol) & mask; ; slot = (slot + 1) & mask) {
      const at = slot * ENTRY;
      if (table[at] === state && table[at + 1] === symbol) return table[at + 2] ?? UNKNOWN;
      if (table[at] === UNKNOWN) return UNKNOWN;
    }
  }

  /** Of what is not known yet. */
  set(state: number, symbol: number, next: number): void {
    if (this.size * 2 > this.mask) this.grow();
    this.put(state, symbol, next);
    this.size += 1;
  }

  clear(): void {
    this.size = 0;
    this.mask = FEWEST - 1;
    this.table = freshTable(FEWEST);
  }

  private put(state: number, symbol: number, next: number): void {
    let slot = slotOf(state, symbol) & this.mask;
    while (this.table[slot * ENTRY] !== UNKNOWN) slot = (slot + 1) & this.mask;
    this.table.set([state, symbol, next], slot * ENTRY);
  }

  private grow(): void {
    const before = this.table;
    this.mask = this.mask * 2 + 1;
    this.table = freshTable(this.mask + 1);
    for (let at = 0; at < before.length; at += ENTRY) {
      const [state = UNKNOWN, symbol = 0, next = 0] = before.subarray(at, at + ENTRY);
      if (state !== UNKNOWN) this.put(state, symbol, next);
    }
  }
}

const freshTable = (entries: number): Int32Array => new Int32Array(entries * ENTRY).fill(UNKNOWN);

/** Spreads neighbouring states and kinds over the table. */
const slotOf = (state: number, symbol: number): number => {
  const mixed = Math.imul(state, 0x9e3779b1) ^ Math.imul(symbol, 0x85ebca6b);
  return mixed ^ (mixed >>> 15);
};
