import type { ChoiceNode, Node } from './nodes.ts';
import type { Token } from './tokens.ts';

/** What a node can begin with; `words: null` means with anything. */
interface Starters {
  readonly words: ReadonlySet<string> | null;
  readonly empty: boolean;
}

const NOTHING: Starters = { words: new Set(), empty: true };
const ANYTHING: Starters = { words: null, empty: false };
const CLASS_MARK = '#';

const known = new WeakMap<Node, Starters>();

export function startersOf(node: Node): Starters {
  const found = known.get(node);
  if (found !== undefined) return found;
  const fresh = findStarters(node);
  known.set(node, fresh);
  return fresh;
}

function findStarters(node: Node): Starters {
  switch (node.kind) {
    case 'word':
      return { words: new Set([node.word]), empty: false };
    case 'class':
      return { words: new Set([CLASS_MARK + node.name]), empty: false };
    case 'sequence':
      return inSequence(node.parts);
    case 'choice':
      return either(node.options.map((option) => startersOf(option.node)));
    case 'optional':
      return { ...startersOf(node.node), empty: true };
    case 'repeat':
      return node.min === 0 ? { ...startersOf(node.node), empty: true } : startersOf(node.node);
    case 'rule':
    case 'scope':
    case 'unheard':
      return startersOf(node.node);
    case 'tag':
      return NOTHING;
    case 'list':
    case 'rest':
      return ANYTHING;
  }
}

function inSequence(parts: readonly Node[]): Starters {
  const reached: Starters[] = [];
  for (const part of parts) {
    const starters = startersOf(part);
    reached.push(starters);
    if (!starters.empty) return { ...either(reached), empty: false };
  }
  return { ...either(reached), empty: true };
}

function either(all: readonly Starters[]): Starters {
  const empty = all.some((each) => each.empty);
  const words = new Set<string>();
  for (const each of all) {
    if (each.words === null) return { words: null, empty };
    each.words.forEach((word) => words.add(word));
  }
  return { words, empty };
}

/** Finds, of many nodes in their order, those that a token can begin. */
export class StarterIndex {
  private readonly always: readonly Node[];
  private readonly byWord = new Map<string, readonly Node[]>();
  private readonly nodes: readonly Node[];

  constructor(nodes: readonly Node[]) {
    this.nodes = nodes;
    this.always = nodes.filter((node) => {
      const { words, empty } = startersOf(node);
      return words === null || empty;
    });
  }

  startedBy(token: Token | undefined): readonly Node[] {
    if (token === undefined) return this.always;
    const key = token.classes.length === 0 ? token.text : `${token.text} ${token.classes.join()}`;
    const found = this.byWord.get(key);
    if (found !== undefined) return found;
    const fresh = this.nodes.filter((node) => canStart(node, token));
    // Sentences hold any word at all; only those that the grammar knows are worth keeping.
    if (token.classes.length === 0 && fresh.length > this.always.length) {
      this.byWord.set(key, fresh);
    }
    return fresh.length > this.always.length ? fresh : this.always;
  }
}

function canStart(node: Node, token: Token): boolean {
  const { words, empty } = startersOf(node);
  if (words === null || empty || words.has(token.text)) return true;
  return token.classes.some((name) => words.has(CLASS_MARK + name));
}

const indexes = new WeakMap<ChoiceNode, StarterIndex>();

export function choiceIndex(node: ChoiceNode): StarterIndex {
  const found = indexes.get(node);
  if (found !== undefined) return found;
  const fresh = new StarterIndex(node.options.map((option) => option.node));
  indexes.set(node, fresh);
  return fresh;
}
