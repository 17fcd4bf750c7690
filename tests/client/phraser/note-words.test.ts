import { describe, expect, it } from 'vitest';
import { createNoteWords } from '../../../client/phraser/note-words.ts';
import type { Passage } from '../../../core/note/paragraphs/passage.ts';
import { passageText } from '../../../core/note/paragraphs/sentences.ts';
import type { PassagePhraser } from '../../../core/note/phrase-note.ts';
import { settled } from '../scripted.ts';

const DONE: Passage = {
  kind: 'done',
  reader: 'customer',
  fields: [],
  slots: { work: 'cleaned the condenser' },
};
const TEMPLATE = passageText(DONE);
const RIGHT = 'Here is what we did: we cleaned the condenser.';

function shown(phraser: PassagePhraser | null) {
  const asked: Passage[] = [];
  let drawn = 0;
  const counting: PassagePhraser | null = phraser && {
    phrasePassage: (passage) => {
      asked.push(passage);
      return phraser.phrasePassage(passage);
    },
  };
  const words = createNoteWords(() => counting);
  words.onWorded(() => (drawn += 1));
  return { word: words.word, asked, drawn: () => drawn };
}

describe('the words of the note on the page', () => {
  it("are the template's at first, and the phraser's when they are there, asked for once", async () => {
    const on = shown({ phrasePassage: () => Promise.resolve(RIGHT) });
    expect([on.word(DONE), on.word({ ...DONE })]).toEqual([TEMPLATE, TEMPLATE]);
    await settled();
    expect([on.word(DONE), on.drawn()]).toEqual([RIGHT, 1]);
    await settled();
    expect([on.asked.length, on.drawn()]).toEqual([1, 1]);
  });

  it.each<[string, PassagePhraser | null]>([
    ['there is no phraser', null],
    ['it has none', { phrasePassage: () => Promise.resolve(null) }],
    ['it fails', { phrasePassage: () => Promise.reject(new Error('the worker is gone')) }],
    [
      'it says another thing',
      { phrasePassage: () => Promise.resolve('We replaced the compressor.') },
    ],
  ])('stay the template where %s', async (_, phraser) => {
    const on = shown(phraser);
    on.word(DONE);
    await settled();
    expect(on.word(DONE)).toBe(TEMPLATE);
  });
});
