import type { Data, Tags } from './nodes.ts';

/** Later tags win over earlier ones of the same name. */
export function foldTags(tags: readonly Tags[]): Tags {
  const [first] = tags;
  if (first !== undefined && tags.length === 1) return first;
  const all: Record<string, Data> = {};
  for (const each of tags) Object.assign(all, each);
  return all;
}

/**
 * Adds up the tags of a number in the order they were said: `plus` adds, `times` multiplies what is there, and
 * `aside` multiplies it and sets it aside, out of reach of what multiplies later, as "thousand" does; `sign`
 * applies at the end. Rounded at the ninth decimal, where 0.1 + 0.2 stops showing.
 */
export function foldSum(tags: readonly Tags[]): Tags {
  let aside = 0;
  let sum = 0;
  let sign = 1;
  for (const each of tags) {
    sum = (sum + numberUnder(each, 'plus', 0)) * numberUnder(each, 'times', 1);
    sign *= numberUnder(each, 'sign', 1);
    const factor = numberUnder(each, 'aside', 0);
    if (factor === 0) continue;
    aside += sum * factor;
    sum = 0;
  }
  const number = rounded(aside + sum);
  return { number: number === 0 ? 0 : sign * number };
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
