import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { timedVisit } from '../support/timed-visit.ts';

const UNIT = "it's a walk in cooler on four forty nine a, txv";
const BEFORE = [
  [0, UNIT],
  [1, 'ambient seventy nine'],
  [2, 'head one eighty five, suction eight, liquid line eighty one'],
  [3, 'mark this as before'],
  [10, 'replaced the expansion valve'],
] as const;
const NEAR_ZERO = /subcooling is near zero/;
const ABOVE = /liquid line is warmer than the head allows/;

// R-449A: bubble is 82.4 °F at 185 psi, 89.1 °F at 205 and 87.1 °F at 199 (CoolProp 8.0).
describe('a liquid line at bubble or above it', () => {
  it('is warned of before the work and once more after it', () => {
    const visit = timedVisit(...BEFORE, [60, 'head two oh five'], [61, "liquid's ninety one"]);
    const warned = visit.turns.filter(({ reply }) => NEAR_ZERO.test(reply.text));
    expect(warned).toHaveLength(2);
    expect(visit.turns.at(-1)?.reply.text).toMatch(NEAR_ZERO);
  });

  it('is warned of, unasked, where no instrument explains it', () => {
    const visit = timedVisit([0, UNIT], [1, 'head one ninety nine, liquid ninety one']);
    expect(visit.turns.at(-1)?.reply.text).toMatch(ABOVE);
  });

  it('is not made out of a head that was read once more with the unit standing', () => {
    const visit = timedVisit(
      [0, UNIT],
      [1, 'head two sixty, liquid line ninety one'],
      [5, 'head one ninety nine'],
    );
    expect(visit.turns.at(-1)?.reply.text).not.toMatch(ABOVE);
    const other = timedVisit([0, UNIT], [1, 'liquid line ninety one'], [2, 'head one ninety nine']);
    expect(other.turns.at(-1)?.reply.text).toMatch(ABOVE);
  });

  it('stands in the note, also where the head was read once more', () => {
    const row = (...more: readonly (readonly [number, string])[]): string => {
      const note = noteText(draftNote(timedVisit(...BEFORE, ...more).last.state));
      return note.split('\n').find((line) => /^\s*subcooling/.test(line)) ?? '';
    };
    expect(
      row([60, 'head two oh five, liquid line ninety one'], [100, 'head one ninety nine']),
    ).toMatch(/1\.4 °F\s+0 °F/);
    expect(row([60, 'head one ninety nine, liquid line ninety one'])).toMatch(/1\.4 °F\s+-3\.9 °F/);
  });
});
