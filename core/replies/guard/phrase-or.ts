import type { Known, Verdict } from '../../advice/verdict.ts';
import type { Said } from '../said.ts';
import { claimsOf } from './claims.ts';
import { guard } from './guard.ts';
import { readAloud } from './read-aloud.ts';

/** What a phrasing may be asked for at all; the rest passes word for word or not at all. */
export function isRephrasable(verdict: Verdict): verdict is Known {
  return verdict.kind === 'known' && claimsOf(verdict) !== null;
}

/** The phrasing if there is one and the guard lets it through, the template's sentence otherwise. */
export function phraseOr(template: Said, phrasing: string | null, verdict: Verdict): Said {
  if (phrasing === null || phrasing === template.text) return template;
  if (!isRephrasable(verdict) || guard(phrasing, verdict).kind === 'rejected') return template;
  return { text: phrasing, spoken: readAloud(phrasing, verdict) };
}
