import { foldSum, foldTags } from './fold.ts';
import type { ClassNode, ListNode, Node, RestNode, RuleNode, Tags } from './nodes.ts';
import { choiceIndex } from './starters.ts';
import type { Token } from './tokens.ts';

/** One way a node reads the tokens from where it began up to `end`. */
export interface Match {
  readonly end: number;
  readonly tags: readonly Tags[];
}

/** Phrases for the grammar's lists, each split into tokens' texts. */
export type RuntimeLists = Readonly<Record<string, readonly (readonly string[])[]>>;

const NO_TAGS: readonly Tags[] = [];
const NO_MATCH: readonly Match[] = [];

/**
 * Matches nodes against one tokenised sentence. A named rule is matched once at each place and remembered,
 * so the work grows with the sentence's length, not with the ways to read it.
 */
export class Matcher {
  /** Nodes tried so far: a bound on work that does not depend on the machine. */
  steps = 0;
  private readonly tokens: readonly Token[];
  private readonly lists: RuntimeLists;
  private readonly remembered = new Map<RuleNode, (readonly Match[] | undefined)[]>();
  private pauseEnds: readonly number[] | null = null;

  constructor(tokens: readonly Token[], lists: RuntimeLists = {}) {
    this.tokens = tokens;
    this.lists = lists;
  }

  /** Every way to read the tokens from `at`, preferred first; of one span and meaning, one. */
  match(node: Node, at: number): readonly Match[] {
    this.steps += 1;
    switch (node.kind) {
      case 'word':
        return this.tokens[at]?.text === node.word ? [{ end: at + 1, tags: NO_TAGS }] : NO_MATCH;
      case 'class':
        return this.matchClass(node, at);
      case 'tag':
        return [{ end: at, tags: [node.tags] }];
      case 'sequence':
        return this.matchSequence(node.parts, at);
      case 'choice':
        return this.matchAny(choiceIndex(node).startedBy(this.tokens[at]), at);
      case 'optional':
        return [...this.match(node.node, at), { end: at, tags: NO_TAGS }];
      case 'repeat':
        return this.matchRepeat(node, at);
      case 'rule':
        return this.matchRule(node, at);
      case 'scope':
        return this.match(node.node, at).map(({ end, tags }) => ({
          end,
          tags: [{ [node.slot]: foldTags(tags) }],
        }));
      case 'list':
        return this.matchList(node, at);
      case 'rest':
        return this.matchRest(node, at);
      case 'unheard':
        return this.match(node.node, at);
    }
  }

  private matchClass(node: ClassNode, at: number): readonly Match[] {
    const token = this.tokens[at];
    if (token === undefined || !token.classes.includes(node.name)) return NO_MATCH;
    const tags = token.value === null ? NO_TAGS : [{ plus: token.value * node.scale }];
    return [{ end: at + 1, tags }];
  }

  private matchSequence(parts: readonly Node[], at: number): readonly Match[] {
    let reached: readonly Match[] = [{ end: at, tags: NO_TAGS }];
    for (const part of parts) {
      const [only, second] = reached;
      if (only === undefined) return NO_MATCH;
      reached =
        second === undefined
          ? this.extend(only, part)
          : reached.flatMap((each) => this.extend(each, part));
    }
    return reached;
  }

  private extend(from: Match, part: Node): readonly Match[] {
    const next = this.match(part, from.end);
    if (from.tags.length === 0) return next;
    return next.map(({ end, tags }) => ({
      end,
      tags: tags.length === 0 ? from.tags : [...from.tags, ...tags],
    }));
  }

  private matchAny(nodes: readonly Node[], at: number): readonly Match[] {
    const [only, second] = nodes;
    if (only === undefined) return NO_MATCH;
    return second === undefined
      ? this.match(only, at)
      : nodes.flatMap((node) => this.match(node, at));
  }

  private matchRepeat(node: Node & { kind: 'repeat' }, at: number): readonly Match[] {
    let reached: readonly Match[] = [{ end: at, tags: NO_TAGS }];
    const found: Match[] = node.min === 0 ? [...reached] : [];
    for (let times = 1; times <= node.max && reached.length > 0; times += 1) {
      reached = reached.flatMap((each) => this.extend(each, node.node));
      if (times >= node.min) found.unshift(...reached);
    }
    return found;
  }

  private matchRule(rule: RuleNode, at: number): readonly Match[] {
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

  private foldRule(rule: RuleNode, at: number): readonly Match[] {
    const fold = rule.fold === 'sum' ? foldSum : foldTags;
    const kept: Match[] = [];
    for (const { end, tags } of this.match(rule.node, at)) {
      if (rule.unbroken && this.isBroken(at, end)) continue;
      const folded = fold(tags);
      if (!kept.some((each) => each.end === end && sameTags(each.tags[0] ?? {}, folded))) {
        kept.push({ end, tags: [folded] });
      }
    }
    return kept.length === 0 ? NO_MATCH : kept;
  }

  private isBroken(from: number, to: number): boolean {
    for (let at = from + 1; at < to; at += 1) if (this.tokens[at]?.pause === true) return true;
    return false;
  }

  private matchList(node: ListNode, at: number): readonly Match[] {
    const phrases = this.lists[node.name] ?? [];
    return phrases
      .filter((phrase) => phrase.every((text, index) => this.tokens[at + index]?.text === text))
      .map((phrase) => ({
        end: at + phrase.length,
        tags: [{ [node.slot]: phrase.join(' ') }],
      }));
  }

  private matchRest(node: RestNode, at: number): readonly Match[] {
    if (at >= this.tokens.length) return NO_MATCH;
    const end = node.until === 'end' ? this.tokens.length : this.nextPause(at);
    return [{ end, tags: [{ [node.slot]: { from: at, to: end } }] }];
  }

  private nextPause(at: number): number {
    if (this.pauseEnds === null) {
      const ends: number[] = [];
      let next = this.tokens.length;
      for (let index = this.tokens.length - 1; index >= 0; index -= 1) {
        ends[index] = next;
        if (this.tokens[index]?.pause === true) next = index;
      }
      this.pauseEnds = ends;
    }
    return this.pauseEnds[at] ?? this.tokens.length;
  }
}

/** Whether two meanings are one: folded tags are shallow but for scopes. */
export function sameTags(one: Tags, other: Tags): boolean {
  const slots = Object.keys(one);
  if (slots.length !== Object.keys(other).length) return false;
  return slots.every((slot) => {
    const left = one[slot];
    const right = other[slot];
    if (typeof left === 'object' && typeof right === 'object') return sameTags(left, right);
    return left === right;
  });
}
