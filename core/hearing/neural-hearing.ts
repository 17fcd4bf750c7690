import type { Pronunciations } from './dictionary.ts';
import { strangeness } from './evidence.ts';
import type { Alternative, Hearing } from './hearing.ts';
import { chanceRight, JUDGEMENT, shares } from './judgement.ts';
import type { Ranking } from './neural-decoder.ts';
import type { Hypothesis } from './phone-search.ts';
import { NOTHING } from './to-hearing.ts';

/** A frame of the acoustic model. */
const FRAME_MS = 20;

const NOT_FOR_US: Hearing = { alternatives: [], rejected: 'notForUs' };

/**
 * Turns ranked wordings into what was heard, or why nothing may be acted on. An alternative's confidence is the chance
 * that it was said word for word: those of wordings that mean the same may be added up.
 */
export function neuralHearing(ranking: Ranking, pronunciations: Pronunciations): Hearing {
  const voted = votes(ranking);
  const [best] = voted;
  // No sentence of ours was left, but somebody spoke.
  if (best === undefined) return ranking.voiced ? NOT_FOR_US : NOTHING;
  const chance = chanceRight(strangeness(best.heard.words, pronunciations));
  const parts = shares(voted.map(({ score }) => score));
  const alternatives = voted.map(({ heard }, at) =>
    toAlternative(heard, chance * (parts[at] ?? 0), pronunciations),
  );
  return chance < JUDGEMENT.notForUsBelow
    ? { alternatives, rejected: 'notForUs' }
    : { alternatives };
}

interface Voted {
  readonly heard: Hypothesis;
  readonly score: number;
}

/** The wordings with the other engine's vote counted, best first. */
function votes({ hypotheses, opinion }: Ranking): readonly Voted[] {
  const [best] = hypotheses;
  if (best === undefined) return [];
  const others = hypotheses
    .filter((heard) => !sameWords(heard, opinion))
    .map((heard): Voted => ({ heard, score: heard.score }));
  if (opinion === null || best.score - opinion.score > JUDGEMENT.alternativeWithin) return others;
  const own = { heard: opinion, score: opinion.score + JUDGEMENT.opinionWorth };
  return [...others, own].toSorted((one, other) => other.score - one.score);
}

function toAlternative(
  heard: Hypothesis,
  confidence: number,
  pronunciations: Pronunciations,
): Alternative {
  return {
    words: textOf(heard),
    confidence,
    wordConfidences: heard.words.map((timed) => ({
      word: timed.word,
      confidence: Math.exp(-Math.max(0, strangeness([timed], pronunciations))),
      startMs: timed.startFrame * FRAME_MS,
      endMs: timed.endFrame * FRAME_MS,
    })),
  };
}

const textOf = ({ words }: Hypothesis): string => words.map(({ word }) => word).join(' ');
const sameWords = (one: Hypothesis, other: Hypothesis | null): boolean =>
  other !== null && textOf(one) === textOf(other);
