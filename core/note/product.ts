import { SOMEBODY } from '../terms/people.ts';

const TOLD_TO = new RegExp(
  `^(?:i |we )?(?:tell|told|advised?|asked?) (?:them|him|her|everybody|(?:the )?${SOMEBODY}) (?:(not )?to|that they should( not)?) (.+)$`,
  'i',
);

/** What the customer was told to do with it, "to" and all. */
export function toldToDo(memo: string): string | null {
  const [, not, notThey, what] = TOLD_TO.exec(memo.trim().replace(/[.!?]+$/, '')) ?? [];
  if (what === undefined) return null;
  return `${(not ?? notThey) === undefined ? '' : 'not '}to ${what}`;
}
