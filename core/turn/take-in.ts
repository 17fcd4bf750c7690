import {
  type Alternative,
  type Choice,
  chooseUnderstanding,
  type RejectedValue,
} from '../language/choose-understanding.ts';
import type { Context } from '../language/context.ts';
import { understand } from '../language/understand.ts';
import type { Utterance } from '../language/utterance.ts';
import { askedAbout, type Checked, checkReadings } from './read-back.ts';
import { surelySaid } from './surely-said.ts';

/** What was said, taken for one thing: which alternative, and what of it must be asked about first. */
export interface TakenIn {
  readonly utterance: Utterance;
  /** `null`: the words were typed. */
  readonly choice: Choice | null;
  readonly checked: readonly Checked[];
  /** All that was heard offers this value again, which was said no to just now. */
  readonly rejectedAgain: RejectedValue | null;
}

export function takeIn(
  words: string | readonly Alternative[],
  context: Context,
  rejected: readonly RejectedValue[],
): TakenIn {
  if (typeof words === 'string') return typed(words, context);
  const choice = chooseUnderstanding(words, context, rejected);
  const { chosen, considered } = choice;
  if (chosen === null) {
    const first = considered[0];
    const utterance = { ...understand('', context), text: first?.words ?? '' };
    return { utterance, choice, checked: [], rejectedAgain: first?.repeated ?? null };
  }
  const said = surelySaid(chosen, choice);
  const checked = checkReadings(said, { choice, context, rejected });
  return { utterance: askedAbout(said, checked), choice, checked, rejectedAgain: null };
}

function typed(words: string, context: Context): TakenIn {
  const utterance = understand(words, context);
  const checked = checkReadings(utterance, { choice: null, context, rejected: [] });
  return { utterance, choice: null, checked, rejectedAgain: null };
}
