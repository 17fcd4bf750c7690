import { describe, expect, it } from 'vitest';
import type { Utterance } from '../../core/language/utterance.ts';
import { REACH_IN, read, readings, unitIs, visitOf, WARM } from '../advice/visits.ts';
import { commanding, utteranceOf, working } from '../support/utterances.ts';
import { linesOf } from './note-lines.ts';

const WORDS = 'they say the lettuce up top is at forty eight and it never shuts off';
const hearsay: Utterance = utteranceOf({
  doubts: [{ ...read('productTemp', 48, 'degF'), words: WORDS, why: 'hearsay' }],
});
const COMPLAINT = ['They say the lettuce up top is at forty eight and it never shuts off.'];

describe('a complaint that was told with a number', () => {
  it('is kept whether or not the number was answered for', () => {
    const asked = [hearsay];
    const left = [hearsay, commanding({ do: 'no' })];
    const readAnew = [hearsay, WARM, readings(read('productTemp', 42, 'degF'))];
    for (const said of [asked, left, readAnew]) {
      expect(linesOf(visitOf([REACH_IN, ...said]), 'complaint')).toEqual(COMPLAINT);
    }
  });

  it('is told to the customer without who said it', () => {
    const state = visitOf([REACH_IN, hearsay, WARM]);
    expect(linesOf(state, 'customer')[0]).toMatch(
      /^You called us about "the lettuce up top is at forty eight and it never shuts off"\./,
    );
    expect(linesOf(state, 'office')[0]).toContain(`Called for "${WORDS}".`);
  });

  it('stands beside an earlier complaint as what nobody measured', () => {
    const state = visitOf([utteranceOf({ memos: ['warm since friday'] }), hearsay]);
    expect(linesOf(state, 'complaint')).toEqual([
      'Warm since friday.',
      `Reported, not measured: ${WORDS}.`,
    ]);
  });

  it('is nothing that was told by whoever put it in or worked on it before', () => {
    const ofTheTrade = [
      'the installer says he pulled it to three hundred microns',
      "but he swears it's open",
      'the last guy said it was charged',
    ];
    const told = ofTheTrade.map((memo) => utteranceOf({ memos: [memo] }));
    expect(linesOf(visitOf([REACH_IN, ...told, WARM]), 'customer')[0]).not.toContain('called us');
    const owner = utteranceOf({ memos: ['but he says it was warm since friday'] });
    expect(linesOf(visitOf([REACH_IN, owner, WARM]), 'customer')[0]).toContain('called us');
  });

  it('is nothing that was told of the product alone', () => {
    const lost = [
      'she said they already threw out half',
      'he said they lost all the ice cream',
      'customer says they tossed everything in it',
      'she told me they moved the milk to the other cooler',
      'he says they had to dump the fish',
    ];
    for (const memo of lost) {
      const state = visitOf([REACH_IN, utteranceOf({ memos: [memo] }), WARM]);
      expect(linesOf(state, 'complaint')).toEqual(['No complaint was recorded.']);
      expect(linesOf(state, 'customer')[0]).not.toContain('called us');
      expect(linesOf(state, 'product').join(' ').toLowerCase()).toContain(memo);
    }
    const said = visitOf([REACH_IN, utteranceOf({ memos: [lost[0] ?? ''] }), WARM]);
    expect(linesOf(said, 'customer')[0]).toContain('"they already threw out half"');
    expect(linesOf(said, 'office')[0]).toContain('"she said they already threw out half"');
    const warm = utteranceOf({ memos: ['she said they threw out the milk because it was warm'] });
    expect(linesOf(visitOf([REACH_IN, warm, WARM]), 'customer')[0]).toContain('called us');
  });

  it('is nothing that a former man did', () => {
    const memo = 'she said the guy before put a new motor in';
    const did = utteranceOf({ memos: [memo] });
    const told = visitOf([REACH_IN, did, WARM]);
    expect(linesOf(told, 'customer')[0]).not.toContain('called us');
    expect(linesOf(told, 'complaint').join(' ').toLowerCase()).toContain(memo);
    const since = utteranceOf({
      memos: ["she said the last guy changed the motor and it's not holding since"],
    });
    expect(linesOf(visitOf([REACH_IN, since, WARM]), 'customer')[0]).toContain('called us');
  });

  it('is still missing where nobody told one', () => {
    expect(linesOf(visitOf([REACH_IN, WARM]), 'complaint')).toEqual(['No complaint was recorded.']);
  });
});

describe('a visit without a site', () => {
  it('says so among what is open, once there is anything to bill', () => {
    const open = 'The site was not stated.';
    expect(linesOf(visitOf([REACH_IN, WARM, working('brush')]), 'open')[0]).toBe(open);
    expect(linesOf(visitOf([REACH_IN]), 'open')).toEqual([]);
    const known = unitIs({ fact: 'site', value: 'Harbor Street Deli' });
    expect(linesOf(visitOf([known, WARM]), 'open')).not.toContain(open);
  });
});
