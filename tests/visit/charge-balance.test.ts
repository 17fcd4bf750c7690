import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Utterance, Work } from '../../core/language/utterance.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { cautionsFor } from '../../core/advice/cautions.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Memory } from '../../core/turn/turn.ts';
import { chargeBalance } from '../../core/visit/charge-balance.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { read, readings, unitIs, visitOf } from '../advice/visits.ts';
import { createStamp } from '../support/stamp.ts';
import { commanding, utteranceOf } from '../support/utterances.ts';

const did = (work: Work['did'], words: string, part: Work['part'] = null): Utterance =>
  utteranceOf({ work: [{ did: work, part, words }] });

const PLATE = unitIs(
  { fact: 'refrigerant', value: 'R-449A' },
  { fact: 'nameplate', item: 'charge', value: 88, unit: 'oz' },
);
const PUMPED_DOWN = did('pumpDown', 'pumped it down');
const VACUUM = readings(read('vacuum', 350, 'micron'));
const EVACUATED = did('evacuate', 'evacuated it');
const EVACUATED_ALL = did('evacuate', 'evacuated the whole system');
const RECOVERED_ALL = did('recover', 'recovered the charge');
const KING_SHUT = did('isolate', 'closed the king valve', 'kingValve');
const KING_OPEN = did('open', 'opened the king valve', 'kingValve');
const FLAT = readings(read('headPressure', 0, 'psi'), read('suctionPressure', 0, 'psi'));
const EMPTY = utteranceOf({
  facts: [{ fact: 'cause', value: 'undercharge', empty: true, words: 'there is nothing in it' }],
});
const LOW = utteranceOf({ facts: [{ fact: 'cause', value: 'undercharge', words: 'it is low' }] });
const SOME = readings(read('suctionPressure', 12, 'psi'));
const added = (ounces: number): Utterance => readings(read('refrigerantAdded', ounces, 'oz'));
const recovered = (ounces: number): Utterance =>
  readings(read('refrigerantRecovered', ounces, 'oz'));
const { value: _said, ...noWeight } = read('refrigerantAdded', 1, 'oz');
const unweighed = readings({ ...noWeight, low: 1, high: 3 });

const after = (...said: readonly Utterance[]): VisitState => visitOf([PLATE, ...said]);
const charged = (...said: readonly Utterance[]): number | null =>
  chargeBalance(after(...said)).charged?.value ?? null;
const linesOf = (state: VisitState): readonly string[] =>
  draftNote(state).sections.find(({ id }) => id === 'refrigerant')?.lines ?? [];

function spoken(lines: readonly string[]) {
  const stamp = createStamp();
  return lines.reduce<{ replies: readonly string[]; state: VisitState; memory: Memory }>(
    ({ replies, state, memory }, words) => {
      const turn = takeTurn({ state, memory, words, stamp });
      return {
        replies: [...replies, turn.reply.text],
        state: turn.state,
        memory: turn.memory,
      };
    },
    { replies: [], state: EMPTY_VISIT, memory: EMPTY_MEMORY },
  );
}

describe('a charge that misses the nameplate', () => {
  const emptied = [recovered(70), VACUUM];
  const off = (...said: readonly Utterance[]): boolean =>
    cautionsFor(after(...emptied, ...said)).includes('chargeOffPlate');

  it('is told of at once where it is over, and by more than a twentieth alone', () => {
    expect(off(added(93))).toBe(true);
    expect(off(added(92))).toBe(false);
    expect(off(added(60), added(33))).toBe(true);
  });

  it('is told of where it is under once weighing is over', () => {
    expect(off(added(60))).toBe(false);
    expect(off(added(60), added(28), SOME)).toBe(false);
    expect(off(added(60), SOME)).toBe(true);
    expect(off(added(60), commanding({ do: 'finish' }))).toBe(true);
    expect(off(added(84), SOME)).toBe(false);
  });

  it('is not known where what was in it was never weighed', () => {
    expect(cautionsFor(after(added(60), SOME))).not.toContain('chargeOffPlate');
  });

  it('is said once, and stands in the note', () => {
    const said = [
      "it's a reach-in on 134a",
      'the charge is three pounds two ounces',
      'recovered two pounds',
      'pulled a vacuum to 400 microns',
      'weighed in three pounds eight ounces',
      'compressor is running',
    ];
    const { replies, state } = spoken(said);
    expect(replies.filter((text) => text.includes('well off the nameplate'))).toHaveLength(1);
    expect(replies[4]).toContain('well off the nameplate');
    expect(linesOf(state)).toContain(
      'In it now, by the scale: 3 lb 8 oz, 6 oz over the nameplate.',
    );
    const cautions = draftNote(state).sections.find(({ id }) => id === 'cautions')?.lines ?? [];
    expect(cautions.join(' ')).toContain('more than 5 %');
  });
});

