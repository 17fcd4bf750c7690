import type { Data, Tags } from './nodes.ts';

/** What a tag does to a sum. */
export interface Summand {
  readonly plus: number;
  readonly times: number;
  readonly sign: number;
  readonly aside: number;
}

export const summandOf = (tags: Tags): Summand => ({
  plus: numberUnder(tags, 'plus', 0),
  times: numberUnder(tags, 'times', 1),
  sign: numberUnder(tags, 'sign', 1),
  aside: numberUnder(tags, 'aside', 0),
});

/**
 * Adds up a number in the order in which it was said: `plus` adds, `times` multiplies what is there, and `aside`
 * multiplies it and sets it aside, out of reach of what multiplies later, as "thousand" does; `sign` applies at the end.
 * Rounded at the ninth decimal, where 0.1 + 0.2 stops showing.
 */
export class Sum {
  private aside = 0;
  private sum = 0;
  private sign = 1;

  add({ plus, times, sign, aside }: Summand): void {
    this.sum = (this.sum + plus) * times;
    this.sign *= sign;
    if (aside === 0) return;
    this.aside += this.sum * aside;
    this.sum = 0;
  }

  addValue(value: number): void {
    this.sum += value;
  }

  total(): number {
    const number = rounded(this.aside + this.sum);
    return number === 0 ? 0 : this.sign * number;
  }
}

/** Later tags win over earlier ones of the same name. */
export function foldTags(tags: readonly Tags[]): Tags {
  const [first] = tags;
  if (first !== undefined && tags.length === 1) return first;
  const all: Record<string, Data> = {};
  for (const each of tags) Object.assign(all, each);
  return all;
}

export function foldSum(tags: readonly Tags[]): Tags {
  const sum = new Sum();
  for (const each of tags) sum.add(summandOf(each));
  return { number: sum.total() };
}

const rounded = (number: number): number =>
  Number.isInteger(number) ? number : Math.round(number * 1e9) / 1e9;

function numberUnder(tags: Tags, slot: string, otherwise: number): number {
  const found = tags[slot];
  return typeof found === 'number' ? found : otherwise;
}

/** Whether two meanings are one: folded tags are shallow but for scopes. */
export function sameTags(one: Tags, other: Tags): boolean {
  if (one === other) return true;
  const slots = Object.keys(one);
  if (slots.length !== Object.keys(other).length) return false;
  return slots.every((slot) => {
    const left = one[slot];
    const right = other[slot];
    if (typeof left === 'object' && typeof right === 'object') return sameTags(left, right);
    return left === right;
  });
}
