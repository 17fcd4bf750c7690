import { expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { speakVisit } from './spoken.ts';

it('finds the restriction on a walk-in freezer with an expansion valve, and follows it to the end', () => {
  const { state } = speakVisit([
    ['site is Harbor Street Deli', 'Site: Harbor Street Deli.'],
    [
      "it's a walk-in freezer on four oh four a with a TXV",
      'Walk-in freezer. R four oh four A. Thermostatic expansion valve.',
    ],
    [
      'what should i check next',
      'Look before the gauges go on: fans, ice, dirt, doors. Tell me what you see.',
    ],
    ['evaporator is clean', 'Evaporator all right.'],
    ['evaporator fan is running', 'Evaporator fan running.'],
    ['ambient eighty', 'Ambient eight zero, 80.'],
    ['head two hundred, suction eight, box ten', 'Head 200. Suction 8. Box 10.'],
    [
      'what is causing this',
      'Nothing leads yet. Possible: a low charge, a restriction in the liquid line or drier, an expansion valve starving the coil. Not read: superheat, subcooling. Look at the sight glass: it tells a low charge from an expansion valve starving the coil.',
    ],
    ['suction line zero', 'Suction line 0.'],
    ['liquid line seventy two', 'Liquid line 72.'],
    [
      'what is causing this',
      'Most likely a restriction in the liquid line or drier, or an expansion valve starving the coil: suction 25 P S I under, superheat 27.8 degrees over, head 11 P S I under and condenser split 3.6 degrees under. Against it: nothing yet. Look at the sight glass: it tells a restriction in the liquid line or drier from an expansion valve starving the coil.',
    ],
    ['filter dryer is sweating', 'Filter drier wet.'],
    [
      'what is causing this',
      'Most likely a restriction in the liquid line or drier: filter drier wet, suction 25 P S I under, superheat 27.8 degrees over. Against it: nothing yet. Also possible: an expansion valve starving the coil. No quick check tells more: deal with the likeliest, one change at a time, and read again.',
    ],
    ["that's my before", 'Marked as before: 6 readings.'],
    ['i replaced the filter dryer', 'Filter drier replaced.'],
    [
      'what should i check next',
      'One change at a time: let it settle, then read head, suction and box again.',
    ],
    ['@ 15', ''],
    ['head two ten, suction twenty nine, box five', 'Head 210. Suction 29. Box 5.'],
    ['suction line two', 'Suction line 2.'],
    ['liquid line eighty three', 'Liquid line 83.'],
    [
      'what is causing this',
      'Nothing is off so far: superheat about right, subcooling about right, head about right. Let it run, read the box again, and mark the after once it is steady.',
    ],
    ['mark this as after', 'Marked as after: 5 readings.'],
  ]);
  const note = noteText(draftNote(state));
  expect(note).toContain('Filter drier: wet.');
  expect(note).toContain('Likely, by the readings before work: restricted liquid line or drier.');
  expect(note).toContain('Filter drier replaced.');
});
