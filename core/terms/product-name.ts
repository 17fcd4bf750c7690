/** What stands before the name: who says so, and how it was taken. */
const AHEAD =
  /^(?:(?:the )?(?:they|he|she|customer|owner|manager|cook|chef|baker|bartender|staff|kitchen) (?:says?|said|reports?|reported) (?:that )?|(?:i |we |just |and )*(?:probed|temped|shot|checked|gunned) |.*\b(?:probe|thermometer|thermocouple|stem) (?:in|into|down in|inside) )/i;
const ARTICLES = /^(?:and |so |then |now |all |some of |the |their |my |that |this |some )+/i;
/** What a name ends at: a verb, or the number. */
const BEHIND =
  /(?:'s\b|,| (?:is|are|was|were|be|at|reads?|reading|says?|shows?|showing|measures?|measured|temps?|temped|temping|probes?|probed|probing|checks?|checked|came|sitting|has|have|had|about|around|still|now|only|already|and|up to|down to|minus|negative|point|oh|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)\b| [-\d]).*$/i;
const NO_NAME =
  /^(?:it|they|there|(?:the )?(?:product|products|food|foods|stuff|inventory|stock)(?: temp(?:erature)?)?)$/i;
const MOST_WORDS = 8;

/** "Ice cream on the middle shelf is eight degrees": what it was of, as it was said. */
export function productName(words: string): string | null {
  const name = words
    .trim()
    .replace(AHEAD, '')
    .replace(ARTICLES, '')
    .replace(BEHIND, '')
    .replace(/ temp(?:erature)?$/i, '')
    .trim();
  const isNone = name === '' || /^[-\d]/.test(name) || NO_NAME.test(name);
  return isNone || name.split(' ').length > MOST_WORDS ? null : name;
}
