import type { Pronunciations } from './dictionary.ts';
import { type Evidence, strangeness, weigh } from './evidence.ts';
import type { Alternative, Hearing, Rejection } from './hearing.ts';
import { chanceRight, JUDGEMENT } from './judgement.ts';
import type { Ranking } from './neural-decoder.ts';
import type { Hypothesis } from './phone-search.ts';
import { NOTHING } from './to-hearing.ts';

/** A frame of the acoustic model. */
const FRAME_MS = 20;

const NOT_FOR_US: Hearing = { alternatives: [], rejected: 'notForUs' };

/** Turns ranked wordings into what was heard, or why nothing may be acted on. */
export function neuralHearing(ranking: Ranking, pronunciations: Pronunciations): Hearing {
  const [best, ...rest] = preferred(ranking);
  // No sentence of ours was left, but somebody spoke.
  if (best === undefined) return ranking.voiced ? NOT_FOR_US : NOTHING;
  const agreed = ranking.asked ? sameWords(best, ranking.opinion) : null;
  const evidence = weigh([best, ...rest], { pronunciations, agreed });
  const chance = chanceRight(evidence);
  const alternatives = [best, ...rest].map((each) =>
    toAlternative(each, { best, chance, pronunciations }),
  );
  const rejected = rejection(evidence, chance);
  return rejected === null ? { alternatives } : { alternatives, rejected };
}

/** The other engine's words are taken where this one finds them nearly as likely as its own. */
function preferred({ hypotheses, opinion }: Ranking): readonly Hypothesis[] {
  const [best] = hypotheses;
  if (best === undefined || opinion === null || sameWords(best, opinion)) return hypotheses;
  const others = hypotheses.filter((each) => !sameWords(each, opinion));
  const behind = best.score - opinion.score;
  if (behind <= JUDGEMENT.opinionWithin) return [opinion, ...others];
  return behind <= JUDGEMENT.alternativeWithin ? [best, opinion, ...others.slice(1)] : hypotheses;
}

function rejection(evidence: Evidence, chance: number): Rejection | null {
  if (evidence.strangeness > JUDGEMENT.notForUsAbove) return 'notForUs';
  return chance < JUDGEMENT.unsureBelow ? 'unsure' : null;
}

interface Rating {
  readonly best: Hypothesis;
  /** That the best is right. */
  readonly chance: number;
  readonly pronunciations: Pronunciations;
}

function toAlternative(heard: Hypothesis, { best, chance, pronunciations }: Rating): Alternative {
  const confidence = chance * Math.min(1, Math.exp(heard.score - best.score));
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
