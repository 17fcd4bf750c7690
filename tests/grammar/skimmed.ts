import type { Matcher } from '../../core/grammar/match.ts';
import type { Skimmer } from '../../core/grammar/skim.ts';

/** The nodes that may read from the first token on, each as where it may end and its number, in the order of being told. */
export function skimmed(
  skimmer: Skimmer,
  matcher: Matcher,
): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  skimmer.skim(matcher, 0, (end, number) => found.push([end, number]));
  return found;
}
