import type { Hearing } from '../../../core/hearing/hearing.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { understand } from '../../../core/language/understand.ts';
import type { Utterance } from '../../../core/language/utterance.ts';
import { takeIn } from '../../../core/turn/take-in.ts';

/**
 * exact: every number and thing was understood as said, and taken. checked: the same, but the product asks first.
 * asked: something was wrong or left open, and the product asks before it keeps anything. wrong: taken without a
 * question, and not what was said.
 */
export const VERDICTS = ['exact', 'checked', 'asked', 'wrong', 'rejected'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** What the product makes of the hearing, beside what it makes of the sentence itself. */
export function verdictOn(sentence: string, { alternatives, rejected }: Hearing): Verdict {
  if (rejected !== undefined) return 'rejected';
  const { choice, utterance } = takeIn(alternatives, EMPTY_CONTEXT, []);
  const chosen = choice?.chosen ?? null;
  if (chosen === null) return 'rejected';
  const right = meaning(chosen.utterance) === meaning(understand(sentence, EMPTY_CONTEXT));
  const asks = chosen.openNumbers > 0 || utterance.doubts.length > 0;
  if (right) return asks ? 'checked' : 'exact';
  return asks ? 'asked' : 'wrong';
}

/** Whether anything would be kept of it: of noise and stray talk nothing should be. */
export function isTaken({ alternatives, rejected }: Hearing): boolean {
  if (rejected !== undefined) return false;
  return takeIn(alternatives, EMPTY_CONTEXT, []).utterance.readings.length > 0;
}

/** What is meant, without the words it was said in. */
function meaning(utterance: Utterance): string {
  return JSON.stringify(utterance, (key, value: unknown) =>
    key === 'words' || key === 'text' ? undefined : value,
  );
}
