import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import { cautionsFor } from '../../core/advice/cautions.ts';
import type { Known, Verdict } from '../../core/advice/verdict.ts';
import type { Question, Utterance } from '../../core/language/utterance.ts';
import type { VisitSettings } from '../../core/visit/events.ts';
import { commanding, utteranceOf, working } from '../support/utterances.ts';
import { REACH_IN, read, readings, unitIs, visitOf, WARM } from './visits.ts';

const NOTHING_BEFORE = { lastAnswer: null };

function ask(question: Question, said: readonly Utterance[], settings?: VisitSettings): Verdict {
  return answer(question, visitOf(said, settings), NOTHING_BEFORE);
}

function known(verdict: Verdict): Known {
  if (verdict.kind !== 'known') throw new Error(JSON.stringify(verdict));
  return verdict;
}

function value(verdict: Verdict): number {
  const one = known(verdict);
  if (!('value' in one) || one.value === null) throw new Error(one.answer);
  return one.value;
}

const r134a = unitIs({ fact: 'refrigerant', value: 'R-134a' });

describe('values worked out, against printed ones', () => {
  it('split: 172 psi of R-134a in 70 °F air is 50 °F (achrnews.com/articles/133927)', () => {
    const split = ask({ ask: 'value', about: 'split' }, [
      r134a,
      readings(read('headPressure', 172, 'psi'), read('ambientTemp', 70, 'degF')),
    ]);
    expect(Math.abs(value(split) - 50)).toBeLessThan(0.6);
    expect(split).toMatchObject({ unit: 'dF', formula: 'split', answer: 'value' });
  });

  it('superheat: 30 °F at 20 psi of R-134a is 7 °F by the chart (achrnews.com/articles/96890)', () => {
    const superheat = ask({ ask: 'value', about: 'superheat' }, [
      r134a,
      readings(read('suctionPressure', 20, 'psi'), read('suctionLineTemp', 30, 'degF')),
    ]);
    expect(Math.abs(value(superheat) - 7)).toBeLessThan(1);
  });

  it('compression ratio: 172 over 8.8 psi is (172 + 14.696) / (8.8 + 14.696) = 7.95, not 19.5', () => {
    const ratio = ask({ ask: 'value', about: 'compressionRatio' }, [
      readings(read('headPressure', 172, 'psi'), read('suctionPressure', 8.8, 'psi')),
    ]);
    expect(value(ratio)).toBeCloseTo(7.95, 2);
  });

  it('temperature difference: a 35 °F box over 15 psi of R-134a is 20 °F (achrnews.com/articles/142973)', () => {
    const difference = ask({ ask: 'value', about: 'temperatureDifference' }, [
      r134a,
      readings(read('suctionPressure', 15, 'psi'), read('boxTemp', 35, 'degF')),
    ]);
    expect(Math.abs(value(difference) - 20)).toBeLessThan(0.6);
  });

  it('counts superheat of a blend from dew: R-407C at 51.2 psi, 40 °F is 8.7 °F, not 20', () => {
    const superheat = ask({ ask: 'value', about: 'superheat' }, [
      unitIs({ fact: 'refrigerant', value: 'R-407C' }),
      readings(read('suctionPressure', 51.2, 'psi'), read('suctionLineTemp', 40, 'degF')),
    ]);
    expect(value(superheat)).toBeCloseTo(8.7, 1);
    expect(known(superheat).cautions).toContain('glideBasis');
  });

  it('reads a gauge against the local air: 20 psi of R-134a is 18.7 °F at 5,000 ft, 22.2 at the sea', () => {
    const at = (altitudeM: number): number =>
      value(
        ask({ ask: 'saturation', value: 20, unit: 'psi', refrigerant: 'R-134a' }, [], {
          units: 'us',
          altitudeM,
        }),
      );
    expect(at(1524)).toBeCloseTo(18.7, 1);
    expect(at(0)).toBeCloseTo(22.2, 1);
  });

  it('goes by a barometer before the altitude: 12.23 psia, the air at 5,000 ft, is read as 5,000 ft', () => {
    const by = (settings: VisitSettings): number =>
      value(
        ask({ ask: 'saturation', value: 20, unit: 'psi', refrigerant: 'R-134a' }, [], settings),
      );
    const barometer = by({ units: 'us', altitudeM: 0, barometerKpa: 12.23 * 6.894757 });
    expect(barometer).toBeCloseTo(18.7, 1);
    expect(by({ units: 'us', altitudeM: 1524 })).toBeCloseTo(barometer, 1);
  });

  it('a value that was read later than its sources stands before one worked out', () => {
    const sources = readings(
      read('suctionPressure', 20, 'psi'),
      read('suctionLineTemp', 30, 'degF'),
    );
    const own = readings(read('superheat', 12, 'dF'));
    expect(value(ask({ ask: 'value', about: 'superheat' }, [r134a, sources, own]))).toBe(12);
    expect(value(ask({ ask: 'value', about: 'superheat' }, [r134a, own, sources]))).toBeLessThan(9);
  });

  it('does not take the pressure at which a control tripped for how the unit runs', () => {
    const tripped = readings({ ...read('headPressure', 380, 'psi'), event: 'tripped' });
    expect(value(ask({ ask: 'value', about: 'headPressure' }, [WARM, tripped]))).toBe(192);
  });
});

