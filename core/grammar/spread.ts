import type { Grammar } from './compile.ts';
import { summandOf } from './fold.ts';
import { END } from './kinds.ts';
import type { ActLists } from './act-lists.ts';
import type { Act, EndMark, Item, Left, Lefts, Mark, Onward } from './left.ts';
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
  readonly acts: ActLists;
  /** Whether ways that come to the same are all wanted, not only the one that is preferred. */
  readonly wantsEvery: boolean;
}

/** More ways than any rule has over a token; where there are more, not every one is found. */
const MOST_WAYS = 200;
const MOST_OPENED = 4_000;

/**
 * Where what is left to read leads over the next token: its partial derivatives (V. Antimirov, "Partial derivatives of
 * regular expressions", 1996), in the order in which the matcher prefers them, each with what it does to the tags.
 */
export function onwardFrom(left: Left, ahead: Ahead, ground: Ground): Onward {
  const spread = new Spread(ahead, ground);
  spread.go({ left, acts: NO_ACTS }, left.unbroken);
  // Only what was found is kept: there are tens of thousands, and each looked through its own sets for it.
  const { lists, isCut } = spread;
  const ways = spread.ways.map((way) => ({ ...way, acts: ground.acts.numberOf(way.acts) }));
  return { ways, lists: lists.length === 0 ? NO_LISTS : lists, isCut };
}

const NO_LISTS: readonly ListNode[] = [];

type ReadsNothing = Exclude<Item, { kind: 'word' | 'class' | 'rest' | 'resting' | 'list' }>;
type MadeOfParts = Extract<
  Node,
  { kind: 'sequence' | 'choice' | 'optional' | 'repeat' | 'rule' | 'scope' | 'unheard' }
>;

interface Reached extends Going {
  hidesOthers: boolean;
  readonly isBehindEnd: boolean;
}

/** On the way over what reads nothing. */
interface Going {
  readonly left: Left;
  readonly acts: readonly Act[];
}
/** And items that stand before what is left. */
interface Entering extends Going {
  readonly items: readonly Item[];
}
const into = ({ left, acts }: Going, ...items: readonly Item[]): Entering => ({
  left,
  acts,
  items,
});

export const NO_ACTS: readonly Act[] = [];

class Spread {
  readonly ways: Reached[] = [];
  readonly lists: ListNode[] = [];
  private hasEnded = false;
  private readonly ahead: Ahead;
  isCut = false;
  private opened = 0;
  private readonly grammar: Grammar;
  private readonly lefts: Lefts;
  private readonly wantsEvery: boolean;
  private readonly reached = new Map<Left, Reached>();
  private readonly passed = new Set<Left>();

  constructor(ahead: Ahead, { grammar, lefts, wantsEvery }: Ground) {
    this.ahead = ahead;
    this.grammar = grammar;
    this.lefts = lefts;
    this.wantsEvery = wantsEvery;
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
    if (this.wantsEvery || (this.ahead.pause && across > 0)) return false;
    const { size } = this.passed;
    if (this.passed.add(left).size > size) return false;
    for (const way of this.ways) way.hidesOthers = true;
    return true;
  }

  private open(way: Going, item: Item, across: number): void {
    this.opened += 1;
    this.isCut ||= this.ways.length === MOST_WAYS || this.opened > MOST_OPENED;
    if (this.isCut) return;
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
        for (const each of this.waysOver(way, item)) this.enter(each, across);
    }
  }

  /** What is entered at once need not be kept as something that is left. */
  private enter({ left, acts, items }: Entering, across: number): void {
    const [item, ...more] = items;
    if (item === undefined) this.go({ left, acts }, across);
    else if (this.mayRead(item)) {
      const behind = this.lefts.beforeAll(left, more);
      this.open({ left: behind, acts }, item, Math.min(across, behind.unbroken));
    }
  }

  /** Over what reads nothing by itself. */
  private waysOver(way: Going, item: ReadsNothing): readonly Entering[] {
    switch (item.kind) {
      case 'tag':
        return [into(this.tagged(way, item.tags))];
      case 'pause':
        return this.ahead.pause ? [into(way)] : [];
      case 'end':
        return [into(acted(way, { do: 'end', slot: item.slot }))];
      case 'unless': {
        const { node } = item;
        return [into(this.mayRefuse(node) ? acted(way, { do: 'unless', node }) : way)];
      }
      case 'done':
        return [];
      default:
        return this.partsOf(way, item);
    }
  }

  /** What a node is made of, in the order of preference. */
  private partsOf(way: Going, item: MadeOfParts): readonly Entering[] {
    switch (item.kind) {
      case 'sequence':
        return [into(way, ...item.parts)];
      case 'choice':
        return this.optionsOf(item).map((node) => into(way, node));
      case 'optional':
        return [into(way, item.node), item.greedy ? into(way, this.unless(item)) : into(way)];
      case 'repeat':
        return countsDown(item.max, item.min).map((times) =>
          into(way, ...Array.from({ length: times }, () => item.node)),
        );
      case 'rule':
        return [this.ruled(way, item)];
      case 'scope':
        return [this.bounded(way, item, { slot: item.slot, unbroken: false, isSum: false })];
      case 'unheard':
        return [into(way, item.node)];
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
    if (known !== undefined && !this.wantsEvery) {
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

  private resting({ left, acts }: Going, node: RestNode): Going {
    const mark = this.lefts.mark(node, () => ({ kind: 'resting', node }));
    return { left: this.lefts.before(left, mark), acts };
  }

  private unless(passedOver: OptionalNode): Item {
    return this.lefts.mark(passedOver, () => ({ kind: 'unless', node: passedOver.node }));
  }

  /** Whether a greedy part that was passed over may read something here after all. */
  private mayRefuse(node: Node): boolean {
    const { kind, isEnd } = this.ahead;
    return kind === null && !isEnd ? true : this.grammar.canBegin(node, kind ?? END);
  }

  /** A rule's tags are those of its parts, one after another, where it is no sum and stands in none. */
  private ruled(way: Going, rule: RuleNode): Entering {
    const isSum = rule.fold === 'sum';
    const isPlain = !isSum && !rule.unbroken && !way.left.inSum;
    return isPlain
      ? into(way, rule.node)
      : this.bounded(way, rule, { slot: null, unbroken: rule.unbroken, isSum });
  }

  private bounded(way: Going, node: RuleNode | ScopeNode, bounds: Omit<EndMark, 'kind'>): Entering {
    const end = this.lefts.mark(node, () => ({ kind: 'end', ...bounds }));
    return into(acted(way, { do: 'begin', isSum: bounds.isSum }), node.node, end);
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
