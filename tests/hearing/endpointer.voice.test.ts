import { describe, expect, it } from 'vitest';

import { eventsIn, names } from './endpoint-events.ts';
import { besideFan, RATE_HZ, speak } from './signals.ts';

const SENTENCES = ['head one ninety two', 'suction two', 'what should head be', 'box thirty six'];
const spoken = SENTENCES.flatMap((sentence) => [speak(sentence, 'rms'), speak(sentence, 'slt')]);

describe('endpointer', () => {
  it.each([40, 20, 15])('hears each sentence once beside a fan at %i dB', (snrDb) => {
    for (const [index, speech] of spoken.entries()) {
      const events = eventsIn(besideFan(speech, snrDb, index + 1));
      const endsMs = 1000 + (speech.length / RATE_HZ) * 1000;
      expect(names(events)).toEqual(['speechStarted', 'speechEnded']);
      expect(events[0]?.atMs).toBeLessThan(1500);
      expect(events[1]?.atMs).toBeGreaterThan(endsMs);
    }
  });
});
