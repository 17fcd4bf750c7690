/**
 * Other numbers that this one is misheard as, nearest in sound first: "fifteen" and "fifty", "one oh six",
 * "one sixteen" and "one sixty", "fifteen thousand" and "fifty thousand". The sign and what stands behind the
 * point are kept. Common practice in read-back; which words sound alike is in the spelling.
 */
export function confusables(value: number): readonly number[] {
  const size = Math.abs(value);
  const whole = Math.floor(size);
  const sign = value < 0 ? -1 : 1;
  const kept = (other: number): number => sign * (Math.round((other + size - whole) * 1e6) / 1e6);
  return soundingLike(whole).map(kept);
}

function soundingLike(whole: number): readonly number[] {
  if (whole % 1000 === 0 && whole !== 0)
    return soundingLike(whole / 1000).map((each) => each * 1000);
  const hundreds = Math.floor(whole / 100);
  return family(whole % 100, hundreds > 0).map((each) => hundreds * 100 + each);
}

/** Three to nine make a teen and a multiple of ten alike; behind a hundred, "oh six" is a third. */
function family(lastTwo: number, behindHundred = false): readonly number[] {
  const root = rootOf(lastTwo, behindHundred);
  if (root === null) return [];
  const alike = [root + 10, root * 10, ...(behindHundred ? [root] : [])];
  return alike.filter((each) => each !== lastTwo);
}

function rootOf(lastTwo: number, behindHundred: boolean): number | null {
  const root =
    lastTwo > 12 && lastTwo < 20 ? lastTwo - 10 : lastTwo % 10 === 0 ? lastTwo / 10 : null;
  if (root !== null) return root >= 3 ? root : null;
  return behindHundred && lastTwo >= 3 && lastTwo <= 9 ? lastTwo : null;
}
