import type { PhraseRecord, Register } from '../record/phrase-record.ts';

/** Tokens that no sentence holds. */
export const SPECIAL = {
  pad: '[PAD]',
  unknown: '[UNK]',
  end: '[END]',
  /** The record ends, the sentence begins. */
  say: '[SAY]',
  /** Before the token that the sentence said last began with, or before the end's where none was. */
  not: '[NOT]',
} as const;

export const kindToken = (kind: string): string => `@${kind}`;
export const fieldToken = (field: string): string => `+${field}`;
export const registerToken = (register: Register): string => `%${register}`;
export const slotToken = (role: string): string => `{${role}}`;

export interface Asked {
  readonly record: PhraseRecord;
  readonly register: Register;
  /** The first token of what was said last, so that the next sentence begins otherwise. */
  readonly lastOpening: string | null;
}

/** The record in tokens: kind, register, fields and the roles of its slots, and how not to begin. */
export function promptTokens({ record, register, lastOpening }: Asked): readonly string[] {
  const roles = Object.entries(record.slots).flatMap(([role, { required }]) =>
    required ? [slotToken(role), '!'] : [slotToken(role)],
  );
  return [
    kindToken(record.kind),
    registerToken(register),
    ...record.fields.map(fieldToken),
    ...roles,
    SPECIAL.not,
    lastOpening ?? SPECIAL.end,
    SPECIAL.say,
  ];
}
