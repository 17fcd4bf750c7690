import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        plugins: [preact()],
        test: {
          name: 'rooms',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', 'tests/**/*.voice.test.ts'],
          setupFiles: ['tests/support/one-seed.ts'],
          // Of two cores the runner would leave one idle.
          maxWorkers: '100%',
          sequence: { groupOrder: 1 },
          testTimeout: 60_000, // a busy machine is no defect: what hangs is ended, nothing is timed
        },
      },
      {
        // Sentences spoken at test time by Debian's flite and heard by the real engine.
        test: {
          name: 'voices',
          include: ['tests/**/*.voice.test.ts'],
          sequence: { groupOrder: 2 },
          testTimeout: 120_000,
        },
      },
      {
        // Real Chromium, driven from Node: one at a time, as each starts a browser and a server.
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          fileParallelism: false,
          sequence: { groupOrder: 3 },
          testTimeout: 180_000,
          hookTimeout: 120_000,
          // A second, as it is by itself, was not enough where the machine had other work.
          expect: { poll: { timeout: 30_000 } },
        },
      },
    ],
  },
});
