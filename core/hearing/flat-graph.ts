import type { PhoneGraph } from './phone-graph.ts';

/** A phone graph in flat arrays, as a search goes through it fifty times a second. */
export interface FlatGraph {
  readonly nodeCount: number;
  readonly arcCount: number;
  readonly start: number;
  readonly end: number;
  /** The arcs of node n are those from arcsFrom[n] to before arcsFrom[n + 1]; skips likewise. */
  readonly arcsFrom: Int32Array;
  readonly arcPhone: Uint8Array;
  readonly arcTo: Int32Array;
  /** Index into words, −1 within a word. */
  readonly arcWord: Int32Array;
  readonly words: readonly string[];
  readonly skipsFrom: Int32Array;
  readonly skipTo: Int32Array;
  readonly skipWeight: Float64Array;
  readonly rests: Uint8Array;
}

const made = new WeakMap<PhoneGraph, FlatGraph>();

/** Made once for each graph. */
export function flatGraph(graph: PhoneGraph): FlatGraph {
  const flat = made.get(graph) ?? flatten(graph);
  made.set(graph, flat);
  return flat;
}

function flatten({ nodes, arcCount, start, end }: PhoneGraph): FlatGraph {
  const arcs = nodes.flatMap((node) => node.arcs);
  const skips = nodes.flatMap((node) => node.skips);
  const words = [...new Set(arcs.flatMap(({ word }) => (word === null ? [] : [word])))];
  const indexes = new Map(words.map((word, index) => [word, index]));
  return {
    nodeCount: nodes.length,
    arcCount,
    start,
    end,
    arcsFrom: offsets(nodes.map((node) => node.arcs.length)),
    arcPhone: Uint8Array.from(arcs, ({ phone }) => phone),
    arcTo: Int32Array.from(arcs, ({ to }) => to),
    arcWord: Int32Array.from(arcs, ({ word }) => indexes.get(word ?? '') ?? -1),
    words,
    skipsFrom: offsets(nodes.map((node) => node.skips.length)),
    skipTo: Int32Array.from(skips, ({ to }) => to),
    skipWeight: Float64Array.from(skips, ({ logWeight }) => logWeight),
    rests: Uint8Array.from(nodes, ({ rests }) => (rests ? 1 : 0)),
  };
}

function offsets(lengths: readonly number[]): Int32Array {
  const starts = new Int32Array(lengths.length + 1);
  lengths.forEach((length, index) => (starts[index + 1] = (starts[index] ?? 0) + length));
  return starts;
}
