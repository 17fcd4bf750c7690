import type { Hearing } from '../../../core/hearing/hearing.ts';
import { chooseUnderstanding } from '../../../core/language/choose-understanding.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { understand } from '../../../core/language/understand.ts';
import type { Utterance } from '../../../core/language/utterance.ts';

/**
 * exact: every number and thing was understood as said. asked: something was wrong or left open, and the product
 * would ask about it before it keeps anything. wrong: taken without a question, and not what was said.
 */
export type Verdict = 'exact' | 'asked' | 'wrong' | 'rejected';

/** What the product makes of the hearing, beside what it makes of the sentence itself. */
export function verdictOn(sentence: string, { alternatives, rejected }: Hearing): Verdict {
  if (rejected !== undefined) return 'rejected';
  const { chosen } = chooseUnderstanding(alternatives, EMPTY_CONTEXT, []);
  if (chosen === null) return 'rejected';
  if (meaning(chosen.utterance) === meaning(understand(sentence, EMPTY_CONTEXT))) return 'exact';
  return chosen.openNumbers > 0 || isAsked(chosen.utterance) ? 'asked' : 'wrong';
}

const isAsked = ({ doubts }: Utterance): boolean => doubts.length > 0;

/** Whether anything would be kept of it: of noise and stray talk nothing should be. */
export function isTaken({ alternatives, rejected }: Hearing): boolean {
  if (rejected !== undefined) return false;
  const { chosen } = chooseUnderstanding(alternatives, EMPTY_CONTEXT, []);
  return (chosen?.utterance.readings.length ?? 0) > 0;
}

/** What is meant, without the words it was said in. */
function meaning(utterance: Utterance): string {
  return JSON.stringify(utterance, (key, value: unknown) =>
    key === 'words' || key === 'text' ? undefined : value,
  );
}
