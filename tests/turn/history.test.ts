import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Stamp, type Turn } from '../../core/turn/turn.ts';
import { applyEvents } from '../../core/visit/apply.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';

function stampOn(day: string): Stamp {
  const at = Date.parse(`${day}T15:00:00Z`);
  const visit = `V${day}`;
  let seq = 0;
  return (body) => {
    seq += 1;
    const id = `${visit}-${String(seq)}`;
    return { ...body, id, device: 'D', seq, visit, at: at + seq * 60_000, utcOffset: -300 };
  };
}

interface Visit {
  readonly turns: readonly Turn[];
  readonly state: VisitState;
}

function visitOn(day: string, said: readonly string[], past: readonly VisitState[] = []): Visit {
  const stamp = stampOn(day);
  const turns: Turn[] = [];
  let [state, memory] = [EMPTY_VISIT, EMPTY_MEMORY];
  for (const words of said) {
    const turn = takeTurn({ state, memory, words, stamp, past });
    ({ state, memory } = turn);
    turns.push(turn);
  }
  return { turns, state };
}

const HERE = ['site is Harbor Street Deli', 'unit is called reach-in by the back door'];
const JUNE = visitOn('2025-06-10', [...HERE, 'they should replace the contactor']).state;
const AUGUST = visitOn('2026-08-03', [
  ...HERE,
  'r one thirty four a',
  'condenser is plugged',
  'condenser fan is not running',
  'i washed the condenser',
  'added eight ounces',
  'they should replace the door gasket, it is torn',
]).state;
const ELSEWHERE = visitOn('2026-10-01', [
  'site is Canal Street Bakery',
  'unit is called reach-in by the back door',
  'evaporator is iced up',
]).state;
const PAST = [AUGUST, JUNE, ELSEWHERE];

const lastReply = ({ turns }: Visit): string => turns.at(-1)?.reply.text ?? '';
const today = (...said: readonly string[]): Visit => visitOn('2026-11-20', said, PAST);
const noted = (state: VisitState): readonly string[] =>
  draftNote(state, PAST).sections.find(({ id }) => id === 'seenBefore')?.lines ?? [];

describe('what was here before', () => {
  it('is told of the last visit to this unit, its day first', () => {
    expect(lastReply(today(...HERE, 'what was done here last time'))).toBe(
      'Last time was August 3. Found: condenser plugged, condenser fan not running. ' +
        'Done: condenser washed. Refrigerant: 8 oz in of R-134a. ' +
        'Recommended: replace the door gasket, it is torn.',
    );
  });

  it('is when a thing was last done, washed being cleaned, or that no visit has it', () => {
    expect(lastReply(today(...HERE, 'when was the condenser last cleaned'))).toBe(
      'Condenser cleaned on August 3.',
    );
    expect(lastReply(today(...HERE, 'when was the evaporator last cleaned'))).toBe(
      'Not on any visit I have: evaporator cleaned. They go back to June 10, 2025.',
    );
  });

  it('is told unasked, once, when it was found last time too', () => {
    const visit = today(...HERE, 'condenser is plugged', 'head one ninety', 'condenser is plugged');
    const [, , found, read, again] = visit.turns.map(({ reply }) => reply.text);
    expect(found).toContain('The same on August 3: condenser plugged.');
    expect(read).not.toContain('August');
    expect(again).not.toContain('August');
  });

  it('is told when the unit is named after the finding', () => {
    const [first, site, unit] = today('condenser is plugged', ...HERE).turns;
    expect(first?.reply.text).not.toContain('August');
    expect([site, unit].map((turn) => turn?.reply.text).join(' ')).toContain(
      'The same on August 3',
    );
  });

  it('answers whether it came back, asked', () => {
    expect(lastReply(today(...HERE, 'condenser is dirty', 'has this come back'))).toBe(
      'Nothing found today was found last time, August 3.',
    );
    expect(lastReply(today(...HERE, 'condenser is plugged', 'has this come back'))).toBe(
      'The same on August 3: condenser plugged.',
    );
  });

  it('is never that of a unit of the same name elsewhere', () => {
    const { turns } = today(...HERE, 'evaporator is iced up');
    expect(turns.at(-1)?.verdicts).toEqual([]);
    expect(
      lastReply(today('unit is called reach-in by the back door', 'any history on this unit')),
    ).toBe('I have units of that name at more than one site. Say the site.');
  });

  it('says plainly that nothing is known', () => {
    expect(lastReply(today('what was done here last time'))).toBe(
      'Say the unit and the site: I find earlier visits by their names.',
    );
    expect(lastReply(today('unit is called prep table two', 'what was done here last time'))).toBe(
      'I have no earlier visit to this unit on this device.',
    );
  });

  it('stands in the note, with what was recommended then and not reported done', () => {
    const { state } = today(...HERE, 'condenser is plugged');
    expect(noted(state)).toEqual([
      'The same on August 3, 2026: condenser plugged.',
      'Recommended on August 3, 2026, not reported done: replace the door gasket, it is torn.',
    ]);
    expect(noted(today(...HERE, 'i replaced the door gasket').state)).toEqual([]);
    expect(noted(visitOn('2026-11-20', ['condenser is plugged']).state)).toEqual([]);
  });

  it('is not that of the visit itself, nor of a later one', () => {
    const old = applyEvents(AUGUST.history);
    expect(noted(old)).toEqual([
      'Recommended on June 10, 2025, not reported done: replace the contactor.',
    ]);
  });
});
