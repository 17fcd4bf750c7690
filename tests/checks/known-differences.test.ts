import { describe, expect, it } from 'vitest';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { KNOWN_DIFFERENCES } from './known-differences.ts';
import { ALL_PROPERTY_ROWS, KNOWN_PROPERTY_DIFFERENCES } from './property-checks.ts';
import { SATURATION_SOURCES, allowedK, temperatureAt } from './saturation-checks.ts';

const ROWS = KNOWN_DIFFERENCES.map(({ pair, offK }) => ({ pair, offK, name: pair.join(' ') }));

describe('prints that differ', () => {
  it.each(ROWS)('$name: by $offK K, and by more than its print allows', ({ pair, offK }) => {
    const off = temperatureAt(pair) - pair[2];
    expect(Math.abs(off - offK)).toBeLessThan(0.006);
    const groups = SATURATION_SOURCES.filter(({ pairs }) =>
      pairs.some((each) => each.join() === pair.join()),
    );
    expect(groups.length).toBeGreaterThan(0);
    for (const group of groups) expect(Math.abs(off)).toBeGreaterThan(allowedK(pair, group));
  });

  it.each(Object.entries(KNOWN_PROPERTY_DIFFERENCES))('%s: by %s %%', (title, percent) => {
    const rows = ALL_PROPERTY_ROWS.filter((row) => row.title === title);
    expect(rows).toHaveLength(1);
    for (const { found, gives, within } of rows) {
      expect(Math.abs(100 * (found() / gives - 1) - percent)).toBeLessThan(0.006);
      expect(Math.abs(found() - gives)).toBeGreaterThan(within);
    }
  });

  const blends = REFRIGERANTS.filter((id) => FLUIDS[id].composition.includes('/'));

  it.each(blends)("%s: the fluid's own file states the worst of them", (id) => {
    const own = KNOWN_DIFFERENCES.filter(({ pair }) => pair[0] === id);
    const worst = Math.max(0, ...own.map(({ offK }) => Math.abs(offK)));
    const stated = FLUIDS[id].chartsDiffer?.temperature ?? 0;
    expect(stated).toBeGreaterThanOrEqual(worst - 0.01);
    if (worst > 0) expect(stated).toBeLessThan(worst + 0.02);
  });
});
