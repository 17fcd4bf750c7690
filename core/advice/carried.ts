import type { AnswerableId } from '../terms/quantities.ts';
import type { Found } from './found.ts';
import type { Known, Verdict, Working } from './verdict.ts';

export type Carried = { readonly kind: 'known' } & Working;
export const READ: Carried = {
  kind: 'known',
  formula: null,
  inputs: [],
  source: null,
  cautions: [],
};

/** A found value becomes an answer with its working; what is needed or refused gets the quantity asked about. */
export function settle<Value>(
  found: Found<Value>,
  about: AnswerableId | null,
  toKnown: (value: Value, carried: Carried) => Known,
): Verdict {
  if (found.kind !== 'known') return { ...found, about: found.about ?? about };
  const { value, inputs, cautions, formula, sources } = found;
  const source = [...(formula ? [formula.source] : []), ...sources].join('; ');
  return toKnown(value, {
    kind: 'known',
    formula: formula?.id ?? null,
    ...(formula ? { equation: formula.equation } : {}),
    inputs,
    source: source === '' ? null : source,
    cautions,
  });
}
