import { describe, expect, it } from 'vitest';
import { causesOf } from '../../../core/advice/causes/causes-of.ts';
import { read, readings, REACH_IN, unitIs, visitOf } from '../visits.ts';

/** Pressures where they should be, amps over the plate: by common practice the volts are read, during the start. */
const AMPS_HIGH = [
  REACH_IN,
  unitIs(
    { fact: 'nameplate', item: 'ratedLoadAmps', value: 6, unit: 'A' },
    { fact: 'nameplate', item: 'voltage', value: 115, unit: 'V' },
  ),
  readings(
    read('ambientTemp', 80, 'degF'),
    read('headPressure', 146, 'psi'),
    read('suctionPressure', 18, 'psi'),
    read('boxTemp', 38, 'degF'),
    { ...read('current', 9, 'A'), place: 'compressor' },
  ),
];
const supply = (value: number) => readings({ ...read('voltage', value, 'V'), place: 'lineSide' });

const standingOf = (...said: Parameters<typeof visitOf>[0]): readonly string[] => {
  const found = causesOf(visitOf(said));
  return found.kind === 'known' ? found.value.causes.map(({ cause }) => cause) : [];
};

describe('a supply that is off', () => {
  it('leads once it is read outside what the plate allows, and falls back when it is read right', () => {
    const unread = standingOf(...AMPS_HIGH).indexOf('badSupply');
    expect(standingOf(...AMPS_HIGH, supply(98))[0]).toBe('badSupply');
    expect(standingOf(...AMPS_HIGH, supply(116)).indexOf('badSupply')).toBeGreaterThan(unread);
  });
});
