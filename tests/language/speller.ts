const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** English for a whole number below 10,000, by long division: an opinion independent of the grammar's. */
export function spell(value: number): string {
  if (value >= 1000) return joined(`${spell(Math.floor(value / 1000))} thousand`, value % 1000);
  if (value >= 100) return joined(`${spell(Math.floor(value / 100))} hundred`, value % 100);
  if (value < 20) return SMALL[value] ?? '';
  return joined(TENS[Math.floor(value / 10) - 2] ?? '', value % 10);
}

const joined = (front: string, rest: number): string =>
  rest === 0 ? front : `${front} ${spell(rest)}`;

/** The trade's way: the hundred dropped, "oh" for a nought inside. */
export function spellClipped(value: number): string {
  const [hundreds, rest] = [Math.floor(value / 100), value % 100];
  return `${spell(hundreds)} ${rest < 10 ? `oh ${spell(rest)}` : spell(rest)}`;
}
