import { describe, expect, it } from 'vitest';
import { createLater } from '../../../client/state/later.ts';
import type { Happening } from '../../../client/state/happenings.ts';
import { sleepingSession } from '../../../client/state/session.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';

const WORDS: Happening = { kind: 'typed', words: 'box forty' };
const SETTINGS: Happening = { kind: 'settingsChosen', settings: { units: 'us', altitudeM: 1500 } };
const COMMITTED: Happening = { kind: 'committed', events: [] };

describe('what waits for a choice that is on its way to the log', () => {
  it('is released one by one, in its order, once the choice stands', () => {
    const sent: Happening[] = [];
    const later = createLater(() => sleepingSession(EMPTY_VISIT));
    later.began({ kind: 'commit', bodies: [] });
    expect([later.holds(SETTINGS), later.holds(WORDS)]).toEqual([true, true]);
    later.release((happening) => sent.push(happening));
    expect(sent).toEqual([]);
    expect(later.holds(COMMITTED)).toBe(false);
    later.release((happening) => sent.push(happening));
    expect(sent).toEqual([SETTINGS]);
    later.release((happening) => sent.push(happening));
    expect(sent).toEqual([SETTINGS, WORDS]);
  });

  it('holds nothing when nothing is under way, and never what has to do with the ear', () => {
    const later = createLater(() => sleepingSession(EMPTY_VISIT));
    expect([later.holds(WORDS), later.holds(SETTINGS)]).toEqual([false, false]);
    later.began({ kind: 'commit', bodies: [] });
    expect([later.holds({ kind: 'pressed' }), later.holds({ kind: 'hearing' })]).toEqual([
      false,
      false,
    ]);
  });

  it('holds a choice, not a sentence, while a sentence is being kept', () => {
    const thinking = {
      ...sleepingSession(EMPTY_VISIT),
      mode: { kind: 'thinking', words: 'x', ear: { kind: 'asleep' }, turn: null, asked: null },
    } as const;
    const later = createLater(() => thinking);
    expect([later.holds(SETTINGS), later.holds(WORDS)]).toEqual([true, false]);
  });
});
