import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const visit = (...words: readonly string[]): ReturnType<typeof timedVisit> =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said]));

const replies = (...words: readonly string[]): readonly string[] =>
  visit(...words).turns.map(({ reply }) => reply.text);

describe('a number that a pause cut in two', () => {
  it.each([
    [['amps six point', 'two'], 'Current 6.2 A now, was 6 A.'],
    [["superheat's twelve point", 'five'], 'Superheat 12.5 now, was 12.'],
    [['rla thirteen point', 'six'], 'Nameplate rated load amps 13.6 A.'],
    [['head two forty', 'seven'], 'Head 247 now, was 240.'],
    [['head two forty suction fifty', 'eight amps are eleven nine'], 'Suction 58 now, was 50.'],
    [
      ['suction line fifty', "four liquid line's ninety eight"],
      'Liquid line 98. Suction line 54 now, was 50.',
    ],
  ])('is one: %s', (said, reply) => {
    expect(replies(...said).at(-1)).toContain(reply);
  });

  it('leaves no number open', () => {
    expect(visit('amps six point', 'two').last.state.leftOver).toEqual([]);
  });

  it.each([
    [['head two forty', 'two fans are dead'], 240],
    [['head two forty five', 'seven'], 245],
    [['head two forty', 'box is seven'], 240],
  ])('is whole where no figure can go on: %s', (said, head) => {
    const { state } = visit(...said).last;
    const read = state.readings.find(({ reading }) => reading.quantity === 'headPressure');
    expect(read?.reading.value).toBe(head);
  });
});

describe('one figure for what was told as two', () => {
  it.each([
    [["head's about ninety five maybe a hundred", 'call it ninety eight'], 'Head 98 now'],
    [["suction's around two three pounds", "let's call it two and a half"], 'Suction 2.5 now'],
  ])('settles it: %s', (said, reply) => {
    expect(replies(...said).at(-1)).toContain(reply);
  });
});
