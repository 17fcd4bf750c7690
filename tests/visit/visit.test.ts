import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Doubt, Utterance } from '../../core/language/utterance.ts';
import { applyEvent, applyEvents } from '../../core/visit/apply.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { type Addition, fromUtterance } from '../../core/visit/from-utterance.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { latestReading, openQuestion, sheetRows } from '../../core/visit/views.ts';
import { createStamp } from '../support/stamp.ts';
import { commanding, degF, psi, reading, utteranceOf, working } from '../support/utterances.ts';

function visit(...said: Utterance[]): Addition {
  const stamp = createStamp();
  return said.reduce<Addition>((so, each) => fromUtterance(each, so.state, stamp), {
    state: EMPTY_VISIT,
    events: [],
    acknowledgements: [],
  });
}

const values = (state: VisitState) =>
  state.readings.map((entry) => [entry.reading.quantity, entry.reading.value, entry.phase]);

const doubted = (value: number): Doubt => ({ ...psi('headPressure', value), why: 'outOfRange' });

describe('before and after', () => {
  it('puts what is read before the first work in the before, and after the mark in the after', () => {
    const { state } = visit(
      reading(psi('headPressure', 192)),
      commanding({ do: 'markBefore' }),
      working(),
      reading(psi('headPressure', 158)),
      commanding({ do: 'markAfter' }),
    );
    expect(values(state)).toEqual([
      ['headPressure', 192, 'before'],
      ['headPressure', 158, 'after'],
    ]);
    expect(sheetRows(state)).toMatchObject([
      {
        before: { reading: { value: 192 } },
        after: { reading: { value: 158 } },
        afterIsMarked: true,
      },
    ]);
  });

  it('does not take readings between two pieces of work for the after', () => {
    const { state } = visit(
      reading(psi('headPressure', 192)),
      working('brush'),
      reading(psi('headPressure', 180)),
      working('clean'),
      reading(psi('headPressure', 158)),
      commanding({ do: 'markAfter' }),
    );
    expect(values(state).map(([, , phase]) => phase)).toEqual(['before', 'work', 'after']);
  });

  it('takes what is marked as the before once work had begun for it, and leaves what was read before that', () => {
    const { state } = visit(
      reading(psi('headPressure', 192)),
      working(),
      reading(psi('headPressure', 158), psi('suctionPressure', 18)),
      commanding({ do: 'markBefore' }),
      reading(psi('suctionPressure', 16)),
    );
    expect(values(state)).toEqual([
      ['headPressure', 192, 'before'],
      ['headPressure', 158, 'work'],
      ['suctionPressure', 18, 'before'],
      ['suctionPressure', 16, 'work'],
    ]);
  });

  it('opens the after again when more work is done', () => {
    const { state } = visit(
      reading(psi('headPressure', 192)),
      working(),
      reading(psi('headPressure', 158)),
      commanding({ do: 'markAfter' }),
      working('clean'),
      reading(psi('headPressure', 150)),
    );
    expect(state.afterMarkedAt).toBeNull();
    expect(values(state).at(-1)).toEqual(['headPressure', 150, 'work']);
  });

  it('keeps an arrival reading in the before even when it is told after work', () => {
    const { state } = visit(working(), reading({ ...psi('headPressure', 200), when: 'arrival' }));
    expect(values(state)).toEqual([['headPressure', 200, 'before']]);
  });
});

describe('taking back and amending', () => {
  it('takes back the newest thing, one at a time, and says what it was', () => {
    const once = visit(
      reading(psi('headPressure', 192), psi('suctionPressure', 14)),
      commanding({ do: 'undo' }),
    );
    expect(once.acknowledgements.at(-1)).toMatchObject({
      kind: 'takenBack',
      what: { of: 'reading', reading: { quantity: 'suctionPressure', value: 14 } },
    });
    const twice = visit(
      reading(psi('headPressure', 192), psi('suctionPressure', 14)),
      commanding({ do: 'undo' }),
      commanding({ do: 'undo' }),
      commanding({ do: 'undo' }),
    );
    expect(twice.state.readings).toEqual([]);
    expect(twice.acknowledgements.at(-1)).toEqual({ kind: 'nothingToTakeBack' });
  });

  it('takes back by quantity', () => {
    const { state } = visit(
      reading(psi('headPressure', 192), psi('suctionPressure', 14)),
      commanding({ do: 'undo', quantity: 'headPressure' }),
    );
    expect(values(state)).toEqual([['suctionPressure', 14, 'before']]);
  });

  it('leaves no trace of an undone fact: the earlier one holds again', () => {
    const fact = (value: 'R-134a' | 'R-404A') =>
      utteranceOf({ facts: [{ fact: 'refrigerant', value, words: value }] });
    const { state } = visit(fact('R-134a'), fact('R-404A'), commanding({ do: 'undo' }));
    expect(state.unit.refrigerant).toBe('R-134a');
  });

  it('unmarks the before with everything it claimed', () => {
    const { state } = visit(
      reading(psi('headPressure', 192)),
      commanding({ do: 'markBefore' }, { do: 'undo' }),
      reading(psi('headPressure', 190)),
    );
    expect(state.beforeMarkedAt).toBeNull();
    expect(values(state).map(([, , phase]) => phase)).toEqual(['before', 'before']);
  });

  it('amends the newest reading, keeps its place in the log and its column', () => {
    const { state } = visit(
      reading(degF('ambientTemp', 98)),
      working(),
      commanding({ do: 'amend', quantity: null, value: 89 }),
    );
    expect(values(state)).toEqual([['ambientTemp', 89, 'before']]);
  });

  it('amends by quantity and says so when there is nothing to amend', () => {
    const { state, acknowledgements } = visit(
      reading(psi('headPressure', 192), psi('suctionPressure', 14)),
      commanding({ do: 'amend', quantity: 'headPressure', value: 182 }),
      commanding({ do: 'amend', quantity: 'boxTemp', value: 40 }),
    );
    expect(latestReading(state, 'headPressure')?.reading.value).toBe(182);
    expect(acknowledgements.at(-1)).toEqual({ kind: 'nothingToAmend' });
  });
});

