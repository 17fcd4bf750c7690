import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { isRemote, kindOf } from '../../core/visit/unit-kind.ts';
import { near } from '../advice/matchers.ts';
import { createStamp } from '../support/stamp.ts';

function after(first: string, ...rest: readonly string[]): Turn {
  const stamp = createStamp();
  const opened = takeTurn({ state: EMPTY_VISIT, memory: EMPTY_MEMORY, words: first, stamp });
  return rest.reduce((turn, words) => takeTurn({ ...turn, words, stamp }), opened);
}

const unitAfter = (first: string, ...rest: readonly string[]) => after(first, ...rest).state.unit;
const REMOTE_FREEZER = { equipment: 'walkInFreezer', condensingUnit: 'remote' };

describe('the box and its condensing unit', () => {
  it.each([
    [['walk in freezer with a remote condensing unit']],
    [['remote condensing unit for a walk in freezer']],
    [["it's a walk in freezer, condensing unit is outside on the pad"]],
    [["it's a walk in freezer", "condensing unit's on the roof"]],
    [["condensing unit's on the roof", "it's a walk in freezer"]],
  ])('are both kept, in any order: %j', (said) => {
    const [first = '', ...rest] = said;
    expect(unitAfter(first, ...rest)).toMatchObject(REMOTE_FREEZER);
  });

  it.each([
    'reach in with a remote condenser',
    'reach in with a remote condenser on four oh four a',
    "it's a remote condenser reach in",
    'reach in, condenser is outside',
  ])('keep the class of the box beside a condenser that is apart: "%s"', (said) => {
    const { unit } = after(said).state;
    expect(unit).toMatchObject({ equipment: 'reachIn', condenser: 'remote', condensingUnit: null });
    expect([kindOf(unit), isRemote(unit)]).toEqual(['reachIn', true]);
    expect(noteText(draftNote(after(said).state))).toMatch(/Reach-in, remote air-cooled condenser/);
  });

  it('are both said back', () => {
    expect(after('walk in freezer with a remote condensing unit').reply.text).toBe(
      'Walk-in freezer. Remote condensing unit.',
    );
  });

  it('are corrected and taken back each alone', () => {
    const told = ['walk in cooler with a remote condensing unit'] as const;
    expect(unitAfter(...told, "it's a walk in freezer")).toMatchObject(REMOTE_FREEZER);
    expect(unitAfter(...told, "it's not remote, it's self contained")).toMatchObject({
      equipment: 'walkInCooler',
      condensingUnit: 'selfContained',
    });
    expect(unitAfter("it's a walk in freezer", 'remote condensing unit', 'undo')).toMatchObject({
      equipment: 'walkInFreezer',
      condensingUnit: null,
    });
    expect(unitAfter('remote condensing unit', "it's a walk in freezer", 'undo')).toMatchObject({
      equipment: null,
      condensingUnit: 'remote',
    });
    expect(
      unitAfter("it's a walk in cooler", 'it has a remote condenser', "it's self contained"),
    ).toMatchObject({ condenser: null, condensingUnit: 'selfContained' });
  });

  it('leave a freezer a freezer until something else is said', () => {
    const frozen = { equipment: 'displayCase', freezer: true };
    expect(unitAfter("it's a freezer display case on two ninety")).toMatchObject(frozen);
    expect(unitAfter('freezer display case', "it's a three door display case")).toMatchObject(
      frozen,
    );
    expect(unitAfter('display freezer', "it's a display cooler")).toMatchObject({ freezer: false });
    expect(unitAfter("it's a walk in freezer", 'the walk in on four oh four a')).toMatchObject({
      equipment: 'walkInFreezer',
      refrigerant: 'R-404A',
    });
    expect(unitAfter("it's a walk in freezer", "it's a walk in cooler")).toMatchObject({
      equipment: 'walkInCooler',
    });
  });

  it('reads a log of before they were two facts', () => {
    const stamp = createStamp();
    const walkIn = takeTurn({
      state: EMPTY_VISIT,
      memory: EMPTY_MEMORY,
      words: "it's a walk in freezer",
      stamp,
    });
    const old = stamp({
      type: 'factStated',
      v: 1,
      fact: { fact: 'equipment', value: 'remoteCondensingUnit', words: 'condensing unit' },
    });
    expect(applyEvents([old], walkIn.state).unit).toMatchObject(REMOTE_FREEZER);
    expect(kindOf(applyEvents([old], EMPTY_VISIT).unit)).toBe('remoteCondensingUnit');
    expect(isRemote(applyEvents([old], EMPTY_VISIT).unit)).toBe(true);
  });
});

describe('what reads the kind of the unit', () => {
  const FREEZER = "it's a walk in freezer on four oh four a with a txv, condensing unit is outside";
  const COOLER = 'four forty eight a, remote condensing unit, serves a walk in cooler with a txv';
  const asked = (first: string, ...rest: readonly string[]) =>
    after(first, ...rest).verdicts.findLast(({ kind }) => kind === 'known');

  // Remote low-temperature condensers are sized 10 to 15 °F over the air: common practice, as in
  // plumbingandhvac.ca, The great outdoors, for newer units. R-404A at 80.5 °F is 176 psi (CoolProp 8.0).
  it('takes the split of a freezer, whatever was said last', () => {
    const found = asked(FREEZER, "it's sixty eight outside", 'what should head be');
    expect(found).toMatchObject({
      basis: 'outdoorPlusSplit',
      through: { value: near(80.5, 1) },
    });
    expect(found).toMatchObject({ value: near(176, 0) });
  });

  it('takes a remote freezer case as low temperature, and one in one piece as a reach-in', () => {
    const split = (unit: string) => asked(unit, 'four oh four a', 'what should the split be');
    expect(split('freezer display case with a remote condensing unit')).toMatchObject({
      value: near(12.5, 1),
    });
    expect(split('display case with a remote condensing unit')).toMatchObject({
      value: near(20, 1),
    });
    expect(split('self contained walk in cooler')).toMatchObject({ value: near(30, 1) });
  });

  // hvacrschool.com, TD on refrigeration evaporators: low temperature about 5 °F, medium about 10.
  it('takes the superheat of the box', () => {
    expect(asked(FREEZER, 'what should superheat be')).toMatchObject({
      value: near(5, 1),
    });
    expect(asked(COOLER, 'what should superheat be')).toMatchObject({
      value: near(10, 1),
    });
  });

  // 84 + 20 = 104 °F, where R-448A's middle is 242 psi (CoolProp 8.0).
  it('judges the head by the outdoor temperature that was told, and says so', () => {
    const turn = after(
      COOLER,
      'box is forty six, head two thirty, outside eighty four',
      'is the head right for this weather',
    );
    expect(turn.verdicts.at(-1)).toMatchObject({
      answer: 'compare',
      about: 'headPressure',
      basis: 'outdoorPlusSplit',
      target: near(242, 0),
    });
    expect(turn.reply.text).toMatch(/by outdoor air/i);
    expect(turn.reply.text).not.toMatch(/tell me the ambient/i);
  });

  it('writes both in the note', () => {
    const note = noteText(draftNote(after(FREEZER).state));
    expect(note).toContain(
      'Walk-in freezer, remote condensing unit, thermostatic expansion valve.',
    );
  });
});
