import { describe, expect, it } from 'vitest';
import { heardLines } from '../corpus/heard-lines.ts';

/** Percent of the hand-written lines that are heard word for word: it may only grow. */
const FLOOR = { likely: 12, heard: 84 } as const;

describe('what is understood when typed', () => {
  const { lines, isLikely, isHeard } = heardLines();

  it('is heard: of the hand-written lines that mean something, memos and typed figures apart', () => {
    expect(lines.length).toBeGreaterThan(4000);
    const share = (is: (line: (typeof lines)[number]) => boolean): number =>
      (100 * lines.filter(is).length) / lines.length;
    const shares = { likely: share(isLikely), heard: share(isHeard) };
    console.log(`heard word for word: ${shares.heard.toFixed(1)} %`);
    expect(shares.likely).toBeGreaterThan(FLOOR.likely);
    expect(shares.heard).toBeGreaterThan(FLOOR.heard);
  });
});
