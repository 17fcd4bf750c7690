import type { Compiled } from '../../grammar/match.ts';
import { Matcher } from '../../grammar/match.ts';
import type { Node } from '../../grammar/nodes.ts';
import { startersOf } from '../../grammar/starters.ts';
import type { Token } from '../../grammar/tokens.ts';
import { GRAMMAR } from './parse.ts';
import { RULES } from '../rules.ts';

/** A rule that read some words and then could not go on. */
export interface NearMiss {
  readonly shape: string;
  /** The words it read. */
  readonly read: string;
  /** The word it could not read; `null` at the sentence's end. */
  readonly stoppedAt: string | null;
  /** Some of the words that it could have gone on with; none where all fitted and the value did not. */
  readonly expected: readonly string[];
}

const MOST = 3;
const MOST_WORDS = 8;

/** The rules that read furthest from any of these tokens, the furthest first. */
export function nearMisses(
  tokens: readonly Token[],
  starts: readonly number[],
): readonly NearMiss[] {
  const matcher = new Matcher(GRAMMAR, tokens);
  const reached = PARTED.flatMap((rule) => starts.map((start) => reach(rule, start, matcher)));
  return reached
    .filter(({ end, start }) => end > start)
    .sort((one, other) => other.end - other.start - (one.end - one.start))
    .slice(0, MOST)
    .map(({ rule, start, end, part }) => ({
      shape: rule.shape,
      read: tokens
        .slice(start, end)
        .map(({ text }) => text)
        .join(' '),
      stoppedAt: tokens[end]?.text ?? null,
      expected: part === null ? [] : [...(startersOf(part).words ?? [])].slice(0, MOST_WORDS),
    }));
}

interface Parted {
  readonly shape: string;
  readonly parts: readonly { readonly node: Node; readonly ready: Compiled }[];
}

/** The rules as the parts that follow one another in them. */
const PARTED: readonly Parted[] = RULES.map(({ shape, node }) => ({
  shape,
  parts: partsOf(node.node).map((part) => ({ node: part, ready: GRAMMAR.compile(part) })),
}));

function partsOf(node: Node): readonly Node[] {
  return node.kind === 'sequence' ? node.parts.flatMap(partsOf) : [node];
}

interface Reach {
  readonly rule: Parted;
  readonly start: number;
  readonly end: number;
  /** The part that read nothing further. */
  readonly part: Node | null;
}

function reach(rule: Parted, start: number, matcher: Matcher): Reach {
  let ends: readonly number[] = [start];
  for (const { node, ready } of rule.parts) {
    const next = ends.flatMap((at) => matcher.run(ready, at).map(({ end }) => end));
    if (next.length === 0) return { rule, start, end: Math.max(...ends), part: node };
    ends = [...new Set(next)];
  }
  return { rule, start, end: Math.max(...ends), part: null };
}
