import { foldSum, foldTags, sameTags } from './fold.ts';
import { type Compiled, type Match, type Matches, NO_MATCH } from './match.ts';
import type { ClassNode, ListNode, RestNode, RuleNode, Tags } from './nodes.ts';
import type { Chooser } from './chooser.ts';

/** How each kind of node reads, where its opening has already allowed the token. */
export type Run = Compiled['run'];

/** Words one after another and what they mean; the opening has seen the first. */
export function runPhrase(words: readonly string[], tags: readonly Tags[]): Run {
  return (matcher, at) => {
    for (let ahead = 1; ahead < words.length; ahead += 1) {
      if (matcher.tokens[at + ahead]?.text !== words[ahead]) return NO_MATCH;
    }
    const end = at + words.length;
    return tags.length === 0 ? matcher.silentTo(end) : [{ end, tags }];
  };
}

export function runClass({ scale }: ClassNode): Run {
  return (matcher, at) => {
    const value = matcher.tokens[at]?.value ?? null;
    if (value === null) return matcher.silentTo(at + 1);
    return [{ end: at + 1, tags: [{ plus: value * scale }] }];
  };
}

export function runSequence(first: Compiled, more: readonly Compiled[]): Run {
  return (matcher, at) => {
    let reached = matcher.run(first, at);
    for (const part of more) {
      if (reached.length === 0) return NO_MATCH;
      reached = matcher.extendAll(reached, part);
    }
    return reached;
  };
}

export function runChoice(chooser: Chooser): Run {
  return (matcher, at) => {
    let found = NO_MATCH;
    for (const node of chooser.choose(matcher, at)) {
      const more = matcher.runOpened(node, at);
      if (more.length > 0) found = found.length === 0 ? more : [...found, ...more];
    }
    return found;
  };
}

export function runOptional(node: Compiled, greedy: boolean): Run {
  return (matcher, at) => {
    const found = matcher.run(node, at);
    if (found.length === 0) return matcher.silentTo(at);
    return greedy ? found : [...found, ...matcher.silentTo(at)];
  };
}

export function runRepeat(node: Compiled, min: number, max: number): Run {
  return (matcher, at) => {
    let reached = matcher.silentTo(at);
    let found: Matches = min === 0 ? reached : NO_MATCH;
    for (let times = 1; times <= max && reached.length > 0; times += 1) {
      reached = matcher.extendAll(reached, node);
      if (times >= min) found = [...reached, ...found];
    }
    return found;
  };
}

export function runScope(slot: string, node: Compiled): Run {
  return (matcher, at) =>
    matcher.run(node, at).map(({ end, tags }) => ({ end, tags: [{ [slot]: foldTags(tags) }] }));
}

/** A rule's tags are folded where it ends, and of one span and meaning one match is kept. */
export function runRule({ fold, unbroken }: RuleNode, body: Compiled): Run {
  const foldAll = fold === 'sum' ? foldSum : foldTags;
  return (matcher, at) => {
    const kept: { readonly end: number; readonly tags: readonly [Tags] }[] = [];
    for (const { end, tags } of matcher.run(body, at)) {
      if (unbroken && matcher.isBroken(at, end)) continue;
      const folded = foldAll(tags);
      if (!kept.some((each) => each.end === end && sameTags(each.tags[0], folded))) {
        kept.push({ end, tags: [folded] });
      }
    }
    return kept.length === 0 ? NO_MATCH : kept;
  };
}

export function runList(node: ListNode): Run {
  return (matcher, at) =>
    matcher.phrasesAt(node, at).map((phrase): Match => ({
      end: at + phrase.length,
      tags: [{ [node.slot]: phrase.join(' ') }],
    }));
}

export const runPause: Run = (matcher, at) =>
  matcher.tokens[at]?.pause === true ? matcher.silentTo(at) : NO_MATCH;

export function runRest(node: RestNode): Run {
  return (matcher, at) =>
    matcher
      .endsOf(node, at)
      .map((end): Match => ({ end, tags: [{ [node.slot]: { from: at, to: end } }] }));
}
