import { describe, expect, it } from 'vitest';
import { asPrinted } from '../../core/note/plate-letters.ts';

describe('what is told of a plate by its letters', () => {
  it.each([
    ['model F as in frank J A M dash zero three hundred', 'model FJAM-0300'],
    ['model number K R thirty two slash seven', 'model number KR32/7'],
    ['serial ends in four four seven', 'serial ends in 447'],
    ['serial number ends with four four seven', 'serial number ends in 447'],
    ["serial's nineteen oh four two one", 'serial 190421'],
    ['model is T as in tom 49', 'model T49'],
  ])('%s', (told, written) => {
    expect(asPrinted(told)).toBe(written);
  });

  it.each([
    'model is painted over',
    'model F as in tom J A',
    'serial plate is gone',
    "it's three phase",
    'serial ends in a four, I think',
    'model a',
  ])('%s: is left as it was said', (told) => {
    expect(asPrinted(told)).toBe(told);
  });
});
