import { describe, expect, it } from 'vitest';
import { splitTogether } from '../../../client/screens/unbroken.tsx';

const kept = (text: string) => splitTogether(text).filter((_part, index) => index % 2 === 1);

describe('what must not be broken at a line’s end', () => {
  it('is a number with its sign and unit, and a refrigerant’s name', () => {
    expect(kept('R-134a: condensing 118 °F, so head about 166.5 psi, box -10 °F; 3 psia.')).toEqual(
      ['R-134a', '118 °F', '166.5 psi', '-10 °F', '3 psia'],
    );
  });

  it('is not the word after a bare number', () => {
    expect(kept('26 inches, 2 fans')).toEqual(['26', '2']);
  });

  it('loses nothing', () => {
    const text = 'Head 192 psi before, 158 psi after: down 34 psi. 7.2:1.';
    expect(splitTogether(text).join('')).toBe(text);
  });
});
