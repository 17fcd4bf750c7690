import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import type { Turn } from '../../core/turn/turn.ts';
import { last } from '../support/last-turn.ts';

const found = ({ state }: Turn) =>
  state.findings.map(({ finding }) => [finding.part, finding.state]);
const noted = ({ state }: Turn, id: string): readonly string[] =>
  draftNote(state).sections.find((section) => section.id === id)?.lines ?? [];

describe('a compressor that tries to start', () => {
  it.each([
    'compressor hums and then clicks off',
    'compressor hums and clicks off',
    'compressor hums for a few seconds and kicks out',
    'it hums and clicks off',
  ])('hums and trips: "%s"', (said) => {
    expect(found(last(said))).toEqual([
      ['compressor', 'humming'],
      ['compressor', 'tripped'],
    ]);
  });

  it('is put right once it started and draws its amps', () => {
    const turn = last(
      'compressor hums and then clicks off',
      'put a new relay and overload on',
      'it started, four point nine amps',
    );
    expect(found(turn)).toContainEqual(['compressor', 'running']);
    expect(noted(turn, 'open').join(' ')).not.toContain('put right: compressor');
  });

  it('is good or not by its windings and by the ohms to ground, where those were read', () => {
    const turn = last(
      'single door reach in, one thirty four a, cap tube',
      'common to start is six point eight, common to run is two point one, start to run eight point nine',
      "to ground it's fifty megs",
      'is the compressor good',
    );
    expect(turn.reply.text).toContain('The windings add up.');
    expect(turn.reply.text).toContain('it passes');
    expect(turn.reply.text).not.toContain('line side');
    expect(last('is the compressor good').reply.text).toContain('line side');
  });
});

describe('several causes', () => {
  it('are each kept', () => {
    const turn = last('the cause was the relay, and the overload, plus it was overcharged');
    expect(turn.state.unit.cause).toBe('overcharge');
    expect(found(turn)).toEqual([
      ['startRelay', 'failed'],
      ['overload', 'failed'],
    ]);
    expect(found(last('the cause was the relay and the overload'))).toHaveLength(2);
  });
});

describe('what we did because of what we saw', () => {
  it('is done, and why is kept in words', () => {
    const said = 'somebody put a tap on the process stub so i put my gauges on';
    const { state } = last(said);
    expect(state.preparations.map(({ work }) => [work.did, work.part])).toEqual([
      ['connect', 'gauges'],
    ]);
    expect(state.memos.map(({ memo }) => memo)).toEqual([said]);
  });
});

describe('the before that is marked once work had begun', () => {
  it('stands in the note as the before, and not the ohms of the parts', () => {
    const turn = last(
      'box is sixty one',
      'put a new relay on',
      "to ground it's fifty megs",
      'head two oh five, suction twenty eight',
      "that's the before",
    );
    expect(turn.reply.text).toContain('Marked as before: 3 readings.');
    const phases = turn.state.readings.map(({ reading, phase }) => [reading.quantity, phase]);
    expect(phases).toEqual([
      ['boxTemp', 'before'],
      ['insulationResistance', 'work'],
      ['headPressure', 'before'],
      ['suctionPressure', 'before'],
    ]);
  });
});
