import { describe, expect, it } from 'vitest';

import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import { eventsIn, names } from './endpoint-events.ts';
import { fan, RATE_HZ } from './signals.ts';

/** A tone of the given length with silence before and after. */
function tone(beforeMs: number, lengthMs: number, afterMs: number): Float32Array {
  const from = (beforeMs * RATE_HZ) / 1000;
  const to = from + (lengthMs * RATE_HZ) / 1000;
  return Float32Array.from({ length: to + (afterMs * RATE_HZ) / 1000 }, (_, index) =>
    index < from || index >= to ? 0 : 0.3 * Math.sin((2 * Math.PI * 700 * index) / RATE_HZ),
  );
}

describe('endpointer', () => {
  it('starts within 0.2 s of the sound and ends 0.9 to 1.1 s after it', () => {
    const [start, end, ...more] = eventsIn(tone(500, 600, 2000));
    expect([start?.event, end?.event, more]).toEqual(['speechStarted', 'speechEnded', []]);
    expect(start?.atMs).toBeGreaterThan(500);
    expect(start?.atMs).toBeLessThanOrEqual(700);
    expect(end?.atMs).toBeGreaterThanOrEqual(2000);
    expect(end?.atMs).toBeLessThanOrEqual(2200);
  });

  it('takes a knock of 20 ms for no speech', () => {
    expect(eventsIn(tone(500, 20, 2000))).toEqual([]);
  });

  it('does not cut a sentence at a pause of 0.6 s', () => {
    const first = tone(300, 400, 600);
    const second = tone(0, 400, 1500);
    const both = Float32Array.from([...first, ...second]);
    expect(names(eventsIn(both))).toEqual(['speechStarted', 'speechEnded']);
  });

  it('finds two sentences with a second and a half between them', () => {
    const both = Float32Array.from([...tone(300, 400, 1500), ...tone(0, 400, 1500)]);
    expect(names(eventsIn(both))).toEqual([
      'speechStarted',
      'speechEnded',
      'speechStarted',
      'speechEnded',
    ]);
  });

  it.each([0.003, 0.03, 0.3])('says noSpeech to a fan alone at loudness %d', (gain) => {
    const events = eventsIn(fan(20, 3).map((sample) => sample * gain));
    expect(events).toEqual([{ event: 'noSpeech', atMs: ENDPOINTER_SETTINGS.noSpeechMs }]);
  });

  it('says noSpeech to digital silence', () => {
    expect(names(eventsIn(new Float32Array(9 * RATE_HZ)))).toEqual(['noSpeech']);
  });

  it('ends speech that never stops at the longest sentence', () => {
    const syllables = tone(200, 20_000, 0).map((sample, index) =>
      index % 4_000 < 2_500 ? sample : sample / 100,
    );
    const [start, end] = eventsIn(syllables);
    expect(start?.event).toBe('speechStarted');
    expect(end?.event).toBe('speechEnded');
    expect((end?.atMs ?? 0) - (start?.atMs ?? 0)).toBe(ENDPOINTER_SETTINGS.longestSpeechMs);
  });

  it('takes a fan that starts for the room within four seconds', () => {
    const starting = fan(12, 4).map((sample, index) => (index < 2 * RATE_HZ ? 0 : sample * 0.1));
    const [start, end, ...more] = eventsIn(starting);
    expect([start?.event, end?.event]).toEqual(['speechStarted', 'speechEnded']);
    expect((end?.atMs ?? 0) - (start?.atMs ?? 0)).toBeLessThan(4000);
    expect(more).toEqual([]);
  });

  it('hears a word that was under way when the ear opened, given the room of before', () => {
    const underWay = tone(0, 700, 1500);
    expect(eventsIn(underWay)).toEqual([]);
    expect(names(eventsIn(underWay, -70))).toEqual(['speechStarted', 'speechEnded']);
  });
});
