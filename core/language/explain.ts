import type { Tags } from '../grammar/nodes.ts';
import type { Context } from './context.ts';
import { parse } from './parse.ts';

/** One rule that the answer was built from. */
export interface Explained {
  readonly shape: string;
  readonly words: string;
  /** From this token up to that one. */
  readonly from: number;
  readonly to: number;
  readonly tags: Tags;
}

export interface Explanation {
  readonly rules: readonly Explained[];
  readonly unclaimed: readonly string[];
  /** Nodes the matcher tried. */
  readonly steps: number;
}

/** Which rules read the sentence and where. */
export function explain(text: string, context: Context): Explanation {
  const { items, unclaimed, steps } = parse(text, context);
  const rules = items.map(({ rule, words, start, end, tags }) => ({
    shape: rule.shape,
    words,
    from: start,
    to: end,
    tags,
  }));
  return { rules, unclaimed, steps };
}
