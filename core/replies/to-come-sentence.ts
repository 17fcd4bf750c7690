import type { Known } from '../advice/verdict.ts';
import { counted } from './amounts.ts';
import { leftListed } from './left-open-sentences.ts';
import { recommended } from './recommendation-sentences.ts';
import { line, plain, type Said, sentences } from './said.ts';

type ToCome = Extract<Known, { readonly answer: 'toCome' }>;

/** Whether somebody comes back is not said here: only what there would be to do. */
export function toComeSaid({ todo, left, questions }: ToCome): Said {
  const open = [
    ...(todo.length > 0
      ? [plain(`Recommended: ${todo.map((made) => recommended(made)).join('; ')}.`)]
      : []),
    ...(left.length > 0 ? [plain(`Left open: ${leftListed(left)}.`)] : []),
    ...(questions > 0 ? [line`${counted(questions, 'question')} not settled.`] : []),
  ];
  return open.length > 0
    ? sentences([plain('That is yours to judge.'), ...open])
    : plain('That is yours to judge: nothing you told me is recommended or left open.');
}
