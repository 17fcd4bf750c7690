import { type SmallMap, withOneMore } from './small-map.ts';
import { CLASS_MARK, isPaused, kindIn, type Kinds } from './kinds.ts';
import { type Marks, bothMarks, marksOf, NO_MARKS, shareMark } from './marks.ts';
import type { ListNode, Node, RestNode } from './nodes.ts';

/**
 * What is left to read of a node once some tokens are read, its meaning apart. There is one of each, so what was
 * found out about it is found out for every rule that comes to it.
 */
export type Remainder = TokenLeft | ThenLeft | EitherLeft | JumpLeft | PauseLeft | DoneLeft;

interface Left extends Marks {
  readonly id: number;
  /** Nothing more need be read. */
  readonly canEnd: boolean;
  /** What comes next can be words that the grammar does not hold. */
  readonly mayJump: boolean;
}
interface DoneLeft extends Left {
  readonly kind: 'done';
}
interface PauseLeft extends Left {
  readonly kind: 'pause';
}
interface TokenLeft extends Left {
  readonly kind: 'token';
  readonly name: string;
}
interface ThenLeft extends Left {
  readonly kind: 'then';
  readonly first: Remainder;
  readonly next: Remainder;
}
interface EitherLeft extends Left {
  readonly kind: 'either';
  readonly options: readonly Remainder[];
  /** Made once something is asked of it: most are passed through. */
  after: SmallMap<number, Remainder> | null;
}
interface JumpLeft extends Left {
  readonly kind: 'jump';
  readonly node: ListNode | RestNode;
}

/** Words outside the grammar, and what is left to read behind them. */
export interface Jump {
  readonly node: ListNode | RestNode;
  readonly next: Remainder;
}

const DONE: Remainder = { kind: 'done', id: 0, canEnd: true, mayJump: false, ...NO_MARKS };
/** Of no options none can be read. */
export const NOTHING: Remainder = {
  kind: 'either',
  id: 1,
  canEnd: false,
  mayJump: false,
  ...NO_MARKS,
  options: [],
  after: null,
};

/** May be all that is left: whether the sentence pauses there is for the matcher to tell. */
const PAUSE: Remainder = { kind: 'pause', id: 2, canEnd: true, mayJump: false, ...NO_MARKS };

/** All sentences of the corpus together come to half of it, and to 40 MB. */
export const MOST_LEARNT = 80_000;

/**
 * Takes nodes apart token by token. Greed and unbroken rules are passed over: whatever a matcher reads, its
 * remainder reads too, but not the other way round.
 */
export class Remainders {
  /** How often everything was forgotten: what was built of remainders of another age is to be built anew. */
  age = 0;
  private readonly kinds: Kinds;
  private learnt = 0;
  private readonly marksOfKinds: (Marks | undefined)[] = [];
  private readonly known = new Map<Node, Remainder>();
  private readonly tokens = new Map<string, Remainder>();
  private readonly thens = new Map<number, Remainder>();
  private readonly eithers = new Map<string, Remainder>();
  private count = PAUSE.id;

  constructor(kinds: Kinds) {
    this.kinds = kinds;
  }

  /** How many were made so far. */
  get made(): number {
    return this.count;
  }

  /** To be told of each look-up that is kept, so that no flow of words in any order fills the memory. */
  learn(): void {
    this.learnt += 1;
    if (this.learnt > MOST_LEARNT) this.forget();
  }

  private forget(): void {
    this.age += 1;
    this.learnt = 0;
    for (const known of [this.known, this.tokens, this.thens, this.eithers]) known.clear();
  }

  /** All of it is left. */
  of(node: Node): Remainder {
    const found = this.known.get(node);
    if (found !== undefined) return found;
    const fresh = this.fresh(node);
    this.known.set(node, fresh);
    return fresh;
  }

  private fresh(node: Node): Remainder {
    switch (node.kind) {
      case 'word':
        return this.token(node.word);
      case 'class':
        return this.token(CLASS_MARK + node.name);
      case 'sequence':
        return node.parts.reduceRight((next, part) => this.then(this.of(part), next), DONE);
      case 'choice':
        return this.either(node.options.map((option) => this.of(option.node)));
      case 'optional':
        return this.either([this.of(node.node), DONE]);
      case 'repeat':
        return this.repeated(this.of(node.node), node.min, node.max);
      case 'rule':
      case 'scope':
      case 'unheard':
        return this.of(node.node);
      case 'tag':
        return DONE;
      case 'pause':
        return PAUSE;
      case 'list':
      case 'rest':
        return { kind: 'jump', id: this.nextId(), canEnd: false, mayJump: true, ...NO_MARKS, node };
    }
  }

  /** What is left behind a token; `NOTHING` where it cannot come next. */
  after(left: Remainder, symbol: number): Remainder {
    if (!shareMark(left, this.marksOfKind(kindIn(symbol)))) return NOTHING;
    switch (left.kind) {
      case 'done':
      case 'pause':
      case 'jump':
        return NOTHING;
      case 'token':
        return this.isNamed(left, symbol) ? DONE : NOTHING;
      case 'then':
        return this.afterThen(left, symbol);
      case 'either':
        return this.afterAny(left, symbol);
    }
  }

