import { describe, expect, it } from 'vitest';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Stamp } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { timedVisit } from '../support/timed-visit.ts';

const MINUTE = 60_000;
/** Ten past nine in the morning, an hour ahead of UTC. */
const OPENED = (8 * 60 + 10) * MINUTE;

function askedAfter(minutes: number, question: string): string {
  let seq = 0;
  const stampAt =
    (at: number): Stamp =>
    (body) => {
      seq += 1;
      return {
        ...body,
        id: String(seq).padStart(4, '0'),
        device: 'd',
        seq,
        visit: 'v',
        at,
        utcOffset: 60,
      };
    };
  const opened = takeTurn({
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
    words: 'site is Harbor Street Deli',
    stamp: stampAt(OPENED),
  });
  const stamp = stampAt(OPENED + minutes * MINUTE);
  return takeTurn({ ...opened, words: question, stamp }).reply.spoken;
}

describe('how long the visit has gone on', () => {
  it('is told in hours and minutes, with the hour that it began', () => {
    expect(askedAfter(125, 'how long have i been here')).toBe(
      '2 hours 5 minutes on this visit, since 9:10.',
    );
    expect(askedAfter(1, 'what time did I get here')).toBe('1 minute on this visit, since 9:10.');
    expect(askedAfter(60, 'how long was I here')).toBe('1 hour on this visit, since 9:10.');
  });

  it('is nothing yet where the question opens the visit, and the hour is not told where it is not known', () => {
    const stamp: Stamp = (body) => ({ ...body, id: '1', device: 'd', seq: 1, visit: 'v', at: 0 });
    const turn = takeTurn({
      state: EMPTY_VISIT,
      memory: EMPTY_MEMORY,
      words: 'how long have i been here',
      stamp,
    });
    expect(turn.verdicts[0]?.kind === 'known' && turn.reply.spoken).toBe(
      '0 minutes on this visit.',
    );
  });
});

describe('labor that is told in parts', () => {
  const told = (...said: readonly string[]): readonly string[] =>
    timedVisit(...said.map((words, minute) => [minute, words] as const)).turns.map(
      ({ reply }) => reply.text,
    );

  it('is said back with its sum, so that an hour too many is heard', () => {
    expect(told('two hours labor', 'add an hour and a half labor', 'make that two hours')).toEqual([
      'Labor 2 h.',
      'Labor 1 h 30 min, 3 h 30 min in all.',
      'Taken back: labor 1 h 30 min. Labor 2 h, 4 h in all.',
    ]);
  });

  it('is corrected only where a time was told', () => {
    expect(told('box forty', 'make that three hours').at(-1)).toMatch(/^There is no reading/);
  });
});
