import type { Reading } from '../language/utterance.ts';
import type { Amount } from '../units/amount.ts';
import type { VisitState } from '../visit/state.ts';
import { amountOf, type ReadingEntry } from '../visit/views.ts';

/** A temperature of what is kept cold, with the name that it was told by. */
export interface Probed {
  readonly amount: Amount;
  /** Null where it was only called the product. */
  readonly name: string | null;
}

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
export function productName({ words }: Pick<Reading, 'words'>): string | null {
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

export const isProduct = ({ reading }: ReadingEntry): boolean => reading.quantity === 'productTemp';

/** What was measured before the work, or since: the last of each thing, in the order they were first probed. */
export function probed(state: VisitState, when: 'before' | 'since'): readonly Probed[] {
  const last = new Map<string | null, Amount>();
  for (const entry of state.readings.filter(isProduct)) {
    const amount = amountOf(entry.reading);
    const isThen = (entry.phase === 'before') === (when === 'before');
    if (amount === null || entry.reported !== undefined || !isThen) continue;
    last.set(productName(entry.reading), amount);
  }
  return [...last].map(([name, amount]) => ({ name, amount }));
}

/** Milk that was warm says nothing of the lettuce that is cold. */
export function isOneProduct(state: VisitState): boolean {
  const lastOf = (isBefore: boolean): ReadingEntry | undefined =>
    state.readings.findLast((entry) => isProduct(entry) && (entry.phase === 'before') === isBefore);
  const [before, since] = [lastOf(true), lastOf(false)];
  if (before === undefined || since === undefined) return true;
  return productName(before.reading) === productName(since.reading);
}

const TOLD_TO =
  /^(?:i |we )?(?:tell|told|advised?|asked?) (?:them|him|her|everybody|(?:the )?(?:customer|owner|manager|cook|chef|staff|kitchen|baker|bartender|crew)) (?:to|that they should) (.+)$/i;

/** What the customer was told to do with it, as it stands behind "to". */
export const toldToDo = (memo: string): string | null =>
  TOLD_TO.exec(memo.trim().replace(/[.!?]+$/, ''))?.[1] ?? null;
