import { describe, expect, it } from 'vitest';
import { PARTS } from '../../core/terms/names.ts';
import { plainState } from '../../core/note/customer-words/states.ts';
import type { Utterance } from '../../core/language/utterance.ts';
import { visitOf } from '../advice/visits.ts';
import { utteranceOf } from '../support/utterances.ts';
import { linesOf } from './note-lines.ts';

const found = (...of: Utterance['findings']): Utterance => utteranceOf({ findings: of });

describe('what was found, in the words it was told in', () => {
  const door = visitOf([
    found(
      { part: 'door', state: 'failed', words: "door doesn't close" },
      { part: 'doorGasket', state: 'failed', words: "gasket's torn" },
      { part: 'hinge', state: 'failed', words: 'the hinge is bent' },
    ),
  ]);

  it('says how a part failed, not that it did', () => {
    expect(linesOf(door, 'customer')[0]).toContain(
      'We found that the door did not close, the door seal was torn and the door hinge was bent.',
    );
    expect(linesOf(door, 'office')[0]).toContain(
      'Found door not closing, door gasket torn and hinge bent.',
    );
    expect(linesOf(door, 'findings')).toEqual([
      'Door: not closing.',
      'Door gasket: torn.',
      'Hinge: bent.',
    ]);
  });

  it('says of a part that was only called bad that it failed', () => {
    const bad = visitOf([found({ part: 'sensor', state: 'failed', words: 'the sensor is bad' })]);
    expect(linesOf(bad, 'findings')).toEqual(['Sensor: failed.']);
  });

  it('says of an open heater that it is burnt out, and of a switch that it cut the power', () => {
    const open = visitOf([
      found(
        { part: 'defrostHeater', state: 'open', words: 'defrost heater reads open' },
        { part: 'overload', state: 'open', words: 'overload is open' },
      ),
    ]);
    expect(linesOf(open, 'customer')[0]).toContain(
      'the heater that melts the ice was burnt out and the motor protection had cut the power',
    );
  });

  it('lets no part let no power through', () => {
    for (const part of Object.keys(PARTS)) {
      const isPart = (id: string): id is keyof typeof PARTS => id in PARTS;
      if (!isPart(part)) continue;
      const told = plainState(part, { state: 'open', words: '' });
      expect(told).toMatch(/^(was|had) /);
      expect(told).not.toContain('let no');
    }
  });
});

describe('the complaint', () => {
  it.each([
    'they called because the walk in was at fifty five',
    'called because the walk in was at fifty five',
    'customer called about the walk in was at fifty five',
  ])('leaves out that they called: %s', (memo) => {
    const state = visitOf([utteranceOf({ memos: [memo] })]);
    expect(linesOf(state, 'complaint')).toEqual(['The walk in was at fifty five.']);
    expect(linesOf(state, 'customer')).toEqual([
      'You called us about "the walk in was at fifty five".',
    ]);
    expect(linesOf(state, 'office')).toEqual(['Called for "the walk in was at fifty five".']);
  });

  it('keeps who called where that is all there is to it', () => {
    const state = visitOf([utteranceOf({ memos: ['owner called twice today'] })]);
    expect(linesOf(state, 'complaint')).toEqual(['Owner called twice today.']);
  });
});
