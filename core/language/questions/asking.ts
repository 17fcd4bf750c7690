import type { AnswerableId } from '../../terms/quantities.ts';
import type { Means } from '../rule.ts';
import { answerableId } from '../slots.ts';
import type { PlainQuestion, Question } from '../utterance.ts';

export const ask = (question: Question): { readonly questions: readonly Question[] } => ({
  questions: [question],
});

export const plain =
  (kind: PlainQuestion): Means =>
  () =>
    ask({ ask: kind });

/** Of what was spoken of; of "those" and "they" each. */
export const askOfThat =
  (kind: 'target' | 'compare'): Means =>
  (_tags, frame) =>
    ask({ ask: kind, about: null, ...(SEVERAL.test(frame.wordsOf(frame.span)) && { each: true }) });
const SEVERAL = /\b(?:those|these|they|both)\b/i;

/** What a question is about: a quantity, or one of those that are only ever answered. */
export const aboutIn = (tags: Parameters<Means>[0]): AnswerableId | null =>
  answerableId(tags['derived']) ?? answerableId(tags['quantity']);

/** What is worked out, never read off a gauge: its name alone tells nothing, so it asks. */
const WORKED: ReadonlySet<AnswerableId> = new Set<AnswerableId>(['superheat', 'subcooling']);
export const isWorkedOut = (about: AnswerableId | null): boolean =>
  about !== null && WORKED.has(about);

/** What it was before the work, of the quantity that was named. */
export const askedBefore: Means = (tags) => {
  const about = aboutIn(tags);
  return ask(about === null ? { ask: 'before' } : { ask: 'before', about });
};

/** What leads up to a question that is asked in passing. */
export const TELL =
  '(tell me|can you tell me|could you tell me|do you know|remind me|let me know|i (want|need) to know|any idea|you know)';
/** For what, and on what day: it changes nothing of what is asked. */
export const TODAY =
  '[(today|here|right now|now|on this [unit]|for this [unit]|on this one|at this ambient|with this ambient|in this heat|at <amount>|(with|in|at) <amount> (air|ambient|outside|weather|water|air coming in|on the condenser))]';

export const MY = '[(my|~the|~our|~your|~a|~this|~that|~these|~those)]';
