import { figure } from '../../core/replies/amounts.ts';
import { plain, type Said } from '../../core/replies/said.ts';
import type { Amount } from '../../core/units/amount.ts';
import { formatAmount } from '../../core/units/format-amount.ts';
import type { PhraseSlot } from './phrase-record.ts';

type Slots = Readonly<Record<string, PhraseSlot>>;

/** A name that must be said. */
export const name = (words: string | Said): PhraseSlot => slot(words, true);

/** Words that a template worded, to be said once. */
export const worded = name;

function slot(words: string | Said, required: boolean): PhraseSlot {
  const { text, spoken } = typeof words === 'string' ? plain(words) : words;
  return { text, spoken, required };
}

/** A number with its unit. */
export function number(amount: Amount, required: boolean): PhraseSlot {
  return slot(figure(amount), required);
}

/** A number that may be said without its unit once that unit was said of the same quantity. */
export function oftenBare(amount: Amount, required: boolean): PhraseSlot {
  const { digits, symbol } = formatAmount(amount);
  const spoken = digits.replace(/^-/, 'minus ');
  return { ...number(amount, required), bare: { text: digits, spoken, unit: symbol } };
}

/** Slots of a record, those that are not there left out. */
export function slots(given: Readonly<Record<string, PhraseSlot | null>>): Slots {
  const there: Record<string, PhraseSlot> = {};
  for (const [role, one] of Object.entries(given)) if (one) there[role] = one;
  return there;
}
