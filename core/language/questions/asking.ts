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

/** What a question is about: a quantity, or one of those that are only ever answered. */
export const aboutIn = (tags: Parameters<Means>[0]): AnswerableId | null =>
  answerableId(tags['derived']) ?? answerableId(tags['quantity']);

export const MY = '[(my|~the|~our|~your|~a|~this)]';
