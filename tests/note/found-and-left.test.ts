import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../core/advice/cautions.ts';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import type { Finding, Utterance } from '../../core/language/utterance.ts';
import type { PartId, WorkKindId } from '../../core/terms/names.ts';
import { REACH_IN, read, readings, visitOf, WARM } from '../advice/visits.ts';
import { utteranceOf } from '../support/utterances.ts';
import { linesOf } from './note-lines.ts';

const did = (kind: WorkKindId, part: PartId): Utterance =>
  utteranceOf({ work: [{ did: kind, part, words: '' }] });
const seen = (part: PartId, state: Finding['state'], words = ''): Utterance =>
  utteranceOf({ findings: [{ part, state, words }] });

describe('what was found, and how it was left', () => {
  it('puts what the work left warm and cold under after, with a fault that was seen then', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      seen('defrostHeater', 'open'),
      did('replace', 'defrostHeater'),
      seen('drainHeater', 'warm', 'the drain heater is warm'),
      seen('evaporator', 'cold', 'the coil got cold'),
      seen('doorGasket', 'failed', 'the gasket is torn'),
    ]);
    expect(linesOf(state, 'findings')).toEqual([
      'Defrost heater: open.',
      'Likely, by the readings before work: failed defrost.',
    ]);
    expect(linesOf(state, 'after').slice(-3)).toEqual([
      'Drain heater: warm.',
      'Evaporator: cold.',
      'Door gasket: torn.',
    ]);
  });

  it('tells the customer of a coil that was iced and thawed, beside three things that were mended', () => {
    const thawed = utteranceOf({ work: [{ did: 'defrost', part: null, words: 'melted it out' }] });
    const state = visitOf([
      REACH_IN,
      seen('evaporator', 'iced'),
      seen('evaporatorFan', 'notRunning'),
      thawed,
      seen('drainLine', 'plugged'),
      did('clean', 'drainLine'),
      seen('fanBlade', 'failed'),
      did('replace', 'fanBlade'),
      did('replace', 'evaporatorFan'),
    ]);
    expect(linesOf(state, 'office')[0]).toContain('evaporator iced up');
  });

  it('tells nobody that a coil defrosts or a heater is warm, beside what is at fault', () => {
    const working = [seen('doorHeater', 'warm'), seen('evaporator', 'defrosting')];
    const alone = linesOf(visitOf([REACH_IN, ...working]), 'office')[0];
    expect(alone).toContain('evaporator in defrost');
    const beside = visitOf([REACH_IN, ...working, seen('defrostHeater', 'burnt')]);
    expect(linesOf(beside, 'office')[0]).toContain('Found defrost heater burnt.');
  });

  it('tells which one of several alike was found so', () => {
    const said = "left condenser fan's running, right one is dead, contactor two's welded";
    const { findings } = understand(said, EMPTY_CONTEXT);
    expect(linesOf(visitOf([REACH_IN, utteranceOf({ findings })]), 'findings')).toEqual([
      'Left condenser fan: running.',
      'Right condenser fan: not running.',
      'Contactor two: welded closed.',
    ]);
  });

  it('takes a switch that is welded for a fault: the unit runs on', () => {
    const { findings } = understand("contactor's welded shut", EMPTY_CONTEXT);
    const state = visitOf([REACH_IN, utteranceOf({ findings })]);
    expect(linesOf(state, 'findings')).toEqual(['Contactor: welded closed.']);
    expect(cautionsFor(state)).toContain('liveWork');
    expect(linesOf(state, 'customer').join(' ')).toContain(
      'is not switched off any more and runs on',
    );
  });

  it.each([
    ["the liquid line solenoid coil's open", 'open', ['coil open', 'had a burnt-out coil']],
    ['the solenoid is burnt out', 'burnt', ['burnt', 'had a burnt-out coil']],
    ['solenoid coil is shorted', 'failed', ['coil shorted', 'had a short circuit in its coil']],
  ] as const)('says of "%s" that the valve could not open', (words, state, [trade, plain]) => {
    const visit = visitOf([REACH_IN, WARM, seen('liquidLineSolenoid', state, words)]);
    expect(linesOf(visit, 'findings')[0]).toBe(`Liquid-line solenoid: ${trade}.`);
    const told = linesOf(visit, 'customer').join(' ');
    expect(told).toContain(`the valve that shuts the refrigerant off ${plain}, so it could not`);
    expect(told).toContain('When that happens, no refrigerant gets to the cooling coil');
    expect(told).not.toContain('was open');
  });

  it('keeps a valve that is stuck open an open valve', () => {
    const visit = visitOf([
      REACH_IN,
      WARM,
      seen('liquidLineSolenoid', 'open', 'solenoid is stuck open'),
    ]);
    expect(linesOf(visit, 'customer').join(' ')).toContain(
      'the valve that shuts the refrigerant off was open',
    );
  });

  it('keeps a cause that is told last with what was found, and once', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      seen('contactor', 'burnt', 'contacts are burnt'),
      did('replace', 'contactor'),
      did('replace', 'runCapacitor'),
      utteranceOf({
        findings: [
          { part: 'contactor', state: 'failed', words: 'the cause was the contactor' },
          { part: 'runCapacitor', state: 'failed', words: 'the cap was weak' },
        ],
      }),
    ]);
    expect(linesOf(state, 'findings')).toEqual(['Contactor: burnt.', 'Run capacitor: weak.']);
    expect(linesOf(state, 'office')[0]).toContain('Found contactor burnt and run capacitor weak.');
    expect(linesOf(state, 'after')).toEqual(['No readings after work were recorded.']);
  });

  it('takes a fan whose amps were read as it ran for running', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      seen('condenserFan', 'notRunning'),
      did('replace', 'condenserFanMotor'),
      readings({
        ...read('current', 0.5, 'A'),
        place: 'condenserFan',
        words: 'condenser fan running, point five amps',
      }),
    ]);
    expect(linesOf(state, 'after')).toContain('Condenser fan: running.');
    expect(linesOf(state, 'findings')).toContain('Condenser fan: not running.');
  });
});

