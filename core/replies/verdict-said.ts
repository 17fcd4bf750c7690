import type { Verdict } from '../advice/verdict.ts';
import { unreachable } from '../unreachable.ts';
import { answerSaid } from './answers.ts';
import { needsSaid, refusedSaid } from './refusals.ts';
import type { Said } from './said.ts';

/** The template's sentence for one verdict, its cautions apart: what the guard holds a phrasing against. */
export function verdictSaid(verdict: Verdict): Said {
  switch (verdict.kind) {
    case 'known':
      return answerSaid(verdict);
    case 'refused':
      return refusedSaid(verdict);
    case 'needs':
      return needsSaid(verdict);
    default:
      return unreachable(verdict);
  }
}