describe('targets', () => {
  it('condensing: ambient and the design split of the class', () => {
    const target = ask({ ask: 'target', about: 'condensingTemp' }, [
      unitIs({ fact: 'equipment', value: 'reachIn' }),
      readings(read('ambientTemp', 75, 'degF')),
    ]);
    expect(value(target)).toBeCloseTo(105, 9);
    expect(target).toMatchObject({
      basis: 'ambientPlusSplit',
      formula: 'condensingTarget',
      inputs: [
        { name: 'equipment', value: 'reachIn', from: 'set' },
        { name: 'ambientTemp', value: 75, unit: 'degF', from: 'read' },
        { name: 'designSplit', unit: 'dF', from: 'assumed' },
      ],
      cautions: ['designTableOnly'],
    });
  });

  it('head: the pressure of that temperature, with the temperature and how far off it reads', () => {
    const target = ask({ ask: 'target', about: 'headPressure' }, [REACH_IN, WARM]);
    // 118 °F of R-134a: between its published chart points 115 °F 158.2 and 120 °F 171.2 psig.
    expect(value(target)).toBeGreaterThan(164);
    expect(value(target)).toBeLessThan(168);
    expect(target).toMatchObject({
      unit: 'psi',
      through: { about: 'condensingTemp', unit: 'degF' },
      reading: { measured: 192, unit: 'psi', direction: 'over' },
    });
  });

  it('evaporating: the box as it is for a valve, the set point for a fixed restriction', () => {
    const box = readings(read('boxTemp', 35, 'degF'), read('setpointTemp', 38, 'degF'));
    const of = (metering: 'txv' | 'capTube'): Verdict =>
      ask({ ask: 'target', about: 'evaporatingTemp' }, [
        unitIs({ fact: 'equipment', value: 'walkInCooler' }, { fact: 'metering', value: metering }),
        box,
      ]);
    expect(value(of('txv'))).toBeCloseTo(25, 9);
    expect(of('txv')).toMatchObject({ basis: 'boxLessTemperatureDifference' });
    expect(value(of('capTube'))).toBeCloseTo(28, 9);
    expect(of('capTube')).toMatchObject({ basis: 'setpointLessTemperatureDifference' });
    expect(known(of('capTube')).cautions).toContain('designLoadOnly');
  });

  it('asks for what is missing one at a time, the most useful first', () => {
    const needs = (...said: Utterance[]) => ask({ ask: 'target', about: 'headPressure' }, said);
    const equipment = unitIs({ fact: 'equipment', value: 'reachIn' });
    expect(needs()).toMatchObject({ kind: 'needs', need: 'refrigerant', about: 'headPressure' });
    expect(needs(r134a)).toMatchObject({ kind: 'needs', need: 'equipment' });
    expect(needs(r134a, equipment)).toMatchObject({ kind: 'needs', need: 'ambientTemp' });
    expect(needs(r134a, equipment, WARM)).toMatchObject({ kind: 'known' });
  });

  it('has none for an ice machine, whose readings change through the cycle', () => {
    const said = [unitIs({ fact: 'equipment', value: 'iceMachine' }), r134a, WARM];
    expect(ask({ ask: 'target', about: 'headPressure' }, said)).toMatchObject({
      kind: 'refused',
      reason: 'targetChangesWithTheCycle',
    });
  });

  it('is the set point for the box', () => {
    const said = [readings(read('setpointTemp', 36, 'degF'))];
    expect(value(ask({ ask: 'target', about: 'boxTemp' }, said))).toBeCloseTo(36, 9);
  });

  it('is given in the visit’s units', () => {
    const said = [REACH_IN, readings(read('ambientTemp', 30, 'degC'))];
    const target = ask({ ask: 'target', about: 'headPressure' }, said, {
      units: 'si',
      altitudeM: 0,
    });
    expect(target).toMatchObject({ unit: 'bar', through: { unit: 'degC' } });
    expect(value(target)).toBeGreaterThan(10);
    expect(value(target)).toBeLessThan(12);
  });
});