describe('what was not put right', () => {
  const TRIPPED = 'Reported tripped and not reported put right: overload.';
  const OFF: readonly Utterance[] = [REACH_IN, WARM, seen('overload', 'tripped')];
  const RUNS = seen('compressor', 'running', 'compressor started');

  it('is no overload of a compressor that runs again', () => {
    expect(linesOf(visitOf(OFF), 'open')).toContain(TRIPPED);
    expect(linesOf(visitOf([...OFF, RUNS]), 'open')).not.toContain(TRIPPED);
    expect(linesOf(visitOf([REACH_IN, WARM, RUNS, seen('overload', 'tripped')]), 'open')).toContain(
      TRIPPED,
    );
  });

  it('is still a switch that the compressor runs around', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      seen('highPressureSwitch', 'tripped'),
      did('bypass', 'highPressureSwitch'),
      RUNS,
    ]);
    expect(linesOf(state, 'open')).toContain(
      'Reported tripped and not reported put right: high-pressure switch.',
    );
  });

  it('is no fan whose motor was replaced, and a heater only where the heater was', () => {
    const open = [REACH_IN, WARM, seen('evaporatorFan', 'open'), seen('defrostHeater', 'open')];
    const told = linesOf(visitOf([...open, did('replace', 'evaporatorFanMotor'), RUNS]), 'open');
    expect(told.join(' ')).not.toContain('evaporator fan');
    expect(told).toContain('Reported open and not reported put right: defrost heater.');
  });
});

describe('what a visit was agreed to be for', () => {
  const agreed = (part: PartId): Utterance =>
    utteranceOf({ facts: [{ fact: 'cameTo', do: 'clean', value: part, words: '' }] });
  it('stands open until it is told done, by whichever way it was done', () => {
    const told = [REACH_IN, agreed('condenser'), agreed('drainLine')];
    const washed = utteranceOf({ work: [{ did: 'wash', part: 'condenser', words: '' }] });
    expect(linesOf(visitOf(told), 'complaint')).toEqual([
      'Came to clean the condenser.',
      'Came to clean the drain line.',
    ]);
    expect(linesOf(visitOf([...told, washed]), 'open')).toContain(
      'Came to clean the drain line, and that was not told done.',
    );
    expect(linesOf(visitOf([...told, washed]), 'open').join(' ')).not.toContain('condenser');
  });
});

describe('a jumper on a switch that was replaced since', () => {
  const JUMPED = [REACH_IN, WARM, did('bypass', 'temperatureControl')];
  const NOT_BACK = 'Not reported put back: temperature control jumped out.';
  const customer = (told: readonly Utterance[]): string =>
    linesOf(visitOf(told), 'customer').join(' ');

  it('is asked about, and claimed to no reader', () => {
    const replaced = [...JUMPED, did('replace', 'temperatureControl')];
    expect(customer(JUMPED)).toContain('bypassed');
    expect(customer(replaced)).not.toContain('bypassed');
    expect(linesOf(visitOf(replaced), 'open')).toContain(NOT_BACK);
  });
});

describe('what the low side was pumped down to', () => {
  it('is told of the job, and compared with nothing that the unit does', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      readings(read('suctionPressure', 14, 'psi')),
      utteranceOf({
        readings: [{ ...read('suctionPressure', 2, 'psi'), event: 'drawnDown' }],
        work: [{ did: 'pumpDown', part: null, words: '' }],
      }),
      did('replace', 'filterDrier'),
    ]);
    expect(linesOf(state, 'tests')).toContain('Low side drawn down to 2 psi.');
    expect(linesOf(state, 'findings').join(' ')).not.toContain('2 psi');
    expect(linesOf(state, 'change').join(' ')).not.toContain('2 psi');
  });
});
