import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Utterance } from '../../core/language/utterance.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteAloud } from '../../core/note/note-aloud.ts';
import { noteText } from '../../core/note/note-text.ts';
import type { PartId } from '../../core/terms/names.ts';
import { isSetting } from '../../core/terms/quantities.ts';
import { visit } from '../advice/random-visits.ts';
import { REACH_IN, read, readings, unitIs, visitOf, WARM } from '../advice/visits.ts';
import { commanding, utteranceOf, working } from '../support/utterances.ts';
import { linesOf, rowsOf } from './note-lines.ts';

const memo = (...memos: string[]): Utterance => utteranceOf({ memos });

/** A condenser that was cleaned: everything read before and after. */
const CLEANED: readonly Utterance[] = [
  REACH_IN,
  unitIs(
    { fact: 'site', value: 'Harbor Street Deli' },
    { fact: 'unit', value: 'reach-in by the back door' },
    { fact: 'nameplate', item: 'charge', value: 38, unit: 'oz' },
  ),
  memo('customer says it runs all day'),
  WARM,
  readings(read('productTemp', 45, 'degF')),
  utteranceOf({ findings: [{ part: 'condenser', state: 'plugged', words: '' }] }),
  commanding({ do: 'markBefore' }),
  working('brush'),
  memo('condenser fan guard has a bent corner'),
  readings(read('refrigerantAdded', 2, 'oz'), read('refrigerantAdded', 1.5, 'oz')),
  readings({ ...read('refrigerantRecovered', 1, 'oz'), refrigerant: 'R-134a' }),
  readings(
    read('ambientTemp', 83, 'degF'),
    read('headPressure', 158, 'psi'),
    read('suctionPressure', 13, 'psi'),
    read('boxTemp', 36, 'degF'),
  ),
  commanding({ do: 'markAfter' }),
  utteranceOf({ recommendations: [{ do: 'replace', part: 'doorGasket', words: '' }] }),
];

/** A visit that went wrong in every way a note must own up to. */
const RAGGED: readonly Utterance[] = [
  unitIs({ fact: 'refrigerant', value: 'R-290' }),
  utteranceOf({
    work: [
      { did: 'isolate', part: 'defrostHeater', words: '' },
      { did: 'clean', part: 'drainLine', words: '' },
    ],
  }),
  utteranceOf({ findings: [{ part: 'highPressureSwitch', state: 'tripped', words: '' }] }),
  utteranceOf({ findings: [{ part: 'fan', state: 'noisy', unresolved: true, words: '' }] }),
  memo('jumpered the door switch to test'),
  utteranceOf({ doubts: [{ ...read('headPressure', 840, 'psi'), why: 'outOfRange' }] }),
  utteranceOf({ doubts: [{ ...read('suctionPressure', 5, 'psi'), why: 'hearsay' }] }),
  utteranceOf({ text: 'seventeen', unclaimed: ['17'] }),
];

