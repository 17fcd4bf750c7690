/** A case that the types rule out: reaching it is a bug. */
export function unreachable(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`);
}

export function invariant(condition: boolean, what: string): asserts condition {
  if (!condition) throw new Error(`invariant broken: ${what}`);
}
