/** Parts of the short form whose figures are names: R-134a, walk in number two. */
const NAMES = /^(?:refrigerant|unit|site|memo) .*| of=R-\w+| R-\w+$| @\w+/g;
const NUMBER = /(?<![A-Za-z\d])-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g;

/** The numbers that an utterance's short form holds, in its order. */
export function numbersMeant(meant: string): readonly number[] {
  return meant
    .split(';')
    .flatMap((part) => part.replace(NAMES, '').match(NUMBER) ?? [])
    .map(Number);
}
