import { Sum, summandOf } from './fold.ts';
import type { Act } from './left.ts';
import type { Matcher } from './match.ts';
import type { Data, Tags } from './nodes.ts';

/** What is done before each token of a reading, and behind the last. */
export type Acts = readonly (readonly Act[])[];

/** What a reading from `start` means; `null` where it turns out to be none. */
export function tagsOn(way: Acts, start: number, matcher: Matcher): Tags | null {
  const reading = new Reading(matcher);
  for (let ahead = 0; ahead < way.length; ahead += 1) {
    for (const act of way[ahead] ?? []) if (!reading.does(act, start + ahead)) return null;
  }
  return reading.tags;
}

/** Tags as they are put together, inside out. */
class Reading {
  tags: Record<string, Data> = {};
  /** Where a number is added up. */
  private sum: Sum | null = null;
  private readonly around: { readonly tags: Record<string, Data>; readonly sum: Sum | null }[] = [];
  private restFrom = 0;
  private readonly matcher: Matcher;

  constructor(matcher: Matcher) {
    this.matcher = matcher;
  }

  /** False where the reading is none. */
  does(act: Act, at: number): boolean {
    switch (act.do) {
      case 'put':
        this.tags[act.slot] = act.data;
        break;
      case 'sum':
        this.sum?.add(act.summand);
        break;
      case 'value':
        this.addValue(this.matcher.tokens[at]?.value ?? null, act.scale);
        break;
      case 'begin':
        this.begin(act.isSum);
        break;
      case 'end':
        this.end(act.slot);
        break;
      case 'rest':
        this.restFrom = at;
        break;
      case 'restEnds':
        if (this.sum === null) this.tags[act.slot] = { from: this.restFrom, to: at };
        break;
      case 'unless':
        return this.matcher.readsNothing(act.node, at);
    }
    return true;
  }

  private addValue(value: number | null, scale: number): void {
    if (value === null) return;
    if (this.sum === null) this.tags['plus'] = value * scale;
    else this.sum.addValue(value * scale);
  }

  private begin(isSum: boolean): void {
    this.around.push({ tags: this.tags, sum: this.sum });
    this.sum = isSum ? new Sum() : null;
    if (!isSum) this.tags = {};
  }

  private end(slot: string | null): void {
    const { tags, sum } = this;
    const around = this.around.pop();
    if (around === undefined) return;
    this.tags = around.tags;
    this.sum = around.sum;
    const read = sum === null ? tags : { number: sum.total() };
    if (this.sum === null) {
      if (slot === null) Object.assign(this.tags, read);
      else this.tags[slot] = read;
    } else if (slot === null) this.sum.add(summandOf(read));
  }
}
