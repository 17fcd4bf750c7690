import { seenBefore } from '../advice/history.ts';
import { dateWords } from '../replies/dates.ts';
import { cameBackWords } from '../replies/history-sentences.ts';
import { recommended } from '../replies/recommendation-sentences.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

/** What was there last time too, and what was recommended then and is not done yet. */
export function seenBeforeLines(state: VisitState, past: readonly VisitState[]): readonly string[] {
  const seen = seenBefore(state, past);
  if (seen === null) return [];
  const { on, rows, left } = seen;
  return [
    ...(rows.length === 0 ? [] : [sentence(cameBackWords(rows, on))]),
    ...left.map((made) =>
      sentence(`Recommended on ${dateWords(on)}, not reported done: ${recommended(made)}`),
    ),
  ];
}
