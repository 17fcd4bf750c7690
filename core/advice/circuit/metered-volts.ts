import { toBase } from '../../units/convert.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import { inputOf } from '../judged/read-at.ts';
import type { Input } from '../verdict.ts';

/** In volts; `null` where no number was read. */
export function voltsOf({ reading }: ReadingEntry): number | null {
  const amount = amountOf(reading);
  return amount && toBase(amount);
}

export function inputsAt(entry: ReadingEntry): readonly Input[] {
  const amount = amountOf(entry.reading);
  return amount ? [inputOf(entry, amount)] : [];
}
