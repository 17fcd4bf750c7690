import type { Pronunciations } from './dictionary.ts';
import type { Expansion, JsgfRules } from './parse-jsgf.ts';

/** One sound of a word: from its node to another. */
export interface PhoneArc {
  readonly id: number;
  /** Index into the phones of the acoustic model; 0 is its blank. */
  readonly phone: number;
  readonly to: number;
  /** The word that begins with this sound; null within a word. */
  readonly word: string | null;
}

/** A way on without a sound. */
interface Skip {
  readonly to: number;
  /** Log of the grammar's weight, 0 for the likeliest of its choice. */
  readonly logWeight: number;
}

export interface GraphNode {
  readonly arcs: readonly PhoneArc[];
  readonly skips: readonly Skip[];
  /** Whether a sound ends here, or the sentence begins: where the voice may rest. */
  readonly rests: boolean;
}

/** A grammar as sounds. Nodes are numbered so that every skip leads to a higher number. */
export interface PhoneGraph {
  readonly nodes: readonly GraphNode[];
  readonly arcCount: number;
  readonly start: number;
  readonly end: number;
  /** Where a sentence begins: a grammar whose public rule may follow itself comes back to one. */
  readonly beginnings: ReadonlySet<number>;
}

export type PhoneGraphOutcome =
  | { readonly kind: 'graph'; readonly graph: PhoneGraph }
  | { readonly kind: 'unknownWords'; readonly words: readonly string[] }
  | { readonly kind: 'malformed'; readonly message: string };

export interface Sounds {
  readonly pronunciations: Pronunciations;
  /** The acoustic model's phones by index; the first is its blank. */
  readonly phones: readonly string[];
}

/** Writes every sentence of the grammar's public rules as a path of phones. */
export function phoneGraph(grammar: JsgfRules, sounds: Sounds): PhoneGraphOutcome {
  const builder = new GraphBuilder(grammar, sounds);
  try {
    const graph = builder.build();
    const words = builder.unknownWords();
    return words.length > 0 ? { kind: 'unknownWords', words } : { kind: 'graph', graph };
  } catch (problem) {
    if (problem instanceof Unbuildable) {
      return { kind: 'malformed', message: `The grammar cannot be heard: ${problem.message}.` };
    }
    throw problem;
  }
}

/** Thrown and caught within this file alone. */
class Unbuildable extends Error {}

interface DraftNode {
  readonly arcs: { phone: number; to: number; word: string | null }[];
  readonly skips: { to: number; logWeight: number }[];
}

/**
 * Builds from the end towards the start: what leads to the same end is built once, which is what lets a
 * rule follow itself (right recursion) and lets many rules share one number.
 */
class GraphBuilder {
  readonly #grammar: JsgfRules;
  readonly #pronunciations: Pronunciations;
  readonly #phones: ReadonlyMap<string, number>;
  readonly #drafts: DraftNode[] = [];
  readonly #built = new Map<string, number>();
  /** Rules whose start is not settled yet, each with the end it leads to. */
  readonly #open = new Map<string, number>();
  /** Where a rule that follows itself begins again, within the public rule or below it. */
  readonly #again = new Set<number>();
  readonly #unknown = new Set<string>();

  constructor(grammar: JsgfRules, sounds: Sounds) {
    this.#grammar = grammar;
    this.#pronunciations = sounds.pronunciations;
    this.#phones = new Map(sounds.phones.map((phone, index) => [phone, index]));
  }

  build(): PhoneGraph {
    const end = this.#node();
    const start = this.#node();
    const beginnings = this.#grammar.publicRules.map((rule) => this.#reference(rule, end));
    for (const beginning of beginnings) this.#skip(start, beginning);
    return ordered(this.#drafts, { start, end, beginnings: [...beginnings, ...this.#again] });
  }

  unknownWords(): readonly string[] {
    return [...this.#unknown].sort();
  }

  /** The node from which this can be said, to arrive at `end`; null where nothing can. */
  #from(expansion: Expansion, end: number): number | null {
    switch (expansion.kind) {
      case 'word':
        return this.#once(`word ${expansion.word} ${end}`, (node) =>
          this.#word(expansion.word, node, end),
        );
      case 'reference':
        return this.#reference(expansion.rule, end);
      case 'sequence':
        return expansion.parts.reduceRight<number | null>(
          (next, part) => (next === null ? null : this.#from(part, next)),
          end,
        );
      case 'choice':
        return this.#choice(expansion.options, end);
      case 'optional':
        return this.#choice(
          [
            { expansion: expansion.expansion, weight: this.#weightOf(expansion.expansion) },
            SAID_NOT,
          ],
          end,
        );
      case 'repeat':
        return this.#repeat(expansion.expansion, expansion.least, end);
      case 'never':
        return null;
    }
  }

  /** A rule that may follow itself is many sentences in one breath. */
  #weightOf(expansion: Expansion): number {
    const isAgain = expansion.kind === 'reference' && this.#open.has(expansion.rule);
    return isAgain ? ANOTHER_SENTENCE : 1;
  }

