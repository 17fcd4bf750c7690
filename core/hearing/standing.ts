import type { PhoneGraph } from './phone-graph.ts';

/**
 * Whether a sentence could end here. extendable: it could, or go on ("one forty", "one forty six");
 * closed: it could, and only another sentence may follow.
 */
export type Standing = 'incomplete' | 'extendable' | 'closed';

/** Tells the standing of a graph's nodes, each worked out once. */
export function standings(graph: PhoneGraph): (node: number) => Standing {
  const known = new Map<number, Standing>();
  return (node) => {
    const found = known.get(node) ?? standingOf(graph, node);
    known.set(node, found);
    return found;
  };
}

function standingOf(graph: PhoneGraph, from: number): Standing {
  const seen = new Set([from]);
  let goesOn = false;
  for (const node of seen) {
    const { arcs = [], skips = [] } = graph.nodes[node] ?? {};
    goesOn ||= arcs.length > 0;
    for (const { to } of skips) if (!graph.beginnings.has(to)) seen.add(to);
  }
  if (!seen.has(graph.end)) return 'incomplete';
  return goesOn ? 'extendable' : 'closed';
}
