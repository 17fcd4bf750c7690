import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import type { Fact, Question, Utterance } from '../../core/language/utterance.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import type { AnswerableId } from '../../core/terms/quantities.ts';
import { including, near } from './matchers.ts';
import { read, readings, unitIs, visitOf } from './visits.ts';

type Of<Kind extends Fact['fact']> = Extract<Fact, { fact: Kind }>;
const is = {
  refrigerant: (value: Of<'refrigerant'>['value']) => unitIs({ fact: 'refrigerant', value }),
  equipment: (value: Of<'equipment'>['value']) => unitIs({ fact: 'equipment', value }),
  metering: (value: Of<'metering'>['value']) => unitIs({ fact: 'metering', value }),
  condenser: (value: Of<'condenser'>['value']) => unitIs({ fact: 'condenser', value }),
  headControl: (value: Of<'headControl'>['value']) => unitIs({ fact: 'headControl', value }),
};
const ask = (question: Question, said: readonly Utterance[]) =>
  answer(question, visitOf(said), { lastAnswer: null });
const target = (about: AnswerableId, ...said: readonly Utterance[]) =>
  ask({ ask: 'target', about }, said);
const compare = (about: AnswerableId, ...said: readonly Utterance[]) =>
  ask({ ask: 'compare', about }, said);
const air = (value: number) => readings(read('ambientTemp', value, 'degF'));
const head = (value: number) => readings(read('headPressure', value, 'psi'));

