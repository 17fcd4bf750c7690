import { placedName } from '../../core/replies/names.ts';
import type { Large } from '../../core/replies/reply.ts';
import { formatNumber } from '../../core/units/format-amount.ts';
import { UNITS } from '../../core/units/units.ts';
import type { OpenQuestion } from '../../core/visit/views.ts';

/** The number in question, large: what was heard, as it was heard. */
export function questionLarge(question: OpenQuestion): Large {
  if (question.kind === 'leftOver') return { name: '', value: question.of.digits, unit: '' };
  const { quantity, place, value, or, unit } = question.of.doubt;
  return {
    name: placedName(quantity, place),
    value:
      [value, or]
        .flatMap((each) => (each === undefined ? [] : formatNumber(each, 6)))
        .join(' or ') || '?',
    unit: unit === null ? '' : UNITS[unit].symbol,
  };
}

/** The same in one line, for the sheet: "head 840 psi?" */
export function questionLine(question: OpenQuestion): string {
  const { name, value, unit } = questionLarge(question);
  return `${[name, value, unit].filter((part) => part !== '').join(' ')}?`;
}

/** Asked again some sentences later, when the reply that raised it has gone. */
export const ASKED_AGAIN: Record<OpenQuestion['kind'], string> = {
  doubt: 'Still open. Keep it, or drop it?',
  leftOver: 'Still open. Say what that is of.',
};
