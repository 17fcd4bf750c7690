import type { Constraint } from './constraint.ts';

/**
 * A constraint as the library asks for it: once a token, with all ids so far and the scores of the next, which
 * are changed in place. One for each sentence, as the first call tells where the prompt ends.
 */
export function constrainedStep(
  constraint: Constraint,
): (rows: readonly (readonly bigint[])[], scores: unknown) => void {
  let promptLength: number | null = null;
  return ([row = []], scores) => {
    promptLength ??= row.length;
    if (scores instanceof Float32Array) {
      constraint(row.slice(promptLength).map(Number), scores);
    }
  };
}
