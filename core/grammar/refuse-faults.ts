import type { Node } from './nodes.ts';

/**
 * Throws where a node could not be matched or printed: a part that holds itself, however far in (a grammar here is
 * regular, and would be walked without end), a repeat without bounds, a weight that no option can have.
 */
export function refuseFaults(node: Node): void {
  walk(node, []);
}

const sound = new WeakSet<Node>();

function walk(node: Node, around: readonly Node[]): void {
  if (sound.has(node)) return;
  if (around.includes(node)) throw new Error(`${nameOf(node, around)} holds itself`);
  const inside = [...around, node];
  if (node.kind === 'repeat' && !isBounded(node)) {
    throw new Error(`a repeat from ${node.min} to ${node.max} times has no bounds`);
  }
  for (const part of partsOf(node)) walk(part, inside);
  sound.add(node);
}

const isBounded = ({ min, max }: Node & { kind: 'repeat' }): boolean =>
  Number.isInteger(min) && Number.isInteger(max) && min >= 0 && max >= Math.max(min, 1);

export function partsOf(node: Node): readonly Node[] {
  switch (node.kind) {
    case 'sequence':
      return node.parts;
    case 'choice': {
      const wrong = node.options.find(({ weight }) => !(weight > 0 && Number.isFinite(weight)));
      if (wrong) throw new Error(`an option cannot weigh ${wrong.weight}`);
      return node.options.map((option) => option.node);
    }
    case 'optional':
    case 'repeat':
    case 'rule':
    case 'scope':
    case 'unheard':
      return [node.node];
    case 'word':
    case 'class':
    case 'list':
    case 'tag':
    case 'rest':
    case 'pause':
      return [];
  }
}

/** The rule that it is, or stands in. */
function nameOf(node: Node, around: readonly Node[]): string {
  const rule = [...around.slice(around.indexOf(node)), ...around]
    .filter((each) => each.kind === 'rule')
    .at(0);
  return rule === undefined ? `a ${node.kind}` : `rule ${rule.name}`;
}
