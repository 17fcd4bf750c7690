import { expect } from 'vitest';

/** Vitest's own are typed as anything at all. */
export const near = (value: number, digits: number): unknown => expect.closeTo(value, digits);
export const including = (...ids: readonly string[]): unknown => expect.arrayContaining([...ids]);