describe('the note of a cleaned condenser', () => {
  const state = visitOf(CLEANED);

  it('names the unit and what was complained of', () => {
    expect(draftNote(state).title).toBe(
      'Service visit: reach-in by the back door, Harbor Street Deli',
    );
    expect(linesOf(state, 'unit')).toEqual([
      'Site: Harbor Street Deli.',
      'Unit: reach-in by the back door.',
      '2-door reach-in, thermostatic expansion valve.',
      'Refrigerant R-134a.',
      'Nameplate: charge 38 oz (2 lb 6 oz).',
    ]);
    expect(linesOf(state, 'complaint')).toEqual(['Customer says it runs all day.']);
  });

  it('keeps both columns as they were read', () => {
    expect(rowsOf(state, 'before')).toMatchObject({
      ambient: ['88 °F'],
      'head pressure': ['192 psi'],
      'suction pressure': ['14 psi'],
      'box temperature': ['44 °F'],
    });
    expect(rowsOf(state, 'after')).toMatchObject({
      'head pressure': ['158 psi'],
      'box temperature': ['36 °F'],
    });
    expect(linesOf(state, 'before')).toEqual(['The box was at 44 °F.']);
  });

  it('tells what was found, done and recommended', () => {
    expect(linesOf(state, 'findings')).toEqual([
      'Condenser: plugged.',
      'Condenser fan guard has a bent corner.',
      'Likely, by the readings before work: dirty condenser.',
    ]);
    expect(linesOf(state, 'work')).toEqual(['Condenser brushed.']);
    expect(linesOf(state, 'recommendations')).toEqual(['Replace the door gasket.']);
    expect(linesOf(state, 'product')).toEqual(['Product 45 °F before work.']);
  });

  it('shows what changed, with the split and what it should be', () => {
    const rows = rowsOf(state, 'change');
    expect(rows['head pressure']?.slice(0, 3)).toEqual(['192 psi', '158 psi', 'down 34 psi']);
    expect(rows['box temperature']?.slice(0, 3)).toEqual(['44 °F', '36 °F', 'down 8 °F']);
    expect(rows['condenser split']?.at(3)).toBe('30 °F');
    expect(linesOf(state, 'change').join(' ')).toContain('The box came down from 44 °F to 36 °F.');
  });

  it('accounts for every ounce', () => {
    expect(linesOf(state, 'refrigerant')).toEqual([
      'Added 2 oz of R-134a.',
      'Added 1.5 oz of R-134a.',
      'Recovered 1 oz of R-134a.',
      'R-134a: in 3.5 oz, out 1 oz, net 2.5 oz added.',
    ]);
  });

  it('leaves out what is empty, and asks for what was not read again', () => {
    const ids = draftNote(state).sections.map(({ id }) => id);
    expect(ids).not.toContain('cautions');
    expect(linesOf(state, 'open')).toEqual(['Not read again after the work: product temperature.']);
  });

  it('is plain text of at most 72 columns', () => {
    const text = noteText(draftNote(state));
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(72);
    expect(text).toMatch(
      /^Service visit: reach-in by the back door, Harbor Street Deli\n=+\n\nFor the customer\n/,
    );
    expect(text).toContain('  head pressure            192 psi');
  });
});

describe('the note of a ragged visit', () => {
  const state = visitOf(RAGGED);

  it('says what is missing where it matters', () => {
    expect(linesOf(state, 'before')).toEqual(['No readings before work were recorded.']);
    expect(linesOf(state, 'after')).toEqual([
      'No readings after work were recorded.',
      'High-pressure switch: tripped.',
      'Fan: noisy.',
    ]);
    expect(linesOf(state, 'complaint')).toEqual([
      'Reported, not measured: suction pressure 5 psi.',
    ]);
  });

  it('lists everything that is still open', () => {
    expect(linesOf(state, 'open')).toEqual([
      'The site was not stated.',
      'Heard but not confirmed: head pressure 840 psi.',
      'A number has no meaning yet: 17, said in "seventeen".',
      'Work was done before any reading: nothing shows how the unit ran before.',
      'Reported tripped and not reported put right: high-pressure switch.',
      'Not reported put back: defrost heater isolated.',
      'Check that it was put back: jumpered the door switch to test.',
      'Not said which fan is meant: noisy.',
    ]);
  });

  it('tells numbers of one sentence together, and aloud only how many there are', () => {
    const over = (text: string, ...unclaimed: readonly string[]) =>
      utteranceOf({ text, unclaimed });
    const told = visitOf([
      over('seventeen then twenty two over there', '17', '22'),
      over('nine', '9'),
    ]);
    expect(linesOf(told, 'open')).toEqual([
      'Numbers have no meaning yet: 17 and 22, said in "seventeen then twenty two over there".',
      'A number has no meaning yet: 9, said in "nine".',
    ]);
    const aloud = noteAloud(draftNote(told)).text;
    expect(aloud).toContain('Three numbers still need a name, they are on the screen.');
    expect(aloud).not.toMatch(/17|seventeen/);
  });

  it('finds nothing in a question or in the name of a thing', () => {
    const remark = (memo: string) => utteranceOf({ text: memo, remarks: [memo] });
    const told = visitOf([
      utteranceOf({ text: 'box is warm', memos: ['box is warm'] }),
      remark('fins are full of flour'),
      remark('is that normal'),
      remark('should i put gauges on it'),
      remark('new filter drier'),
      remark('new spring put in the hinge'),
    ]);
    expect(linesOf(told, 'findings')).toEqual([
      'Fins are full of flour.',
      'New spring put in the hinge.',
    ]);
    expect(linesOf(told, 'asSaid')).toEqual(['New filter drier.']);
  });

  it('stops listing what was put right', () => {
    const mended = visitOf([
      ...RAGGED,
      utteranceOf({
        work: [
          { did: 'reset', part: 'highPressureSwitch', words: '' },
          { did: 'restore', part: 'defrostHeater', words: '' },
        ],
      }),
    ]);
    const open = linesOf(mended, 'open').join(' ');
    expect(open).not.toContain('high-pressure switch');
    expect(open).not.toContain('defrost heater');
  });

  it('carries the cautions with what to do', () => {
    const cautions = linesOf(state, 'cautions').join(' ');
    expect(cautions).toMatch(/this refrigerant burns/);
    expect(cautions).toMatch(/never torch them out/);
    expect(cautions).toMatch(/Do not keep resetting it/);
  });

  it('names readings that were not taken again', () => {
    const once = visitOf([REACH_IN, WARM, working('brush'), readings(read('boxTemp', 36, 'degF'))]);
    expect(linesOf(once, 'open')).toContain(
      'Not read again after the work: ambient, head pressure and suction pressure.',
    );
  });

  it('asks for the insulation again only where what it proves was worked on', () => {
    const after = (part: PartId) =>
      linesOf(
        visitOf([
          REACH_IN,
          readings(read('insulationResistance', 100, 'Mohm'), read('boxTemp', 55, 'degF')),
          utteranceOf({ work: [{ did: 'replace', part, words: '' }] }),
          readings(read('boxTemp', 40, 'degF')),
        ]),
        'open',
      ).join(' ');
    expect(after('contactor')).not.toContain('insulation resistance');
    expect(after('compressor')).toContain('Not read again after the work: insulation resistance.');
  });
});

