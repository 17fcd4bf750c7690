import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { parse } from '../../core/language/parse/parse.ts';
import { askedByCues } from '../../core/language/questions/by-cue.ts';
import { CUES } from '../../core/language/questions/cues.ts';

describe('questions that no rule reads', () => {
  it.each(CUES)('are told by the words in them: $example', (cue) => {
    const { items, sentence } = parse(cue.example, EMPTY_CONTEXT);
    const asked = askedByCues(sentence, items);
    expect(asked.map((each) => each.cue)).toEqual([cue]);
  });

  it('ask of a name that stands alone with a question mark', () => {
    const { items, sentence } = parse('Suction?', EMPTY_CONTEXT);
    expect(askedByCues(sentence, items)).toEqual([
      { question: { ask: 'value', about: 'suctionPressure' }, cue: null, start: 0, end: 1 },
    ]);
  });

  it('are none of ours where they speak of somebody or something else', () => {
    const others = ['what does the customer want to see', 'how far is it to the truck'];
    const asked = others.flatMap((said) => {
      const { items, sentence } = parse(said, EMPTY_CONTEXT);
      return askedByCues(sentence, items);
    });
    expect(asked).toEqual([]);
  });
});
