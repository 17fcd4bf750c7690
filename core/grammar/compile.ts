import { Chooser } from './chooser.ts';
import { END_SYMBOL, Kinds, symbolOf } from './kinds.ts';
import type { Compiled, Matcher, Matches } from './match.ts';
import type { ChoiceNode, Node, Option, RuleNode, Tags } from './nodes.ts';
import {
  type Run,
  runChoice,
  runClass,
  runList,
  runOptional,
  runPause,
  runPhrase,
  runRepeat,
  runRest,
  runRule,
  runScope,
  runSequence,
} from './runs.ts';
import { Remainders } from './remainders.ts';
import { partsOf, refuseFaults } from './refuse-faults.ts';
import { canStart, Opening, StarterIndex, type Starters, startersOf } from './starters.ts';
import type { Token } from './tokens.ts';

/** Nodes made ready for matching, each once, and the words that they tell apart. */
export class Grammar {
  readonly kinds = new Kinds();
  readonly remainders = new Remainders(this.kinds);
  private readonly compiled = new Map<Node, Compiled>();
  private readonly openings = new Map<Starters, Opening>();
  private readonly learnt = new Set<Node>();
  private readonly options = new Map<ChoiceNode, StarterIndex>();

  /** Made ready, with all that is in it once that is come to. */
  compile(node: Node): Compiled {
    this.learn(node);
    return this.ready(node);
  }

  /** As `compile`, of a rule that is tried once at each place and need not be remembered. */
  compileOnce(rule: RuleNode): Compiled {
    this.learn(rule);
    return this.needed(rule, runRule(rule, this.ready(rule.node)));
  }

  /** Tells its words apart in tokens from now on. Throws where it could not be matched. */
  learn(node: Node): void {
    refuseFaults(node);
    this.learnWords(node);
  }

  private learnWords(node: Node): void {
    if (this.learnt.has(node)) return;
    this.learnt.add(node);
    if (node.kind === 'word') this.kinds.learn(node.word);
    for (const part of partsOf(node)) this.learnWords(part);
  }

  /** As `compile`, of a node within one that was learnt. */
  ready(node: Node): Compiled {
    const found = this.compiled.get(node);
    if (found !== undefined) return found;
    const inner = innerOf(node);
    const opening = this.openingOf(inner ?? node);
    const fresh = { opening, optional: inner !== null, run: this.runOf(node) };
    this.compiled.set(node, fresh);
    return fresh;
  }

  /** Finds, of these nodes, those that a token can begin. */
  indexOf(nodes: readonly Node[]): StarterIndex {
    return new StarterIndex(nodes, this.kinds);
  }

  /** Those options of a choice that a token of this kind can begin, or that may read nothing. */
  optionsFor(node: ChoiceNode, kind: number): readonly Node[] {
    let index = this.options.get(node);
    if (index === undefined) {
      index = this.indexOf(node.options.map((option) => option.node));
      this.options.set(node, index);
    }
    return index.startedBy(kind).map((each) => each.node);
  }

  /** Whether a node can read something at a token of this kind, or can read nothing at all. */
  canBegin(node: Node, kind: number): boolean {
    return canStart(startersOf(node), kind, this.kinds);
  }

  /** Each token as automata read it, and the end behind them. */
  symbolsOf(tokens: readonly Token[]): readonly number[] {
    const symbols: number[] = [];
    for (const token of tokens) symbols.push(symbolOf(this.kinds.of(token), token.pause));
    symbols.push(END_SYMBOL);
    return symbols;
  }

  private needed(node: Node, run: Run): Compiled {
    return { opening: this.openingOf(node), optional: false, run };
  }

  private openingOf(node: Node): Opening {
    const starters = startersOf(node);
    const found = this.openings.get(starters);
    if (found !== undefined) return found;
    const fresh = new Opening(starters, this.kinds);
    this.openings.set(starters, fresh);
    return fresh;
  }

  private runOf(node: Node): Run {
    switch (node.kind) {
      case 'word':
        return runPhrase([node.word], []);
      case 'class':
        return runClass(node);
      case 'tag':
        return runPhrase([], [node.tags]);
      case 'sequence':
        return this.runOfSequence(flatParts(node));
      case 'choice':
        return runChoice(new Chooser(this, flatOptions(node.options)));
      case 'optional':
        return runOptional(this.ready(node.node), node.greedy);
      case 'repeat':
        return runRepeat(this.ready(node.node), node.min, node.max);
      case 'rule':
        return this.remembered(runRule(node, this.ready(node.node)));
      case 'scope':
        return runScope(node.slot, this.ready(node.node));
      case 'unheard':
        return this.ready(node.node).run;
      case 'list':
        return runList(node);
      case 'pause':
        return runPause;
      case 'rest':
        return runRest(node);
    }
  }

  /** What it read at each place of the sentence that is matched now. */
  private remembered(run: Run): Run {
    let owner: Matcher | null = null;
    let places: (Matches | undefined)[] = [];
    return (matcher, at) => {
      if (owner !== matcher) {
        owner = matcher;
        places = [];
      }
      return (places[at] ??= run(matcher, at));
    };
  }

  /** Words that follow each other, and the tags behind them, are one step. */
  private runOfSequence(parts: readonly Node[]): Run {
    const steps: Compiled[] = [];
    for (let at = 0; at < parts.length;) {
      const words = takeWhile(parts, at, wordIn);
      const tags = takeWhile(parts, at + words.length, tagsIn);
      const [first] = parts.slice(at);
      if (first === undefined) break;
      const taken = words.length + tags.length;
      steps.push(taken === 0 ? this.ready(first) : this.needed(first, runPhrase(words, tags)));
      at += Math.max(1, taken);
    }
    const [first, ...more] = steps;
    if (first === undefined) return (matcher, at) => matcher.silentTo(at);
    return more.length === 0 && !first.optional ? first.run : runSequence(first, more);
  }
}

/** What may be left out, where all of the node may be and means nothing then. */
function innerOf(node: Node): Node | null {
  if (node.kind === 'optional') return node.node;
  const isPlain = node.kind === 'unheard' || (node.kind === 'rule' && node.fold === 'merge');
  return isPlain ? innerOf(node.node) : null;
}

const wordIn = (node: Node): string | null => (node.kind === 'word' ? node.word : null);
const tagsIn = (node: Node): Tags | null => (node.kind === 'tag' ? node.tags : null);

function takeWhile<Found>(
  nodes: readonly Node[],
  from: number,
  find: (node: Node) => Found | null,
): readonly Found[] {
  const taken: Found[] = [];
  for (const node of nodes.slice(from)) {
    const found = find(node);
    if (found === null) break;
    taken.push(found);
  }
  return taken;
}

function flatParts(node: Node): readonly Node[] {
  if (node.kind === 'sequence') return node.parts.flatMap(flatParts);
  return node.kind === 'unheard' ? flatParts(node.node) : [node];
}

function flatOptions(options: readonly Option[]): readonly Node[] {
  return options.flatMap(({ node }) => flatOption(node));
}

function flatOption(node: Node): readonly Node[] {
  if (node.kind === 'choice') return flatOptions(node.options);
  return node.kind === 'unheard' ? flatOption(node.node) : [node];
}
