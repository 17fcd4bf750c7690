const TOLD_TO =
  /^(?:i |we )?(?:tell|told|advised?|asked?) (?:them|him|her|everybody|(?:the )?(?:customer|owner|manager|cook|chef|staff|kitchen|baker|bartender|crew)) (?:to|that they should) (.+)$/i;

/** What the customer was told to do with it, as it stands behind "to". */
export const toldToDo = (memo: string): string | null =>
  TOLD_TO.exec(memo.trim().replace(/[.!?]+$/, ''))?.[1] ?? null;