describe('what is in the unit by the scale', () => {
  it.each<[string, readonly Utterance[], number]>([
    ['recovered, evacuated and weighed in', [recovered(70), VACUUM, added(88)], 88],
    ['in several bottles', [recovered(70), EVACUATED, added(60), added(28)], 88],
    ['less what was taken out again', [recovered(70), VACUUM, added(90), recovered(2)], 88],
    ['found flat on both gauges', [FLAT, VACUUM, added(88)], 88],
    ['told to be empty', [EMPTY, VACUUM, added(88)], 88],
    ['evacuated whole', [EVACUATED_ALL, added(88)], 88],
    ['the whole charge recovered without a weight', [RECOVERED_ALL, VACUUM, added(88)], 88],
    ['the vacuum read again', [recovered(70), VACUUM, KING_SHUT, VACUUM, added(88)], 88],
    [
      'pumped down, let out again and recovered',
      [PUMPED_DOWN, KING_OPEN, recovered(80), VACUUM, added(88)],
      88,
    ],
    ['emptied twice', [recovered(70), VACUUM, added(80), recovered(79), VACUUM, added(88)], 88],
  ])('is known when %s', (_name, said, ounces) => {
    expect(charged(...said)).toBe(ounces);
  });

  it.each<[string, readonly Utterance[]]>([
    ['topped up', [added(6)]],
    ['a vacuum and no word of the charge', [VACUUM, added(6)]],
    ['evacuated, and not said to be all of it', [EVACUATED, added(6)]],
    ['pumped down', [PUMPED_DOWN, VACUUM, added(6)]],
    ['pumped down and evacuated', [PUMPED_DOWN, EVACUATED_ALL, added(6)]],
    ['pumped down and the rest recovered', [PUMPED_DOWN, recovered(1), VACUUM, added(6)]],
    ['flat on both gauges behind a shut valve', [KING_SHUT, FLAT, VACUUM, added(6)]],
    ['told to be empty behind a shut valve', [KING_SHUT, EMPTY, VACUUM, added(6)]],
    ['told to be empty after a pump-down', [PUMPED_DOWN, EMPTY, VACUUM, added(6)]],
    ['told to be empty, and pressure read since', [EMPTY, SOME, VACUUM, added(6)]],
    ['told to be low', [LOW, VACUUM, added(6)]],
    ['recovered behind a shut valve', [KING_SHUT, recovered(3), VACUUM, added(6)]],
    ['valved off after some was recovered', [recovered(2), PUMPED_DOWN, VACUUM, added(6)]],
    [
      'charged, pumped down and evacuated again',
      [recovered(70), VACUUM, added(88), PUMPED_DOWN, VACUUM, added(6)],
    ],
    [
      'charged, and a vacuum read without recovery',
      [recovered(70), VACUUM, added(88), EVACUATED_ALL, added(6)],
    ],
    ['something added without a weight', [recovered(70), VACUUM, added(80), unweighed]],
    ['nothing recovered', [recovered(0), VACUUM, added(6)]],
  ])('is not known when %s', (_name, said) => {
    expect(charged(...said)).toBeNull();
  });

  it('follows what is taken back', () => {
    const undone = commanding({ do: 'undo' });
    expect(charged(recovered(70), undone, VACUUM, added(88))).toBeNull();
    expect(charged(PUMPED_DOWN, undone, recovered(70), VACUUM, added(88))).toBe(88);
    expect(charged(EMPTY, undone, VACUUM, added(88))).toBeNull();
  });

  it('reads a vacuum and a charge of one breath in that order', () => {
    const both = { ...added(88), work: EVACUATED_ALL.work };
    expect(charged(both)).toBe(88);
  });
});

describe('a system that is empty', () => {
  it('was low on charge, unless somebody here let it out', () => {
    expect(after(EMPTY).unit.cause).toBe('undercharge');
    expect(after(recovered(70), EMPTY).unit.cause).toBeNull();
    expect(after(EVACUATED, EMPTY).unit.cause).toBeNull();
  });
});

