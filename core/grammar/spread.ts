import type { Grammar } from './compile.ts';
import { summandOf } from './fold.ts';
import { END } from './kinds.ts';
import type { Act, EndMark, Item, Left, Lefts, Mark, Onward, Way } from './left.ts';
import type {
  ChoiceNode,
  ListNode,
  Node,
  OptionalNode,
  RestNode,
  RuleNode,
  ScopeNode,
  Tags,
} from './nodes.ts';
import { startersOf } from './starters.ts';

/** What stands behind the tokens read so far. */
export interface Ahead {
  /** The kind of the token to be read; `null` where none is to be, and the rule must end. */
  readonly kind: number | null;
  readonly pause: boolean;
  readonly isEnd: boolean;
}

/** The grammar whose words are told apart, and where what is left of its rules is kept. */
interface Ground {
  readonly grammar: Grammar;
  readonly lefts: Lefts;
}

/**
 * Where what is left to read leads over the next token: its partial derivatives (V. Antimirov, "Partial derivatives of
 * regular expressions", 1996), in the order in which the matcher prefers them, each with what it does to the tags.
 */
export function onwardFrom(left: Left, ahead: Ahead, ground: Ground): Onward {
  const spread = new Spread(ahead, ground);
  spread.go({ left, acts: NO_ACTS }, left.unbroken);
  return spread;
}

type ReadsNothing = Exclude<Item, { kind: 'word' | 'class' | 'rest' | 'resting' | 'list' }>;
type MadeOfParts = Extract<
  Node,
  { kind: 'sequence' | 'choice' | 'optional' | 'repeat' | 'rule' | 'scope' | 'unheard' }
>;

interface Reached extends Way {
  hidesOthers: boolean;
}

/** On the way over what reads nothing. */
interface Going {
  readonly left: Left;
  readonly acts: readonly Act[];
}
export const NO_ACTS: readonly Act[] = [];

class Spread implements Onward {
  readonly ways: Reached[] = [];
  readonly lists: ListNode[] = [];
  private hasEnded = false;
  private readonly ahead: Ahead;
  private readonly grammar: Grammar;
  private readonly lefts: Lefts;
  private readonly reached = new Map<Left, Reached>();
  private readonly passed = new Set<Left>();

  constructor(ahead: Ahead, { grammar, lefts }: Ground) {
    this.ahead = ahead;
    this.grammar = grammar;
    this.lefts = lefts;
  }

  /** `across`: so many rules begun before this token may not reach across a pause. */
  go(way: Going, across: number): void {
    const { item, next, unbroken } = way.left;
    if (next === null) this.end(way);
    else if (this.mayRead(item) && !this.hasPassed(way.left, across)) {
      this.open({ ...way, left: next }, item, Math.min(across, unbroken));
    }
  }

  /** Only what can read the token, or nothing at all, leads anywhere. */
  private mayRead(item: Item): boolean {
    if (isMark(item)) return true;
    const { kind } = this.ahead;
    return kind === null ? startersOf(item).empty : this.grammar.canBegin(item, kind);
  }

  /** What was come to before leads nowhere new, and was preferred then. */
  private hasPassed(left: Left, across: number): boolean {
    if (this.ahead.pause && across > 0) return false;
    const { size } = this.passed;
    if (this.passed.add(left).size > size) return false;
    for (const way of this.ways) way.hidesOthers = true;
    return true;
  }

  private open(way: Going, item: Item, across: number): void {
    switch (item.kind) {
      case 'word':
        this.read(way, across);
        break;
      case 'class':
        this.read(acted(way, { do: 'value', scale: item.scale }), across);
        break;
      case 'rest':
        this.read(this.resting(acted(way, { do: 'rest' }), item), across);
        break;
      case 'resting':
        this.restOn(way, item.node, across);
        break;
      case 'list':
        this.lists.push(item);
        break;
      default:
        for (const each of this.waysOver(way, item)) this.go(each, across);
    }
  }

  /** Over what reads nothing by itself. */
  private waysOver(way: Going, item: ReadsNothing): readonly Going[] {
    switch (item.kind) {
      case 'tag':
        return [this.tagged(way, item.tags)];
      case 'pause':
        return this.ahead.pause ? [way] : [];
      case 'end':
        return [acted(way, { do: 'end', slot: item.slot })];
      case 'unless':
        return [this.mayRefuse(item.node) ? acted(way, { do: 'unless', node: item.node }) : way];
      case 'done':
        return [];
      default:
        return this.partsOf(way, item);
    }
  }

