import { describe, expect, it } from 'vitest';
import type { Turn } from '../../core/turn/turn.ts';
import { last } from '../support/last-turn.ts';

const found = ({ state }: Turn) =>
  state.findings.map(({ finding }) => [finding.part, finding.state]);

describe('what was found wrongly', () => {
  it.each([
    ["condenser fan isn't running, no wait it is running", 'condenserFan', 'running'],
    ["condenser fan isn't running, no, it is", 'condenserFan', 'running'],
    ["evaporator fan's not turning, no it's turning but slow", 'evaporatorFan', 'running'],
    ['the overload is fine, no hold on it is open, i had the wrong pins', 'overload', 'open'],
    ["relay's burnt, no it's fine", 'startRelay', 'ok'],
  ])('is put right in one breath: "%s"', (said, part, state) => {
    expect(found(last(said))).toEqual([[part, state]]);
  });

  it('keeps in words how it runs', () => {
    const { state } = last("evaporator fan's not turning, no it's turning but slow");
    expect(state.memos.map(({ memo }) => memo)).toEqual(["evaporator fan's turning but slow"]);
  });

  it('is put right in the next sentence, and both are said', () => {
    const turn = last("overload's open", 'no the overload is fine');
    expect(found(turn)).toEqual([['overload', 'ok']]);
    expect(turn.reply.text).toBe('Taken back: overload open. Overload all right.');
  });

  it('stays where it was another part, where nothing is denied, and once the part was worked on', () => {
    expect(found(last("overload's open", 'the overload is fine'))).toHaveLength(2);
    expect(found(last("overload's open", 'no the relay is fine'))).toHaveLength(2);
    expect(
      found(last("overload's open", 'replaced the overload', 'no the overload is fine')),
    ).toHaveLength(2);
  });
});

describe('what is let be in the same breath', () => {
  it.each([
    "that's my before, no hang on",
    'mark before, wait',
    'mark after, no not yet',
    'finish, no wait',
    "that's it, finish, no hold on",
    "finish, no i'm not done yet",
    'finish, not yet',
  ])('"%s" marks and finishes nothing, and says so', (said) => {
    const { state, reply } = last('head one ninety', said);
    expect([state.beforeMarkedAt, state.afterMarkedAt, state.finishedAt]).toEqual([
      null,
      null,
      null,
    ]);
    expect(reply.text).toBe('All right, left out.');
  });

  it.each([
    'they should replace the door gasket, never mind',
    'they should replace the door gasket, no never mind',
    "they should replace the door gasket, no don't",
    "i replaced the start relay, no i didn't",
    'suction is fourteen, never mind',
  ])('"%s" keeps nothing', (said) => {
    const { state, reply } = last(said);
    expect(state.undoable).toEqual([]);
    expect(reply.text).toBe('All right, left out.');
  });

  it('keeps what is told beside it', () => {
    const turn = last("they should replace the door gasket, no never mind the gasket's fine");
    expect(turn.state.recommendations).toEqual([]);
    expect(found(turn)).toEqual([['doorGasket', 'ok']]);
    const read = last('head one ninety, box forty, never mind');
    expect(read.state.readings.map(({ reading }) => reading.value)).toEqual([190]);
  });

  it('is nothing that only waits, or minds something else', () => {
    expect(last('head one ninety, hang on').state.readings).toHaveLength(1);
    const { state } = last('they should replace the door gasket, never mind the price');
    expect(state.recommendations).toHaveLength(1);
    expect(last('head one ninety', "that's my before").state.beforeMarkedAt).not.toBeNull();
  });

  it('takes back what was told last, where "the last one" is, and says what', () => {
    const { reply } = last('i was here two hours', 'box thirty eight', 'no take the last one back');
    expect(reply.text).toBe('Taken back: box 38.');
  });
});
