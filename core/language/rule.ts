import {
  choice,
  named,
  type Node,
  type RuleNode,
  sequence,
  tag,
  type Tags,
  written,
} from '../grammar/nodes.ts';
import { parseShape } from '../grammar/shape.ts';
import type { Context, Expectation } from './context.ts';
import { HOLES } from './holes.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { PartId, PlaceId } from '../terms/names.ts';
import type { Utterance } from './utterance.ts';
import type { WordSet } from './words/word-set.ts';

/** A stretch of tokens. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What surrounds a matched rule when its meaning is made. */
export interface Frame {
  readonly context: Context;
  /** The words of a stretch as they were given. */
  wordsOf(span: Span): string;
  /** The stretch that the rule matched. */
  readonly span: Span;
  /** Behind it the sentence pauses or ends. */
  readonly endsAtPause: boolean;
  /** Before it, fillers apart, it does: a comma shows it in the words as well, and a pause that was only found does not. */
  readonly startsAtPause?: boolean;
  /** A question mark stands behind it, which is no token. */
  readonly isAsked?: boolean;
}

/** What a rule adds to the utterance; empty for talk that is not for us. */
export type Meaning = Partial<Omit<Utterance, 'text'>> & {
  /** A condition: of the clause that it stands in nothing is asked either. */
  readonly supposed?: true;
  /** What follows puts right what went before. */
  readonly correction?: true;
  /** Takes back nothing where something is told behind it that puts no value right. */
  readonly unlessTold?: true;
  /** Said of "it": what it means once the part is known; nothing where none is. */
  readonly ofIt?: {
    readonly means: (part: PartId) => Meaning | null;
    /** Only of a part named in the same sentence. */
    readonly inSentence: boolean;
    /** Where no part is known. */
    readonly otherwise?: Meaning;
  };
  /** A value of what was read last in the same sentence: "now it is at two twelve". */
  readonly ofThat?: {
    readonly means: (quantity: QuantityId, place: PlaceId | null) => Meaning | null;
    readonly otherwise: Meaning;
  };
  /** What was told last in the same sentence is told of this part, too; where nothing was, the words are kept. */
  readonly also?: { readonly part: PartId; readonly words: string };
  /** The quantity that "it" is from here on, of which nothing was read yet. */
  readonly speaksOf?: QuantityId;
  /** Where that is read. */
  readonly speaksAt?: PlaceId | null;
  /** The part that "it" is from here on, of which nothing is told yet. */
  readonly names?: PartId;
  /** Somebody else's words: doubted where they name a quantity, else kept as a memo. */
  readonly hearsay?: string;
};

/** What is read of it is none of our business. */
export const tellsNothing = (meaning: Meaning): boolean => {
  for (const _part in meaning) return false;
  return true;
};

/** `null`: these words cannot mean it, whatever their shape. */
export type Means = (tags: Tags, frame: Frame) => Meaning | null;

/** One way to say something. */
export interface Rule {
  /** Its name, which shows its shape with holes. */
  readonly shape: string;
  readonly node: RuleNode;
  readonly means: Means;
  /** Understood only when it is the whole sentence, fillers apart. */
  readonly alone: boolean;
  /** Understood only when it is a whole clause, and nothing before it asks or supposes or is somebody else's. */
  readonly apart: boolean;
  /** Then it need not be a whole clause where another rule tells what stands right behind it. */
  readonly beforeTold: boolean;
  /** It means nothing unless one of these words is said, whatever its shape: it need not be read without. */
  readonly needs: WordSet | null;
  /** Nor unless this is so of where it stands, which is told by a look at it. */
  readonly only: ((frame: Frame) => boolean) | null;
  /** The free words that it ends in stop where other rules tell what stands behind them: a name, or what something is for. */
  readonly yields: 'name' | 'purpose' | null;
  /** When the recogniser listens for it; not at all, and it is only understood when written. */
  readonly heardWhen: readonly Expectation[];
  readonly examples: readonly string[];
}

interface Ways {
  readonly alone?: boolean;
  readonly apart?: boolean;
  readonly beforeTold?: true;
  readonly needs?: WordSet;
  readonly only?: (frame: Frame) => boolean;
  readonly yields?: 'name' | 'purpose';
  readonly heardWhen?: readonly Expectation[];
  readonly tags?: Tags;
  /** No recogniser listens for it: what it takes to hear it is worth more than how often it is said. */
  readonly unheard?: true;
  readonly examples?: readonly string[];
}

export function rule(shape: string, means: Means, ways: Ways = {}): Rule {
  const said = withoutThe(parseShape(shape, HOLES));
  const heard: Node = ways.unheard === true ? written(said) : said;
  const node: Node = ways.tags === undefined ? heard : sequence(tag(ways.tags), heard);
  return {
    shape,
    node: named(shape, node),
    means,
    alone: ways.alone ?? false,
    apart: ways.apart ?? false,
    beforeTold: ways.beforeTold ?? false,
    needs: ways.needs ?? null,
    only: ways.only ?? null,
    yields: ways.yields ?? null,
    heardWhen: ways.heardWhen ?? [],
    examples: ways.examples ?? [],
  };
}

/** In a hurry nobody says "the": it may be left out wherever a shape has it among other words. Recognisers listen for it all the same. */
function withoutThe(node: Node): Node {
  switch (node.kind) {
    case 'word':
      return node.word === 'the' ? choice(node, written(sequence())) : node;
    case 'sequence':
      return sequence(...node.parts.map(withoutThe));
    case 'choice':
      return {
        ...node,
        options: node.options.map((o) =>
          o.node.kind === 'word' ? o : { ...o, node: withoutThe(o.node) },
        ),
      };
    case 'optional':
    case 'repeat':
    case 'unheard':
      return { ...node, node: withoutThe(node.node) };
    default:
      return node;
  }
}

/** Whatever the dialogue expects: nobody who was asked a number must wait to say stop. */
export const ALWAYS: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];

/** A command that the recogniser listens for in every state of the dialogue. */
export function heardCommand(shape: string, means: Means, ways: Ways = {}): Rule {
  return heardRule(shape, means, { heardWhen: ALWAYS, ...ways });
}

/** As `rule`, and part of what the recogniser listens for. */
export function heardRule(shape: string, means: Means, ways: Ways = {}): Rule {
  return rule(shape, means, { heardWhen: ['anything'], ...ways });
}
