import { heardLines } from '../../corpus/heard-lines.ts';
import { seeded } from '../../language/random.ts';

/** Hand-written lines that the rare grammar alone hears, each once; the same seed, the same lines. */
export function drawRare(count: number, seed: number): readonly string[] {
  const random = seeded(seed);
  const { lines, isLikely, isHeard } = heardLines();
  const rare = lines.filter((line) => isHeard(line) && !isLikely(line)).map(({ said }) => said);
  return [...new Set(rare)]
    .map((said) => ({ said, at: random() }))
    .toSorted((one, other) => one.at - other.at)
    .slice(0, count)
    .map(({ said }) => said);
}