  #reference(rule: string, end: number): number {
    const body = this.#grammar.rules.get(rule);
    if (body === undefined) throw new Unbuildable(`no rule is named ${rule}`);
    const openEnd = this.#open.get(rule);
    if (openEnd !== undefined && openEnd !== end) {
      throw new Unbuildable(`the rule ${rule} holds itself elsewhere than at its end`);
    }
    const begins = this.#once(`rule ${rule} ${end}`, (node) => {
      this.#open.set(rule, end);
      this.#skip(node, this.#from(body, end));
      this.#open.delete(rule);
    });
    if (openEnd !== undefined) this.#again.add(begins);
    return begins;
  }

  #choice(options: readonly { expansion: Expansion; weight: number }[], end: number): number {
    const heaviest = Math.max(...options.map(({ weight }) => weight));
    const node = this.#node();
    for (const { expansion, weight } of options) {
      this.#skip(node, this.#from(expansion, end), Math.log(weight / heaviest));
    }
    return node;
  }

  #repeat(expansion: Expansion, least: 0 | 1, end: number): number | null {
    const again = this.#node();
    this.#skip(again, end);
    const once = this.#from(expansion, again);
    this.#skip(again, once);
    return least === 0 ? again : once;
  }

  #word(word: string, start: number, end: number): void {
    const sounds = Object.hasOwn(this.#pronunciations, word) ? this.#pronunciations[word] : null;
    if (!sounds) this.#unknown.add(word);
    for (const sound of new Set(sounds ?? [])) {
      const phones = sound.split(' ').map((name) => this.#phone(name, word));
      phones.reduce((from, phone, at) => {
        const to = at === phones.length - 1 ? end : this.#node();
        this.#drafts[from]?.arcs.push({ phone, to, word: at === 0 ? word : null });
        return to;
      }, start);
    }
  }

  #phone(name: string, word: string): number {
    const phone = this.#phones.get(name);
    if (phone === undefined) throw new Unbuildable(`${word} holds the unknown sound ${name}`);
    return phone;
  }

  #once(key: string, fill: (node: number) => void): number {
    const known = this.#built.get(key);
    if (known !== undefined) return known;
    const node = this.#node();
    this.#built.set(key, node);
    fill(node);
    return node;
  }

  #node(): number {
    return this.#drafts.push({ arcs: [], skips: [] }) - 1;
  }

  #skip(from: number, to: number | null, logWeight = 0): void {
    if (to !== null && logWeight > -Infinity) this.#drafts[from]?.skips.push({ to, logWeight });
  }
}

/**
 * By 3 nats: what a fan says before a reading was heard as a sentence of its own ("no ambient eighty eight" as half as
 * likely as "ambient eighty eight"); of 200 sentences at 5 dB, a quarter of them two in one breath, one more was right.
 */
const ANOTHER_SENTENCE = Math.exp(-3);

const SAID_NOT = { expansion: { kind: 'sequence', parts: [] }, weight: 1 } as const;

/** Numbers the nodes along their skips (depth first, those that lead nowhere last). */
function ordered(drafts: readonly DraftNode[], marks: Marks): PhoneGraph {
  const { start, end, beginnings } = marks;
  const order = alongSkips(drafts);
  const numbers = new Map(order.map((draft, number) => [draft, number]));
  const numberOf = (draft: number): number => numbers.get(draft) ?? 0;
  const rests = new Set([start, ...drafts.flatMap(({ arcs }) => arcs.map(({ to }) => to))]);
  let arcCount = 0;
  const nodes = order.map((draft): GraphNode => {
    const { arcs = [], skips = [] } = drafts[draft] ?? {};
    return {
      arcs: arcs.map(({ phone, to, word }) => ({ id: arcCount++, phone, to: numberOf(to), word })),
      skips: skips.map(({ to, logWeight }) => ({ to: numberOf(to), logWeight })),
      rests: rests.has(draft),
    };
  });
  return {
    nodes,
    arcCount,
    start: numberOf(start),
    end: numberOf(end),
    beginnings: new Set(beginnings.map(numberOf)),
  };
}

interface Marks {
  readonly start: number;
  readonly end: number;
  readonly beginnings: readonly number[];
}

function alongSkips(drafts: readonly DraftNode[]): readonly number[] {
  const backwards: number[] = [];
  const states: ('open' | 'done' | undefined)[] = [];
  const open = (node: number): readonly number[] => {
    states[node] = 'open';
    const targets = (drafts[node]?.skips ?? []).map(({ to }) => to);
    if (targets.some((to) => states[to] === 'open')) {
      throw new Unbuildable('something without a word may be repeated');
    }
    return targets.filter((to) => states[to] === undefined);
  };
  const close = (node: number): void => {
    if (states[node] === 'open') backwards.push(node);
    states[node] = 'done';
  };
  // A stack of our own: a grammar of thousands of words is deeper than the engine's.
  const stack = drafts.map((_, node) => node);
  for (let node = stack.at(-1); node !== undefined; node = stack.at(-1)) {
    if (states[node] === undefined) stack.push(...open(node));
    else close(stack.pop() ?? node);
  }
  return backwards.reverse();
}
