import { CLASS_MARK, END, type Kinds } from './kinds.ts';
import type { Node } from './nodes.ts';

/** What a node can begin with; `words: null` means with anything. */
export interface Starters {
  readonly words: ReadonlySet<string> | null;
  readonly empty: boolean;
}

const NOTHING: Starters = { words: new Set(), empty: true };
const ANYTHING: Starters = { words: null, empty: false };

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
      return named(node.word);
    case 'class':
      return named(CLASS_MARK + node.name);
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
    case 'pause':
      return NOTHING;
    case 'list':
    case 'rest':
      return ANYTHING;
  }
}

const byName = new Map<string, Starters>();

/** One of each: most nodes are words. */
function named(name: string): Starters {
  const found = byName.get(name);
  if (found !== undefined) return found;
  const fresh: Starters = { words: new Set([name]), empty: false };
  byName.set(name, fresh);
  return fresh;
}

function inSequence(parts: readonly Node[]): Starters {
  const reached: Starters[] = [];
  for (const part of parts) {
    const starters = startersOf(part);
    reached.push(starters);
    if (!starters.empty)
      return reached.length === 1 ? starters : { ...either(reached), empty: false };
  }
  return { ...either(reached), empty: true };
}

function either(all: readonly Starters[]): Starters {
  const [only] = all;
  if (only !== undefined && all.length === 1) return only;
  const empty = all.some((each) => each.empty);
  const words = new Set<string>();
  for (const each of all) {
    if (each.words === null) return { words: null, empty };
    each.words.forEach((word) => words.add(word));
  }
  return { words, empty };
}

/** Whether a node that begins so can read something at a token of this kind, or can read nothing at all. */
export function canStart({ words, empty }: Starters, kind: number, kinds: Kinds): boolean {
  if (empty) return true;
  if (words === null) return kind !== END;
  return kinds.namesOf(kind).some((name) => words.has(name));
}

/** Asked so often that the answer for each kind of token is kept. */
export class Opening {
  private readonly starters: Starters;
  private readonly kinds: Kinds;
  private known = new Uint8Array(0);

  constructor(starters: Starters, kinds: Kinds) {
    this.starters = starters;
    this.kinds = kinds;
  }

  allows(kind: number): boolean {
    return (this.known[kind] ?? UNKNOWN) === UNKNOWN
      ? this.learn(kind)
      : this.known[kind] === ALLOWED;
  }

  private learn(kind: number): boolean {
    const allowed = this.canBegin(kind);
    if (kind >= this.known.length) {
      const longer = new Uint8Array(this.kinds.count);
      longer.set(this.known);
      this.known = longer;
    }
    this.known[kind] = allowed ? ALLOWED : REFUSED;
    return allowed;
  }

  /** As `allows`, and nothing is kept. */
  canBegin(kind: number): boolean {
    return canStart(this.starters, kind, this.kinds);
  }
}

const UNKNOWN = 0;
const ALLOWED = 1;
const REFUSED = 2;

export interface Numbered {
  readonly number: number;
  readonly node: Node;
}

/** Finds, of many nodes in their order, those that a token can begin. */
export class StarterIndex {
  readonly things: readonly Numbered[];
  private readonly kinds: Kinds;
  private readonly byKind = new Map<number, readonly Numbered[]>();
  private byName: ReadonlyMap<string, readonly Numbered[]> | null = null;
  private readonly anyhow: Numbered[] = [];

  constructor(nodes: readonly Node[], kinds: Kinds) {
    this.kinds = kinds;
    this.things = nodes.map((node, number) => ({ number, node }));
  }

  startedBy(kind: number): readonly Numbered[] {
    const found = this.byKind.get(kind);
    if (found !== undefined) return found;
    const fresh = this.find(kind);
    this.byKind.set(kind, fresh);
    return fresh;
  }

  private find(kind: number): readonly Numbered[] {
    this.byName ??= this.thingsByName();
    const named = this.kinds.namesOf(kind).flatMap((name) => this.byName?.get(name) ?? []);
    return [...new Set([...named, ...this.anyhow])]
      .filter(({ node }) => canStart(startersOf(node), kind, this.kinds))
      .sort((one, other) => one.number - other.number);
  }

  private thingsByName(): ReadonlyMap<string, readonly Numbered[]> {
    const byName = new Map<string, Numbered[]>();
    for (const thing of this.things) {
      const { words, empty } = startersOf(thing.node);
      if (words === null || empty) this.anyhow.push(thing);
      for (const name of words ?? []) {
        const things = byName.get(name);
        if (things === undefined) byName.set(name, [thing]);
        else things.push(thing);
      }
    }
    return byName;
  }
}
