const FEWEST = 1024;
const EMPTY = -1;
/** More than a grammar tells apart in tokens. */
const SYMBOLS = 2 ** 14;

/**
 * Where each state leads over each token, as far as it was found out: one flat table with open addressing, looked into
 * once a token. Maps of states lie all over the memory, and most of the time went to fetching them.
 */
export class Transitions {
  size = 0;
  private mask = FEWEST - 1;
  /** Keys and what they lead to, in turns. */
  private table = freshTable(FEWEST);

  /** Below zero where it is not known. */
  get(state: number, symbol: number): number {
    const { table, mask } = this;
    const key = state * SYMBOLS + symbol;
    for (let slot = slotOf(key) & mask; ; slot = (slot + 1) & mask) {
      const found = table[slot * 2];
      if (found === key) return table[slot * 2 + 1] ?? EMPTY;
      if (found === EMPTY) return EMPTY;
    }
  }

  /** Of what is not known yet. */
  set(state: number, symbol: number, next: number): void {
    if (symbol >= SYMBOLS || state >= 2 ** 31 / SYMBOLS) throw new Error('too many to tell apart');
    if (this.size * 3 > this.mask * 2) this.grow();
    this.put(state * SYMBOLS + symbol, next);
    this.size += 1;
  }

  clear(): void {
    this.size = 0;
    this.mask = FEWEST - 1;
    this.table = freshTable(FEWEST);
  }

  private put(key: number, next: number): void {
    let slot = slotOf(key) & this.mask;
    while (this.table[slot * 2] !== EMPTY) slot = (slot + 1) & this.mask;
    this.table[slot * 2] = key;
    this.table[slot * 2 + 1] = next;
  }

  private grow(): void {
    const before = this.table;
    this.mask = this.mask * 2 + 1;
    this.table = freshTable(this.mask + 1);
    for (let at = 0; at < before.length; at += 2) {
      const key = before[at] ?? EMPTY;
      if (key !== EMPTY) this.put(key, before[at + 1] ?? EMPTY);
    }
  }
}

const freshTable = (entries: number): Int32Array => new Int32Array(entries * 2).fill(EMPTY);

/** Spreads neighbouring states and tokens over the table. */
function slotOf(key: number): number {
  const mixed = Math.imul(key, 0x9e3779b1);
  return mixed ^ (mixed >>> 15);
}
