import { describe, expect, it } from 'vitest';
import { currentReading } from '../../core/advice/current.ts';
import { sheet } from '../../core/advice/sheet.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { latestAmount } from '../../core/visit/views.ts';
import { timedVisit } from '../support/timed-visit.ts';

const told = (...lines: readonly string[]) =>
  timedVisit(...lines.map((line, minute) => [minute, line] as const)).last;

const BEFORE = [
  'walk in cooler on one thirty four a with a txv',
  'ambient twenty six celsius',
  'head is fourteen point six bar',
  "coil's at twenty seven, air is twenty seven in and out",
] as const;

/**
 * R-134a between the rows of the Mechanical Engineers' Handbook, vol. 4, table 14 (21.54 °C at 600 kPa, 31.35 at 800, 39.41
 * at 1000): 27 °C is 706 kPa, 6.05 bar by the gauge; 8.4 bar by the gauge, 941 kPa, is 37.1 °C, 10.1 K over the coil.
 */
describe('the pressure of a condenser at rest', () => {
  it('is judged as it is told, against the air at its coil, and asked for by saturation', () => {
    const read = told(...BEFORE, 'standing pressure is eight point four bar');
    expect(read.reply.text).toMatch(/^Head 8\.4 standing\. .*\b10\.\d K over the coil’s own/);
    const asked = told(...BEFORE, 'what should it be standing at');
    expect(asked.reply.text).toContain('R-134a at 27 °C: 6.0');
    expect(
      told('reach in on one thirty four a', 'what should it be standing at').reply.text,
    ).toContain('ambient');
  });

  it('is no head that the unit runs at', () => {
    const { state } = told(...BEFORE, 'standing pressure is eight point four bar');
    expect(currentReading(state, 'headPressure')?.reading.value).toBe(14.6);
    expect(sheet(state).find(({ about }) => about === 'headPressure')?.before).toBe(14.6);
    expect(noteText(draftNote(state, []))).toContain('Head pressure 8.4 bar standing.');
    const low = told(
      'suction seventy four psi',
      'standing pressure is sixty psi',
      'suction seventy',
    );
    expect(low.state.doubts).toHaveLength(0);
  });

  it('is answered for a compressor that was disabled, too', () => {
    const { reply } = told(
      ...BEFORE,
      'compressor disabled',
      'head eight point four',
      'is there air in it',
    );
    expect(reply.text).toMatch(/10\.\d K over/);
    expect(told(...BEFORE, 'is there air in it').reply.text).toContain('at rest');
  });

  it('is the nitrogen’s where that is in it', () => {
    const { state } = told('nitrogen to one fifty psi', 'standing pressure is one fifty psi');
    expect(latestAmount(state, 'testPressure')).toEqual({ value: 150, unit: 'psi' });
    expect(latestAmount(state, 'headPressure')).toBeNull();
  });
});
