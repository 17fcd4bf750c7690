import { expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { speakVisit } from './spoken.ts';

it('tells an overcharge from a dirty condenser on a reach-in with a capillary tube', () => {
  const { state } = speakVisit([
    [
      "it's a reach-in on one thirty four a with a cap tube",
      'Reach-in. R one thirty four A. Capillary tube.',
    ],
    ['setpoint is thirty five', 'Set point 35.'],
    ['ambient eighty five', 'Ambient 85.'],
    ['what is causing this', 'Tell me the head pressure.'],
    [
      'head one ninety',
      'Head one nine zero, 190. Most likely a dirty condenser, or a condenser fan out: head 32 P S I over and condenser split 11.9 degrees over. Against it: nothing yet. Also possible: an overcharge, a heavy load or a pull-down. Not read: suction, superheat. Look through the condenser coil with a light: it tells a dirty condenser from an overcharge.',
    ],
    ['condenser is good', 'Condenser all right.'],
    ['condenser fan is running', 'Condenser fan running.'],
    ['suction twenty four, box thirty seven', 'Suction 24. Box 37.'],
    [
      'suction line twenty nine',
      'Suction line 29. Careful: superheat is near zero, so liquid may be coming back to the compressor. Check the instruments, then the feed and the airflow.',
    ],
    ['liquid line one oh four', 'Liquid line 104.'],
    [
      'what is causing this',
      'Most likely an overcharge: superheat 1.6 degrees, head 32 P S I over and condenser split 11.9 degrees over, subcooling 14.9 degrees over. Against it: nothing yet. No quick check tells more: deal with the likeliest, one change at a time, and read again.',
    ],
  ]);
  const note = noteText(draftNote(state));
  expect(note).toContain('Condenser: all right.');
  expect(note).toContain('Likely, by the readings before work: overcharge.');
});
