import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { causesOf } from '../../../core/advice/causes/causes-of.ts';
import type { CauseRow } from '../../../core/advice/verdict.ts';
import type { Utterance } from '../../../core/language/utterance.ts';
import type { FindingStateId, PartId, PlaceId } from '../../../core/terms/names.ts';
import { utteranceOf } from '../../support/utterances.ts';
import { read, readings, REACH_IN, unitIs, visitOf, WARM } from '../visits.ts';

const found = (part: PartId, state: FindingStateId): Utterance =>
  utteranceOf({ findings: [{ part, state, words: '' }] });
const amps = (place: PlaceId, value: number): Utterance =>
  readings({ ...read('current', value, 'A'), place });
const volts = (place: PlaceId, value: number): Utterance =>
  readings({ ...read('voltage', value, 'V'), place });

function rowsOf(...said: readonly Utterance[]): readonly CauseRow[] {
  const all = causesOf(visitOf(said));
  if (all.kind !== 'known') throw new Error(all.kind);
  return all.value.causes;
}
const first = (...said: readonly Utterance[]): string | undefined => rowsOf(...said)[0]?.cause;
/** Last where it is no candidate. */
function placeOf(cause: string, ...said: readonly Utterance[]): number {
  const rows = rowsOf(...said);
  const place = rows.findIndex((row) => row.cause === cause);
  return place < 0 ? rows.length : place;
}
const next = (...said: readonly Utterance[]) =>
  answer({ ask: 'nextCheck' }, visitOf(said), { lastAnswer: null });

const PLATE = unitIs(
  { fact: 'nameplate', item: 'ratedLoadAmps', value: 6, unit: 'A' },
  { fact: 'nameplate', item: 'lockedRotorAmps', value: 36, unit: 'A' },
  { fact: 'nameplate', item: 'voltage', value: 115, unit: 'V' },
);
const EQUAL = readings(
  read('headPressure', 78, 'psi'),
  read('suctionPressure', 76, 'psi'),
  read('boxTemp', 55, 'degF'),
  read('ambientTemp', 80, 'degF'),
);

describe('a compressor that stands', () => {
  it('hums on locked-rotor amps with the pressures equal: the start gear', () => {
    const said = [REACH_IN, PLATE, EQUAL, amps('compressor', 34), found('compressor', 'humming')];
    expect(first(...said)).toBe('startGear');
    expect(rowsOf(...said)[0]?.standing).toBe('leading');
  });

  it('on locked-rotor amps is fed: the next check is its start gear, no place for the leads', () => {
    const said = [REACH_IN, PLATE, EQUAL, found('compressor', 'humming'), amps('compressor', 34)];
    expect(next(...said)).toMatchObject({ answer: 'nextCheck', check: 'testStartGear' });
    expect(next(REACH_IN, PLATE, EQUAL, amps('compressor', 3))).not.toMatchObject({
      answer: 'nextCheck',
    });
  });

  it('is not judged by amps over its rating while its rotor is locked', () => {
    const shown = rowsOf(REACH_IN, PLATE, WARM, amps('compressor', 34)).flatMap((row) => row.for);
    expect(shown.filter((row) => row.kind === 'deviation' && row.about === 'current')).toEqual([]);
    const dirty = [REACH_IN, PLATE, WARM];
    expect(placeOf('startGear', ...dirty, amps('compressor', 8))).toBeGreaterThan(
      placeOf('startGear', ...dirty, amps('compressor', 34)),
    );
  });

  it('draws nothing at its rated volts, the shell hot: the overload', () => {
    const said = [
      REACH_IN,
      PLATE,
      EQUAL,
      volts('compressor', 116),
      amps('compressor', 0),
      found('compressor', 'hot'),
    ];
    expect(first(...said)).toBe('overloadOpen');
    expect(placeOf('overloadOpen', REACH_IN, PLATE, EQUAL, amps('compressor', 0))).toBeGreaterThan(
      0,
    );
  });

  it('is none of these where head and suction are apart', () => {
    const said = [REACH_IN, PLATE, WARM, found('compressor', 'hot')];
    for (const cause of ['startGear', 'overloadOpen', 'stuckInDefrost'])
      expect(placeOf(cause, ...said)).toBeGreaterThan(8);
  });
});

describe('a defrost', () => {
  const heater = [amps('defrostHeater', 6), found('evaporator', 'stuckInDefrost')];

  it('that never ends is named by the coil and the heater’s amps', () => {
    const said = [REACH_IN, found('compressor', 'notRunning'), ...heater];
    expect(first(...said)).toBe('stuckInDefrost');
  });

  it('lets no reading taken in it count, and is waited out', () => {
    const inIt = [REACH_IN, found('evaporator', 'defrosting'), WARM];
    expect(next(...inIt)).toMatchObject({ next: 'step', step: 'waitOutDefrost' });
    const shown = rowsOf(...inIt).flatMap((row) => [...row.for, ...row.against]);
    expect(shown.map(({ kind }) => kind)).not.toContain('deviation');
    const after = [...inIt, found('evaporator', 'defrosted')];
    expect(next(...after)).not.toMatchObject({ step: 'waitOutDefrost' });
    expect(rowsOf(...after).flatMap((row) => row.for)).not.toContainEqual(
      expect.objectContaining({ kind: 'deviation' }),
    );
    const again = rowsOf(...after, WARM).flatMap((row) => row.for);
    expect(again).toContainEqual(expect.objectContaining({ kind: 'deviation' }));
  });

  it('without amps at its heater has failed; with them it has not', () => {
    const iced = [REACH_IN, WARM, found('evaporator', 'iced')];
    const place = (value: number): number =>
      placeOf('defrostFailed', ...iced, amps('defrostHeater', value));
    expect(place(0)).toBeLessThan(place(6));
  });
});

