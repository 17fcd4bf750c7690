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
  let after: Best<P> = { claimed: 0, pieces: 0, rank: 0, piece: null, next: length };
  best[length] = after;
  for (let at = length - 1; at >= 0; at -= 1) {
    let chosen: Best<P> = { ...after, piece: null, next: at + 1 };
    for (const piece of piecesAt(at)) {
      const rest = best[piece.end];
      if (rest !== undefined && isBetter(piece, rest, chosen)) chosen = withPiece(piece, rest);
    }
    best[at] = after = chosen;
  }
  return follow(best, length);
}

function withPiece<P extends Piece>(piece: P, rest: Best<P>): Best<P> {
  return {
    claimed: rest.claimed + piece.end - piece.start,
    pieces: rest.pieces + 1,
    rank: rest.rank + piece.rank,
    piece,
    next: piece.end,
  };
}

function isBetter(piece: Piece, rest: Best<unknown>, chosen: Best<unknown>): boolean {
  const claimed = rest.claimed + piece.end - piece.start;
  if (claimed !== chosen.claimed) return claimed > chosen.claimed;
  if (rest.pieces + 1 !== chosen.pieces) return rest.pieces + 1 < chosen.pieces;
  return rest.rank + piece.rank < chosen.rank;
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
