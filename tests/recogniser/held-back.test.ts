import { expect, it } from 'vitest';
import { createBench, quiet } from './harness.ts';

/** A session three seconds after its microphone opened, and what it told of being held back. */
async function afterThreeSeconds(isHeldBack: boolean, sound: boolean) {
  let told = 0;
  const bench = createBench({ isHeldBack: () => isHeldBack, onHeldBack: () => (told += 1) });
  bench.recognition.start();
  await bench.settle();
  if (sound) await bench.sound(quiet(1000));
  bench.timeUp(3_000);
  await bench.settle();
  return { log: bench.log, told };
}

it('ends a session, and says why, where the browser lets nothing play', async () => {
  expect(await afterThreeSeconds(true, false)).toEqual({
    log: ['start', 'error:audio-capture', 'end'],
    told: 1,
  });
});

it.each([
  ['sound came all the same', true, true],
  ['sound is only late', false, false],
])('goes on where %s', async (_, isHeldBack, sound) => {
  const { log, told } = await afterThreeSeconds(isHeldBack, sound);
  expect(log).not.toContain('error:audio-capture');
  expect(told).toBe(0);
});
