import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { cautionsFor } from '../../../core/advice/cautions.ts';
import type { CauseRow, NextCheck } from '../../../core/advice/verdict.ts';
import type { Utterance } from '../../../core/language/utterance.ts';
import { verdictSaid } from '../../../core/replies/verdict-said.ts';
import type { FindingStateId, PartId } from '../../../core/terms/names.ts';
import { utteranceOf } from '../../support/utterances.ts';
import { read, readings, REACH_IN, unitIs, visitOf, WARM } from '../visits.ts';

const found = (part: PartId, state: FindingStateId): Utterance =>
  utteranceOf({ findings: [{ part, state, words: '' }] });

function causes(...said: readonly Utterance[]) {
  const verdict = answer({ ask: 'causes' }, visitOf(said), { lastAnswer: null });
  if (verdict.kind !== 'known' || verdict.answer !== 'causes') throw new Error(verdict.kind);
  return verdict;
}
const leading = (...said: readonly Utterance[]): readonly string[] =>
  causes(...said).causes.flatMap((row: CauseRow) => (row.standing === 'leading' ? row.cause : []));
const standing = (cause: string, ...said: readonly Utterance[]): string | undefined =>
  causes(...said).causes.find((row) => row.cause === cause)?.standing;
function next(...said: readonly Utterance[]): NextCheck {
  const verdict = answer({ ask: 'nextCheck' }, visitOf(said), { lastAnswer: null });
  if (verdict.kind !== 'known' || verdict.answer !== 'nextCheck') throw new Error(verdict.kind);
  return verdict;
}

const WALK_IN = unitIs(
  { fact: 'refrigerant', value: 'R-449A' },
  { fact: 'equipment', value: 'walkInCooler' },
  { fact: 'metering', value: 'txv' },
);
const CLEAR = unitIs({ fact: 'sightGlass', value: 'clear' });
/** Suction at 8 psi with 50 °F behind it: a coil that is fed next to nothing. */
const STARVED = readings(
  read('boxTemp', 54, 'degF'),
  read('ambientTemp', 79, 'degF'),
  read('headPressure', 185, 'psi'),
  read('suctionPressure', 8, 'psi'),
  read('suctionLineTemp', 50, 'degF'),
  read('liquidLineTemp', 81, 'degF'),
);
const DEAD_BULB = found('expansionValve', 'closed');

describe('what is seen together', () => {
  it('leads to the valve: starved, the glass clear, and a bulb that does not answer', () => {
    expect(leading(WALK_IN, STARVED, CLEAR, DEAD_BULB)).toEqual(['valveStarving']);
    expect(standing('undercharge', WALK_IN, STARVED, CLEAR, DEAD_BULB)).toBe('unlikely');
  });

  it('leads there by neither alone', () => {
    expect(leading(WALK_IN, STARVED, CLEAR)).not.toContain('valveStarving');
    expect(leading(WALK_IN, STARVED, DEAD_BULB)).not.toEqual(['valveStarving']);
  });

  it('rules the iced coil out by a coil free of ice with its fans on', () => {
    const cold = [
      WALK_IN,
      readings(
        read('boxTemp', 54, 'degF'),
        read('ambientTemp', 79, 'degF'),
        read('headPressure', 170, 'psi'),
        read('suctionPressure', 25, 'psi'),
      ),
    ];
    const free = [found('evaporator', 'ok'), found('evaporatorFan', 'running')];
    expect(standing('icedCoil', ...cold)).not.toBe('unlikely');
    expect(standing('icedCoil', ...cold, ...free)).toBe('unlikely');
    expect(standing('defrostFailed', ...cold, ...free)).toBe('unlikely');
  });

  it('tells what counts twice once', () => {
    const rows = causes(WALK_IN, STARVED, CLEAR, DEAD_BULB).causes.flatMap((row) => [
      row.against.filter(({ kind }) => kind === 'sightGlass').length,
    ]);
    expect(Math.max(...rows)).toBe(1);
  });

  it('cites what was seen of each that leads', () => {
    const said = [REACH_IN, found('condenserFan', 'notRunning'), found('condenser', 'dirty')];
    expect(leading(...said)).toEqual(['dirtyCondenser', 'condenserFanOut']);
    const { text } = verdictSaid(causes(...said));
    expect(text).toContain('condenser dirty');
    expect(text).toContain('condenser fan not running');
  });
});

