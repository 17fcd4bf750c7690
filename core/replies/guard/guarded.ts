export type Guarded =
  | { readonly kind: 'passed' }
  | { readonly kind: 'rejected'; readonly why: Rejection; readonly at: string };

export type Rejection =
  | 'strangeCharacter'
  | 'unknownWord'
  | 'foreignName'
  | 'missingName'
  | 'missingWord'
  | 'foreignNumber'
  | 'missingNumber'
  | 'foreignStatement'
  | 'missingStatement'
  | 'wrongDirection'
  | 'negation'
  | 'question'
  | 'tooLong'
  | 'notVerbatim';

export const PASSED: Guarded = { kind: 'passed' };
export const rejected = (why: Rejection, at: string): Guarded => ({ kind: 'rejected', why, at });