  private marksOfKind(kind: number): Marks {
    return (this.marksOfKinds[kind] ??= this.kinds
      .namesOf(kind)
      .map(marksOf)
      .reduce(bothMarks, NO_MARKS));
  }

  private isNamed({ name }: TokenLeft, symbol: number): boolean {
    return this.kinds.namesOf(kindIn(symbol)).includes(name);
  }

  private afterThen({ first, next }: ThenLeft, symbol: number): Remainder {
    const through = this.then(this.after(first, symbol), next);
    const isPassed = canEndBefore(first, symbol);
    return isPassed ? this.either([through, this.after(next, symbol)]) : through;
  }

  /** What is asked of many rules: it is kept. */
  private afterAny(either: EitherLeft, symbol: number): Remainder {
    const found = either.after?.get(symbol);
    if (found !== undefined) return found;
    const left: Remainder[] = [];
    for (const option of either.options) {
      const next = this.after(option, symbol);
      if (next !== NOTHING) left.push(next);
    }
    const fresh = this.either(left);
    either.after = withOneMore(either.after, symbol, fresh);
    return fresh;
  }

  /** The words outside the grammar that can come next. */
  jumpsIn(left: Remainder): readonly Jump[] {
    if (!left.mayJump) return [];
    switch (left.kind) {
      case 'done':
      case 'pause':
      case 'token':
        return [];
      case 'jump':
        return [{ node: left.node, next: DONE }];
      case 'then': {
        const { first, next } = left;
        const within = this.jumpsIn(first).map((jump) => ({
          ...jump,
          next: this.then(jump.next, next),
        }));
        return first.canEnd ? [...within, ...this.jumpsIn(next)] : within;
      }
      case 'either':
        return left.options.flatMap((option) => this.jumpsIn(option));
    }
  }

  private token(name: string): Remainder {
    const found = this.tokens.get(name);
    if (found !== undefined) return found;
    const id = this.nextId();
    const marks = marksOf(name);
    const fresh: Remainder = { kind: 'token', id, canEnd: false, mayJump: false, ...marks, name };
    this.tokens.set(name, fresh);
    return fresh;
  }

  private then(first: Remainder, next: Remainder): Remainder {
    if (first === NOTHING || next === NOTHING) return NOTHING;
    if (first === DONE) return next;
    if (next === DONE) return first;
    if (first.kind === 'then') return this.then(first.first, this.then(first.next, next));
    const key = first.id * 2 ** 26 + next.id;
    const found = this.thens.get(key);
    if (found !== undefined) return found;
    const fresh: Remainder = {
      kind: 'then',
      id: this.nextId(),
      canEnd: first.canEnd && next.canEnd,
      mayJump: first.mayJump || (first.canEnd && next.mayJump),
      marks: first.marks | (first.canEnd ? next.marks : 0),
      moreMarks: first.moreMarks | (first.canEnd ? next.moreMarks : 0),
      first,
      next,
    };
    this.thens.set(key, fresh);
    return fresh;
  }

  private either(all: readonly Remainder[]): Remainder {
    const [first, second] = all;
    if (first !== undefined && second === undefined) return first;
    const flat = new Set<Remainder>();
    for (const each of all) {
      if (each.kind !== 'either') flat.add(each);
      else for (const option of each.options) flat.add(option);
    }
    const options = [...flat].sort((one, other) => one.id - other.id);
    const [only] = options;
    if (only === undefined) return NOTHING;
    if (options.length === 1) return only;
    const key = options.map(({ id }) => id).join();
    const found = this.eithers.get(key);
    if (found !== undefined) return found;
    const fresh: Remainder = {
      kind: 'either',
      id: this.nextId(),
      canEnd: options.some(({ canEnd }) => canEnd),
      mayJump: options.some(({ mayJump }) => mayJump),
      ...options.reduce<Marks>(bothMarks, NO_MARKS),
      options,
      after: null,
    };
    this.eithers.set(key, fresh);
    return fresh;
  }

  private repeated(once: Remainder, min: number, max: number): Remainder {
    let left = DONE;
    for (let times = max; times > 0; times -= 1) {
      const more = this.then(once, left);
      left = times > min ? this.either([more, DONE]) : more;
    }
    return left;
  }

  private nextId(): number {
    this.count += 1;
    return this.count;
  }
}

/** Whether nothing more need be read where this token comes next. */
function canEndBefore(left: Remainder, symbol: number): boolean {
  if (!left.canEnd) return false;
  switch (left.kind) {
    case 'pause':
      return isPaused(symbol);
    case 'then':
      return canEndBefore(left.first, symbol) && canEndBefore(left.next, symbol);
    case 'either':
      return left.options.some((option) => canEndBefore(option, symbol));
    default:
      return true;
  }
}
