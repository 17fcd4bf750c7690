import { describe, expect, it } from 'vitest';
import { draftNote } from '../../../core/note/draft-note.ts';
import { noteText } from '../../../core/note/note-text.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import { createStamp } from '../../support/stamp.ts';

/** Line for line: what the technician says, and what comes back. */
function hold(dialogue: readonly (readonly [said: string, reply: string])[]): Turn {
  const stamp = createStamp();
  let last: Turn | null = null;
  for (const [words, reply] of dialogue) {
    const { state, memory } = last ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    last = takeTurn({ state, memory, words, stamp });
    expect(last.reply.text).toBe(reply);
  }
  if (!last) throw new Error('a dialogue has at least one line');
  return last;
}

const LIVE =
  'Treat it as live: lock out, bleed the capacitors with a resistor, and prove the meter before and after.';

describe('following the power by voice', () => {
  it('finds the open switch in a reach-in, from the supply on, and keeps it for the note', () => {
    const { state } = hold([
      ["it's a reach in on one thirty four a", 'Reach-in. R-134a.'],
      ['compressor is not running', 'Compressor not running.'],
      [
        'is the high pressure switch open',
        `${LIVE} Without the supply no voltage settles anything. Put the leads on the line side first.`,
      ],
      [
        'one fifteen at the line side',
        'Line side 115 V. Put the leads across the high-pressure switch.',
      ],
      [
        'zero across the high pressure switch',
        'High-pressure switch 0 V. Zero there settles nothing: another one open reads the same. Next, see whether the condenser fan runs.',
      ],
      ['condenser fan is not running', 'Condenser fan not running.'],
      [
        'what should i check next',
        'It can be the neutral, the temperature control or the low-pressure switch. Next, see whether the evaporator fan runs.',
      ],
      ['evaporator fan is running', 'Evaporator fan running.'],
      [
        "what's next",
        'It can be the temperature control or the low-pressure switch. Next, put the leads across the temperature control.',
      ],
      ['one fifteen across the thermostat', 'Temperature control 115 V.'],
      [
        "what's next",
        'It is the temperature control: open. It may only be satisfied: compare the box with its set point.',
      ],
    ]);
    expect(noteText(draftNote(state))).toContain('By the voltages: the temperature control.');
  });

  it('tells why not to keep resetting a high-pressure switch that it finds open', () => {
    const { state } = hold([
      ["it's a prep table", 'Prep table.'],
      ['one fifteen at the line side', `Line side 115 V. ${LIVE}`],
      ['one fifteen across the high pressure switch', 'High-pressure switch 115 V.'],
      [
        'is the high pressure switch open',
        'Do not keep resetting it: a safety that opens has a cause. 115 V across the high-pressure switch with power at the line: it is open. Find what drove head up before it is reset.',
      ],
    ]);
    expect(noteText(draftNote(state))).toContain('By the voltages: the high-pressure switch.');
  });
});