describe('a condenser fan control', () => {
  const winter = [
    unitIs(
      { fact: 'refrigerant', value: 'R-404A' },
      { fact: 'equipment', value: 'walkInCooler' },
      { fact: 'metering', value: 'txv' },
    ),
    readings(
      read('ambientTemp', 20, 'degF'),
      read('headPressure', 90, 'psi'),
      read('suctionPressure', 22, 'psi'),
      read('boxTemp', 44, 'degF'),
    ),
  ];
  const holds = (value: 'fanCycling' | 'none') => unitIs({ fact: 'headControl', value });

  it('that should take the fan off in the cold is stuck on; without one it is the cold', () => {
    const stuckOn = (value: 'fanCycling' | 'none'): number =>
      placeOf('fanControlStuckOn', ...winter, holds(value));
    const cold = (value: 'fanCycling' | 'none'): number =>
      placeOf('lowAmbient', ...winter, holds(value));
    expect(stuckOn('fanCycling')).toBeLessThan(cold('fanCycling'));
    expect(cold('none')).toBeLessThan(stuckOn('none'));
  });

  it('that cycles too fast is named by the fan and the hunting valve', () => {
    const hunting = [found('condenserFan', 'shortCycling'), found('expansionValve', 'hunting')];
    expect(first(REACH_IN, ...hunting)).toBe('fanControlCycling');
  });
});

describe('short cycling on the low side', () => {
  it('and a solenoid that leaks name it', () => {
    const said = [REACH_IN, found('compressor', 'shortCycling')];
    expect(placeOf('leakingSolenoid', ...said)).toBeGreaterThan(0);
    expect(first(...said, found('liquidLineSolenoid', 'leaking'))).toBe('leakingSolenoid');
  });
});

describe('a solenoid whose coil is burnt open', () => {
  const coil = (words: string, state: FindingStateId = 'open'): Utterance =>
    utteranceOf({ findings: [{ part: 'liquidLineSolenoid', state, words }] });
  const pumpedDown = readings(
    read('suctionPressure', 5, 'psi'),
    read('headPressure', 120, 'psi'),
    read('boxTemp', 52, 'degF'),
    read('setpointTemp', 36, 'degF'),
    read('ambientTemp', 85, 'degF'),
  );
  const leads = (...said: readonly Utterance[]): readonly string[] =>
    rowsOf(...said)
      .filter(({ standing }) => standing === 'leading')
      .map(({ cause }) => cause);

  it.each([
    ['solenoid coil reads open', 'open'],
    ["the liquid line solenoid coil's open", 'open'],
    ['solenoid coil is burnt', 'burnt'],
    ['the cause is the solenoid coil', 'failed'],
  ] as const)('is a valve that cannot open, and lets nothing by: %s', (words, state) => {
    expect(leads(REACH_IN, pumpedDown, coil(words, state))).toEqual(['solenoidShut']);
    expect(placeOf('leakingSolenoid', REACH_IN, pumpedDown, coil(words, state))).toBeGreaterThan(
      rowsOf(REACH_IN, pumpedDown, coil(words, state)).length - 1,
    );
  });

  it('leads where the unit stands on low pressure, with nothing read', () => {
    const off = found('lowPressureSwitch', 'tripped');
    expect(leads(REACH_IN, off, coil('solenoid coil reads open'))).toEqual(['solenoidShut']);
    expect(leads(REACH_IN, off)).not.toContain('solenoidShut');
  });

  it('is told of the coil, and is no valve that stands open', () => {
    const evidence = rowsOf(REACH_IN, coil('solenoid coil reads open'))[0]?.for;
    expect(evidence).toContainEqual({
      kind: 'finding',
      part: 'liquidLineSolenoid',
      state: 'open',
      of: 'coil',
    });
    expect(first(REACH_IN, coil('the solenoid is stuck open'))).not.toBe('solenoidShut');
  });

  it('does not lead with the box at its set point and the suction right', () => {
    const well = readings(
      read('suctionPressure', 20, 'psi'),
      read('headPressure', 150, 'psi'),
      read('boxTemp', 36, 'degF'),
      read('setpointTemp', 36, 'degF'),
      read('ambientTemp', 85, 'degF'),
    );
    expect(leads(REACH_IN, well, coil('solenoid coil reads open'))).not.toContain('solenoidShut');
  });
});

describe('a bulb that was warmed or iced', () => {
  const starved = readings(
    read('suctionPressure', 4, 'psi'),
    read('headPressure', 150, 'psi'),
    read('suctionLineTemp', 50, 'degF'),
    read('ambientTemp', 85, 'degF'),
    read('boxTemp', 48, 'degF'),
  );
  it('clears the valve where it answers, and condemns it where it does not', () => {
    const place = (state: FindingStateId): number =>
      placeOf('valveStarving', REACH_IN, starved, found('expansionValve', state));
    expect(place('closed')).toBe(0);
    expect(place('ok')).toBeGreaterThanOrEqual(3);
  });
});
