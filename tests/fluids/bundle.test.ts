import { expect, it } from 'vitest';
import { benchBundle } from '../bench/bundle.ts';

it('adds at most 60 kB of minified code to the page', { timeout: 60_000 }, async () => {
  const { saturationBytes, wholeBytes } = await benchBundle();
  expect(saturationBytes).toBeGreaterThan(10_000);
  expect(wholeBytes).toBeLessThan(60_000);
});