describe('condensing by the rule that holds', () => {
  const walkIn = [is.refrigerant('R-404A'), is.equipment('walkInCooler')];

  // achrnews.com/articles/105038, low ambient controls: R-404A at 180 psi is 82 °F, a 62 °F split on a 20 °F day.
  it('a head pressure valve holds it up in the cold: no overcharge, and the winter charge stays', () => {
    const cold = [...walkIn, air(20), head(180)];
    expect(target('headPressure', ...cold)).toMatchObject({ need: 'headControl' });
    const valve = [...cold, is.headControl('floodingValve')];
    expect(target('headPressure', ...valve)).toMatchObject({ need: 'heldHeadPressure' });
    const held = [...valve, readings(read('heldHeadPressure', 180, 'psi'))];
    expect(compare('headPressure', ...held)).toMatchObject({
      basis: 'headControl',
      direction: 'on',
      cautions: including('winterCharge'),
    });
    expect(target('split', ...held)).toMatchObject({ value: near(62, 0) });
  });

  // The same unit and article, told as a technician tells it: the setting alone, and the day outside.
  it('its setting alone says that there is a valve, and no flooded condenser is overcharged', () => {
    const outdoor = (value: number) => readings(read('outdoorTemp', value, 'degF'));
    const setting = readings(read('heldHeadPressure', 180, 'psi'));
    const unit = [
      ...walkIn,
      is.metering('txv'),
      unitIs({ fact: 'condensingUnit', value: 'remote' }),
      setting,
    ];
    const flooded = readings(
      read('suctionPressure', 56, 'psi'),
      read('suctionLineTemp', 36, 'degF'),
      read('liquidLineTemp', 60, 'degF'),
    );
    const right = [...unit, outdoor(38), head(181), flooded];
    expect(compare('headPressure', ...right)).toMatchObject({ direction: 'on' });
    const causes = ask({ ask: 'causes' }, right);
    expect(JSON.stringify(causes)).not.toMatch(
      /"cause":"overcharge","standing":"(leading|possible)/,
    );
    // 132 psi below a valve at 180: it holds nothing up, so the condenser lacks liquid to flood it.
    const short = [...unit, outdoor(38), head(132)];
    expect(compare('headPressure', ...short)).toMatchObject({ direction: 'under' });
  });

  it('on a warm day the same valve has no say', () => {
    const warm = [
      ...walkIn,
      is.headControl('floodingValve'),
      readings(read('heldHeadPressure', 180, 'psi')),
    ];
    expect(target('condensingTemp', ...warm, air(80))).toMatchObject({
      basis: 'ambientPlusSplit',
      value: near(100, 6),
    });
  });

  // R-134a on any PT chart: 124 psi at 100 °F and 135 at 105, 87 at 80 and 104 at 90.
  it('a fan control is usually set between those heads, where the maker says nothing', () => {
    const unit = [is.refrigerant('R-134a'), is.equipment('reachIn')];
    expect(target('fanCutinPressure', ...unit)).toMatchObject({
      low: near(124.2, 0.5),
      high: near(134.9, 0.5),
      cautions: including('designTableOnly'),
    });
    const off = target('fanCutoutPressure', ...unit);
    expect(off).toMatchObject({ low: near(86.7, 0.5), high: near(104.3, 0.5) });
    expect(verdictSaid(off).text).toMatch(/^Fan cut-out should be from 87 psi to 104 psi\./);
    expect(target('fanCutinPressure', is.refrigerant('R-134a'))).toMatchObject({ kind: 'needs' });
  });

  it('a cycled fan leaves a band, the unit’s own pair before the usual one', () => {
    const cycling = [is.refrigerant('R-134a'), is.equipment('walkInCooler'), air(55)];
    const usual = target('condensingTemp', ...cycling, is.headControl('fanCycling'));
    expect(usual).toMatchObject({ basis: 'fanCycling', low: near(80, 6) });
    const own = [
      ...cycling,
      is.headControl('fanCycling'),
      // CoolProp 8.0: R-134a at 100 °F is 124.2 psi, at 80 °F 86.7 psi.
      readings(read('fanCutinPressure', 124.2, 'psi'), read('fanCutoutPressure', 86.7, 'psi')),
    ];
    expect(target('condensingTemp', ...own)).toMatchObject({
      low: near(80, 0),
      high: near(100, 0),
    });
    expect(compare('headPressure', ...own, head(100))).toMatchObject({ direction: 'on' });
    expect(compare('headPressure', ...own, head(150))).toMatchObject({ direction: 'over' });
    expect(verdictSaid(target('headPressure', ...own)).text).toContain('anything between is right');
  });

  it('cold air with nothing to hold head up is a caution, not a fault', () => {
    expect(target('headPressure', ...walkIn, air(20), is.headControl('none'))).toMatchObject({
      basis: 'ambientPlusSplit',
      cautions: including('coldHeadStarves'),
    });
  });

  // civilengineeringhandbook.tk, condenser load, table 36-1: 85 °F in, 95 °F out, 105 °F condensing.
  it('a water-cooled one goes by its leaving water, whatever the air', () => {
    const water = [...walkIn, is.condenser('waterCooled'), air(100)];
    expect(target('headPressure', ...water)).toMatchObject({ need: 'leavingWaterTemp' });
    const read95 = readings(read('leavingWaterTemp', 95, 'degF'));
    expect(target('condensingTemp', ...water, read95)).toMatchObject({
      basis: 'leavingWaterPlusApproach',
      value: near(105, 6),
    });
    expect(target('split', ...water, read95)).toMatchObject({ reason: 'noTargetKnown' });
    expect(ask({ ask: 'hottestDay' }, water)).toMatchObject({ reason: 'headFollowsTheWater' });
  });

  it('a remote one goes by outdoor air only until the air at its coil is read', () => {
    const roof = [...walkIn, is.condenser('remote'), readings(read('outdoorTemp', 90, 'degF'))];
    expect(target('condensingTemp', ...roof)).toMatchObject({
      basis: 'outdoorPlusSplit',
      value: near(110, 6),
      high: near(120, 6),
    });
    expect(target('condensingTemp', ...roof, air(97))).toMatchObject({
      basis: 'ambientPlusSplit',
      value: near(117, 6),
    });
    const reachIn = [is.refrigerant('R-134a'), is.equipment('reachIn')];
    expect(
      target('condensingTemp', ...reachIn, readings(read('outdoorTemp', 90, 'degF'))),
    ).toMatchObject({ need: 'ambientTemp' });
  });
});

describe('in pull-down', () => {
  const valve = [
    is.refrigerant('R-134a'),
    is.equipment('reachIn'),
    is.metering('txv'),
    readings(read('boxTemp', 70, 'degF'), read('setpointTemp', 36, 'degF')),
  ];

  it('only the ends of suction hold, and no superheat', () => {
    expect(target('evaporatingTemp', ...valve)).toMatchObject({
      basis: 'pullDown',
      low: near(11, 6),
      high: near(55, 6),
    });
    expect(target('superheat', ...valve)).toMatchObject({ reason: 'pullingDown' });
    const close = [...valve, readings(read('boxTemp', 40, 'degF'))];
    expect(target('evaporatingTemp', ...close)).toMatchObject({
      basis: 'boxLessTemperatureDifference',
      value: near(20, 6),
    });
    expect(target('superheat', ...close)).toMatchObject({ kind: 'known' });
  });

  it('a cap tube holds no superheat at all', () => {
    expect(target('superheat', ...valve, is.metering('capTube'))).toMatchObject({
      reason: 'superheatFloats',
    });
  });
});

