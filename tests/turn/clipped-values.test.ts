import { describe, expect, it } from 'vitest';
import type { Turn } from '../../core/turn/turn.ts';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const said = (...words: readonly string[]): Turn =>
  timedVisit(...words.map((each, minute): TimedLine => [minute, each])).last;
const last = ({ state }: Turn): unknown => {
  const reading = state.readings.at(-1)?.reading;
  return [reading?.quantity, reading?.value, reading?.unit];
};

describe('a weight in fewer words than it has', () => {
  const SCALE = 'scale forty one pounds six ounces';

  it.each([
    // Sixteen ounces a pound: 36 lb 12 oz, 41 lb 6 oz, 4 lb 10 oz.
    ['scale now thirty six twelve', 'cylinderWeight', 588],
    ['scale forty one six', 'cylinderWeight', 662],
    ['added four ten', 'refrigerantAdded', 74],
  ])('is pounds and ounces behind one that was: %s', (words, quantity, ounces) => {
    expect(last(said(SCALE, words))).toEqual([quantity, ounces, 'oz']);
  });

  it('is one question before, which yes answers', () => {
    const asked = said('walk in cooler', 'scale thirty six twelve');
    expect(asked.reply.text).toBe(
      'Cylinder weight 36 lb 12 oz? Say yes to keep it, or say it again.',
    );
    expect(last(said('walk in cooler', 'scale thirty six twelve', 'yes'))).toEqual([
      'cylinderWeight',
      588,
      'oz',
    ]);
  });

  it('is asked about where it may name a refrigerant', () => {
    const asked = said(SCALE, 'added four pounds ten', 'put in four ten');
    expect(asked.state.doubts.map(({ doubt }) => [doubt.quantity, doubt.value])).toEqual([
      ['refrigerantAdded', 74],
    ]);
    expect(said(SCALE, 'put in four ten a').state.unit.refrigerant).toBe('R-410A');
  });

  it('is no weight with more ounces than a pound has, nor where it is one number', () => {
    for (const words of ['scale now thirty six fifty', 'scale is four hundred ten']) {
      expect(last(said(SCALE, words))).toEqual(['cylinderWeight', 662, 'oz']);
    }
  });
});

describe('amps without their point', () => {
  it('are what the plate leaves possible', () => {
    expect(last(said('rla eleven two', 'amps seven one'))).toEqual(['current', 7.1, 'A']);
    expect(said('amps seven one').reply.text).toBe('Current 7.1 A, or 71 A?');
    // Four times the rated load is a rotor that is locked.
    expect(said('rla sixteen', 'amps six four').reply.text).toBe('Current 6.4 A, or 64 A?');
  });
});