describe('doubts and numbers left over', () => {
  it('keeps a doubted reading out of the sheet until yes, and takes it back under its own id', () => {
    const asked = visit(utteranceOf({ doubts: [doubted(840)] }));
    expect(asked.state.readings).toEqual([]);
    expect(openQuestion(asked.state)?.kind).toBe('doubt');
    const yes = visit(utteranceOf({ doubts: [doubted(840)] }), commanding({ do: 'yes' }));
    expect(values(yes.state)).toEqual([['headPressure', 840, 'before']]);
    const undone = visit(
      utteranceOf({ doubts: [doubted(840)] }),
      commanding({ do: 'yes' }),
      commanding({ do: 'undo' }),
    );
    expect(undone.state.readings).toEqual([]);
    expect(undone.state.doubts).toEqual([]);
  });

  it('drops a doubt on no, on a plain reading of the same thing, and on another value', () => {
    for (const answer of [
      commanding({ do: 'no' }),
      reading(psi('headPressure', 184)),
      commanding({ do: 'amend', quantity: null, value: 184 }),
    ]) {
      const { state } = visit(utteranceOf({ doubts: [doubted(840)] }), answer);
      expect(openQuestion(state)).toBeNull();
      expect(state.readings.every((entry) => entry.reading.value === 184)).toBe(true);
    }
  });

  it('keeps a number nobody claimed until it is read properly or dropped', () => {
    const leftOver = utteranceOf({ text: 'seventeen', unclaimed: ['17'] });
    expect(visit(leftOver).state.leftOver).toMatchObject([{ digits: '17', words: 'seventeen' }]);
    expect(visit(leftOver, reading(psi('suctionPressure', 17))).state.leftOver).toEqual([]);
    expect(visit(leftOver, commanding({ do: 'no' })).state.leftOver).toEqual([]);
    expect(visit(leftOver, commanding({ do: 'yes' })).state.leftOver).toHaveLength(1);
  });
});

describe('the log', () => {
  it('opens the visit with the first thing worth keeping, not with small talk', () => {
    expect(visit(utteranceOf({ text: 'nice day' })).events).toEqual([]);
    expect(visit(reading(psi('headPressure', 192))).events.map((event) => event.type)).toEqual([
      'visitOpened',
      'readingTaken',
    ]);
  });

  it('says when work is reported before anything was read', () => {
    expect(visit(working()).acknowledgements).toMatchObject([
      { kind: 'work', beforeBaseline: true },
    ]);
    expect(
      visit(reading(psi('headPressure', 192)), working()).acknowledgements.at(-1),
    ).toMatchObject({
      beforeBaseline: false,
    });
  });

  const sentence = fc.oneof(
    fc.integer({ min: 1, max: 400 }).map((value) => reading(psi('headPressure', value))),
    fc.integer({ min: 1, max: 80 }).map((value) => reading(psi('suctionPressure', value))),
    fc.integer({ min: 500, max: 900 }).map((value) => utteranceOf({ doubts: [doubted(value)] })),
    fc.constant(working()),
    fc.constantFrom(
      commanding({ do: 'undo' }),
      commanding({ do: 'amend', quantity: null, value: 99 }),
      commanding({ do: 'markBefore' }),
      commanding({ do: 'markAfter' }),
      commanding({ do: 'yes' }),
      commanding({ do: 'no' }),
    ),
  );

  it('gives the same state by replay as step by step, however often events arrive twice', () => {
    fc.assert(
      fc.property(fc.array(sentence, { maxLength: 25 }), (said) => {
        const stamp = createStamp();
        let state = EMPTY_VISIT;
        for (const each of said) state = fromUtterance(each, state, stamp).state;
        expect(applyEvents(state.history)).toEqual(state);
        expect(applyEvents(state.history, state)).toEqual(state);
        const twice = state.history.flatMap((event) => [event, event]);
        expect(applyEvents(twice)).toEqual(state);
      }),
      { numRuns: 300 },
    );
  });

  it('does not change a state it was given', () => {
    const { state, events } = visit(reading(psi('headPressure', 192)));
    const frozen = Object.freeze({ ...state, readings: Object.freeze([...state.readings]) });
    const last = events.at(-1);
    if (!last) throw new Error('a reading makes an event');
    expect(() => applyEvent(frozen, { ...last, id: `${last.id.slice(0, 25)}Z` })).not.toThrow();
    expect(frozen.readings).toHaveLength(1);
  });
});
