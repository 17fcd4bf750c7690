export const faultText = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