describe('the sight glass', () => {
  const LOOK = { next: 'check', check: 'lookSightGlass' };
  const hungry = [WALK_IN, STARVED, found('condenser', 'ok'), found('filterDrier', 'ok')];

  it('is looked into where the charge is in question', () => {
    expect(standing('undercharge', ...hungry)).not.toBe('unlikely');
    expect(next(...hungry)).toMatchObject(LOOK);
  });

  it('is not once it was told, nor on a compressor that stands', () => {
    expect(next(...hungry, CLEAR)).not.toMatchObject(LOOK);
    const stopped = visitOf([...hungry, found('compressor', 'notRunning')]);
    expect(answer({ ask: 'nextCheck' }, stopped, { lastAnswer: null })).toMatchObject({
      kind: 'needs',
      need: 'powerFirst',
    });
  });

  it('is not where no low charge is among what it may be', () => {
    const iced = [
      unitIs(
        { fact: 'refrigerant', value: 'R-404A' },
        { fact: 'equipment', value: 'walkInFreezer' },
        { fact: 'metering', value: 'txv' },
      ),
      readings({ ...read('current', 0, 'A'), place: 'defrostHeater' }),
      readings(read('ambientTemp', 68, 'degF'), read('boxTemp', 19, 'degF')),
      found('evaporator', 'iced'),
      found('evaporatorFan', 'running'),
      found('defrostHeater', 'open'),
    ];
    expect(standing('undercharge', ...iced)).toBe('unlikely');
    expect(next(...iced)).not.toMatchObject(LOOK);
  });

  it('told clear, takes back the vapour in the liquid line', () => {
    expect(cautionsFor(visitOf([WALK_IN, STARVED]))).toContain('flashGas');
    expect(cautionsFor(visitOf([WALK_IN, STARVED, CLEAR]))).not.toContain('flashGas');
  });
});

/** 60 in. of 1/4 hose full of liquid R-290 hold 24 g, 16 % of a 150 g charge: worked from 48.3 cm³. */
describe('a small charge behind a capillary tube', () => {
  const PROPANE = unitIs(
    { fact: 'refrigerant', value: 'R-290' },
    { fact: 'equipment', value: 'displayCase', freezer: true },
    { fact: 'metering', value: 'capTube' },
    { fact: 'nameplate', item: 'charge', value: 110, unit: 'g' },
  );
  const GAUGED: ReadonlySet<string> = new Set(['headPressure', 'suctionPressure']);
  const asksForGauges = (check: NextCheck): boolean =>
    check.next === 'read' ? GAUGED.has(check.need) : JSON.stringify(check).includes('suctionDrop');

  it('is looked at before a gauge is asked for', () => {
    expect(causes(PROPANE).next).toMatchObject({ next: 'step', step: 'lookFirst' });
    const told = [PROPANE, found('condenserFan', 'notRunning'), found('overload', 'tripped')];
    expect(asksForGauges(causes(...told).next)).toBe(false);
    expect(asksForGauges(next(...told, found('condenser', 'dirty')))).toBe(false);
  });

  it('is read by its gauges once they are on', () => {
    const on = utteranceOf({ work: [{ did: 'connect', part: 'gauges', words: '' }] });
    const verdict = answer({ ask: 'causes' }, visitOf([PROPANE, on]), { lastAnswer: null });
    expect(verdict).toMatchObject({ kind: 'needs', need: 'headPressure' });
  });

  it('is another matter with an expansion valve, or a large charge', () => {
    const large = unitIs(
      { fact: 'refrigerant', value: 'R-134a' },
      { fact: 'metering', value: 'capTube' },
      { fact: 'nameplate', item: 'charge', value: 22, unit: 'oz' },
    );
    for (const unit of [large, REACH_IN]) {
      const verdict = answer({ ask: 'causes' }, visitOf([unit]), { lastAnswer: null });
      expect(verdict).toMatchObject({ kind: 'needs', need: 'headPressure' });
    }
  });

  it('has its readings judged where they were taken', () => {
    expect(causes(PROPANE, WARM).causes.length).toBeGreaterThan(0);
  });
});
