import type { FoundSentence } from '../../../../server/hearing/sentences-in.ts';
import type { Scene } from './scene.ts';

/** How sentences were found, one way of finding them in one condition. */
export interface Tally {
  of: number;
  missed: number;
  /** The first sound or the last is not in what the engine gets. */
  cutAtStart: number;
  cutAtEnd: number;
  inTwo: number;
  /** Begun by something else. */
  falseStarts: number;
  /** From the last sound to the end that was told; those that never ended are left out, and counted. */
  readonly endsMs: number[];
  endless: number;
}

export const newTally = (): Tally => ({
  ...{ of: 0, missed: 0, cutAtStart: 0, cutAtEnd: 0, inTwo: 0, falseStarts: 0, endless: 0 },
  endsMs: [],
});

/** A detector may take note of a sound a moment before it is loud enough to be measured. */
const EARLY_MS = 100;

export function count(tally: Tally, found: readonly FoundSentence[], scene: Scene): void {
  const { beginMs, endMs } = scene;
  const ours = found.filter(({ noticedMs, toMs }) => noticedMs < endMs && toMs > beginMs);
  const [first] = ours;
  const last = ours.at(-1);
  tally.of += 1;
  tally.falseStarts += found.length - ours.length;
  if (first === undefined || last === undefined) {
    tally.missed += 1;
    return;
  }
  if (first.noticedMs < beginMs - EARLY_MS) tally.falseStarts += 1;
  if (first.fromMs > beginMs) tally.cutAtStart += 1;
  if (ours.length > 1) tally.inTwo += 1;
  if (last.toMs < endMs) tally.cutAtEnd += 1;
  else if (last.toMs >= scene.sound.length / 16 - 20) tally.endless += 1;
  else tally.endsMs.push(last.toMs - endMs);
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}
