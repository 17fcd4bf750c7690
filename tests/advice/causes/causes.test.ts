import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { nextCautions } from '../../../core/advice/causes/check-costs.ts';
import { causesOf } from '../../../core/advice/causes/causes-of.ts';
import { ARROWS, LEVELS } from '../../../core/advice/causes/arrows.ts';
import { levelsOf } from '../../../core/advice/causes/levels-of.ts';
import { MATRIX } from '../../../core/advice/causes/matrix.ts';
import { PRIORS } from '../../../core/advice/causes/priors.ts';
import type { NextCheck, Verdict } from '../../../core/advice/verdict.ts';
import { utteranceOf } from '../../support/utterances.ts';
import { read, readings, REACH_IN, unitIs, visitOf, WARM } from '../visits.ts';
import type { FindingStateId, PartId } from '../../../core/terms/names.ts';
import type { Utterance } from '../../../core/language/utterance.ts';
import type { VisitState } from '../../../core/visit/state.ts';

const NOTHING_BEFORE = { lastAnswer: null };
const found = (part: PartId, state: FindingStateId): Utterance =>
  utteranceOf({ findings: [{ part, state, words: '' }] });
const done = (did: 'brush' | 'add', part: PartId | null): Utterance =>
  utteranceOf({ work: [{ did, part, words: '' }] });

const causes = (...said: Utterance[]): Verdict =>
  answer({ ask: 'causes' }, visitOf(said), NOTHING_BEFORE);
const leading = (state: VisitState): readonly string[] => {
  const known = causesOf(state);
  if (known.kind !== 'known') return [];
  return known.value.causes.flatMap((row) => (row.standing === 'leading' ? [row.cause] : []));
};
function next(...said: Utterance[]): NextCheck {
  const verdict = answer({ ask: 'nextCheck' }, visitOf(said), NOTHING_BEFORE);
  if (verdict.kind !== 'known' || verdict.answer !== 'nextCheck') throw new Error(verdict.kind);
  return verdict;
}

describe('what is asked for before there is an answer', () => {
  it('is head first, then what head is judged by', () => {
    expect(causes()).toMatchObject({ kind: 'needs', need: 'headPressure' });
    const head = readings(read('headPressure', 252, 'psi'));
    expect(causes(head)).toMatchObject({ kind: 'needs', need: 'refrigerant' });
    expect(causes(REACH_IN, head)).toMatchObject({ kind: 'needs', need: 'ambientTemp' });
  });

  it('is nothing where no target exists: an ice machine has a chart', () => {
    const iceMachine = unitIs(
      { fact: 'refrigerant', value: 'R-404A' },
      { fact: 'equipment', value: 'iceMachine' },
      { fact: 'metering', value: 'txv' },
    );
    expect(causes(iceMachine, WARM)).toMatchObject({
      kind: 'refused',
      reason: 'targetChangesWithTheCycle',
    });
  });
});

describe('evidence', () => {
  it('counts a head that is over once, not again as a split that is over', () => {
    const known = causes(REACH_IN, WARM);
    if (known.kind !== 'known' || known.answer !== 'causes') throw new Error(known.kind);
    const rows = known.causes.flatMap((row) => [...row.for, ...row.against]);
    const abouts = rows.flatMap((row) => (row.kind === 'deviation' ? [row.about] : []));
    expect(abouts).not.toContain('split');
    expect(known.inputs.map(({ name }) => name)).toContain('headPressure');
    expect(known.source).toContain('from memory');
  });

  it('turns from one condenser fault to the other by what was seen', () => {
    expect(leading(visitOf([REACH_IN, HOT]))).toEqual(['dirtyCondenser', 'condenserFanOut']);
    expect(leading(visitOf([REACH_IN, HOT, found('condenserFan', 'notRunning')]))).toEqual([
      'condenserFanOut',
    ]);
    expect(leading(visitOf([REACH_IN, HOT, found('condenser', 'plugged')]))).toEqual([
      'dirtyCondenser',
    ]);
  });

  it('does not hold a finding against a part that was mended since', () => {
    const after = readings(
      read('headPressure', 160, 'psi'),
      read('suctionPressure', 18, 'psi'),
      read('boxTemp', 38, 'degF'),
    );
    const visit = [REACH_IN, HOT, found('condenser', 'plugged'), done('brush', 'condenser'), after];
    expect(leading(visitOf(visit))).toEqual(['nothingWrong']);
  });

  it('does not take held-up head in cold air for an overcharge', () => {
    const winter = readings(
      read('ambientTemp', 20, 'degF'),
      read('headPressure', 180, 'psi'),
      read('liquidLineTemp', 55, 'degF'),
    );
    const freezer = unitIs(
      { fact: 'refrigerant', value: 'R-404A' },
      { fact: 'equipment', value: 'walkInFreezer' },
      { fact: 'metering', value: 'txv' },
    );
    expect(leading(visitOf([freezer, winter]))).not.toContain('overcharge');
    expect(leading(visitOf([freezer, winter]))).not.toContain('dirtyCondenser');
  });

  it('takes head at its target in hot air for the air, not for the condenser', () => {
    const hotAlley = readings(
      read('ambientTemp', 108, 'degF'),
      read('headPressure', 240, 'psi'),
      read('suctionPressure', 24, 'psi'),
      read('boxTemp', 47, 'degF'),
    );
    expect(leading(visitOf([REACH_IN, hotAlley]))).toEqual(['hotRoom']);
  });

  it('leaves a valve’s faults out where there is a capillary tube', () => {
    const tube = unitIs(
      { fact: 'refrigerant', value: 'R-134a' },
      { fact: 'equipment', value: 'reachIn' },
      { fact: 'metering', value: 'capTube' },
    );
    const known = causesOf(visitOf([tube, HOT]));
    if (known.kind !== 'known') throw new Error(known.kind);
    const named = known.value.causes.map(({ cause }) => cause);
    expect(named).toContain('capillaryBlocked');
    expect(named).not.toContain('valveStarving');
  });
});

