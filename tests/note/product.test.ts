import { describe, expect, it } from 'vitest';
import { productName } from '../../core/terms/product-name.ts';
import type { Utterance } from '../../core/language/utterance.ts';
import { REACH_IN, read, readings, visitOf, WARM } from '../advice/visits.ts';
import { commanding, utteranceOf, working } from '../support/utterances.ts';
import { linesOf, rowsOf } from './note-lines.ts';

const product = (value: number, words: string): Utterance =>
  readings({ ...read('productTemp', value, 'degF'), words });

describe('the name of what was probed', () => {
  it.each([
    ['lettuce in the pan is forty two', 'lettuce in the pan'],
    ['tuna forty two degrees', 'tuna'],
    ["chicken's at fifty one", 'chicken'],
    ['probed the burgers at thirty nine', 'burgers'],
    ['ice cream on the middle shelf is eight degrees', 'ice cream on the middle shelf'],
    ['stuck my probe in the pickles and it says forty four point six', 'pickles'],
    ['they say the lettuce up top is at forty eight', 'lettuce up top'],
    ['milk temperature is 44', 'milk'],
    ['milk says forty four', 'milk'],
    ['meat in there temped forty four', 'meat'],
    ['product temp in the middle of the meat is twenty six', 'middle of the meat'],
    ['edges about twenty nine', 'edges'],
    ["chicken's thirty four in the middle", 'chicken in the middle'],
    ['and forty four at the bottom', 'at the bottom'],
    ['and the bottom shelf is forty four', 'bottom shelf'],
  ])('is told in "%s"', (words, name) => {
    expect(productName(words)).toBe(name);
  });

  it.each(['product is thirty nine', 'the food is at forty', 'product temp forty one', '44', ''])(
    'is not told in "%s"',
    (words) => {
      expect(productName(words)).toBeNull();
    },
  );
});

describe('what the note tells of the product', () => {
  const two = [product(42, 'lettuce in the pan is forty two'), product(44, 'tuna is forty four')];

  const after = commanding({ do: 'markAfter' });

  it('says which was how warm, to all who read it', () => {
    const state = visitOf([REACH_IN, WARM, working('brush'), ...two, after]);
    expect(linesOf(state, 'product')).toEqual([
      'Lettuce in the pan 42 °F after work.',
      'Tuna 44 °F after work.',
    ]);
    const told = 'The product was at 42 °F (lettuce in the pan) and 44 °F (tuna) when we measured';
    expect(linesOf(state, 'customer')[0]).toContain(told);
    expect(linesOf(state, 'office')[0]).toContain(told);
  });

  it('holds no milk against a lettuce', () => {
    const milk = product(50, 'milk is at fifty');
    const state = visitOf([REACH_IN, WARM, milk, working('brush'), ...two]);
    expect(rowsOf(state, 'change')['product temperature']).toBeUndefined();
    expect(linesOf(state, 'change').join(' ')).not.toContain('product');
    expect(linesOf(state, 'customer')[0]).toContain(
      'The product was at 50 °F (milk) when we came, and at 42 °F (lettuce in the pan) and 44 °F (tuna) after that.',
    );
  });

  it('tells them what they were told to do with it', () => {
    const memo = "tell them to throw out the milk that's over forty one";
    const state = visitOf([REACH_IN, WARM, working('brush'), utteranceOf({ memos: [memo] })]);
    expect(linesOf(state, 'customer')[0]).toContain(
      "About the product we noted: our advice is to throw out the milk that's over forty one.",
    );
    expect(linesOf(state, 'office')[0]).toContain(
      "the customer was told to throw out the milk that's over forty one.",
    );
  });
});
