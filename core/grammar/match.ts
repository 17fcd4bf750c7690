import { compile, type Compiled, type CompiledRule } from './compile.ts';
import { foldSum, foldTags } from './fold.ts';
import type { Node, Tags } from './nodes.ts';
import { canStart } from './starters.ts';
import type { Token } from './tokens.ts';

/** One way a node reads the tokens from where it began up to `end`. */
export interface Match {
  readonly end: number;
  readonly tags: readonly Tags[];
}

/** Phrases for the grammar's lists, each split into tokens' texts. */
export type RuntimeLists = Readonly<Record<string, readonly (readonly string[])[]>>;

type Matches = readonly Match[];
const NO_TAGS: readonly Tags[] = [];
const NO_MATCH: Matches = [];

/**
 * Matches nodes against one tokenised sentence. A named rule is matched once at each place and remembered,
 * so the work grows with the sentence's length, not with the ways to read it.
 */
export class Matcher {
  /** Nodes tried so far: a bound on work that does not depend on the machine. */
  steps = 0;
  private readonly tokens: readonly Token[];
  private readonly lists: RuntimeLists;
  private readonly remembered = new Map<CompiledRule, (Matches | undefined)[]>();
  /** The match that says nothing and ends at each place: the commonest one, so it is made once. */
  private readonly silent: (Matches | undefined)[] = [];
  private pauseEnds: readonly number[] | null = null;

  constructor(tokens: readonly Token[], lists: RuntimeLists = {}) {
    this.tokens = tokens;
    this.lists = lists;
  }

  /** Every way to read the tokens from `at`, preferred first; of one span and meaning, one. */
  match(node: Node, at: number): Matches {
    return this.run(compile(node), at);
  }

  /** As `match`, of a compiled rule that is tried once at each place and need not be remembered. */
  runOnce(rule: CompiledRule, at: number): Matches {
    this.steps += 1;
    return canStart(rule.node.starters, this.tokens[at]) ? this.foldRule(rule, at) : NO_MATCH;
  }

  private run(node: Compiled, at: number): Matches {
    this.steps += 1;
    switch (node.kind) {
      case 'word':
        return this.tokens[at]?.text === node.word ? this.silentTo(at + 1) : NO_MATCH;
      case 'class':
        return this.runClass(node, at);
      case 'tag':
        return [{ end: at, tags: node.tags }];
      case 'sequence':
        return this.runSequence(node.parts, at);
      case 'choice':
        return this.runAny(node.index.startedBy(this.tokens[at]), at);
      case 'optional':
        return this.runOptional(node, at);
      case 'repeat':
        return this.runRepeat(node, at);
      case 'rule':
        return this.runRule(node, at);
      case 'scope':
        return this.run(node.node, at).map(({ end, tags }) => ({
          end,
          tags: [{ [node.slot]: foldTags(tags) }],
        }));
      case 'list':
        return this.runList(node, at);
      case 'pause':
        return this.tokens[at]?.pause === true ? this.silentTo(at) : NO_MATCH;
      case 'rest':
        return this.runRest(node, at);
    }
  }

  private silentTo(end: number): Matches {
    const found = this.silent[end];
    if (found !== undefined) return found;
    const fresh = [{ end, tags: NO_TAGS }];
    this.silent[end] = fresh;
    return fresh;
  }

  private runClass(node: Compiled & { kind: 'class' }, at: number): Matches {
    const token = this.tokens[at];
    if (token === undefined || !token.classes.includes(node.name)) return NO_MATCH;
    if (token.value === null) return this.silentTo(at + 1);
    return [{ end: at + 1, tags: [{ plus: token.value * node.scale }] }];
  }

  private runSequence(parts: readonly Compiled[], at: number): Matches {
    let reached = this.silentTo(at);
    for (const part of parts) {
      reached = this.extendAll(reached, part);
      if (reached.length === 0) return NO_MATCH;
    }
    return reached;
  }

  private extendAll(reached: Matches, part: Compiled): Matches {
    const [only] = reached;
    if (only !== undefined && reached.length === 1) return this.extend(only, part);
    const extended: Match[] = [];
    for (const each of reached) extended.push(...this.extend(each, part));
    return extended;
  }