const HOT = readings(
  read('ambientTemp', 91, 'degF'),
  read('headPressure', 252, 'psi'),
  read('suctionPressure', 24, 'psi'),
  read('boxTemp', 49, 'degF'),
);

describe('the next check', () => {
  it('keeps the standing order before it chases a cause', () => {
    const plugged = found('condenser', 'plugged');
    expect(next()).toMatchObject({ next: 'step', step: 'lookFirst' });
    expect(next(REACH_IN, done('add', null))).toMatchObject({ step: 'baselineNow' });
    expect(next(REACH_IN, HOT, plugged, done('brush', 'condenser'))).toMatchObject({
      step: 'letItSettle',
    });
    const propane = unitIs({ fact: 'refrigerant', value: 'R-290' });
    expect(next(propane, HOT, found('joint', 'leaking'))).toMatchObject({ step: 'makeSafe' });
  });

  it('looks before it hangs gauges or tests anything', () => {
    expect(next(REACH_IN, HOT)).toMatchObject({ next: 'check', check: 'lookCondenser' });
  });

  it('does not ask again for what was looked at', () => {
    const looked = [found('condenser', 'ok'), found('condenserFan', 'running')];
    expect(next(REACH_IN, HOT, ...looked)).not.toMatchObject({ check: 'lookCondenser' });
  });

  it('says so when a cause is sure enough that one more look only delays it', () => {
    const starved = readings(
      read('suctionLineTemp', 60, 'degF'),
      read('suctionPressure', 4, 'psi'),
      read('liquidLineTemp', 103, 'degF'),
      read('headPressure', 165, 'psi'),
    );
    const visit = [REACH_IN, HOT, starved, found('filterDrier', 'wet')];
    expect(next(...visit)).toMatchObject({ next: 'step', step: 'dealWithIt' });
  });

  it('warns before a check on live parts', () => {
    const fan = { next: 'check', check: 'checkFanControl', between: [] } as const;
    const amps = { next: 'read', need: 'current', between: [] } as const;
    expect(nextCautions(fan)).toContain('liveWork');
    expect(nextCautions(amps)).toContain('liveWork');
    expect(nextCautions({ ...fan, check: 'lookCondenser' })).toEqual([]);
  });
});

describe('the data', () => {
  it('names a source in every row, and a row and a prior for every cause', () => {
    for (const { source } of MATRIX) expect(source.length).toBeGreaterThan(5);
    const rowed = new Set(MATRIX.map(({ cause }) => cause));
    expect([...rowed].sort()).toEqual(Object.keys(PRIORS).sort());
  });

  it('keeps what sources dispute unknown', () => {
    const arrowsOf = (id: string) => MATRIX.find(({ cause }) => cause === id)?.arrows;
    expect(arrowsOf('nonCondensables')?.subcooling).toBe('?');
    expect(arrowsOf('liquidLineRestriction')?.dischargeLineTemp).toBe('?');
    expect(arrowsOf('leakyValves')?.subcooling).toBe('?');
    expect(arrowsOf('capillaryBlocked')?.headPressure).toBe('?');
    expect(arrowsOf('suctionRestriction')?.superheat).toBe('?');
  });

  it('shares each arrow’s levels out to one, and each reading’s', () => {
    for (const shares of Object.values(ARROWS)) {
      expect(LEVELS.reduce((sum, level) => sum + shares[level], 0)).toBeCloseTo(1, 9);
    }
    const seen = levelsOf({ value: 13, low: 6, high: 12, spread: 1.5, far: 10 });
    expect(LEVELS.reduce((sum, level) => sum + seen[level], 0)).toBeCloseTo(1, 9);
    expect(seen.high).toBeGreaterThan(seen.normal);
    expect(seen.normal).toBeGreaterThan(0.2);
  });
});