  /** What a node is made of, in the order of preference. */
  private partsOf(way: Going, item: MadeOfParts): readonly Going[] {
    switch (item.kind) {
      case 'sequence':
        return [this.before(way, item.parts)];
      case 'choice':
        return this.optionsOf(item).map((node) => this.before(way, [node]));
      case 'optional':
        return [this.before(way, [item.node]), item.greedy ? this.unless(way, item) : way];
      case 'repeat':
        return countsDown(item.max, item.min).map((times) =>
          this.before(
            way,
            Array.from({ length: times }, () => item.node),
          ),
        );
      case 'rule':
        return [this.ruled(way, item)];
      case 'scope':
        return [this.bounded(way, item, { slot: item.slot, unbroken: false, isSum: false })];
      case 'unheard':
        return [this.before(way, [item.node])];
    }
  }

  private tagged(way: Going, tags: Tags): Going {
    if (way.left.inSum) return acted(way, { do: 'sum', summand: summandOf(tags) });
    return Object.entries(tags).reduce(
      (so, [slot, data]) => acted(so, { do: 'put', slot, data }),
      way,
    );
  }

  private read(way: Going, across: number): void {
    if (this.ahead.kind !== null && !(this.ahead.pause && across > 0)) this.reach(way);
  }

  private end(way: Going): void {
    if (this.ahead.kind === null) this.reach(way);
    else this.hasEnded = true;
  }

  private reach({ left, acts }: Going): void {
    const known = this.reached.get(left);
    if (known !== undefined) {
      known.hidesOthers = true;
      return;
    }
    const way = { left, acts, hidesOthers: false, isBehindEnd: this.hasEnded };
    this.reached.set(left, way);
    this.ways.push(way);
  }

  private restOn(way: Going, rest: RestNode, across: number): void {
    const { isEnd, pause } = this.ahead;
    const ends = isEnd || (pause && rest.until === 'pause');
    if (ends) this.go(acted(way, { do: 'restEnds', slot: rest.slot }), across);
    else this.read(this.resting(way, rest), across);
  }

  private resting(way: Going, node: RestNode): Going {
    return this.before(way, [this.lefts.mark(node, () => ({ kind: 'resting', node }))]);
  }

  private unless(way: Going, passedOver: OptionalNode): Going {
    const mark = this.lefts.mark(passedOver, () => ({ kind: 'unless', node: passedOver.node }));
    return this.before(way, [mark]);
  }

  /** Whether a greedy part that was passed over may read something here after all. */
  private mayRefuse(node: Node): boolean {
    const { kind, isEnd } = this.ahead;
    return kind === null && !isEnd ? true : this.grammar.canBegin(node, kind ?? END);
  }

  /** A rule's tags are those of its parts, one after another, where it is no sum and stands in none. */
  private ruled(way: Going, rule: RuleNode): Going {
    const isSum = rule.fold === 'sum';
    const isPlain = !isSum && !rule.unbroken && !way.left.inSum;
    return isPlain
      ? this.before(way, [rule.node])
      : this.bounded(way, rule, { slot: null, unbroken: rule.unbroken, isSum });
  }

  private bounded(way: Going, node: RuleNode | ScopeNode, bounds: Omit<EndMark, 'kind'>): Going {
    const end = this.lefts.mark(node, () => ({ kind: 'end', ...bounds }));
    return this.before(acted(way, { do: 'begin', isSum: bounds.isSum }), [node.node, end]);
  }

  private before({ left, acts }: Going, items: readonly Item[]): Going {
    return { left: this.lefts.beforeAll(left, items), acts };
  }

  private optionsOf(node: ChoiceNode): readonly Node[] {
    const { kind } = this.ahead;
    return kind === null
      ? node.options.map((each) => each.node)
      : this.grammar.optionsFor(node, kind);
  }
}

const acted = ({ left, acts }: Going, act: Act): Going => ({ left, acts: [...acts, act] });

const countsDown = (max: number, min: number): readonly number[] =>
  Array.from({ length: max - min + 1 }, (_, index) => max - index);

function isMark(item: Item): item is Mark {
  const { kind } = item;
  return kind === 'done' || kind === 'end' || kind === 'resting' || kind === 'unless';
}
