/** What one sentence makes is stamped within this time; before the next one the product has answered. */
export const ONE_BREATH_MS = 1_000;
