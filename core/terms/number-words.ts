/** The words of small numbers, in the order that they are counted in. */

export const ONES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
export const TEENS = [
  ...['ten', 'eleven', 'twelve', 'thirteen', 'fourteen'],
  ...['fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'],
];
export const TENS = [
  ...['twenty', 'thirty', 'forty', 'fifty'],
  ...['sixty', 'seventy', 'eighty', 'ninety'],
];

export const TO_TWELVE = [...ONES, ...TEENS.slice(0, 3)];

/** Places in a row: the first to the ninth, the tenth to the nineteenth, the twentieth to the ninetieth. */
export const ONES_IN_ROW = [
  ...['first', 'second', 'third', 'fourth', 'fifth'],
  ...['sixth', 'seventh', 'eighth', 'ninth'],
];
export const TEENS_IN_ROW = [
  ...['tenth', 'eleventh', 'twelfth', 'thirteenth', 'fourteenth'],
  ...['fifteenth', 'sixteenth', 'seventeenth', 'eighteenth', 'nineteenth'],
];
export const TENS_IN_ROW = TENS.map((ten) => ten.replace(/y$/, 'ieth'));
