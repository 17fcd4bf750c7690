import type { Node } from './nodes.ts';
import type { Token } from './tokens.ts';

/** What a node can begin with; `words: null` means with anything. */
export interface Starters {
  readonly words: ReadonlySet<string> | null;
  readonly empty: boolean;
}

const NOTHING: Starters = { words: new Set(), empty: true };
const ANYTHING: Starters = { words: null, empty: false };
export const CLASS_MARK = '#';

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
    case 'pause':
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

/** Whether a node that begins so can read something at this token, or can read nothing at all. */
export function canStart({ words, empty }: Starters, token: Token | undefined): boolean {
  if (words === null || empty) return true;
  if (token === undefined) return false;
  if (words.has(token.text)) return true;
  for (const name of token.classes) if (words.has(CLASS_MARK + name)) return true;
  return false;
}

/** Finds, of many things in their order, those that a token can begin. */
export class StarterIndex<Thing> {
  private readonly things: readonly (readonly [Starters, Thing])[];
  private readonly always: readonly Thing[];
  private readonly byWord = new Map<string, readonly Thing[]>();

  constructor(things: readonly (readonly [Starters, Thing])[]) {
    this.things = things;
    this.always = things.filter(([{ words, empty }]) => words === null || empty).map(second);
    const words = new Set(things.flatMap(([starters]) => [...(starters.words ?? [])]));
    for (const word of words) {
      const token = { text: word, classes: [] };
      this.byWord.set(word, this.filter({ ...NO_TOKEN, ...token }));
    }
  }

  startedBy(token: Token | undefined): readonly Thing[] {
    if (token === undefined) return this.always;
    if (token.classes.length === 0) return this.byWord.get(token.text) ?? this.always;
    const key = token.text + CLASS_MARK;
    const found = this.byWord.get(key);
    if (found !== undefined) return found;
    const fresh = this.filter(token);
    // Written numbers are without end, so only the short ones are worth keeping.
    if (token.text.length <= 3) this.byWord.set(key, fresh);
    return fresh;
  }

  private filter(token: Token): readonly Thing[] {
    return this.things.filter(([starters]) => canStart(starters, token)).map(second);
  }
}

const NO_TOKEN: Token = { text: '', start: 0, end: 0, pause: false, value: null, classes: [] };
const second = <Thing>(pair: readonly [Starters, Thing]): Thing => pair[1];
