import { workTodo } from '../replies/acknowledgements.ts';
import { workDone } from '../replies/work-words.ts';
import type { VisitState } from '../visit/state.ts';
import { sentence } from './wording.ts';

export function workLines({ work, recommendations, readings }: VisitState): readonly string[] {
  if (work.length > 0) return work.map(({ work: { did, part } }) => sentence(workDone(did, part)));
  const isEmpty = recommendations.length === 0 && readings.length === 0;
  return isEmpty ? [] : ['No work was recorded.'];
}

export function recommendationLines({ recommendations }: VisitState): readonly string[] {
  return recommendations.map(({ recommendation }) =>
    sentence(workTodo(recommendation.do, recommendation.part)),
  );
}
