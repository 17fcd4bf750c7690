import { describe, expect, it } from 'vitest';
import type { Reading } from '../../core/language/utterance.ts';
import type { Turn } from '../../core/turn/turn.ts';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const said = (...words: readonly string[]): Turn =>
  timedVisit(...words.map((each, minute): TimedLine => [minute, each])).last;
const at = ({ state }: Turn): readonly unknown[] =>
  state.readings.map(({ reading: { quantity, place, value } }: { reading: Reading }) => [
    quantity,
    place,
    value,
  ]);

const PLATE = 'plate says two oh eight three phase, rla eleven two';
const BETWEEN = [
  ['voltage', 'lineOneTwo', 210],
  ['voltage', 'lineTwoThree', 211],
  ['voltage', 'lineOneThree', 209],
];

describe('three numbers alone', () => {
  it.each(['two ten, two eleven, two oh nine', '210, 211, 209', 'two ten two eleven two oh nine'])(
    'are volts between the legs, by a plate of three phases: %s',
    (words) => {
      expect(at(said(PLATE, words))).toEqual(BETWEEN);
    },
  );

  it('are one question where no plate tells, which yes and "volts" answer', () => {
    const asked = said('walk in cooler', 'two ten, two eleven, two oh nine');
    expect(asked.reply.text).toBe('210, 211, 209: volts, line to line?');
    for (const answer of ['yes', 'volts', 'yeah, line to line']) {
      const answered = said('walk in cooler', 'two ten, two eleven, two oh nine', answer);
      expect(at(answered)).toEqual(BETWEEN);
      expect(answered.state.leftOver).toEqual([]);
    }
    const denied = said('walk in cooler', 'two ten, two eleven, two oh nine', 'no');
    expect([at(denied), denied.state.leftOver]).toEqual([[], []]);
  });

  it.each([
    // Further than a fifth off the plate, and not of one kind.
    'four sixty one, four fifty eight, four sixty three',
    'two hundred, one ten, forty',
    'sixty, sixty two, sixty one',
  ])('are no reading otherwise: %s', (words) => {
    const { state } = said(PLATE, words);
    expect([state.readings.length, state.leftOver.length]).toEqual([0, 3]);
  });
});

describe('three numbers on the legs', () => {
  const AMPS = [
    ['current', 'lineOne', 13.1],
    ['current', 'lineTwo', 12.9],
    ['current', 'lineThree', 13.3],
  ];

  it.each([
    'thirteen point one, twelve nine and thirteen three on the legs',
    'and it came right up, fourteen point, no wait, thirteen point one, twelve nine and thirteen three on the legs',
    '13.1, 12.9 and 13.3 on the legs',
  ])('are amps where no supply is so low: %s', (words) => {
    expect(at(said(words))).toEqual(AMPS);
  });

  it('are what a bare imbalance is of', () => {
    // (13.3 - 13.1) / 13.1: amps lie 1.5 % off their mean at most.
    const asked = said(
      'thirteen point one, twelve nine and thirteen three on the legs',
      "what's the unbalance on that",
    );
    expect(asked.reply.text).toContain('1.5%');
  });
});

describe('the imbalance of the legs', () => {
  const LOST = 'line one to two is 231, two to three is 118 and one to three is 115';
  const ASKED = "what's the unbalance on that";

  it('is that of the newest three', () => {
    const { reply } = said(PLATE, LOST, 'two ten, two eleven, two oh nine', ASKED);
    // NEMA MG 1 14.36: the furthest from the mean, 1 V of 210 V.
    expect(reply.text).toContain('0.5%');
  });

  it('is never of volts from before the fuses were replaced', () => {
    expect(said(PLATE, LOST, ASKED).reply.text).toContain('49.4%');
    const asked = said(PLATE, LOST, 'replaced the fuses', ASKED);
    expect(asked.reply.text).toBe('Tell me the voltage, line one to line two.');
    const repaired = said(PLATE, LOST, 'cleaned the condenser', ASKED);
    expect(repaired.reply.text).toContain('49.4%');
  });
});
