/** Something that reads the tokens from `start` up to `end`; a lower rank is preferred. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly rank: number;
}

/** What the best cover from a place onwards comes to, and the piece that it begins with there. */
interface Best<P> {
  readonly claimed: number;
  readonly pieces: number;
  readonly rank: number;
  readonly piece: P | null;
}

const NONE = { claimed: 0, pieces: 0, rank: 0, piece: null };

/**
 * The pieces that together claim the most tokens without overlapping; among those the fewest pieces; among
 * those the lowest sum of ranks; of those that tie in all of it, the one that first begins with a piece that is
 * given earlier at its place. Linear in tokens and pieces.
 */
export function bestCover<P extends Piece>(
  length: number,
  piecesAt: (at: number) => readonly P[],
): readonly P[] {
  return follow(bestFrom(length, piecesAt), length);
}

/**
 * Every cover that comes to as much as the best one does, that one first: more than one is an ambiguity that nothing
 * but the order of the pieces decides. Asked of test sentences: there can be as many as there are ways through.
 */
export function bestCovers<P extends Piece>(
  length: number,
  piecesAt: (at: number) => readonly P[],
): readonly (readonly P[])[] {
  const best = bestFrom(length, piecesAt);
  const coversFrom = (at: number): readonly (readonly P[])[] => {
    const most = best[at];
    if (most === undefined || at === length) return [[]];
    const next = best[at + 1];
    const passed = next !== undefined && comesTo(next, most) ? coversFrom(at + 1) : [];
    const begun = piecesAt(at).flatMap((piece) => {
      const rest = best[piece.end];
      if (rest === undefined || !comesTo(withPiece(piece, rest), most)) return [];
      return coversFrom(piece.end).map((more) => [piece, ...more]);
    });
    return [...passed, ...begun];
  };
  return coversFrom(0);
}

function bestFrom<P extends Piece>(
  length: number,
  piecesAt: (at: number) => readonly P[],
): readonly Best<P>[] {
  const best: Best<P>[] = [];
  best[length] = NONE;
  for (let at = length - 1; at >= 0; at -= 1) best[at] = bestAt(piecesAt(at), best, at);
  return best;
}

const comesTo = (one: Best<unknown>, other: Best<unknown>): boolean =>
  one.claimed === other.claimed && one.pieces === other.pieces && one.rank === other.rank;

function bestAt<P extends Piece>(
  pieces: readonly P[],
  best: readonly Best<P>[],
  at: number,
): Best<P> {
  const { claimed, pieces: count, rank } = best[at + 1] ?? NONE;
  let most: Best<P> = { claimed, pieces: count, rank, piece: null };
  for (const piece of pieces) {
    const rest = best[piece.end];
    if (rest !== undefined && isBetter(piece, rest, most)) most = withPiece(piece, rest);
  }
  return most;
}

function withPiece<P extends Piece>(piece: P, rest: Best<P>): Best<P> {
  return {
    claimed: rest.claimed + piece.end - piece.start,
    pieces: rest.pieces + 1,
    rank: rest.rank + piece.rank,
    piece,
  };
}

function isBetter(piece: Piece, rest: Best<unknown>, most: Best<unknown>): boolean {
  const claimed = rest.claimed + piece.end - piece.start;
  if (claimed !== most.claimed) return claimed > most.claimed;
  if (rest.pieces + 1 !== most.pieces) return rest.pieces + 1 < most.pieces;
  return rest.rank + piece.rank < most.rank;
}

function follow<P extends Piece>(best: readonly Best<P>[], length: number): readonly P[] {
  const pieces: P[] = [];
  for (let at = 0; at < length;) {
    const piece = best[at]?.piece ?? null;
    if (piece !== null) pieces.push(piece);
    at = piece === null ? at + 1 : piece.end;
  }
  return pieces;
}
