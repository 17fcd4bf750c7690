/** "Model F as in frank J A M dash zero three hundred": what is printed on a plate, as it is printed there. */
export function asPrinted(memo: string): string {
  const [, lead = '', name = '', ends = '', rest = ''] = PLATE.exec(memo.trim()) ?? [];
  const code = name === '' ? null : printed(rest.toLowerCase().split(/[\s,]+/));
  if (code === null) return memo;
  return ends === '' ? `${lead}${name} ${code}` : `${lead}${name} ends in ${code}`;
}

const PLATE =
  /^(.*?)\b((?:model|serial)(?: (?:number|no))?)(?:'s)?(?: is)?((?: (?:ends|ending)(?: in| with)?)?) (.+?)[.!?]*$/i;
const DIGITS: Readonly<Record<string, string>> = {
  ...{ zero: '0', oh: '0', o: '0', one: '1', two: '2', three: '3', four: '4' },
  ...{ five: '5', six: '6', seven: '7', eight: '8', nine: '9' },
};
const WHOLE: Readonly<Record<string, string>> = {
  ...{ ten: '10', eleven: '11', twelve: '12', thirteen: '13', fourteen: '14', fifteen: '15' },
  ...{ sixteen: '16', seventeen: '17', eighteen: '18', nineteen: '19' },
  ...{ dash: '-', hyphen: '-', slash: '/' },
};
const TENS: Readonly<Record<string, string>> = {
  ...{ twenty: '2', thirty: '3', forty: '4', fifty: '5' },
  ...{ sixty: '6', seventy: '7', eighty: '8', ninety: '9' },
};
const HUNDREDS: Readonly<Record<string, string>> = { hundred: '00', thousand: '000' };
const LEAST_SIGNS = 2;

/** `null` where a word is told that is no sign on a plate: then all of it stays as it was said. */
function printed(words: readonly string[]): string | null {
  let code = '';
  for (let at = 0; at < words.length; at += 1) {
    const sign = signAt(words, at);
    if (sign === null) return null;
    code += sign.text;
    at += sign.more;
  }
  return code.length < LEAST_SIGNS ? null : code;
}

interface Sign {
  readonly text: string;
  /** Words behind it that belong to it. */
  readonly more: number;
}

function signAt(words: readonly string[], at: number): Sign | null {
  const [word = '', next = '', then = ''] = words.slice(at);
  // "F as in frank"
  if (next === 'as' && then === 'in' && /^[a-z]$/.test(word))
    return words[at + 3]?.startsWith(word) === true ? { text: word.toUpperCase(), more: 3 } : null;
  const ten = TENS[word];
  if (ten !== undefined) {
    const one = next === 'zero' || next === 'oh' ? undefined : DIGITS[next];
    return one === undefined ? { text: `${ten}0`, more: 0 } : { text: `${ten}${one}`, more: 1 };
  }
  const text = DIGITS[word] ?? WHOLE[word] ?? HUNDREDS[word];
  if (text !== undefined) return { text, more: 0 };
  return /^(?:[a-z]|[-\d/]+)$/.test(word) ? { text: word.toUpperCase(), more: 0 } : null;
}
