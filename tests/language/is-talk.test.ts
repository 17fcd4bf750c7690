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
    'did the customer say it was at fifty',
    'could be worse',
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
    'is that it',
    'is the txv hunting or is it starving',
    'do you think the txv is stuck',
    'is head two hundred',
    'is the contactor two thirty volts',
  ])('%s', (said) => {
    expect(isTalk(said, EMPTY_CONTEXT)).toBe(false);
  });
});
