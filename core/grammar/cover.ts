/** Something that reads the tokens from `start` up to `end`; a lower rank is preferred. */
export interface Piece {
  readonly start: number;
  readonly end: number;
  readonly rank: number;
}

/**
 * What a piece is worth to a cover, as one number: first the tokens that it claims, then that it is one piece more, then
 * its rank. Exact for up to 10,000 tokens and ranks up to 3,000.
 */
const A_TOKEN = 2 ** 39;
const A_PIECE = 2 ** 25;
const worthOf = ({ start, end, rank }: Piece): number => (end - start) * A_TOKEN - A_PIECE - rank;

/**
 * The pieces that together claim the most tokens without overlapping; among those the fewest pieces; among
 * those the lowest sum of ranks; of those that tie in all of it, the one that first begins with a piece that is
 * given earlier at its place. Linear in tokens and pieces.
 */
export class Covering<P extends Piece> {
  private readonly length: number;
  private readonly piecesAt: (at: number) => readonly P[];
  /** What the best cover from each place onwards is worth, and the piece that it begins with there. */
  private readonly worths: number[] = [];
  private readonly begins: (P | null)[] = [];

  constructor(length: number, piecesAt: (at: number) => readonly P[]) {
    this.length = length;
    this.piecesAt = piecesAt;
    for (let at = 0; at < length; at += 1) this.worths.push(-Infinity);
    this.worths.push(0);
    this.settle(length - 1);
  }

  /** To be told once there are other pieces at a place, or before it. */
  settle(last: number): void {
    for (let at = last; at >= 0; at -= 1) {
      let best = this.worthFrom(at + 1);
      let first: P | null = null;
      for (const piece of this.piecesAt(at)) {
        const worth = worthOf(piece) + this.worthFrom(piece.end);
        if (worth > best) {
          best = worth;
          first = piece;
        }
      }
      this.worths[at] = best;
      this.begins[at] = first;
    }
  }

  /** What the best cover from there onwards is worth; there is none beyond the end. */
  worthFrom(at: number): number {
    return this.worths[at] ?? -Infinity;
  }

  best(): readonly P[] {
    const pieces: P[] = [];
    for (let at = 0; at < this.length;) {
      const piece = this.begins[at] ?? null;
      if (piece !== null) pieces.push(piece);
      at = piece === null ? at + 1 : piece.end;
    }
    return pieces;
  }
}

/**
 * Every cover that comes to as much as the best one does, that one first: more than one is an ambiguity that nothing
 * but the order of the pieces decides. Asked of test sentences: there can be as many as there are ways through.
 */
export function bestCovers<P extends Piece>(
  length: number,
  piecesAt: (at: number) => readonly P[],
): readonly (readonly P[])[] {
  const covering = new Covering(length, piecesAt);
  const coversFrom = (at: number): readonly (readonly P[])[] => {
    if (at >= length) return [[]];
    const most = covering.worthFrom(at);
    const passed = covering.worthFrom(at + 1) === most ? coversFrom(at + 1) : [];
    const begun = piecesAt(at).flatMap((piece) =>
      worthOf(piece) + covering.worthFrom(piece.end) === most
        ? coversFrom(piece.end).map((more) => [piece, ...more])
        : [],
    );
    return [...passed, ...begun];
  };
  return coversFrom(0);
}
