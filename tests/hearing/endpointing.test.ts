import { describe, expect, it } from 'vitest';

import { createEndpointer, type EndpointEvent } from '../../core/hearing/endpointer.ts';
import { ENDPOINTER_SETTINGS } from '../../core/hearing/endpointing-policy.ts';
import { FRAME_MS, FRAME_SAMPLES } from '../../core/hearing/frame.ts';
import type { Standing } from '../../core/hearing/standing.ts';
import { WINDOW_MS } from '../../core/hearing/voice-detector.ts';

/** A stretch of sound: how loud it is, and what the detector makes of it; null where the detector says nothing. */
interface Stretch {
  readonly ms: number;
  readonly gain: number;
  readonly chance: number | null;
}

const room = (ms: number): Stretch => ({ ms, gain: 0.001, chance: 0.02 });
const voice = (ms: number, gain = 0.1): Stretch => ({ ms, gain, chance: 0.9 });
const knocks = (ms: number): Stretch => ({ ms, gain: 0.3, chance: 0.02 });
const unwatched = (stretch: Stretch): Stretch => ({ ...stretch, chance: null });

interface Course {
  /** How far the detector is behind the sound. */
  readonly lateMs?: number;
  readonly standing?: Standing;
}

type Timed = readonly [EndpointEvent, number];

/** What the endpointer says of these stretches one after the other, and when. */
function eventsIn(stretches: readonly Stretch[], course: Course = {}): readonly Timed[] {
  const endpointer = createEndpointer();
  const at = (ms: number): Stretch | undefined => {
    let end = 0;
    return stretches.find((stretch) => ms < (end += stretch.ms));
  };
  const events: Timed[] = [];
  let toldMs = 0;
  for (let nowMs = FRAME_MS; at(nowMs - 1) !== undefined; nowMs += FRAME_MS) {
    const { gain = 0 } = at(nowMs - 1) ?? {};
    while (toldMs + WINDOW_MS <= nowMs - (course.lateMs ?? 40)) {
      const chance = at(toldMs + WINDOW_MS / 2)?.chance ?? null;
      toldMs += WINDOW_MS;
      if (chance !== null) endpointer.hearVoice([chance], toldMs);
    }
    const event = endpointer.accept(
      Float32Array.from({ length: FRAME_SAMPLES }, (_, index) => gain * Math.sin(0.7 * index)),
    );
    if (event === 'speechStarted' && course.standing) endpointer.understand(course.standing);
    if (event !== null) events.push([event, nowMs]);
  }
  return events;
}

const names = (events: readonly Timed[]): readonly EndpointEvent[] => events.map(([name]) => name);
const { waitMs } = ENDPOINTER_SETTINGS;

describe('an endpointer that a voice detector tells', () => {
  it('starts within 0.2 s of a voice, though the room drowns it', () => {
    const fan = { ms: 2000, gain: 0.1, chance: 0.02 };
    const [start, end] = eventsIn([fan, { ...voice(1000), gain: 0.11 }, fan]);
    expect([start?.[0], end?.[0]]).toEqual(['speechStarted', 'speechEnded']);
    expect(start?.[1]).toBeGreaterThan(2000);
    expect(start?.[1]).toBeLessThanOrEqual(2200);
  });

  it('takes knocks for no speech, and for no more of it', () => {
    expect(eventsIn([room(500), knocks(3000), room(1000)])).toEqual([]);
    const events = eventsIn([room(500), voice(1000), knocks(3000)]);
    expect(names(events)).toEqual(['speechStarted', 'speechEnded']);
    expect(events[1]?.[1]).toBeLessThanOrEqual(1500 + waitMs.unknown + 60);
  });

  it.each(['closed', 'extendable', 'incomplete'] as const)(
    'waits as long as a sentence that is %s asks for, and not longer',
    (standing) => {
      const [, end] = eventsIn([room(500), voice(1000), room(3000)], { standing });
      expect(end?.[1]).toBeGreaterThanOrEqual(1500 + waitMs[standing] - WINDOW_MS);
      expect(end?.[1]).toBeLessThanOrEqual(1500 + waitMs[standing] + 60);
    },
  );

  it('forgets with a sentence what could have followed it', () => {
    const sentence = [voice(600), room(1400)];
    const endpointer = eventsIn([room(500), ...sentence, ...sentence], { standing: 'closed' });
    expect(names(endpointer)).toEqual([
      'speechStarted',
      'speechEnded',
      'speechStarted',
      'speechEnded',
    ]);
  });

  it('does not end on silence that a busy detector has not heard yet', () => {
    const said = [room(500), voice(500), room(waitMs.closed - 200), voice(500), room(2000)];
    for (const lateMs of [40, 200, 400, 500]) {
      expect(names(eventsIn(said, { lateMs, standing: 'closed' }))).toEqual([
        'speechStarted',
        'speechEnded',
      ]);
    }
  });

  it.each([
    ['never told', [room(500), voice(1000), room(2000)].map(unwatched)],
    [
      'stopped telling in the middle',
      [room(500), voice(500), ...[voice(500), room(3000)].map(unwatched)],
    ],
    ['stopped telling after the last word', [room(500), voice(1000), unwatched(room(3000))]],
  ])('goes by the loudness where the detector %s', (_, stretches) => {
    const events = eventsIn(stretches);
    expect(names(events)).toEqual(['speechStarted', 'speechEnded']);
    expect(events[1]?.[1]).toBeGreaterThanOrEqual(1500 + waitMs.unknown - WINDOW_MS);
    expect(events[1]?.[1]).toBeLessThan(1500 + waitMs.unknown + 200);
  });

  it('ends though somebody talks on in the distance, and not because the voice sinks', () => {
    const [, end] = eventsIn([room(500), voice(1500), voice(4000, 0.01)]);
    expect(end?.[1]).toBeLessThan(2000 + waitMs.unknown + 300);
    const sinking = eventsIn([room(500), voice(1500), voice(1500, 0.04), room(2000)]);
    expect(sinking[1]?.[1]).toBeGreaterThan(3500);
  });

  it('goes on after a wrench that fell beside the first word', () => {
    const events = eventsIn([room(500), voice(200, 1), voice(2500, 0.05), room(2000)]);
    expect(names(events)).toEqual(['speechStarted', 'speechEnded']);
    expect(events[1]?.[1]).toBeGreaterThan(3200);
  });
});
