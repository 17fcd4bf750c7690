import { describe, expect, it } from 'vitest';
import { BARS } from '../../../core/advice/steps/bars.ts';
import { STEPS } from '../../../core/advice/steps/step-data.ts';
import { PROCEDURE_SENTENCES } from '../../../core/replies/procedure-sentences.ts';
import {
  PROCEDURES,
  type ProcedureStepId,
  STEP_BARS,
  type StepBarId,
} from '../../../core/terms/procedures.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../../core/turn/turn.ts';
import { applyEvents } from '../../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import { createStamp } from '../../support/stamp.ts';

function speak(...lines: readonly string[]): Turn {
  const stamp = createStamp();
  const turns = lines.reduce<readonly Turn[]>((before, words) => {
    const { state, memory } = before.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...before, takeTurn({ state, memory, words, stamp })];
  }, []);
  const last = turns.at(-1);
  if (!last) throw new Error('say at least one line');
  return last;
}

const heard = (...lines: readonly string[]): string => speak(...lines).reply.text;
const barOf = (...lines: readonly string[]): StepBarId | null => {
  const [verdict] = speak(...lines).verdicts;
  return verdict?.kind === 'refused' && verdict.reason === 'stepsBarred' ? verdict.bar : null;
};
const PUMP_DOWN = ["it's a walk-in cooler on 134a with a txv", 'how do i pump it down'];
const stepIds = Object.values(PROCEDURES).flatMap(({ steps }): readonly ProcedureStepId[] => steps);

describe('steps by voice', () => {
  it.each([...new Set(stepIds)])('%s is short aloud and has its detail and source', (id) => {
    expect(PROCEDURE_SENTENCES[id].split(' ').length).toBeLessThanOrEqual(16);
    expect(STEPS[id].detail).not.toBe('');
    expect(STEPS[id].source).not.toBe('');
  });

  it('asks for the gas and the valves first, and begins once they are told', () => {
    expect(heard('how do i get the gas out of the hoses')).toBe(
      'Tell me the refrigerant, from the nameplate.',
    );
    expect(heard("it's on 134a", 'how do i get the gas out of the hoses')).toBe(
      'Tell me which valves: service valves with a stem, or access fittings.',
    );
    const asked = ["it's on 134a", 'how do i get the gas out of the hoses'];
    expect(heard(...asked, 'access fittings', 'next')).toBe(
      'Shut the high hose where it meets the fitting.',
    );
    expect(heard(...asked, 'service valves', 'next')).toBe(
      'Back-seat the discharge stem: all the way out.',
    );
  });

  it('goes on, back and again, with readings told between', () => {
    expect(heard(...PUMP_DOWN)).toBe(
      'Pump-down, 8 steps. Check that the receiver holds the whole charge.',
    );
    const third = [...PUMP_DOWN, 'next', 'next', 'next'];
    expect(heard(...third)).toBe('Close the king valve: all the way in.');
    expect(heard(...third, 'suction eight', 'again')).toBe('Close the king valve: all the way in.');
    expect(heard(...third, 'next', 'back', 'which step')).toBe(
      'Pump-down, step 4 of 8. Close the king valve: all the way in.',
    );
    expect(heard(...PUMP_DOWN, 'back')).toBe('Check that the receiver holds the whole charge.');
  });

  it('tells the end, and "next" after it is no step', () => {
    const all = [...PUMP_DOWN, ...PROCEDURES.pumpDown.steps.map(() => 'next')];
    expect(heard(...all)).toBe('Pump-down: that was the last step.');
    expect(speak(...all).state.steps).toBeNull();
  });

  it('stand where they stood when the page is opened again', () => {
    const { state } = speak(...PUMP_DOWN, 'next', 'next');
    const read = applyEvents(state.history);
    expect(read.steps).toEqual({ procedure: 'pumpDown', number: 3 });
    const { reply } = takeTurn({
      state: read,
      memory: EMPTY_MEMORY,
      words: 'next',
      stamp: createStamp(100),
    });
    expect(reply.text).toBe('Close the king valve: all the way in.');
  });

  it('says the caution of a step each time, and shows the step large', () => {
    const solenoid = [...PUMP_DOWN, 'next'];
    expect(heard(...solenoid)).toMatch(/^Liquid shut in between closed valves/);
    expect(heard(...solenoid, 'again')).toMatch(/^Liquid shut in between closed valves/);
    expect(speak(...solenoid).reply.large).toEqual({ name: 'pump-down', value: '2', unit: 'of 8' });
  });

  it('are left by name, and "stop" leaves them before it holds the microphone', () => {
    expect(speak(...PUMP_DOWN, 'stop')).toMatchObject({ state: { steps: null }, effect: null });
    expect(speak('stop').effect).toBe('pause');
  });
});

describe('what makes steps not allowed', () => {
  const hoses = 'how do i get the gas out of the hoses';
  const on = "it's on 134a";
  const fittings = 'access fittings';
  const cases: Record<StepBarId, readonly string[]> = {
    flammableOrToxic: ["it's on propane", fittings, hoses],
    carbonDioxide: ["it's on co2", fittings, hoses],
    mixedCharge: [on, 'the gas is mixed', fittings, hoses],
    frontSeatedDischarge: [
      on,
      'compressor is running',
      'front seated the discharge service valve',
      hoses,
    ],
    trappedLiquid: [on, 'closed the king valve', 'liquid line solenoid is closed', hoses],
    frozenSuction: [on, fittings, 'suction line is frozen', hoses],
    liquidReturning: [on, fittings, 'suction twenty', 'suction line twenty three', hoses],
    noReceiver: [on, "it's on a cap tube", 'how do i pump it down'],
  };

  it.each(STEP_BARS)('%s bars them, with a source', (bar) => {
    expect(barOf(...cases[bar])).toBe(bar);
    expect(BARS[bar].source).not.toBe('');
  });

  it('is weighed anew at every step', () => {
    expect(barOf(...PUMP_DOWN, 'next', 'evaporator is iced up', 'next')).toBe('frozenSuction');
    expect(
      barOf(...PUMP_DOWN, 'evaporator is iced up', 'defrosted the evaporator', 'next'),
    ).toBeNull();
  });

  it('lets the pressure test of an emptied propane unit go on, with its cautions', () => {
    expect(heard("it's on propane", 'how do i pressure test it')).toMatch(/Refrigerant out/);
  });
});
