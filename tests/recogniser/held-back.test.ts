import { expect, it } from 'vitest';
import type { HeldBack } from '../../client/recogniser/capture.ts';
import { createBench, quiet } from './harness.ts';

/** A session three seconds after its microphone opened, and what it told of being held back. */
async function afterThreeSeconds(heldBack: HeldBack | null, sound: boolean) {
  const told: (HeldBack | null)[] = [];
  const bench = createBench({ heldBack: () => heldBack, onHeldBack: (why) => told.push(why) });
  bench.recognition.start();
  await bench.settle();
  if (sound) await bench.sound(quiet(1000));
  bench.timeUp(3_000);
  await bench.settle();
  return { log: bench.log, told };
}

it.each(['blocked', 'interrupted'] as const)(
  'ends a session, and says why, where the sound is %s',
  async (why) => {
    expect(await afterThreeSeconds(why, false)).toEqual({
      log: ['start', 'error:audio-capture', 'end'],
      told: [why],
    });
  },
);

it.each([
  ['sound came all the same', 'blocked', true],
  ['sound is only late', null, false],
] as const)('goes on where %s', async (_, heldBack, sound) => {
  const { log, told } = await afterThreeSeconds(heldBack, sound);
  expect(log).not.toContain('error:audio-capture');
  expect(told).toEqual([]);
});
