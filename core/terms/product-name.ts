/** What stands before the name: who says so, and how it was taken. */
const AHEAD =
  /^(?:(?:the )?(?:they|he|she|customer|owner|manager|cook|chef|baker|bartender|staff|kitchen) (?:says?|said|reports?|reported) (?:that )?|(?:i |we |just |and )*(?:probed|temped|shot|checked|gunned) |.*\b(?:probe|thermometer|thermocouple|stem) (?:in|into|down in|inside) )/i;
const ARTICLES = /^(?:and |so |then |now |all |some of |the |their |my |that |this |some )+/i;
/** What a name ends at: a verb, or the number. */
const BEHIND =
  /(?:'s\b|,| (?:is|are|was|were|be|at|reads?|reading|says?|shows?|showing|measures?|measured|temps?|temped|temping|probes?|probed|probing|checks?|checked|came|sitting|has|have|had|about|around|still|now|only|already|and|up to|down to|minus|negative|point|oh|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)\b| [-\d]).*$/i;
const NO_NAME =
  /^(?:it|they|there|(?:the )?(?:product|products|food|foods|stuff|inventory|stock)(?: temp(?:erature)?)?)$/i;
/** "Product temp in the middle of the meat", "and the edges" */
const TAKEN_IN =
  /^(?:(?:i(?: have| got|'ve got)?|got|getting) )?(?:(?:the |a )?(?:(?:product|food|core|internal) )?(?:temp(?:erature)?|reading) )?(?:(?:in|at|on|near|around|toward|along|by|from) )?(?:the )?(?=(?:(?:very|dead|outer|top|bottom|back|front|upper|lower) )*(?:middle|center|core|thickest|edges?|sides?|surface|rim|skin|top|bottom|front|back|ends?|corners?|outside|inside|left|right|shelf|layer)\b)/i;
/** "Twenty six in the middle": where, behind how much. */
const PLACE_BEHIND =
  /(?:\d|[a-z]) ((?:(?:in|at|on|near|around|toward|along|by|from) (?:the )?(?:[a-z]+ )?(?:middle|center|core|part|edges?|sides?|surface|rim|skin|top|bottom|front|back|ends?|corners?|outside|inside|left|right|shel(?:f|ves)|rack|layer|row))|up top|down low)(?: of it)?$/i;
const IS_NUMBER =
  /^(?:[-\d].*|(?:about|more like|it's|minus|negative|point|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?: .*)?)$/i;
const MOST_WORDS = 8;

/** "Ice cream on the middle shelf is eight degrees": what it was of, as it was said. */
export function productName(words: string): string | null {
  const said = words.trim();
  const name = said
    .replace(AHEAD, '')
    .replace(ARTICLES, '')
    .replace(TAKEN_IN, '')
    .replace(BEHIND, '')
    .replace(/ temp(?:erature)?$/i, '')
    .replace(/ (?:in|out) (?:there|here|it)$/i, '')
    .trim();
  const [, place] = PLACE_BEHIND.exec(said) ?? [];
  const isNone = name === '' || (IS_NUMBER.test(name) && !/ of /.test(name)) || NO_NAME.test(name);
  if (isNone) return place ?? null;
  const whole = place === undefined || name.includes(place) ? name : `${name} ${place}`;
  return whole.split(' ').length > MOST_WORDS ? null : whole;
}
