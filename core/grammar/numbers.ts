/** A growing list of whole numbers, close together in memory. */
export class Numbers {
  private count = 0;
  private all = new Int32Array(1024);

  at(index: number): number {
    return this.all[index] ?? 0;
  }

  /** Where the first of the two stands. */
  add(one: number, other: number): number {
    if (this.count + 2 > this.all.length) this.grow();
    const at = this.count;
    this.all[at] = one;
    this.all[at + 1] = other;
    this.count += 2;
    return at;
  }

  private grow(): void {
    const longer = new Int32Array(this.all.length * 2);
    longer.set(this.all);
    this.all = longer;
  }
}
