import type { SuspectId } from '../advice/circuit/circuit.ts';
import { nextPlaceToMeasure } from '../advice/circuit/next-place.ts';
import { suspectsSaid } from '../replies/circuit-sentences.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

/** What the voltages say of the control circuit: what they found, and what they leave possible. */
export function circuitLines(state: VisitState): Record<'found' | 'open', readonly string[]> {
  const verdict = nextPlaceToMeasure(state);
  if (verdict.kind !== 'known' || verdict.answer !== 'nextPlace') return { found: [], open: [] };
  const { found, suspects, together } = verdict;
  if (found === 'contradiction') {
    return { found: [], open: ['The voltages read do not fit one circuit.'] };
  }
  const names = suspectsSaid(suspects, together);
  if (found === 'suspects') return { found: [sentence(`By the voltages: ${names}`)], open: [] };
  const isNamed = found === 'searching' && suspects.length <= 3;
  return {
    found: [],
    open: isNamed ? [sentence(`By the voltages, still possible: ${names}`)] : [],
  };
}

/** What the voltages come down to, where they do. */
export function circuitSuspects(state: VisitState): CircuitSuspects | null {
  const verdict = nextPlaceToMeasure(state);
  if (verdict.kind !== 'known' || verdict.answer !== 'nextPlace') return null;
  const { found, suspects, together } = verdict;
  const ids = [...new Set(suspects.map(({ of }) => of))];
  return found === 'suspects' ? { suspects: ids, together } : null;
}

export interface CircuitSuspects {
  readonly suspects: readonly SuspectId[];
  /** All of them at once, not one of them. */
  readonly together: boolean;
}
