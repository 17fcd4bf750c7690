import type { Amount } from '../../../units/amount.ts';
import { formatAmount } from '../../../units/format-amount.ts';
import { unitRow } from '../../../units/units.ts';
import { figure } from '../../amounts.ts';
import type { Said } from '../../said.ts';

/** What a sentence about a verdict must say and what it may say, each in the wordings of a pattern. */
export interface Ways {
  readonly must: readonly string[];
  readonly may?: readonly string[];
}

/** A name, a number or a list as the verdict has it: its words are never a model's. */
export interface ToldSlot extends Said {
  /** Written otherwise and the same: "38 microfarads" for "38 µF". */
  readonly also: readonly string[];
}

/** Everything that is told of a verdict by statements. */
export interface Told extends Ways {
  /** What is true of it in closed words, without any number. */
  readonly fields: readonly string[];
  readonly slots: Readonly<Record<string, ToldSlot>>;
  /** Said behind it word for word, in sentences of its own: what would double the ways for each way it can stand. */
  readonly tail?: Said;
}

export function amountSlot(amount: Amount): ToldSlot {
  const { digits } = formatAmount(amount);
  const { one, many } = unitRow(amount.unit).spoken;
  return { ...figure(amount), also: [`${digits} ${many}`, `${digits} ${one}`] };
}

export function wordSlot(words: Said | string): ToldSlot {
  return typeof words === 'string'
    ? { text: words, spoken: words, also: [] }
    : { ...words, also: [] };
}

/** A list in its own order, with "and" before the last or without. */
export function listSlot(items: readonly Said[]): ToldSlot {
  const joined = (of: (item: Said) => string, last: string): string =>
    items.length < 2
      ? items.map(of).join('')
      : `${items.slice(0, -1).map(of).join(', ')}${last}${of(items.at(-1) ?? NOTHING)}`;
  const text = ({ text: written }: Said): string => written;
  return {
    text: joined(text, ', '),
    spoken: joined(({ spoken }) => spoken, ', '),
    also: [joined(text, ' and '), joined(text, ', and ')],
  };
}

const NOTHING: Said = { text: '', spoken: '' };
