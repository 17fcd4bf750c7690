import type { Known, Verdict } from '../../advice/verdict.ts';
import type { Said } from '../said.ts';
import { claimsOf } from './claims.ts';
import { guard } from './guard.ts';
import { readAloud } from './read-aloud.ts';
import { toldOf } from './told/told-of.ts';

/** What a phrasing may be asked for at all; the rest passes word for word or not at all. */
export function isRephrasable(verdict: Verdict): verdict is Known {
  return verdict.kind === 'known' && (claimsOf(verdict) ?? toldOf(verdict)) !== null;
}

/** The phrasing if there is one and the guard lets it through, the template's sentence otherwise. */
export function phraseOr(template: Said, phrasing: Said | string | null, verdict: Verdict): Said {
  const text = typeof phrasing === 'string' ? phrasing : phrasing?.text;
  if (text === undefined || text === template.text) return template;
  if (!isRephrasable(verdict) || guard(text, verdict).kind === 'rejected') return template;
  const aloud = readAloud(text, verdict);
  const spoken = typeof phrasing === 'object' ? phrasing?.spoken : undefined;
  return {
    text,
    spoken: spoken !== undefined && isToldIn(spoken, template, aloud) ? spoken : aloud,
  };
}

/** Only the written form was judged: the spoken one must bring in no number of its own. */
function isToldIn(spoken: string, template: Said, aloud: string): boolean {
  const known = new Set([...numbersIn(template.spoken), ...numbersIn(aloud)]);
  return numbersIn(spoken).every((number) => known.has(number));
}

const numbersIn = (words: string): readonly string[] => words.match(/\d+(?:\.\d+)?/g) ?? [];
