import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { isTalk } from '../../core/language/settle/is-talk.ts';

describe('what is not for us', () => {
  it.each([
    'morning how are you doing',
    'thanks buddy',
    'okay thanks',
    'i will be back in twenty minutes',
    'if head goes over two hundred call me',
  ])('%s', (said) => {
    expect(isTalk(said, EMPTY_CONTEXT)).toBe(true);
  });
});

describe('what was not understood, and must be asked for again', () => {
  it.each([
    'crates stood against every housing until it holds',
    'the thing by the wall is blue',
    'no voltage at the heater',
    'is it humming',
    'no good',
  ])('%s', (said) => {
    expect(isTalk(said, EMPTY_CONTEXT)).toBe(false);
  });
});