describe('how far off', () => {
  it('is the reading less its target, with the coil’s degrees beside a pressure', () => {
    const compared = ask({ ask: 'compare', about: 'headPressure' }, [REACH_IN, WARM]);
    expect(compared).toMatchObject({
      measured: 192,
      direction: 'over',
      alongside: { about: 'condensingTemp', unit: 'dF', direction: 'over' },
    });
    const target = value(ask({ ask: 'target', about: 'headPressure' }, [REACH_IN, WARM]));
    expect(value(compared)).toBeCloseTo(192 - target, 9);
  });

  it('calls a reading within a degree on target', () => {
    const split = (head: number): Verdict =>
      ask({ ask: 'compare', about: 'condensingTemp' }, [
        REACH_IN,
        WARM,
        readings(read('headPressure', head, 'psi')),
      ]);
    expect(split(167)).toMatchObject({ direction: 'on' });
    expect(split(180)).toMatchObject({ direction: 'over' });
    expect(split(150)).toMatchObject({ direction: 'under' });
  });

  it('of "that" is of what was read since the last question, else of what was answered', () => {
    const last = known(ask({ ask: 'target', about: 'headPressure' }, [REACH_IN, WARM]));
    const asked = utteranceOf({ questions: [{ ask: 'target', about: 'headPressure' }] });
    const that: Question = { ask: 'compare', about: null };
    const after = (...said: Utterance[]) =>
      answer(that, visitOf([REACH_IN, WARM, asked, ...said]), { lastAnswer: last });
    expect(after()).toMatchObject({ about: 'headPressure' });
    expect(after(readings(read('suctionPressure', 15, 'psi')))).toMatchObject({
      about: 'suctionPressure',
    });
    const food = readings(read('productTemp', 46, 'degF'));
    expect(after(food, readings(read('suctionPressure', 15, 'psi')))).toMatchObject({
      about: 'suctionPressure',
    });
    expect(answer(that, visitOf([]), NOTHING_BEFORE)).toMatchObject({ reason: 'whichQuantity' });
  });
});

