import { describe, expect, it } from 'vitest';

import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { createStamp } from '../support/stamp.ts';
import { linesOf } from './note-lines.ts';

const OVERFULL = [
  "it's a walk in cooler on four oh four a with a txv",
  'set point thirty eight',
  'ambient seventy five, head two sixty eight, suction seventy four, box forty two',
  'suction line forty three, liquid line eighty seven',
  "that's my before",
];

function lastTurn(...sentences: readonly string[]): Turn {
  const stamp = createStamp();
  const turns = sentences.reduce<readonly Turn[]>((before, words) => {
    const { state, memory } = before.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...before, takeTurn({ state, memory, words, stamp })];
  }, []);
  const last = turns.at(-1);
  if (last === undefined) throw new Error('say at least one line');
  return last;
}

const visit = (...sentences: readonly string[]): VisitState => lastTurn(...sentences).state;

const written = (...sentences: readonly string[]): string =>
  noteText(draftNote(visit(...sentences)));

describe('the cause in the note', () => {
  it('is the story that is told behind the work, which asks nothing and stands in those words', () => {
    const worked = [...OVERFULL, "condenser fan motor's dead", 'replaced the condenser fan motor'];
    const story = 'so what happened was the condenser fan died and it tripped on high head';
    const { verdicts, state } = lastTurn(...worked, story);
    expect(verdicts.filter(({ kind, ...rest }) => kind === 'known' && 'causes' in rest)).toEqual(
      [],
    );
    expect(state.findings.map(({ finding }) => finding.part)).toEqual(['condenserFanMotor']);
    const note = noteText(draftNote(state)).replaceAll(/\s+/g, ' ');
    expect(note).toContain('Cause: the condenser fan died and it tripped on high head.');
  });

  it('told before any work is what was found as well', () => {
    const { state, verdicts } = lastTurn(
      'what happened was the condenser fan died and it tripped on high head',
    );
    expect(verdicts).toEqual([]);
    expect(state.findings.map(({ finding }) => finding.part)).toEqual([
      'condenserFan',
      'highPressureSwitch',
    ]);
  });

  it('is what the readings make likely, until the technician says what it was', () => {
    expect(written(...OVERFULL)).toContain('Likely, by the readings before work: overcharge.');
    const told = written(...OVERFULL, 'the cause was air in the system');
    expect(told).toContain('Cause: air in the system.');
    expect(told).not.toMatch(/likely/i);
  });

  const toldTo = (reader: 'customer' | 'findings', ...sentences: readonly string[]): string =>
    linesOf(visit(...sentences), reader).join(' ');

  it('is every fault that was found and mended, whatever was mended before it was found', () => {
    const told = toldTo(
      'customer',
      ...OVERFULL,
      "condenser fan motor's dead",
      'replaced the condenser fan motor',
      'the condenser is plugged',
      'cleaned the condenser',
      'the door gasket is torn',
      'replaced the door gasket',
    );
    expect(told).toContain('the fan that blows the heat away was not running');
    expect(told).toContain('the coil that gets rid of the heat was clogged');
    expect(told).toContain('the door seal was torn');
  });

  it('is each that was named and worked on; one that was only thought better of is not', () => {
    const first = [...OVERFULL, 'the cause is a dirty condenser'];
    const both = [...first, 'cleaned the condenser', 'the cause is air in the system'];
    expect(toldTo('findings', ...both)).toContain('Causes: dirty condenser and air in the system.');
    expect(toldTo('customer', ...both)).toContain(
      'The cause was dirt on the coil that gets rid of the heat and air in the refrigerant piping.',
    );
    const other = toldTo('findings', ...first, 'the cause is air in the system');
    expect(other).toContain('Cause: air in the system.');
  });

  it('leaves out what was seen last and not mended', () => {
    const told = toldTo(
      'customer',
      ...OVERFULL,
      "condenser fan motor's dead",
      'replaced the condenser fan motor',
      'the door gasket is torn',
    );
    expect(told).toContain('the fan that blows the heat away');
    expect(told).not.toContain('seal was torn');
  });

  it('stands before what was seen', () => {
    const told = written(...OVERFULL, 'evaporator is iced', 'the cause is a failed defrost');
    expect(told).toMatch(/Cause: a failed defrost\. Found evaporator iced\s+up\./);
  });

  it('is taken back like anything else', () => {
    expect(written(...OVERFULL, "it's low on charge", 'undo')).toContain(
      'Likely, by the readings before work: overcharge.',
    );
  });
});
