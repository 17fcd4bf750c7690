import type { Candidate, Choice } from '../language/choose-understanding.ts';
import { EMPTY_CONTEXT } from '../language/context.ts';
import { meaningOf } from '../language/settle/meaning.ts';
import { understand } from '../language/understand.ts';
import type { Utterance } from '../language/utterance.ts';
import { DONE_FROM, HEARD_FROM } from './read-back-policy.ts';

type Part = Utterance[keyof Utterance][number];

/** The chance that something was said, in whatever sentence that may have been heard. */
export function chanceThat(
  { considered }: Choice,
  isSaidIn: (candidate: Candidate) => boolean,
): number {
  const chances = new Map(
    considered
      .filter(isSaidIn)
      .map(({ utterance, confidence }) => [meaningOf(utterance), confidence]),
  );
  const sum = [...chances.values()].reduce((total, chance) => total + chance, 0);
  return Math.min(1, sum);
}

/**
 * The chosen sentence without what holds no value and was not surely said: values are asked about, the rest would be
 * done. Nothing of it is left where the sentence was hardly heard at all; where no chance is told, all.
 */
export function surelySaid(chosen: Candidate, choice: Choice): Utterance {
  const { utterance, soundChance } = chosen;
  if (soundChance === 0) return utterance;
  if (soundChance + refusedChance(choice) < HEARD_FROM) return UNHEARD;
  const sure = <Some extends Part>(
    parts: readonly Some[],
    partsOf: (other: Utterance) => readonly Part[],
  ): readonly Some[] =>
    parts.filter(
      (part) => chanceThat(choice, (other) => holds(partsOf(other.utterance), part)) >= DONE_FROM,
    );
  const kept = {
    ...utterance,
    facts: sure(utterance.facts, (other) => other.facts),
    findings: sure(utterance.findings, (other) => other.findings),
    work: sure(utterance.work, (other) => other.work),
    recommendations: sure(utterance.recommendations, (other) => other.recommendations),
    questions: sure(utterance.questions, (other) => other.questions),
    commands: sure(utterance.commands, (other) => other.commands),
    memos: sure(utterance.memos, (other) => other.memos),
    remarks: sure(utterance.remarks, (other) => other.remarks),
  };
  return meaningOf(kept) === NOTHING && meaningOf(utterance) !== NOTHING ? UNHEARD : kept;
}

const UNHEARD = understand('', EMPTY_CONTEXT);
const NOTHING = meaningOf(UNHEARD);

/** What was just said no to was well heard, and still not meant. */
function refusedChance({ considered }: Choice): number {
  const refused = considered.filter(({ repeated }) => repeated !== null);
  return refused.reduce((most, { soundChance }) => Math.max(most, soundChance), 0);
}

const holds = (parts: readonly Part[], part: Part): boolean =>
  parts.some((each) => meaningOf(each) === meaningOf(part));
