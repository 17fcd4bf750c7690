import type { Verdict } from '../../advice/verdict.ts';
import { guard } from './guard.ts';

/** The phrasing if there is one and the guard lets it through, the template's sentence otherwise. */
export function phraseOr(template: string, phrasing: string | null, verdict: Verdict): string {
  return phrasing !== null && guard(phrasing, verdict).kind === 'passed' ? phrasing : template;
}