describe('the note of what was told twice, or by others', () => {
  it('says a finding once, however often it was told', () => {
    const torn = utteranceOf({ findings: [{ part: 'doorGasket', state: 'failed', words: '' }] });
    const shot = utteranceOf({ remarks: ['the strip curtain is shot'] });
    expect(linesOf(visitOf([torn, shot, torn, shot]), 'findings')).toEqual([
      'Door gasket: failed.',
      'The strip curtain is shot.',
    ]);
  });

  it('puts what others said under the complaint, and marks that nobody measured it', () => {
    const state = visitOf([
      memo("it's been warm since friday"),
      working('brush'),
      memo('customer says it was at fifty'),
      memo('owner says they had a guy out in may'),
      memo('jumpered the door switch to test'),
    ]);
    expect(linesOf(state, 'complaint')).toEqual([
      "It's been warm since friday.",
      'Reported, not measured: customer says it was at fifty.',
      'Owner says they had a guy out in may.',
    ]);
    expect(linesOf(state, 'findings')).toEqual(['Jumpered the door switch to test.']);
  });

  it('keeps hearsay that was confirmed as reported, and never as what the box was at', () => {
    const hearsay = utteranceOf({ doubts: [{ ...read('boxTemp', 60, 'degF'), why: 'hearsay' }] });
    const food = utteranceOf({ doubts: [{ ...read('productTemp', 51, 'degF'), why: 'hearsay' }] });
    const yes = commanding({ do: 'yes' });
    const state = visitOf([hearsay, yes, food, yes, readings(read('headPressure', 190, 'psi'))]);
    const before = draftNote(state).sections.find(({ id }) => id === 'before');
    expect(before?.lines).toEqual([]);
    expect(before?.table?.rows[0]).toEqual(['box temperature', '60 °F, as reported']);
    expect(linesOf(state, 'product')).toEqual(['Product 51 °F before work, as reported.']);
    expect(linesOf(state, 'office').join(' ')).not.toContain('60');
  });
});

describe('the note of any visit', () => {
  it('never prints a hole', () => {
    fc.assert(
      fc.property(visit, (state) => {
        const text = noteText(draftNote(state));
        expect(text).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
      }),
      { numRuns: 400 },
    );
  });

  it('holds every reading’s number and every ounce', () => {
    fc.assert(
      fc.property(visit, (state) => {
        const text = noteText(draftNote(state)).replace(/\s+/g, ' ');
        for (const { reading } of state.readings) {
          if (reading.value === undefined || isSetting(reading.quantity)) continue;
          expect(text).toContain(String(reading.value));
        }
      }),
      { numRuns: 400 },
    );
  });
});
