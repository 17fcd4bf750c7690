import { longer } from './longer.ts';

const FEWEST = 1024;
const EMPTY = -1;
/** A row: the token that was found out first, and what it leads to. */
const [FIRST, LEADS_TO, ROW] = [0, 1, 2];
/** An entry of the table of others. */
const [STATE, SYMBOL, NEXT, ENTRY] = [0, 1, 2, 3];

/**
 * Where each state leads over each token, as far as it was found out, and what else is kept of states and of steps
 * between them: whole numbers, all in one list. Most states lead on over one token, and the next state was found out
 * right after. So a state's row holds the token that was found out first, and all that one sentence needs lies side by
 * side, where one fetch from memory brings several rows: in tables and objects of their own each was a fetch, which was
 * most of the work. What else a state leads to is in a table with open addressing.
 */
export class Transitions {
  size = 0;
  private all = new Int32Array(FEWEST);
  private length = 0;
  private others = 0;
  private mask = FEWEST - 1;
  private table = freshTable(FEWEST);

  /** A state, which is where its row begins; numbers of its own are kept `OWN` behind that. */
  addState(own: readonly number[]): number {
    return this.add([EMPTY, EMPTY, ...own]);
  }

  /** Keeps numbers; where they begin. */
  add(numbers: readonly number[]): number {
    const at = this.length;
    this.length += numbers.length;
    if (this.length > this.all.length) this.all = longer(this.all, this.length - 1);
    this.all.set(numbers, at);
    return at;
  }

  /** One of the numbers that are kept. */
  at(place: number): number {
    return this.all[place] ?? 0;
  }

  /** What a state leads to over a token; below zero where it is not known. */
  get(state: number, symbol: number): number {
    const { all } = this;
    const first = all[state + FIRST];
    if (first === symbol) return all[state + LEADS_TO] ?? EMPTY;
    return first === EMPTY ? EMPTY : this.other(state, symbol);
  }

  private other(state: number, symbol: number): number {
    const { table, mask } = this;
    for (let slot = slotOf(state, symbol) & mask; ; slot = (slot + 1) & mask) {
      const entry = slot * ENTRY;
      const found = table[entry + STATE];
      if (found === state && table[entry + SYMBOL] === symbol) return table[entry + NEXT] ?? EMPTY;
      if (found === EMPTY) return EMPTY;
    }
  }

  /** Of what is not known yet. */
  set(state: number, symbol: number, next: number): void {
    this.size += 1;
    if (this.all[state + FIRST] === EMPTY) {
      this.all[state + FIRST] = symbol;
      this.all[state + LEADS_TO] = next;
      return;
    }
    if (this.others * 3 > this.mask * 2) this.grow();
    this.others += 1;
    this.put(state, symbol, next);
  }

  clear(): void {
    this.size = 0;
    this.length = 0;
    this.others = 0;
    this.mask = FEWEST - 1;
    this.table = freshTable(FEWEST);
  }

  private put(state: number, symbol: number, next: number): void {
    let slot = slotOf(state, symbol) & this.mask;
    while (this.table[slot * ENTRY + STATE] !== EMPTY) slot = (slot + 1) & this.mask;
    this.table.set([state, symbol, next], slot * ENTRY);
  }

  private grow(): void {
    const before = this.table;
    this.mask = this.mask * 2 + 1;
    this.table = freshTable(this.mask + 1);
    for (let entry = 0; entry < before.length; entry += ENTRY) {
      const [state = EMPTY, symbol = EMPTY, next = EMPTY] = before.subarray(entry, entry + ENTRY);
      if (state !== EMPTY) this.put(state, symbol, next);
    }
  }
}

/** Where a state's own numbers begin, from its row. */
export const OWN = ROW;

const freshTable = (entries: number): Int32Array => new Int32Array(entries * ENTRY).fill(EMPTY);

/** Spreads neighbouring states and tokens over the table. */
function slotOf(state: number, symbol: number): number {
  const mixed = Math.imul(state ^ Math.imul(symbol, 0x85ebca6b), 0x9e3779b1);
  return mixed ^ (mixed >>> 15);
}
