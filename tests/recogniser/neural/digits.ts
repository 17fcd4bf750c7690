import { pickOne } from './random.ts';

const DIGITS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const NOUGHTS = ['zero', 'oh'];

/** One to six digits one by one, a point among them now and then: "one oh four", "two three point seven". */
export function sampleDigits(random: () => number): readonly string[] {
  const count = 1 + Math.floor(random() * 6);
  const said = Array.from({ length: count }, () => sampleDigit(random));
  if (count < 2 || random() > 0.15) return said;
  const at = 1 + Math.floor(random() * (count - 1));
  return [...said.slice(0, at), 'point', ...said.slice(at)];
}

function sampleDigit(random: () => number): string {
  return random() < 0.12 ? pickOne(NOUGHTS, random) : pickOne(DIGITS, random);
}
