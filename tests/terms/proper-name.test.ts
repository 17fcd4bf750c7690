import { describe, expect, it } from 'vitest';
import { properName } from '../../core/terms/proper-name.ts';

describe('a name as it is written', () => {
  it.each([
    ['cedar hill diner', 'Cedar Hill Diner'],
    ['house of pancakes', 'House of Pancakes'],
    ['the blue anchor', 'The Blue Anchor'],
    ['Harbor Street Deli', 'Harbor Street Deli'],
    ['iTaste kitchen', 'iTaste kitchen'],
    ["tony's on fifth", "Tony's on Fifth"],
    ['12 north market', '12 North Market'],
  ])('%s: %s', (said, written) => {
    expect(properName(said)).toBe(written);
    expect(properName(written)).toBe(written);
  });
});
