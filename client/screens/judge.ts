import { answer } from '../../core/advice/answer.ts';
import type { Comparison, Known, Verdict } from '../../core/advice/verdict.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Judge } from './sheet-model.ts';

const NO_MEMORY = { lastAnswer: null };

/** The sheet's last column: the same answers that would be spoken if each quantity were asked about. */
export function judgeOf(visit: VisitState): Judge {
  return (about) => ({ target: targetOf(visit, about), off: comparisonOf(visit, about) });
}

function targetOf(visit: VisitState, about: QuantityId) {
  const known = knownOf(answer({ ask: 'target', about }, visit, NO_MEMORY));
  return known?.answer === 'target' ? { value: known.value, unit: known.unit } : null;
}

function comparisonOf(visit: VisitState, about: QuantityId): Comparison | null {
  const known = knownOf(answer({ ask: 'compare', about }, visit, NO_MEMORY));
  return known?.answer === 'compare' ? known : null;
}

function knownOf(verdict: Verdict): Known | null {
  return verdict.kind === 'known' ? verdict : null;
}
