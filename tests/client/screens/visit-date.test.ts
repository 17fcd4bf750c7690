import { describe, expect, it } from 'vitest';
import { visitDate, withDate } from '../../../client/screens/visit-date.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';

const openedAt = new Date(2026, 10, 25, 16, 13).getTime();
const finishedAt = new Date(2026, 10, 25, 17, 2).getTime();

describe('the date of a visit', () => {
  it('names its day and both its times once it is finished', () => {
    expect(visitDate({ ...EMPTY_VISIT, openedAt })).toMatch(/2026.*13/);
    expect(visitDate({ ...EMPTY_VISIT, openedAt, finishedAt })).toMatch(/2026.*13.*02/);
    expect(visitDate(EMPTY_VISIT)).toBe('');
  });

  it('stands under the title of the note’s text', () => {
    expect(withDate('Service visit\n====\n\nUnit\n  R-134a.\n\nFound\n', 'today')).toBe(
      'Service visit\n====\ntoday\n\nUnit\n  R-134a.\n\nFound\n',
    );
  });
});