describe('where controls should be set', () => {
  // achrnews.com/articles/142973: R-134a, in at 33 psi (38 °F), out at 15 psi: coil 15 °F, 20 °F under a 35 °F box.
  it('low-pressure cut-in and cut-out that hold a box', () => {
    const box = [
      is.refrigerant('R-134a'),
      is.equipment('reachIn'),
      readings(read('setpointTemp', 35, 'degF')),
    ];
    const valueOf = (about: AnswerableId): number => {
      const found = target(about, ...box);
      return found.kind === 'known' && found.answer === 'target' ? found.value : NaN;
    };
    expect(Math.abs(valueOf('lowCutinPressure') - 33)).toBeLessThan(0.5);
    expect(Math.abs(valueOf('lowCutoutPressure') - 15)).toBeLessThan(0.5);
    const walkIn = [...box, is.equipment('walkInCooler')];
    expect(target('lowCutoutPressure', ...walkIn)).toMatchObject({ reason: 'endsThePumpDown' });
  });

  const freezer = [
    is.refrigerant('R-404A'),
    is.equipment('walkInCooler'),
    readings(read('designAmbientTemp', 105, 'degF')),
  ];
  const rated = (value: number) =>
    unitIs({ fact: 'nameplate', item: 'highSide', value, unit: 'psi' });

  // CoolProp 8.0: R-404A at 105 + 20 = 125 °F is 333 psi at its bubble point; 25 psi of margin.
  it('a high-pressure cut-out between the hottest day and the plate, and none where there is no room', () => {
    expect(target('highCutoutPressure', ...freezer)).toMatchObject({ need: 'nameplateHighSide' });
    const window = target('highCutoutPressure', ...freezer, rated(450));
    expect(window).toMatchObject({ low: near(358, 0), high: near(450, 6) });
    expect(target('highCutoutPressure', ...freezer, rated(340))).toMatchObject({
      reason: 'noSettingServes',
      limit: near(340, 6),
    });
  });
});

describe('the hottest day', () => {
  const today = [
    is.refrigerant('R-134a'),
    is.equipment('reachIn'),
    readings(read('ambientTemp', 85, 'degF'), read('designAmbientTemp', 105, 'degF')),
  ];
  const cutout = readings(read('highCutoutPressure', 260, 'psi'));

  it('a clean coil stays inside its cut-out, the same coil dirty does not', () => {
    const dirty = ask({ ask: 'hottestDay' }, [...today, head(230), cutout]);
    const clean = ask({ ask: 'hottestDay' }, [...today, head(165), cutout]);
    expect(clean).toMatchObject({ splitFrom: 'measured', cutout: { side: 'inside' } });
    expect(dirty).toMatchObject({ splitFrom: 'measured', cutout: { side: 'past' } });
    expect(
      ask({ ask: 'margin', about: 'highCutoutPressure' }, [...today, head(230), cutout]),
    ).toMatchObject({ side: 'inside', hottest: { side: 'past' } });
  });

  // achrnews.com/articles/133927: R-134a at 120 °F is 172 psi; 90 °F and a reach-in's 30 °F make 120 °F.
  it('by the design split where today’s is not known', () => {
    const unread = ask({ ask: 'hottestDay' }, [
      ...today,
      readings(read('designAmbientTemp', 90, 'degF')),
    ]);
    expect(unread).toMatchObject({ splitFrom: 'design', cutout: null });
    const value = unread.kind === 'known' && unread.answer === 'hottestDay' ? unread.value : 0;
    expect(Math.abs(value - 172)).toBeLessThan(1);
  });
});

describe('superheat by what the box keeps', () => {
  // hvacrschool.com, TD on refrigeration evaporators: medium temperature about 10 °F, low temperature about 5 °F.
  it.each([
    [false, 10],
    [true, 5],
  ])('of a reach-in (freezer: %s) is %d °F', (isFreezer, wanted) => {
    const reachIn = { fact: 'equipment', value: 'reachIn' } as const;
    const kind = isFreezer ? ({ ...reachIn, freezer: true } as const) : reachIn;
    expect(target('superheat', unitIs(kind), is.metering('txv'))).toMatchObject({
      answer: 'target',
      value: near(wanted, 0.01),
    });
  });
});
