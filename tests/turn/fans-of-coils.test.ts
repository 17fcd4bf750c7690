import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const fans = (...words: readonly string[]): readonly string[] =>
  timedVisit(...words.map((said, minute): TimedLine => [minute, said])).last.state.findings.flatMap(
    ({ finding: { part } }) => (/fan/i.test(part) ? [part] : []),
  );

describe('a fan right behind its coil', () => {
  it('is of that coil, whichever was spoken of before', () => {
    expect(
      fans(
        "condenser's clean, fan's on",
        'evap coil clean, both fans going',
        'condenser dirty, fan running',
      ),
    ).toEqual(['condenserFan', 'evaporatorFan', 'condenserFan']);
  });

  it('is the one that is named', () => {
    expect(fans("evap coil clean, condenser fan's on")).toEqual(['condenserFan']);
  });

  it('is asked about where no coil is named', () => {
    expect(fans('compressor is running, fan is running')).toEqual(['fan']);
  });
});
