import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const said = (...words: readonly string[]): ReturnType<typeof timedVisit> =>
  timedVisit(...words.map((each, minute): TimedLine => [minute, each]));
const reply = (...words: readonly string[]): string => said(...words).last.reply.text;

const AT_TWENTY_FOUR = "cylinder's at twenty four pounds six ounces";
const RECOVERED = ['cylinder weighed thirty one pounds two ounces going in', "recovery's done"];

describe('a cylinder that stands on the scale', () => {
  it.each([
    ['sixteen ten', '16 lb 10 oz'],
    ['down to eighteen pounds two', '18 lb 2 oz'],
    ['okay we are down to eighteen two', '18 lb 2 oz'],
    ["it's at twenty one pounds even now", '21 lb'],
    ["it's thirteen two on the scale", '13 lb 2 oz'],
    ['scale says down to fourteen pounds', '14 lb'],
  ])('is read again without its name: %s', (words, weight) => {
    expect(reply(AT_TWENTY_FOUR, words)).toContain(`Cylinder weight ${weight}.`);
  });

  it.each([
    ["that's six four in", 'Added 6 lb 4 oz.'],
    ['so that makes six pounds four in', 'Added 6 lb 4 oz.'],
    [
      "down to eighteen pounds two that's six four in",
      'Cylinder weight 18 lb 2 oz, added 6 lb 4 oz.',
    ],
  ])('tells what went in: %s', (words, told) => {
    expect(reply(AT_TWENTY_FOUR, words)).toContain(told);
  });

  it.each([
    ['six pounds thirteen', 'Recovered 6 lb 13 oz.'],
    ["so that's what six pounds thirteen", 'Recovered 6 lb 13 oz.'],
    ["that's six thirteen out", 'Recovered 6 lb 13 oz.'],
  ])('tells what came out, behind the recovery: %s', (words, told) => {
    expect(reply(...RECOVERED, words)).toContain(told);
  });

  it.each([
    ['it weighs thirty one six now', 'Cylinder weight 31.6 lb.'],
    ['jug weighs thirty one six', 'Cylinder weight 31.6 lb.'],
    ["tank's at thirty one point six", 'Cylinder weight 31.6 lb.'],
    ['scale says thirty even', 'Cylinder weight 30 lb.'],
  ])('is read in the pounds and tenths that its tare was told in: %s', (words, told) => {
    expect(reply('tare is twenty seven point two pounds', words)).toContain(told);
  });

  it('tells what went into it by two of its weights, and what it holds by its tare', () => {
    const weighed = [
      'tank weighed eighteen pounds before',
      'tank weighs twenty two pounds four ounces now',
    ];
    const gained = 'By its weights 4 lb 4 oz went into the cylinder.';
    expect(reply(...weighed, 'how much did i get out')).toContain(gained);
    const holds = 'By its tare the cylinder holds 7 lb 4 oz.';
    expect(
      reply(...weighed, 'tare on this tank is fifteen pounds', 'how much is in the tank'),
    ).toBe(`No refrigerant weighed in or out yet. ${gained} ${holds}`);
    const note = noteText(draftNote(said(...weighed).last.state, []));
    expect(note).toContain('By its weights the cylinder gained 4 lb 4 oz.');
  });

  it('sets no weight of a jug beside one of the tank', () => {
    const told = reply(
      'jug weighed twenty four pounds before',
      'recovery tank weighs eighteen pounds now',
      'how much did i get out',
    );
    expect(told).toBe('No refrigerant weighed in or out yet.');
  });

  it('waits for the ounces where the sentence was cut before them', () => {
    const { state } = said(
      ...RECOVERED,
      "so that's what six pounds and uh",
      'six pounds thirteen',
    ).last;
    expect(
      state.readings
        .filter(({ reading }) => reading.quantity === 'refrigerantRecovered')
        .map(({ reading }) => reading.value),
    ).toEqual([109]);
    expect(state.leftOver).toEqual([]);
  });

  it.each([
    ["that's eleven four total", [100, 80]],
    ["so that's eleven four in", [100, 80]],
    ['makes eleven pounds four in all', [100, 80]],
    ["that's six four total", [100]],
    ["that's five pounds twelve total", [92]],
  ])('counts a total once: %s', (words, ounces) => {
    const { state } = said(AT_TWENTY_FOUR, "that's six four in", words).last;
    expect(
      state.readings
        .filter(({ reading }) => reading.quantity === 'refrigerantAdded')
        .map(({ reading }) => reading.value),
    ).toEqual(ounces);
    expect(state.leftOver).toEqual([]);
  });

  it('is not what a bare number is of before a bottle was weighed', () => {
    expect(reply('head two ten, suction forty', 'sixteen ten')).toContain('Say what that is of.');
  });
});
