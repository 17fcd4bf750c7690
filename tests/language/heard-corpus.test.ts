import { describe, expect, it } from 'vitest';
import { heardLines } from '../corpus/heard-lines.ts';

/** The hand-written lines that are heard word for word: they may only become more. */
const FLOOR = { likely: 700, heard: 5230 } as const;
/** Percent of all of them: less where the corpus grows by what is seldom said. */
const LEAST_SHARE = { likely: 10, heard: 79 } as const;

describe('what is understood when typed', () => {
  const { lines, isLikely, isHeard } = heardLines();

  it('is heard: of the hand-written lines that mean something, memos and typed figures apart', () => {
    expect(lines.length).toBeGreaterThan(4000);
    const [likely, heard] = [isLikely, isHeard].map((is) => lines.filter(is).length);
    const shareOf = (count = 0): number => (100 * count) / lines.length;
    console.log(`heard word for word: ${shareOf(heard).toFixed(1)} %`);
    expect(likely).toBeGreaterThan(FLOOR.likely);
    expect(heard).toBeGreaterThan(FLOOR.heard);
    expect(shareOf(likely)).toBeGreaterThan(LEAST_SHARE.likely);
    expect(shareOf(heard)).toBeGreaterThan(LEAST_SHARE.heard);
  });
});
