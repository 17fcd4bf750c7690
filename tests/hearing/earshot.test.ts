import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterNoise,
  afterWords,
  clarityOf,
  type Earshot,
  EARSHOT_POLICY,
  heardThere,
  isTooLoud,
  UNMEASURED,
  voiceAboveNoise,
} from '../../core/hearing/earshot.ts';

const ROOM_DB = -40;
const SURE = 0.95;
const UNSURE = 0.3;

/** A sentence told, and its words come. */
function sentence(before: Earshot, snrDb: number | null, confidence = SURE): Earshot {
  return afterWords(afterNoise(before, { noiseDb: ROOM_DB, snrDb, sentence: true }), confidence);
}

const room = (before: Earshot, noiseDb: number, snrDb: number | null = null): Earshot =>
  afterNoise(before, { noiseDb, snrDb, sentence: false });

const rooms = (before: Earshot, noiseDb: number, times: number): Earshot =>
  Array.from({ length: times }).reduce<Earshot>((earshot) => room(earshot, noiseDb), before);

describe('the standing after a sentence', () => {
  it.each([
    [20, 'fine', 'clear'],
    [8, 'fine', 'fair'],
    [4.4, 'tooLoud', 'tooLoud'],
    [null, 'buried', 'tooLoud'],
  ] as const)('%s dB above the room: %s', (snrDb, standing, clarity) => {
    const earshot = sentence(UNMEASURED, snrDb);
    expect([earshot.standing, clarityOf(earshot)]).toEqual([standing, clarity]);
    expect(voiceAboveNoise(earshot)).toBe(snrDb === null ? null : Math.round(snrDb));
  });

  it('waits for words: a fan that starts ends like a sentence and has none', () => {
    const told = afterNoise(UNMEASURED, { noiseDb: -60, snrDb: 30, sentence: true });
    expect([told.standing, voiceAboveNoise(told)]).toEqual(['unmeasured', null]);
    // The fan's own loudness taken for a voice's would be "too loud" from then on.
    expect(rooms(told, -30, 10).standing).toBe('unmeasured');
  });

  it('believes words that are not sure, as a tune makes them, only the second time', () => {
    const once = sentence(sentence(UNMEASURED, 15), 4, UNSURE);
    expect([once.standing, voiceAboveNoise(once)]).toEqual(['fine', 15]);
    expect(sentence(once, 4, UNSURE).standing).toBe('tooLoud');
  });

  it('is believed at once where the engine tells no chance', () => {
    expect(sentence(UNMEASURED, 4, 0).standing).toBe('tooLoud');
  });
});

describe('the standing between sentences', () => {
  it('turns when noise has come to stay, by the last voice, and not for a door', () => {
    const heard = sentence(UNMEASURED, 20);
    const door = room(room(heard, ROOM_DB + 18), ROOM_DB);
    expect([door.standing, door.signs]).toEqual(['fine', 0]);
    const louder = rooms(heard, ROOM_DB + 18, EARSHOT_POLICY.roomsInARow - 1);
    expect(louder.standing).toBe('fine');
    expect(voiceAboveNoise(louder)).toBe(2);
    expect(room(louder, ROOM_DB + 18).standing).toBe('tooLoud');
  });

  it('turns back when the fan stops', () => {
    const buried = sentence(UNMEASURED, null);
    expect(rooms(buried, ROOM_DB, 10).standing).toBe('buried');
    expect(rooms(buried, ROOM_DB - 20, EARSHOT_POLICY.roomsInARow).standing).toBe('fine');
  });

  it('takes a weak voice that was no sentence for one, where none was heard before', () => {
    const weak = { noiseDb: ROOM_DB, snrDb: 4.3, sentence: false };
    const times = [1, 2, 3];
    expect(times.reduce((earshot) => afterNoise(earshot, weak), UNMEASURED).standing).toBe(
      'tooLoud',
    );
    const known = sentence(UNMEASURED, 18);
    expect(times.reduce((earshot) => afterNoise(earshot, weak), known).standing).toBe('fine');
  });
});

describe('hysteresis', () => {
  const { tooLoudBelowDb, fineFromDb } = EARSHOT_POLICY;

  it('lets no voice that stays between the thresholds turn it, whichever way it was', () => {
    const between = fc.double({ min: tooLoudBelowDb, max: fineFromDb - 0.01, noNaN: true });
    fc.assert(
      fc.property(fc.array(between, { minLength: 1 }), fc.constantFrom(3, 20), (levels, first) => {
        const start = sentence(UNMEASURED, first);
        const after = levels.reduce<Earshot>((earshot, snrDb) => sentence(earshot, snrDb), start);
        expect(isTooLoud(after)).toBe(isTooLoud(start));
      }),
    );
  });

  it('turns at most once a sentence, and only past the other threshold', () => {
    const level = fc.double({ min: -10, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.array(level), (levels) => {
        levels.reduce<Earshot>((before, snrDb) => {
          const after = sentence(before, snrDb);
          if (isTooLoud(after) && !isTooLoud(before)) expect(snrDb).toBeLessThan(tooLoudBelowDb);
          if (!isTooLoud(after) && isTooLoud(before)) {
            expect(snrDb).toBeGreaterThanOrEqual(fineFromDb);
          }
          return after;
        }, UNMEASURED);
      }),
    );
  });
});

describe('what was heard there', () => {
  const offered = [
    { words: 'head one ninety two', confidence: 0.9 },
    { words: 'head one ninety two please', confidence: 0.06 },
  ];

  it('is as sure as the engine says where the voice stands out', () => {
    expect(heardThere(sentence(UNMEASURED, 12), offered)).toBe(offered);
  });

  it.each([
    [4, EARSHOT_POLICY.mostSure.tooLoud],
    [null, EARSHOT_POLICY.mostSure.buried],
  ])('is together never surer than it can be at %s dB, in the same order', (snrDb, most) => {
    const heard = heardThere(sentence(UNMEASURED, snrDb), offered);
    const [first = 0, second = 0] = heard.map(({ confidence }) => confidence);
    expect(first + second).toBeCloseTo(most, 9);
    expect(first / second).toBeCloseTo(0.9 / 0.06, 9);
  });

  it('is left as it is where it is already less sure', () => {
    const unsure = [{ words: 'yes', confidence: 0.55 }];
    expect(heardThere(sentence(UNMEASURED, 4), unsure)).toEqual(unsure);
  });
});
