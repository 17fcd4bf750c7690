import { env } from 'node:process';
import fc from 'fast-check';

/**
 * Properties are tried with the same random numbers in every run, so that what passes once passes again. To try others:
 * `SEED=7 npx vitest run tests/turn`.
 */
fc.configureGlobal({ seed: Number(env['SEED'] ?? 20_261_127) });
