import type { Hearing } from '../../../core/hearing/hearing.ts';
import { EMPTY_CONTEXT } from '../../../core/language/context.ts';
import { meaningOf } from '../../../core/language/settle/meaning.ts';
import { understand } from '../../../core/language/understand.ts';
import type { Utterance } from '../../../core/language/utterance.ts';
import { takeIn } from '../../../core/turn/take-in.ts';

/**
 * exact: every number and thing was understood as said, and taken. checked: the same, but the product asks first.
 * asked: something was wrong or left open, and the product asks before it keeps anything of that. wrong: taken without
 * a question, and not what was said, or not all of it. rejected: nothing was taken, "say it again".
 */
export const VERDICTS = ['exact', 'checked', 'asked', 'wrong', 'rejected'] as const;
export type Verdict = (typeof VERDICTS)[number];

const NOTHING = meaningOf(understand('', EMPTY_CONTEXT));

/** What the product makes of the hearing, beside what it makes of the sentence itself. */
export function verdictOn(sentence: string, { alternatives, rejected }: Hearing): Verdict {
  if (rejected !== undefined) return 'rejected';
  const { choice, utterance } = takeIn(alternatives, EMPTY_CONTEXT, []);
  const chosen = choice?.chosen ?? null;
  if (chosen === null) return 'rejected';
  const said = understand(sentence, EMPTY_CONTEXT);
  const [heard, taken, meant] = [chosen.utterance, utterance, said].map(meaningOf);
  const asks = utterance.unclaimed.length + utterance.doubts.length > 0;
  // Some sentences mean nothing before a visit has begun.
  if (taken === meant && (taken !== NOTHING || heard === meant)) return asks ? 'checked' : 'exact';
  if (taken === NOTHING) return 'rejected';
  if (heard === meant && asks) return 'checked';
  return asks && holdsAll(said, utterance) ? 'asked' : 'wrong';
}

/** Whether all that was taken was said: what is asked about is not taken. */
function holdsAll(said: Utterance, taken: Utterance): boolean {
  const parts = partsOf(said);
  return partsOf(taken).every((part) => parts.includes(part));
}

function partsOf(utterance: Utterance): readonly string[] {
  const { readings, facts, findings, work, recommendations, questions, commands, memos, remarks } =
    utterance;
  return [
    readings,
    facts,
    findings,
    work,
    recommendations,
    questions,
    commands,
    memos,
    remarks,
  ].flatMap((parts) => parts.map(meaningOf));
}

/** Whether anything would be kept of it: of noise and stray talk nothing should be. */
export function isTaken({ alternatives, rejected }: Hearing): boolean {
  if (rejected !== undefined) return false;
  return takeIn(alternatives, EMPTY_CONTEXT, []).utterance.readings.length > 0;
}

/** Whether anything at all would be kept of it, done, answered or asked about. */
export function isActedOn({ alternatives, rejected }: Hearing): boolean {
  if (rejected !== undefined) return false;
  return meaningOf(takeIn(alternatives, EMPTY_CONTEXT, []).utterance) !== NOTHING;
}
