import { choice, type Node, optional, scope, sequence, unheard, word, written } from './nodes.ts';

/** Nodes that a shape may name in its holes. */
export type Holes = Readonly<Record<string, Node>>;

const PIECE = /<([\w:]+)>|[[\]()|~]|[^\s<>[\]()|~]+/g;

/**
 * Reads a phrase with holes, the way rules are written: `how far off (is|are) [the] <quantity>`.
 * `[…]` may be left out, `(…|…)` is one of several, `<name>` is a hole, `<name:slot>` keeps the hole's meaning
 * under `slot`, `~` before an option leaves it out of the narrow recogniser grammar, and `~~` out of every one.
 */
export function parseShape(shape: string, holes: Holes = {}): Node {
  const reader = new ShapeReader(shape, holes);
  return reader.readAll();
}

class ShapeReader {
  private readonly pieces: readonly string[];
  private readonly shape: string;
  private readonly holes: Holes;
  private at = 0;

  constructor(shape: string, holes: Holes) {
    this.pieces = shape.match(PIECE) ?? [];
    this.shape = shape;
    this.holes = holes;
  }

  readAll(): Node {
    const node = this.readOptions();
    if (this.at < this.pieces.length) throw new Error(`shape "${this.shape}" closes too early`);
    return node;
  }

  private readOptions(): Node {
    const options = [this.readOption()];
    while (this.pieces[this.at] === '|') {
      this.at += 1;
      options.push(this.readOption());
    }
    const [only, ...more] = options;
    return only !== undefined && more.length === 0 ? only : choice(...options);
  }

  private readOption(): Node {
    const isQuiet = this.takes('~');
    const isSilent = isQuiet && this.takes('~');
    const parts: Node[] = [];
    for (let piece = this.pieces[this.at]; isInside(piece); piece = this.pieces[this.at]) {
      this.at += 1;
      parts.push(this.readPiece(piece));
    }
    const [only, ...more] = parts;
    const node = only !== undefined && more.length === 0 ? only : sequence(...parts);
    if (isSilent) return written(node);
    return isQuiet ? unheard(node) : node;
  }

  private takes(piece: string): boolean {
    if (this.pieces[this.at] !== piece) return false;
    this.at += 1;
    return true;
  }

  private readPiece(piece: string): Node {
    if (piece === '[') return optional(this.readUntil(']'));
    if (piece === '(') return this.readUntil(')');
    if (piece.startsWith('<')) return this.hole(piece.slice(1, -1));
    if (piece === '~') throw new Error(`shape "${this.shape}" has a ~ that begins no option`);
    return word(piece);
  }

  private readUntil(close: string): Node {
    const node = this.readOptions();
    if (this.pieces[this.at] !== close) throw new Error(`shape "${this.shape}" lacks a ${close}`);
    this.at += 1;
    return node;
  }

  private hole(text: string): Node {
    const [name = '', slot] = text.split(':');
    const node = this.holes[name];
    if (node === undefined) throw new Error(`shape "${this.shape}" has no hole named ${name}`);
    return slot === undefined ? node : scope(slot, node);
  }
}

function isInside(piece: string | undefined): piece is string {
  return piece !== undefined && piece !== '|' && piece !== ']' && piece !== ')';
}