describe('saturation, margin and what was kept', () => {
  it('goes both ways, and gives both ends of a glide', () => {
    const pressure = ask(
      { ask: 'saturation', value: 110, unit: 'degF', refrigerant: 'R-134a' },
      [],
    );
    expect(value(pressure)).toBeCloseTo(146.3, 0);
    const blend = known(
      ask({ ask: 'saturation', value: 20, unit: 'degF', refrigerant: 'R-407C' }, []),
    );
    expect(blend).toMatchObject({ phase: 'dew' });
    expect(blend.cautions).toContain('glideBasis');
    // R-407C at 51.2 psig: bubble 20.0 °F, dew 31.3 °F.
    expect(blend.answer === 'saturation' ? blend.bubble : 0).toBeCloseTo(51.2, 0);
  });

  it('refuses carbon dioxide above its critical point, with the point', () => {
    const verdict = ask({ ask: 'saturation', value: 95, unit: 'degF', refrigerant: 'R-744' }, []);
    expect(verdict).toMatchObject({ kind: 'refused', reason: 'aboveCritical', unit: 'degF' });
    // 87.8 °F
    expect(verdict.kind === 'refused' && 'limit' in verdict ? verdict.limit : 0).toBeCloseTo(
      87.8,
      1,
    );
  });

  it('gives the room to a cut-out and says when it is past', () => {
    const cutouts = readings(
      read('highCutoutPressure', 380, 'psi'),
      read('lowCutoutPressure', 15, 'psi'),
    );
    const high = ask({ ask: 'margin', about: 'headPressure' }, [WARM, cutouts]);
    expect(high).toMatchObject({ about: 'highCutoutPressure', value: 188, side: 'inside' });
    const low = ask({ ask: 'margin', about: 'suctionPressure' }, [WARM, cutouts]);
    expect(low).toMatchObject({ about: 'lowCutoutPressure', value: 1, side: 'past' });
    expect(ask({ ask: 'margin', about: null }, [WARM])).toMatchObject({
      need: 'highCutoutPressure',
    });
  });

  it('compares before and after, worked values too, and asks for what has no column', () => {
    const question: Question = { ask: 'beforeAfter' };
    expect(ask(question, [])).toMatchObject({ kind: 'needs', need: 'before' });
    expect(ask(question, [REACH_IN, WARM])).toMatchObject({ kind: 'needs', need: 'after' });
    const done = known(
      ask(question, [
        REACH_IN,
        WARM,
        working('brush'),
        readings(read('headPressure', 158, 'psi'), read('ambientTemp', 83, 'degF')),
        commanding({ do: 'markAfter' }),
      ]),
    );
    const rows = done.answer === 'beforeAfter' ? done.rows : [];
    expect(rows.find(({ about }) => about === 'headPressure')).toMatchObject({
      before: 192,
      after: 158,
      change: -34,
    });
    expect(rows.find(({ about }) => about === 'boxTemp')).toMatchObject({ after: null });
    expect(rows.map(({ about }) => about)).toContain('split');
  });

  it('tells where the last number comes from', () => {
    const last = known(ask({ ask: 'target', about: 'headPressure' }, [REACH_IN, WARM]));
    const working = answer({ ask: 'working' }, visitOf([]), { lastAnswer: last });
    expect(working).toMatchObject({ answer: 'working', formula: 'coilPressure', of: last });
    expect(answer({ ask: 'working' }, visitOf([]), NOTHING_BEFORE)).toMatchObject({
      reason: 'nothingAnsweredYet',
    });
  });
});

describe('cautions', () => {
  const cold = (line: number): Utterance[] => [
    r134a,
    readings(read('suctionPressure', 20, 'psi'), read('suctionLineTemp', line, 'degF')),
  ];

  it('says zero and that liquid may return within the instruments’ 3 °F, and refuses below', () => {
    const near = ask({ ask: 'value', about: 'superheat' }, cold(20));
    expect(near).toMatchObject({ kind: 'known', value: 0 });
    expect(known(near).cautions).toContain('liquidMayReturn');
    const below = ask({ ask: 'value', about: 'superheat' }, cold(10));
    expect(below).toMatchObject({
      kind: 'refused',
      reason: 'belowZeroSuperheat',
      unit: 'dF',
      cautions: ['wetOrWrongRefrigerant'],
    });
    expect(cautionsFor(visitOf(cold(20)))).toContain('liquidMayReturn');
    expect(cautionsFor(visitOf(cold(40)))).not.toContain('liquidMayReturn');
  });

  it('goes with the refrigerant, with every number about the unit', () => {
    const said = [unitIs({ fact: 'refrigerant', value: 'R-290' }), WARM];
    expect(known(ask({ ask: 'value', about: 'headPressure' }, said)).cautions).toContain(
      'flammable',
    );
    expect(cautionsFor(visitOf([unitIs({ fact: 'refrigerant', value: 'R-744' })]))).toContain(
      'highPressureCarbonDioxide',
    );
    expect(cautionsFor(visitOf([r134a]))).toEqual([]);
  });

  it('comes with a question about safety, which is never cleared', () => {
    const said = [unitIs({ fact: 'refrigerant', value: 'R-290' })];
    expect(ask({ ask: 'safety', about: 'brazing' }, said)).toMatchObject({
      kind: 'refused',
      reason: 'deferredToTheCode',
      cautions: ['flammable'],
    });
  });

  it('notices work before any reading, and a safety that keeps opening', () => {
    expect(cautionsFor(visitOf([working('brush')]))).toContain('workBeforeBaseline');
    expect(cautionsFor(visitOf([WARM, working('brush')]))).not.toContain('workBeforeBaseline');
    const tripped = utteranceOf({
      findings: [{ part: 'highPressureSwitch', state: 'tripped', words: '' }],
    });
    expect(cautionsFor(visitOf([tripped]))).toContain('repeatedReset');
  });
});
