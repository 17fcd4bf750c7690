/** Within a name they stay small. */
const SMALL = new Set('of the and at on by in for to de la'.split(' '));

/** A recogniser writes no capitals: "cedar hill diner" is written "Cedar Hill Diner"; a name with any capital is as it was written. */
export function properName(said: string): string {
  if (said !== said.toLowerCase()) return said;
  return said
    .split(' ')
    .map((word, at) =>
      at > 0 && SMALL.has(word) ? word : word.charAt(0).toUpperCase() + word.slice(1),
    )
    .join(' ');
}