describe('the note', () => {
  it('does not tell what is in it where nobody weighed what was left', () => {
    const state = after(PUMPED_DOWN, VACUUM, added(6));
    expect(linesOf(state)).toEqual([
      'Added 6 oz of R-449A.',
      'What was in it before was not weighed.',
    ]);
    expect(JSON.stringify(draftNote(state))).not.toMatch(/by the scale|under the nameplate/);
  });

  it('tells it where it was recovered and weighed in', () => {
    expect(linesOf(after(recovered(70), VACUUM, added(88)))).toContain(
      'In it now, by the scale: 5 lb 8 oz, the nameplate charge.',
    );
  });

  it('says nothing of it where only some was added', () => {
    expect(linesOf(after(added(6)))).toEqual(['Added 6 oz of R-449A.']);
  });
});

/** The circuit as two vessels with the king valve between: what a gauge and a scale tell of it, and what they do not. */
interface Circuit {
  readonly receiver: number;
  readonly rest: number;
  readonly isShut: boolean;
  /** Shut without a word of it: what is recovered then, nobody could tell from all of it. */
  readonly isUnheard: boolean;
}
type Done = Circuit & { readonly tells: readonly Utterance[] };
type Deed = (circuit: Circuit, ounces: number) => Done | null;

const reached = ({ receiver, rest, isShut }: Circuit): number => (isShut ? rest : receiver + rest);

const pumpedDown =
  (
    vapour: number,
    told: { readonly tells: readonly Utterance[]; readonly isUnheard: boolean },
  ): Deed =>
  ({ receiver, rest, isShut }) =>
    isShut || receiver + rest < 10
      ? null
      : { receiver: receiver + rest - vapour, rest: vapour, isShut: true, ...told };

/** What can be done and how it is told; null where it cannot be: no pump is put on what holds a charge. */
const DEEDS = {
  pumpDown: pumpedDown(1, { tells: [PUMPED_DOWN], isUnheard: false }),
  /** As it is told of who is not understood: a suction, and nothing of what was done. */
  pumpDownUnheard: pumpedDown(0, {
    tells: [readings(read('suctionPressure', 2, 'psi'))],
    isUnheard: true,
  }),
  open: (circuit) =>
    circuit.isShut ? { ...circuit, isShut: false, isUnheard: false, tells: [KING_OPEN] } : null,
  shut: (circuit) => (circuit.isShut ? null : { ...circuit, isShut: true, tells: [KING_SHUT] }),
  recoverAll: (circuit) => {
    const ounces = reached(circuit);
    const receiver = circuit.isShut ? circuit.receiver : 0;
    if (ounces === 0 || circuit.isUnheard) return null;
    return { ...circuit, receiver, rest: 0, tells: [recovered(ounces)] };
  },
  trim: (circuit) =>
    circuit.rest < 3 || circuit.isUnheard
      ? null
      : { ...circuit, rest: circuit.rest - 2, tells: [recovered(2)] },
  readVacuum: (circuit) => (reached(circuit) > 0 ? null : { ...circuit, tells: [VACUUM] }),
  evacuate: (circuit) =>
    reached(circuit) > 0
      ? null
      : { ...circuit, tells: [circuit.isShut ? EVACUATED : EVACUATED_ALL] },
  readGauges: (circuit) =>
    circuit.isShut || circuit.rest > 0
      ? null
      : { ...circuit, tells: circuit.receiver > 0 ? [] : [FLAT] },
  charge: (circuit, ounces) => ({
    ...circuit,
    rest: circuit.rest + ounces,
    tells: [added(ounces)],
  }),
} as const satisfies Record<string, Deed>;

const deeds = fc.array(
  fc.tuple(fc.constantFrom<Deed[]>(...Object.values(DEEDS)), fc.integer({ min: 1, max: 60 })),
  { minLength: 6, maxLength: 24, size: 'max' },
);
const found = fc.record({
  receiver: fc.integer({ min: 0, max: 80 }),
  rest: fc.integer({ min: 0, max: 20 }),
  isShut: fc.constant(false),
  isUnheard: fc.constant(false),
});

describe('whatever is done, in whatever order', () => {
  it('is what is in it, or is not told', () => {
    let told = 0;
    fc.assert(
      fc.property(found, deeds, (at, done) => {
        let circuit: Circuit = at;
        const said: Utterance[] = [];
        for (const [deed, ounces] of done) {
          const next = deed(circuit, ounces);
          if (next === null) continue;
          circuit = next;
          said.push(...next.tells);
          const held = charged(...said);
          if (held === null) continue;
          told += 1;
          expect(held).toBeCloseTo(circuit.receiver + circuit.rest, 6);
        }
      }),
      { numRuns: 3000 },
    );
    expect(told).toBeGreaterThan(300);
  });
});