  private extend({ end: at, tags: before }: Match, part: Compiled): Matches {
    if (!canStart(part.starters, this.tokens[at])) return NO_MATCH;
    const next = this.run(part, at);
    if (before.length === 0 || next.length === 0) return next;
    return next.map(({ end, tags }) => ({
      end,
      tags: tags.length === 0 ? before : [...before, ...tags],
    }));
  }

  private runAny(nodes: readonly Compiled[], at: number): Matches {
    const [only] = nodes;
    if (only === undefined) return NO_MATCH;
    if (nodes.length === 1) return this.run(only, at);
    let found: Matches = NO_MATCH;
    for (const node of nodes) {
      const more = this.run(node, at);
      if (more.length > 0) found = found.length === 0 ? more : [...found, ...more];
    }
    return found;
  }

  private runOptional({ node, greedy }: Compiled & { kind: 'optional' }, at: number): Matches {
    const without = this.silentTo(at);
    if (!node.starters.empty && !canStart(node.starters, this.tokens[at])) return without;
    const found = this.run(node, at);
    if (found.length === 0) return without;
    return greedy ? found : [...found, ...without];
  }

  private runRepeat(node: Compiled & { kind: 'repeat' }, at: number): Matches {
    let reached = this.silentTo(at);
    let found: Matches = node.min === 0 ? reached : NO_MATCH;
    for (let times = 1; times <= node.max && reached.length > 0; times += 1) {
      reached = this.extendAll(reached, node.node);
      if (times >= node.min) found = [...reached, ...found];
    }
    return found;
  }

  private runRule(rule: CompiledRule, at: number): Matches {
    let places = this.remembered.get(rule);
    if (places === undefined) {
      places = [];
      this.remembered.set(rule, places);
    }
    const before = places[at];
    if (before !== undefined) return before;
    const fresh = this.foldRule(rule, at);
    places[at] = fresh;
    return fresh;
  }

  private foldRule(rule: CompiledRule, at: number): Matches {
    const found = this.run(rule.node, at);
    if (found.length === 0) return NO_MATCH;
    const fold = rule.fold === 'sum' ? foldSum : foldTags;
    const kept: { readonly end: number; readonly tags: readonly [Tags] }[] = [];
    for (const { end, tags } of found) {
      if (rule.unbroken && this.isBroken(at, end)) continue;
      const folded = fold(tags);
      if (!kept.some((each) => each.end === end && sameTags(each.tags[0], folded))) {
        kept.push({ end, tags: [folded] });
      }
    }
    return kept;
  }

  private isBroken(from: number, to: number): boolean {
    for (let at = from + 1; at < to; at += 1) if (this.tokens[at]?.pause === true) return true;
    return false;
  }

  private runList(node: Compiled & { kind: 'list' }, at: number): Matches {
    const phrases = this.lists[node.name] ?? [];
    return phrases
      .filter((phrase) => phrase.every((text, index) => this.tokens[at + index]?.text === text))
      .map((phrase) => ({
        end: at + phrase.length,
        tags: [{ [node.slot]: phrase.join(' ') }],
      }));
  }

  private runRest(node: Compiled & { kind: 'rest' }, at: number): Matches {
    if (at >= this.tokens.length) return NO_MATCH;
    const end = node.until === 'end' ? this.tokens.length : this.nextPause(at);
    return [{ end, tags: [{ [node.slot]: { from: at, to: end } }] }];
  }

  private nextPause(at: number): number {
    this.pauseEnds ??= pauseEndsOf(this.tokens);
    return this.pauseEnds[at] ?? this.tokens.length;
  }
}

function pauseEndsOf(tokens: readonly Token[]): readonly number[] {
  const ends: number[] = [];
  let next = tokens.length;
  for (let index = tokens.length - 1; index >= 0; index -= 1) {
    ends[index] = next;
    if (tokens[index]?.pause === true) next = index;
  }
  return ends;
}

/** Whether two meanings are one: folded tags are shallow but for scopes. */
export function sameTags(one: Tags, other: Tags): boolean {
  if (one === other) return true;
  const slots = Object.keys(one);
  if (slots.length !== Object.keys(other).length) return false;
  return slots.every((slot) => {
    const left = one[slot];
    const right = other[slot];
    if (typeof left === 'object' && typeof right === 'object') return sameTags(left, right);
    return left === right;
  });
}
