import { Sum, type Summand, summandOf } from './fold.ts';
import type { Act } from './left.ts';
import type { Matcher } from './match.ts';
import type { Data, Node } from './nodes.ts';

/** An act made ready: all are of one shape, so that none need be told from the others but by its code. */
export interface Step {
  readonly code: number;
  readonly slot: string | null;
  readonly data: Data;
  readonly summand: Summand;
  readonly scale: number;
  readonly node: Node | null;
}

const [PUT, SUM, VALUE, BEGIN, BEGIN_SUM, END, REST, REST_ENDS, UNLESS] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8,
] as const;
const NO_SUMMAND: Summand = { plus: 0, times: 1, sign: 1, aside: 0 };
const PLAIN: Step = {
  code: REST,
  slot: null,
  data: '',
  summand: NO_SUMMAND,
  scale: 1,
  node: null,
};

export function madeReady(act: Act): Step {
  switch (act.do) {
    case 'put':
      return { ...PLAIN, code: PUT, slot: act.slot, data: act.data };
    case 'sum':
      return { ...PLAIN, code: SUM, summand: act.summand };
    case 'value':
      return { ...PLAIN, code: VALUE, scale: act.scale };
    case 'begin':
      return { ...PLAIN, code: act.isSum ? BEGIN_SUM : BEGIN };
    case 'end':
      return { ...PLAIN, code: END, slot: act.slot };
    case 'rest':
      return PLAIN;
    case 'restEnds':
      return { ...PLAIN, code: REST_ENDS, slot: act.slot };
    case 'unless':
      return { ...PLAIN, code: UNLESS, node: act.node };
  }
}

/** Tags as they are put together, inside out. */
export class Reading {
  tags: Record<string, Data> = {};
  /** Where a number is added up. */
  private sum: Sum | null = null;
  private around: Around | null = null;
  private restFrom = 0;
  private readonly matcher: Matcher;

  constructor(matcher: Matcher) {
    this.matcher = matcher;
  }

  /** Takes steps before the token at a place is read; false where the reading turns out to be none. */
  takes(steps: readonly Step[], at: number): boolean {
    for (const step of steps) {
      if (step.code !== UNLESS) this.take(step, at);
      else if (step.node !== null && !this.matcher.readsNothing(step.node, at)) return false;
    }
    return true;
  }

  private take(step: Step, at: number): void {
    switch (step.code) {
      case PUT:
        this.put(step.slot, step.data);
        break;
      case SUM:
        this.sum?.add(step.summand);
        break;
      case VALUE:
        this.addValue(this.matcher.tokens[at]?.value ?? null, step.scale);
        break;
      case BEGIN:
        this.begin(null, {});
        break;
      case BEGIN_SUM:
        this.begin(new Sum(), this.tags);
        break;
      case END:
        this.end(step.slot);
        break;
      case REST:
        this.restFrom = at;
        break;
      case REST_ENDS:
        if (this.sum === null) this.put(step.slot, { from: this.restFrom, to: at });
        break;
    }
  }

  private put(slot: string | null, data: Data): void {
    if (slot !== null) this.tags[slot] = data;
  }

  private addValue(value: number | null, scale: number): void {
    if (value === null) return;
    if (this.sum === null) this.tags['plus'] = value * scale;
    else this.sum.addValue(value * scale);
  }

  private begin(sum: Sum | null, tags: Record<string, Data>): void {
    this.around = { tags: this.tags, sum: this.sum, around: this.around };
    this.sum = sum;
    this.tags = tags;
  }

  private end(slot: string | null): void {
    const { tags, sum, around } = this;
    if (around === null) return;
    this.tags = around.tags;
    this.sum = around.sum;
    this.around = around.around;
    if (this.sum !== null) {
      if (slot === null) this.sum.add(summandOf(sum === null ? tags : { number: sum.total() }));
    } else if (slot !== null) this.tags[slot] = sum === null ? tags : { number: sum.total() };
    else if (sum === null) Object.assign(this.tags, tags);
    else this.tags['number'] = sum.total();
  }
}

/** What a scope, or a rule that is more than its parts, stands in. */
interface Around {
  readonly tags: Record<string, Data>;
  readonly sum: Sum | null;
  readonly around: Around | null;
}
