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

describe('a fan at a condensing unit that stands apart', () => {
  const atBox = [
    'walk-in cooler on four oh four a with a txv',
    "condensing unit's up on the roof",
    'evap fans are both turning',
  ] as const;

  const found = (...said: readonly string[]): readonly string[] =>
    timedVisit(...said.map((words, minute): TimedLine => [minute, words])).last.state.findings.map(
      ({ finding: { part, state } }) => `${part} ${state}`,
    );

  it('is that of the condenser once the air up there was read', () => {
    expect(found(...atBox, "it's ninety one up here", "one of the fans isn't turning")).toEqual([
      'evaporatorFan running',
      'condenserFan notRunning',
    ]);
  });

  it('is that of the box again behind the box', () => {
    const said = ["it's ninety one up here", 'box is forty', "fan's noisy"];
    expect(found(...atBox, ...said).at(-1)).toBe('evaporatorFan noisy');
  });
});
