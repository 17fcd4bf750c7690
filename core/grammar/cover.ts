/** Something that reads the tokens from `start` up to `end`; a lower rank is preferred. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly rank: number;
}

interface Best<P> {
  readonly claimed: number;
  readonly pieces: number;
  readonly rank: number;
  readonly piece: P | null;
  readonly next: number;
}

/**
 * The pieces that together claim the most tokens without overlapping; among those the fewest pieces; among
 * those the lowest sum of ranks. Linear in tokens and pieces.
 */
export function bestCover<P extends Piece>(
  length: number,
  piecesAt: (at: number) => readonly P[],
): readonly P[] {
  const best: Best<P>[] = [];
  best[length] = { claimed: 0, pieces: 0, rank: 0, piece: null, next: length };
  for (let at = length - 1; at >= 0; at -= 1) {
    let chosen = passOver(best[at + 1], at);
    for (const piece of piecesAt(at)) {
      const after = best[piece.end];
      if (after === undefined) continue;
      const candidate: Best<P> = {
        claimed: after.claimed + piece.end - piece.start,
        pieces: after.pieces + 1,
        rank: after.rank + piece.rank,
        piece,
        next: piece.end,
      };
      if (isBetter(candidate, chosen)) chosen = candidate;
    }
    best[at] = chosen;
  }
  return follow(best, length);
}

function passOver<P>(after: Best<P> | undefined, at: number): Best<P> {
  return {
    claimed: after?.claimed ?? 0,
    pieces: after?.pieces ?? 0,
    rank: after?.rank ?? 0,
    piece: null,
    next: at + 1,
  };
}

function isBetter(one: Best<unknown>, other: Best<unknown>): boolean {
  if (one.claimed !== other.claimed) return one.claimed > other.claimed;
  if (one.pieces !== other.pieces) return one.pieces < other.pieces;
  return one.rank < other.rank;
}

function follow<P>(best: readonly Best<P>[], length: number): readonly P[] {
  const pieces: P[] = [];
  for (let at = 0; at < length;) {
    const here = best[at];
    if (here === undefined) break;
    if (here.piece !== null) pieces.push(here.piece);
    at = here.next;
  }
  return pieces;
}
