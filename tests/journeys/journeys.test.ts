import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { speakJourney } from './speak-journey.ts';
import { parseJourney } from './visit-file.ts';

const FOLDER = new URL('.', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.visit'));

/** How a reader finds the sentence in the file, and sees both sides of what differs. */
const paired = (
  exchanges: ReturnType<typeof parseJourney>['exchanges'],
  heard: readonly string[],
): readonly string[] =>
  exchanges.flatMap(({ line, said }, index) => [`${line} ${said}`, `  ${heard[index] ?? ''}`]);

describe.each(files)('%s', (name) => {
  const journey = parseJourney(readFileSync(new URL(name, FOLDER), 'utf8'));
  const spoken = speakJourney(journey.exchanges);

  it('says who read it, and hears what was read', () => {
    expect(journey.head).toMatch(/^# .*\n(# .*\n)*# Read/m);
    expect(paired(journey.exchanges, spoken.heard)).toEqual(
      paired(
        journey.exchanges,
        journey.exchanges.map(({ heard }) => heard ?? ''),
      ),
    );
  });

  it('leaves the note that was read', () => {
    expect(spoken.note).toBe(journey.note);
  });
});

it('takes at least fourteen whole visits', () => {
  expect(files.length).toBeGreaterThanOrEqual(14);
});
