import { describe, expect, it } from 'vitest';
import { timedVisit } from '../support/timed-visit.ts';

const ASKED_AGAIN = 'I did not catch that. Say it again.';

const reply = (words: string): string =>
  timedVisit([0, "i'm at juniper market"], [1, words]).last.reply.text;

describe('what is said to nobody', () => {
  it.each([
    "that's more like it",
    "that's weird",
    'now we are getting somewhere',
    'well that makes sense',
    "i can't get in there",
    "where's my flashlight",
    'where did i put that wrench',
    'who put this in',
    'this thing is a mess',
    'it did that again',
    "that can't be right",
  ])('is passed over in silence: %s', (words) => {
    expect(reply(words)).toBe('');
  });

  it.each([
    // What is asked of us, if we have no answer to it.
    'what do i do with this',
    'how do you like that',
    // What may be told of something.
    "it's stuck",
    "it's off again",
    'that is bad',
    // What may be left of a command or of a reading.
    'right',
    'head is weird like that',
  ])('is not taken for it: %s', (words) => {
    expect(reply(words)).not.toBe('');
  });

  it('is asked again for, where nobody knows the words', () => {
    expect(reply('crisp towels volunteer')).toBe(ASKED_AGAIN);
  });
});
