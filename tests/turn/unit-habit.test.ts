import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheet } from '../../core/advice/sheet.ts';
import { toBase } from '../../core/units/convert.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { latestAmount } from '../../core/visit/views.ts';
import { draftNote } from '../../core/note/draft-note.ts';
import { noteText } from '../../core/note/note-text.ts';
import { timedVisit } from '../support/timed-visit.ts';

const told = (...lines: readonly string[]) =>
  timedVisit(...lines.map((line, minute) => [minute, line] as const)).last;
const headAfter = (...lines: readonly string[]) =>
  latestAmount(told(...lines).state, 'headPressure');

describe('the unit in which a kind of value is told', () => {
  it('is that of the bare numbers behind it, which is said once', () => {
    expect(told('head is fourteen point six bar').reply.text).toBe(
      'Head 14.6. Taking bar from here on; say otherwise.',
    );
    expect(told('ambient is twenty six celsius').reply.text).toBe(
      'Ambient 26. Taking Celsius from here on; say otherwise.',
    );
    const later = told(
      'head is fourteen point six bar',
      'head nine point seven, suction one point six',
    );
    expect(later.reply.text).not.toContain('Taking');
    expect(latestAmount(later.state, 'headPressure')).toEqual({ value: 9.7, unit: 'bar' });
  });

  it('is of that kind alone: bar says nothing of degrees, kilos and microns nothing of bar', () => {
    const bar = told('head is fourteen bar', 'ambient eighty eight');
    expect(latestAmount(bar.state, 'ambientTemp')).toEqual({ value: 88, unit: 'degF' });
    expect(headAfter('recovered three point nine kilos', 'head one ninety')?.unit).toBe('psi');
    expect(headAfter('down to three hundred microns', 'head one ninety')?.unit).toBe('psi');
    expect(headAfter('vacuum is point five millibar', 'head one ninety')?.unit).toBe('psi');
  });

  it('goes the other way round too, and in kilopascals', () => {
    const back = told('head is fourteen bar', 'head is one ninety psi', 'suction fourteen');
    expect(latestAmount(back.state, 'suctionPressure')).toEqual({ value: 14, unit: 'psi' });
    expect(headAfter('head is fourteen hundred kilopascals', 'head nine hundred')).toEqual({
      value: 900,
      unit: 'kPa',
    });
  });

  it('goes with the reading that is taken back', () => {
    const undone = told('head is fourteen bar', 'take that back');
    expect(undone.reply.text).toBe(
      'Taken back: head 14 bar. Taking psi from here on; say otherwise.',
    );
    expect(undone.state.settings.units).toBe('us');
  });

  it('is not turned by what is printed on a control, once gauges were read without a unit', () => {
    expect(headAfter('head one ninety', 'high cutout is sixteen bar', 'head one eighty')).toEqual({
      value: 180,
      unit: 'psi',
    });
    expect(headAfter('high cutout is sixteen bar', 'head fourteen')?.unit).toBe('bar');
  });

  it('leaves asked what the gauge cannot read in it', () => {
    const asked = told('head is fourteen bar', 'head one ninety two');
    expect(asked.reply.text).toContain('192');
    expect(latestAmount(asked.state, 'headPressure')?.value).toBe(14);
    expect(
      headAfter('head is fourteen bar', 'head one ninety two', 'head one ninety two psi'),
    ).toEqual({ value: 192, unit: 'psi' });
  });

  it('is not turned by somebody else’s word', () => {
    const { state } = told('customer says the box was at four celsius', 'yes', 'box forty one');
    expect(latestAmount(state, 'boxTemp')).toEqual({ value: 41, unit: 'degF' });
  });
});

describe('told in which units to take bare numbers', () => {
  it('does, and says so', () => {
    const turn = told('head one ninety', 'use bar and celsius');
    expect(turn.reply.text).toBe('Taking bar and Celsius from here on; say otherwise.');
    expect(turn.state.settings.units).toBe('si');
    expect(told('head is twelve bar', 'no, psi').state.settings.units).toBe('us');
    expect(told('use metric', 'take that back').state.settings.units).toBe('us');
  });

  it('keeps a unit that answers which unit a number was in', () => {
    const { state } = told('suction minus four', 'psi');
    expect(state.doubts).toHaveLength(0);
    expect(latestAmount(state, 'suctionPressure')).toEqual({ value: -4, unit: 'psi' });
  });
});

describe('a visit told partly in bar', () => {
  const PSI_A_BAR = 14.503774;
  const pressures = fc.record({
    before: fc.tuple(fc.integer({ min: 150, max: 300 }), fc.integer({ min: 5, max: 40 })),
    after: fc.tuple(fc.integer({ min: 100, max: 250 }), fc.integer({ min: 5, max: 40 })),
    inBar: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
  });
  const line = (name: string, psi: number, isBar: boolean): string =>
    isBar ? `${name} ${(psi / PSI_A_BAR).toFixed(3)} bar` : `${name} ${psi} psi`;
  type Told = readonly [readonly [number, number], readonly [number, number], readonly boolean[]];
  const visit = ([before, after, bar]: Told): VisitState =>
    told(
      'reach in on one thirty four a with a txv',
      line('head', before[0], bar[0] === true),
      line('suction', before[1], bar[1] === true),
      'i brushed the condenser',
      line('head', after[0], bar[2] === true),
      line('suction', after[1], bar[3] === true),
      'use psi',
    ).state;
  const rows = (state: VisitState) =>
    sheet(state).map(({ about, before, after, change, unit, changeUnit }) => ({
      about,
      before: before === null ? null : toBase({ value: before, unit }),
      after: after === null ? null : toBase({ value: after, unit }),
      change: change === null ? null : toBase({ value: change, unit: changeUnit }),
    }));

  it('comes to the same as one told in psi alone', () => {
    fc.assert(
      fc.property(pressures, ({ before, after, inBar }) => {
        const mixed = rows(visit([before, after, inBar]));
        const plain = rows(visit([before, after, []]));
        expect(mixed.map(({ about }) => about)).toEqual(plain.map(({ about }) => about));
        mixed.forEach((row, at) => {
          for (const key of ['before', 'after', 'change'] as const) {
            const [one, other] = [row[key], plain[at]?.[key] ?? null];
            if (one === null || other === null) expect(one).toBe(other);
            else expect(Math.abs(one - other)).toBeLessThan(0.8);
          }
        });
      }),
      { numRuns: 60 },
    );
  });
});

it('writes the note in the units that were told', () => {
  const { state } = told(
    'reach in on one thirty four a with a txv',
    'ambient twenty six celsius, head is fourteen point six bar, suction one point two',
    'i brushed the condenser',
    'ambient twenty seven, head ten, suction one point one',
  );
  const text = noteText(draftNote(state, []));
  expect(text).toMatch(/head pressure +14.6 bar +10 bar +down 4.6 bar/);
  expect(text).not.toMatch(/psi|°F/);
});
