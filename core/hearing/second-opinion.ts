import type { Hearing } from './hearing.ts';

/** What another engine heard, for the one that decides. Nothing is an opinion too: that one is then alone with its words. */
export const opinionOf = ({ alternatives, rejected }: Hearing): string =>
  rejected === undefined ? (alternatives[0]?.words ?? '') : '';
