import type { Node } from '../../grammar/nodes.ts';
import { parseShape } from '../../grammar/shape.ts';
import type { Token } from '../../grammar/tokens.ts';
import { isNumber } from '../numbers/number-tokens.ts';
import { PART_NAMES } from '../vocabulary/part-names.ts';
import { PLACE_NAMES } from '../vocabulary/place-names.ts';
import { QUANTITY_NAMES } from '../vocabulary/quantity-names.ts';

/** What a name is of: of what is measured, of what stands in a machine, or of either. */
export type NameKind = 'measured' | 'thing' | 'both';

interface NamePhrases {
  readonly kinds: ReadonlyMap<string, NameKind>;
  readonly longest: number;
}

/** Made when the first one is looked for: most sentences need none. */
let phrases: NamePhrases | null = null;

/** Up to where the tokens from there on are names, the longest of them first; the place itself where none begins there. */
export function namesEndAt(tokens: readonly Token[], at: number): number {
  const { longest } = allPhrases();
  for (let end = Math.min(tokens.length, at + longest); end > at; end -= 1) {
    if (kindOf(tokens, at, end) !== null) return namesEndAt(tokens, end);
  }
  return at;
}

/** From where the tokens up to there are names; the end itself where none ends there. */
export function namesBeginAt(tokens: readonly Token[], end: number): number {
  const { longest } = allPhrases();
  for (let at = Math.max(0, end - longest); at < end; at += 1) {
    if (kindOf(tokens, at, end) !== null) return namesBeginAt(tokens, at);
  }
  return end;
}

/** What the tokens name, all of them together; `null` where they are no name. */
export function kindOf(tokens: readonly Token[], from: number, to: number): NameKind | null {
  let words = '';
  for (let at = from; at < to; at += 1) {
    const token = tokens[at];
    if (token === undefined || isNumber(token) || (at > from && token.pause)) return null;
    words += at === from ? token.text : ` ${token.text}`;
  }
  return allPhrases().kinds.get(words) ?? null;
}

const allPhrases = (): NamePhrases => (phrases ??= gathered());

type Names = Readonly<Record<string, readonly string[]>>;

function gathered(): NamePhrases {
  const kinds = new Map<string, NameKind>();
  const add = (names: Names, kind: NameKind): void => {
    for (const shape of Object.values(names).flat()) {
      for (const words of saidOf(parseShape(shape))) {
        const phrase = words.join(' ');
        const before = kinds.get(phrase);
        kinds.set(phrase, before === undefined || before === kind ? kind : 'both');
      }
    }
  };
  add(QUANTITY_NAMES, 'measured');
  add(PART_NAMES, 'thing');
  add(PLACE_NAMES, 'thing');
  const lengths = [...kinds.keys()].map((phrase) => phrase.split(' ').length);
  return { kinds, longest: Math.max(...lengths) };
}

type Words = readonly string[];

/** Every way to say it, heard or only written. */
function saidOf(node: Node): readonly Words[] {
  switch (node.kind) {
    case 'word':
      return [[node.word]];
    case 'sequence':
      return node.parts.reduce<readonly Words[]>(
        (before, part) => before.flatMap((start) => saidOf(part).map((end) => [...start, ...end])),
        [[]],
      );
    case 'choice':
      return node.options.flatMap((option) => saidOf(option.node));
    case 'optional':
      return [[], ...saidOf(node.node)];
    case 'unheard':
    case 'rule':
    case 'scope':
      return saidOf(node.node);
    default:
      return [];
  }
}
