import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  dateAt,
  dateOfDays,
  daysInMonth,
  daysOf,
  isoDate,
  parseIsoDate,
  weekdayOf,
} from '../../core/units/civil-date.ts';

const MS_A_DAY = 86_400_000;
/** Years 1 to 9999, so that four hundred years pass many times over. */
const FIRST = -719_162;
const LAST = 2_932_896;
const RUNS = { numRuns: 5000 };
const someDay = fc.integer({ min: FIRST, max: LAST });

const iso = (days: number): string => new Date(days * MS_A_DAY).toISOString().slice(0, 10);

describe('days by the calendar', () => {
  it('are those of the engine’s own, there and back', () => {
    fc.assert(
      fc.property(someDay, (days) => {
        const date = dateOfDays(days);
        expect(isoDate(date)).toBe(iso(days));
        expect(daysOf(date)).toBe(days);
        expect(parseIsoDate(isoDate(date))).toEqual(date);
      }),
      RUNS,
    );
  });

  it('hold around every end of February and of the year from 1896 to 2104', () => {
    for (let year = 1896; year <= 2104; year += 1) {
      const around = [Date.UTC(year, 1, 27), Date.UTC(year, 11, 30)].map((at) => at / MS_A_DAY);
      for (const first of around) {
        for (let days = first; days < first + 4; days += 1) {
          expect(isoDate(dateOfDays(days))).toBe(iso(days));
        }
      }
    }
  });

  it('fall on the engine’s weekday', () => {
    fc.assert(
      fc.property(someDay, (days) => {
        const sundayFirst = new Date(days * MS_A_DAY).getUTCDay();
        expect((weekdayOf(dateOfDays(days)) + 1) % 7).toBe(sundayFirst);
      }),
      RUNS,
    );
  });

  it('move by days and months as the engine moves them, the end of a month held', () => {
    const moved = fc.integer({ min: -500, max: 500 });
    fc.assert(
      fc.property(fc.integer({ min: FIRST + 20_000, max: LAST - 20_000 }), moved, (days, by) => {
        expect(isoDate(addDays(dateOfDays(days), by))).toBe(iso(days + by));
        const from = new Date(days * MS_A_DAY);
        const wanted = new Date(from);
        wanted.setUTCDate(1);
        wanted.setUTCMonth(from.getUTCMonth() + by);
        const last = new Date(wanted);
        last.setUTCMonth(last.getUTCMonth() + 1);
        last.setUTCDate(0);
        wanted.setUTCDate(Math.min(from.getUTCDate(), last.getUTCDate()));
        expect(isoDate(addMonths(dateOfDays(days), by))).toBe(wanted.toISOString().slice(0, 10));
      }),
      RUNS,
    );
    expect(isoDate(addMonths({ year: 2027, month: 1, day: 31 }, 1))).toBe('2027-02-28');
    expect(isoDate(addMonths({ year: 2028, month: 1, day: 31 }, 1))).toBe('2028-02-29');
    expect(daysInMonth(1900, 2)).toBe(28);
  });

  it('are the local ones: half past six in the evening of the thirtieth in Denver is the thirty-first in UTC', () => {
    const at = Date.UTC(2026, 11, 31, 1, 30);
    expect(isoDate(dateAt(at, -7 * 60))).toBe('2026-12-30');
    expect(isoDate(dateAt(at, 0))).toBe('2026-12-31');
    const zones = ['America/Denver', 'Asia/Kathmandu', 'Pacific/Kiritimati', 'America/St_Johns'];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: Date.UTC(2100, 0) }),
        fc.constantFrom(...zones),
        (moment, timeZone) => {
          const shown = new Intl.DateTimeFormat('en-US', {
            timeZone,
            timeZoneName: 'longOffset',
          }).formatToParts(moment);
          const part = (type: string): string =>
            shown.find((each) => each.type === type)?.value ?? '';
          const [, sign = '+', hours = '0', minutes = '0', seconds = '0'] =
            /GMT([+-])(\d+):(\d+)(?::(\d+))?/.exec(part('timeZoneName')) ?? [];
          const size = Number(hours) * 60 + Number(minutes) + Number(seconds) / 60;
          const { year, month, day } = dateAt(moment, sign === '-' ? -size : size);
          expect(`${month}/${day}/${year}`).toBe(`${part('month')}/${part('day')}/${part('year')}`);
        },
      ),
      { numRuns: 300 },
    );
  });

  it.each(['2026-02-29', '2026-13-01', '2026-1-05', 'tomorrow', '2026-00-10'])(
    '%s is no day',
    (text) => {
      expect(parseIsoDate(text)).toBeNull();
    },
  );
});
