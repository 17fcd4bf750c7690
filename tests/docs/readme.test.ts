import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { DEVELOPERS, explainedDemo, printedExplanation } from './demo-explanation.ts';
import { printedVisit, README, replayDemo } from './demo-visit.ts';
import { importsSaid, printedRooms, roomArrows } from './rooms-table.ts';

describe('the README', { timeout: 60_000 }, () => {
  it('prints the demo visit as the program says it today (npm run readme writes it anew)', async () => {
    const printed = printedVisit(await readFile(README, 'utf8'));
    expect(printed).toBe(await replayDemo());
  });

  it('and DEVELOPERS, which explains a sentence as the program does (npm run readme)', async () => {
    const text = await readFile(DEVELOPERS, 'utf8');
    expect(printedExplanation(text)).toContain('nearly');
    expect(printedExplanation(text)).toBe(await explainedDemo(text));
  });

  it('says which room may import which as the linter holds it (npm run readme)', async () => {
    const held = Object.entries(await roomArrows()).map(([room, of]) => [room, importsSaid(of)]);
    expect(held.length).toBeGreaterThan(10);
    const printed = printedRooms(await readFile(DEVELOPERS, 'utf8'));
    expect(printed).toEqual(Object.fromEntries(held));
  });

  it('names only npm scripts that exist', async () => {
    const manifest = await readFile(new URL('package.json', README), 'utf8');
    const { scripts } = z
      .object({ scripts: z.record(z.string(), z.string()) })
      .parse(JSON.parse(manifest));
    for (const file of ['README.md', 'DEVELOPERS.md']) {
      const text = await readFile(new URL(file, README), 'utf8');
      const named = [...text.matchAll(/npm run (?:--silent )?([a-z]+(?::[a-z]+)*)/g)].map(
        ([, name]) => name ?? '',
      );
      expect(named.filter((name) => !(name in scripts))).toEqual([]);
    }
  });
});
