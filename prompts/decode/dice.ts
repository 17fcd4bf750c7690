/** Numbers from 0 to 1, the same for the same seed: a visit that is replayed is worded alike. */
export function createDice(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    mixed ^= mixed >>> 16;
    return (mixed >>> 0) / 2 ** 32;
  };
}

/** A number of a text, to draw by: what is worded again is worded alike. FNV-1a, 32 bits. */
export function seedOf(text: string): number {
  let state = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    state = Math.imul(state ^ text.charCodeAt(at), 0x01000193);
  }
  return state >>> 0;
}

/** Added to scores before the highest is taken, it draws from the model's own distribution (Gumbel, 1954). */
export function gumbel(roll: () => number): number {
  return -Math.log(-Math.log(Math.max(roll(), 1e-9)));
}
