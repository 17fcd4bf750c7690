import { describe, expect, it } from 'vitest';
import { timedVisit, type TimedLine } from '../support/timed-visit.ts';

const ASKED: readonly TimedLine[] = [
  [0, "it's a walk in cooler on r twenty two with a txv"],
  [1, 'how do i put the gauges on'],
];

const heard = (...said: readonly string[]) =>
  timedVisit(...ASKED, ...said.map((words, at): TimedLine => [at + 2, words])).last;

describe('steps that wait for what must be known before them', () => {
  it.each(['next', 'okay next', 'next step', 'again', 'got it', "what's next"])(
    'ask for it again at "%s", with the way out',
    (said) => {
      const asked =
        'Tell me which valves: service valves with a stem, or access fittings. Or say leave the steps.';
      expect(heard(said).reply.text).toBe(asked);
      expect(heard(said, said, said).reply.text).toBe(asked);
    },
  );

  it('go on once it is told', () => {
    expect(heard('next', 'service valves').reply.text).toContain('Gauges on, 6 steps.');
    expect(heard('next', 'service valves', 'next').reply.text).toContain('Back-seat both stems');
  });

  it.each([
    'leave the steps',
    'okay leave that',
    'never mind the steps',
    'forget it',
    'skip it',
    "i don't need the steps anymore",
    'stop',
  ])('are left at "%s", and wait for nothing then', (said) => {
    expect(heard(said).reply.text).toBe('Steps left.');
    expect(heard('next', said).reply.text).toBe('Steps left.');
    expect(heard(said, 'service valves').reply.text).toBe('Service valves.');
  });

  it('are not meant any more once something else was said', () => {
    expect(heard('suction is nine', 'next').reply.text).not.toContain('valves');
  });

  it('wait for the gas as for the valves', () => {
    const { last } = timedVisit([0, 'how do i pump it down'], [1, 'next']);
    expect(last.reply.text).toBe(
      'Tell me the refrigerant, from the nameplate. Or say leave the steps.',
    );
  });
});

describe('steps that are told', () => {
  it.each(['okay leave that', 'never mind the steps', 'forget it', 'leave it for now'])(
    'are left at "%s"',
    (said) => {
      expect(heard('service valves', 'next', said).reply.text).toBe('Steps left.');
    },
  );

  it('are still told where a reading is taken back', () => {
    const { last } = timedVisit(
      ...ASKED,
      [2, 'service valves'],
      [3, 'suction two'],
      [4, 'forget that'],
    );
    expect(last.reply.text).toContain('Taken back');
    expect(last.state.steps).not.toBeNull();
  });
});

describe('who waits for an answer', () => {
  it.each(['next', 'and now', 'and next'])('is told what to do next at "%s"', (said) => {
    expect(timedVisit([0, "it's a reach in"], [1, said]).last.reply.text).toContain('Look');
  });

  it('hears that no steps are told', () => {
    expect(timedVisit([0, 'leave the steps']).last.reply.text).toContain('No steps are being told');
  });

  it.each(['is that it', 'so is that it'])('is asked again at "%s"', (said) => {
    expect(timedVisit([0, 'box is at fifty'], [1, said]).last.reply.text).toBe(
      'I did not catch that. Say it again.',
    );
  });
});
