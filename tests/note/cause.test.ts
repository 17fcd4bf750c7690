import { describe, expect, it } from 'vitest';

import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { createStamp } from '../support/stamp.ts';

const OVERFULL = [
  "it's a walk in cooler on four oh four a with a txv",
  'set point thirty eight',
  'ambient seventy five, head two sixty eight, suction seventy four, box forty two',
  'suction line forty three, liquid line eighty seven',
  "that's my before",
];

function visit(...sentences: readonly string[]): VisitState {
  const stamp = createStamp();
  return sentences.reduce(({ state, memory }, words) => takeTurn({ state, memory, words, stamp }), {
    state: EMPTY_VISIT,
    memory: EMPTY_MEMORY,
  }).state;
}

const written = (...sentences: readonly string[]): string =>
  noteText(draftNote(visit(...sentences)));

describe('the cause in the note', () => {
  it('is what the readings make likely, until the technician says what it was', () => {
    expect(written(...OVERFULL)).toContain('Likely, by the readings before work: overcharge.');
    const told = written(...OVERFULL, 'the cause was air in the system');
    expect(told).toContain('Cause: air in the system.');
    expect(told).not.toMatch(/likely/i);
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
