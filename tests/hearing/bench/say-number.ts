const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

const PARTS: ReadonlySet<string> = new Set([...ONES, ...TENS, 'hundred', 'oh', 'point']);

export const isNumberWord = (word: string): boolean => PARTS.has(word);

/** A whole number below 1,000 as technicians say it: "one ninety two" mostly, now and then "one hundred ninety two". */
export function sayNumber(value: number, random: () => number): readonly string[] {
  const hundreds = Math.floor(value / 100);
  const rest = value % 100;
  if (hundreds === 0) return belowHundred(rest);
  const digit = ONES[hundreds] ?? '';
  if (rest === 0) return [digit, 'hundred'];
  if (random() < 0.25) return [digit, 'hundred', ...belowHundred(rest)];
  return rest < 10 ? [digit, 'oh', ONES[rest] ?? ''] : [digit, ...belowHundred(rest)];
}

function belowHundred(value: number): readonly string[] {
  if (value < 20) return [ONES[value] ?? ''];
  const tens = TENS[Math.floor(value / 10) - 2] ?? '';
  return value % 10 === 0 ? [tens] : [tens, ONES[value % 10] ?? ''];
}
