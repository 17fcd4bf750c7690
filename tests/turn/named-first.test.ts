import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const visit = (...words: readonly string[]): ReturnType<typeof timedVisit> =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said]));

const replies = (...words: readonly string[]): readonly string[] =>
  visit(...words).turns.map(({ reply }) => reply.text);

describe('what is named in a sentence of its own', () => {
  it.each([
    ['head pressure', 'two ten', ['Head?', 'Head 210.']],
    ['suction line temp', 'fifty two', ['Suction line?', 'Suction line 52.']],
    ['head is', 'two ten', ['Head?', 'Head 210.']],
    ['compressor amps', 'seven point two', ['Compressor current?', 'Compressor 7.2 A.']],
    ['voltage at the contactor', 'two oh eight', ['Contactor voltage?', 'Contactor 208 V.']],
    ['voltage at the contactor', 'nothing', ['Contactor voltage?', 'Contactor 0 V.']],
    ['evaporator fan', 'not running', ['Evaporator fan.', 'Evaporator fan not running.']],
    ['moving on to the evaporator', "it's iced up", ['Evaporator.', 'Evaporator iced up.']],
    ['looking at the start relay', 'okay, burnt', ['Start relay.', 'Start relay burnt.']],
  ])('is what the next one tells of: %s, %s', (named, told, [asked, kept]) => {
    const [first, second] = replies(named, told);
    expect(first).toBe(asked);
    expect(second).toContain(kept);
  });

  it('is waited for with what it was before', () => {
    expect(replies('head two forty', 'condenser cleaned', 'head pressure').at(-1)).toBe(
      'Head? It was 240.',
    );
  });

  it('waits while nothing is told', () => {
    expect(replies('suction', 'hang on a second', 'fourteen').at(-1)).toBe('Suction 14.');
  });

  it('is left once something else was told', () => {
    const { state } = visit('suction', 'box is forty one', 'fourteen').last;
    expect(state.readings.map(({ reading }) => reading.quantity)).toEqual(['boxTemp']);
    expect(state.leftOver.map(({ digits }) => digits)).toEqual(['14']);
  });

  it('gives a capacitor both of its figures', () => {
    const { state } = visit(
      'checked the run capacitor',
      "it's supposed to be 35, it reads 22",
    ).last;
    expect(state.readings.map(({ reading }) => [reading.quantity, reading.value])).toEqual([
      ['ratedCapacitance', 35],
      ['capacitance', 22],
    ]);
  });

  it('leaves a run capacitor for the start capacitor whose marking is read out', () => {
    const { state } = visit(
      'discharged the cap',
      'start cap is rated one forty five to one seventy four',
      "i'm reading",
      'twenty two',
      "so that's junk",
      "okay new cap's in",
    ).last;
    expect(state.readings.at(-1)?.reading).toMatchObject({
      quantity: 'capacitance',
      value: 22,
      place: 'startCapacitor',
    });
    expect(state.findings.map(({ finding }) => finding.part)).toEqual(['startCapacitor']);
    expect(state.work.map(({ work }) => work.part)).toContain('startCapacitor');
    expect(state.work.map(({ work }) => work.part)).not.toContain('runCapacitor');
  });

  it('amps of two figures may have lost their point', () => {
    expect(replies('nameplate is six point eight amps', 'amps', 'seven one').at(-1)).toBe(
      'Current 7.1 A.',
    );
  });

  it('names a number that was asked about just now instead', () => {
    expect(replies('two ten', 'head pressure').at(-1)).toBe('Head 210.');
  });

  it('stands nowhere in the visit by itself', () => {
    const { state } = visit('condenser', 'run capacitor', 'head').last;
    expect([state.readings, state.findings, state.memos, state.undoable]).toEqual([[], [], [], []]);
  });
});

describe('half a sentence', () => {
  it.each([
    ['replaced the', 'contactor', 'Contactor replaced.'],
    ["the condenser's", 'plugged solid', 'Condenser plugged.'],
    ["compressor's drawing", 'seven point two amps', 'Compressor 7.2 A.'],
    ['i cleaned the', 'okay condenser coil', 'Condenser cleaned.'],
  ])('is told with the other half: %s, %s', (half, rest, kept) => {
    const [, first, second] = replies('walk-in cooler on 404a', half, rest);
    expect(first).toBe(half.startsWith('the') ? 'Condenser.' : '');
    expect(second).toContain(kept);
  });

  it('stays half before anything else, and opens no visit', () => {
    const { state } = visit('replaced the').last;
    expect([state.visit, state.history]).toEqual([null, []]);
  });
});
