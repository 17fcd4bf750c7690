import {
  actsIn,
  type Automata,
  BEFORE_END,
  BEFORE_PAUSE,
  BEFORE_WORD,
  hidesOthers,
  isBehindEnd,
  NOWHERE,
  originIn,
  reading,
} from './automata.ts';
import { END_SYMBOL } from './kinds.ts';
import type { Matcher } from './match.ts';
import type { Tags } from './nodes.ts';
import { Reading } from './reading.ts';

/** The way of a reading through the states of its rule. */
interface Route {
  /** The thread at each place, the end's included. */
  readonly threads: readonly number[];
  readonly hidesOthers: boolean;
}

/** What is done at each place of the reading that is traced now. */
const ACTS: number[] = [];

interface Within {
  readonly matcher: Matcher;
  readonly at: number;
  /** No reading is asked for that ends behind it. */
  readonly to: number;
}

/** How a rule may read one sentence from a place on. */
export class Reach {
  private readonly automata: Automata;
  private readonly matcher: Matcher;
  readonly rule: number;
  readonly at: number;
  private readonly to: number;
  private readonly start: number;
  /** Over each token. */
  private readonly steps: number[] = [];
  /** Phrases of a list may be read, or there are too many ways: only the matcher knows them. */
  private hasLeapt = false;

  constructor(automata: Automata, rule: number, { matcher, at, to }: Within) {
    this.automata = automata;
    this.rule = rule;
    this.matcher = matcher;
    this.at = at;
    this.to = to;
    this.start = automata.startOf(rule);
    this.walk();
  }

  private walk(): void {
    const { automata, matcher, to } = this;
    const { symbols } = matcher;
    let state = this.start;
    for (let place = this.at; place < to && state !== NOWHERE; place += 1) {
      const step = automata.stepFrom(state, reading(symbols[place] ?? END_SYMBOL));
      if (matcher.hasLists) this.seek(step, place);
      this.hasLeapt ||= automata.isCut(step);
      this.steps.push(step);
      state = automata.after(step);
    }
    matcher.steps += this.steps.length;
  }

  private seek(step: number, at: number): void {
    for (const list of this.automata.listsAt(step) ?? []) {
      this.hasLeapt ||= this.matcher.phrasesAt(list, at).length > 0;
    }
  }

  /** No reading ends behind it. */
  get farthest(): number {
    return this.at + this.steps.length;
  }

  /** How many readings up to there it knows: with automata that want every one, all; below zero where only the matcher can tell. */
  countTo(end: number): number {
    const ending = this.ending(end);
    return this.hasLeapt || this.automata.isCut(ending) ? -1 : this.automata.countOf(ending);
  }

  /** What the reading up to there means that the rule prefers to its others; `null` where only the matcher can tell. */
  first(end: number): Tags | null {
    return this.countTo(end) > 0 ? this.reading(end, 0) : null;
  }

  /** What one of the readings up to there means, the preferred first; `null` where it turns out to be none. */
  reading(end: number, which: number): Tags | null {
    this.traceActs(end, which);
    const reading = new Reading(this.matcher);
    for (let place = this.at; place <= end; place += 1) {
      const acts = ACTS[place - this.at] ?? 0;
      if (acts !== 0 && !reading.takes(this.automata.stepsOf(acts), place)) return null;
    }
    return reading.tags;
  }

  /** Back from the end: what is done at each place goes into `ACTS`. */
  private traceActs(end: number, which: number): void {
    const { automata, at, steps } = this;
    const ending = this.ending(end);
    let back = automata.back(ending, which);
    ACTS[end - at] = actsIn(back);
    for (let ahead = end - at - 1; ahead >= 0; ahead -= 1) {
      back = automata.back(steps[ahead] ?? 0, originIn(back));
      ACTS[ahead] = actsIn(back);
    }
  }

  /** Whether that reading is the only one up to there. */
  hasOnly(end: number): boolean {
    const route = this.automata.countOf(this.ending(end)) === 1 ? this.routeTo(end) : null;
    return route?.hidesOthers === false;
  }

  /** Below zero where the rule prefers its first reading up to `one`. */
  compare(one: number, other: number): number {
    if (one > other) return -this.compare(other, one);
    const short = this.routeTo(one);
    const long = this.routeTo(other);
    if (short === null || long === null) return 0;
    const place = one - this.at;
    const thread = short.threads[place] ?? 0;
    const ahead = thread - (long.threads[place] ?? 0);
    if (ahead !== 0) return ahead;
    const next = this.steps[place] ?? 0;
    return isBehindEnd(this.automata.back(next, long.threads[place + 1] ?? 0)) ? -1 : 1;
  }

  private routeTo(end: number): Route | null {
    const ending = this.ending(end);
    const { automata, at } = this;
    if (this.hasLeapt || automata.countOf(ending) === 0) return null;
    const threads: number[] = [];
    const length = end - at;
    let back = automata.back(ending, 0);
    let hides = hidesOthers(back);
    threads[length] = originIn(back);
    for (let ahead = length - 1; ahead >= 0; ahead -= 1) {
      back = automata.back(this.steps[ahead] ?? 0, originIn(back));
      hides ||= hidesOthers(back);
      threads[ahead] = originIn(back);
    }
    return { threads, hidesOthers: hides };
  }

  /** The step by which the rule ends there. */
  private ending(end: number): number {
    const { automata, at, matcher } = this;
    const last = this.steps[end - at - 1];
    const state = end === at ? this.start : last === undefined ? NOWHERE : automata.after(last);
    const next = matcher.tokens[end];
    const behind = next === undefined ? BEFORE_END : next.pause ? BEFORE_PAUSE : BEFORE_WORD;
    return automata.stepFrom(state, behind);
  }
}
