import { type Standing, standings } from './standing.ts';
import type { GraphNode, PhoneArc, PhoneGraph } from './phone-graph.ts';
import { type Arrival, createWordings, keepArrival, keepToken, type Token } from './tokens.ts';

/** How far the search looks. Scores are in nats, the unit of the acoustic model's log posteriors. */
export interface SearchSettings {
  /** What lies this far behind the best is given up. */
  readonly beam: number;
  /** Given to each sound, against the pull of a sum of log posteriors towards words of few sounds. */
  readonly phoneBonus: number;
  /** Different wordings kept at each place: those behind the best are the alternatives. */
  readonly wordings: number;
}

/** One way to have said what was heard. */
export interface Hypothesis {
  readonly words: readonly TimedWord[];
  /** What the search ranked it by. */
  readonly score: number;
  /** Log posterior of its path alone, bonus and grammar left out; and of the best path of any sounds. */
  readonly acoustic: number;
  readonly free: number;
}

export interface TimedWord {
  readonly word: string;
  readonly startFrame: number;
  readonly endFrame: number;
  readonly acoustic: number;
  readonly free: number;
}

/** One utterance's way through a grammar, as its frames come. */
export interface PhoneSearch {
  /** Log posteriors of one frame, by phone; the first is the blank. */
  readonly accept: (frame: Float32Array) => void;
  /** The best so far, whether or not a sentence can end there; null when nothing fits. */
  readonly best: () => Hypothesis | null;
  /** What may come after the best so far. */
  readonly standing: () => Standing;
  /** Every kept wording of whole sentences, the best first. */
  readonly finish: () => readonly Hypothesis[];
}

const BLANK = 0;

/**
 * Viterbi search of connectionist temporal classification (Graves et al., ICML 2006) over a grammar's
 * phones: a token stays in its sound, rests on a blank between sounds, and enters the next; the same
 * sound twice needs a blank between. Each place keeps the best few tokens that differ in their words
 * (token passing: Young, Russell and Thornton, 1989).
 */
export function createPhoneSearch(graph: PhoneGraph, settings: SearchSettings): PhoneSearch {
  return new FrameSearch(graph, settings);
}

/** Where every token is after a frame. */
interface Front {
  readonly resting: Map<number, Token[]>;
  readonly sounding: Map<PhoneArc, Token[]>;
  best: number;
}

const noFront = (): Front => ({ resting: new Map(), sounding: new Map(), best: -Infinity });

class FrameSearch implements PhoneSearch {
  readonly #graph: PhoneGraph;
  readonly #settings: SearchSettings;
  readonly #standingAt: (node: number) => Standing;
  readonly #wordPath = createWordings();
  /** Log posterior of the best path without a grammar, up to each frame. */
  readonly #free = [0];
  #front: Front;

  constructor(graph: PhoneGraph, settings: SearchSettings) {
    this.#graph = graph;
    this.#settings = settings;
    this.#standingAt = standings(graph);
    const first: Token = { path: null, score: 0, acoustic: 0 };
    this.#front = { ...noFront(), resting: new Map([[graph.start, [first]]]), best: 0 };
  }

  readonly accept = (frame: Float32Array): void => {
    const next = noFront();
    for (const [arc, tokens] of this.#front.sounding) {
      for (const token of tokens) this.#sound(next, arc, heard(token, frame, arc.phone));
    }
    this.#throughNodes((node, arrivals) => this.#leave(next, { node, arrivals, frame }));
    this.#free.push((this.#free.at(-1) ?? 0) + frame.reduce((most, each) => Math.max(most, each)));
    this.#front = next;
  };

  readonly best = (): Hypothesis | null => {
    const [best] = this.#tokens().sort((one, other) => other.score - one.score);
    return best === undefined ? null : this.#hypothesis(best);
  };

  readonly standing = (): Standing => {
    const ends = [...this.#front.resting, ...endsOf(this.#front.sounding)];
    const [best] = ends
      .flatMap(([node, tokens]) => tokens.map((token) => ({ node, score: token.score })))
      .sort((one, other) => other.score - one.score);
    return best === undefined ? 'incomplete' : this.#standingAt(best.node);
  };

  readonly finish = (): readonly Hypothesis[] => {
    const whole: Token[] = [];
    this.#throughNodes((node, arrivals) => {
      if (node !== this.#graph.end) return;
      for (const { token } of arrivals) keepToken(whole, token, this.#settings.wordings);
    });
    return whole.sort((one, other) => other.score - one.score).map(this.#hypothesis);
  };

  /** Lets every token that ends a sound, or rests, pass on as far as it can without one. */
  #throughNodes(visit: (node: number, arrivals: readonly Arrival[]) => void): void {
    const waiting: (Arrival[] | undefined)[] = [];
    const arrive = (node: number, arrival: Arrival): void => {
      const arrivals = (waiting[node] ??= []);
      // Two ways to come by the same words (by a blank and by a sound) must not crowd out others.
      keepArrival(arrivals, arrival, 2 * this.#settings.wordings);
    };
    const limit = this.#front.best - this.#settings.beam;
    for (const [node, tokens] of this.#front.resting) {
      for (const token of tokens) if (token.score >= limit) arrive(node, { token, phone: BLANK });
    }
    for (const [{ to, phone }, tokens] of this.#front.sounding) {
      for (const token of tokens) if (token.score >= limit) arrive(to, { token, phone });
    }
    // Skips lead to higher numbers only, and so does this.
    for (let node = 0; node < waiting.length; node += 1) {
      const arrivals = waiting[node];
      if (arrivals === undefined) continue;
      for (const { to, logWeight } of this.#nodeAt(node).skips) {
        for (const arrival of arrivals) arrive(to, weighed(arrival, logWeight));
      }
      visit(node, arrivals);
    }
  }

  #leave(next: Front, { node, arrivals, frame }: Leaving): void {
    const { arcs, rests } = this.#nodeAt(node);
    if (rests) {
      for (const { token } of arrivals) this.#rest(next, node, heard(token, frame, BLANK));
    }
    for (const arc of arcs) {
      for (const { token, phone } of arrivals) {
        if (phone !== arc.phone) this.#enter(next, arc, { token, frame });
      }
    }
  }

  #rest(next: Front, node: number, token: Token): void {
    if (!this.#isNear(next, token.score)) return;
    keepToken(listIn(next.resting, node), token, this.#settings.wordings);
  }

  #enter(next: Front, arc: PhoneArc, { token, frame }: Entering): void {
    const inside = heard(token, frame, arc.phone);
    const score = inside.score + this.#settings.phoneBonus;
    if (!this.#isNear(next, score)) return;
    const path =
      arc.word === null ? token.path : this.#wordPath(token, arc.word, this.#free.length - 1);
    this.#sound(next, arc, { ...inside, score, path });
  }

  #sound(next: Front, arc: PhoneArc, token: Token): void {
    if (!this.#isNear(next, token.score)) return;
    keepToken(listIn(next.sounding, arc), token, this.#settings.wordings);
  }

  /** Within the beam of the best seen so far in this frame. */
  #isNear(next: Front, score: number): boolean {
    next.best = Math.max(next.best, score);
    return score >= next.best - this.#settings.beam;
  }

  #nodeAt(node: number): GraphNode {
    return this.#graph.nodes[node] ?? NOWHERE;
  }

  #tokens(): Token[] {
    return [...this.#front.resting.values(), ...this.#front.sounding.values()].flat();
  }

  readonly #hypothesis = ({ path, score, acoustic }: Token): Hypothesis => {
    const words: TimedWord[] = [];
    let end = { frame: this.#free.length - 1, acoustic };
    for (let at = path; at !== null; at = at.before) {
      words.unshift({
        word: at.said.word,
        startFrame: at.startFrame,
        endFrame: end.frame,
        acoustic: end.acoustic - at.acousticAtStart,
        free: (this.#free[end.frame] ?? 0) - (this.#free[at.startFrame] ?? 0),
      });
      end = { frame: at.startFrame, acoustic: at.acousticAtStart };
    }
    return { words, score, acoustic, free: this.#free.at(-1) ?? 0 };
  };
}

interface Leaving {
  readonly node: number;
  readonly arrivals: readonly Arrival[];
  readonly frame: Float32Array;
}

interface Entering {
  readonly token: Token;
  readonly frame: Float32Array;
}

const NOWHERE: GraphNode = { arcs: [], skips: [], rests: false };

function heard(token: Token, frame: Float32Array, phone: number): Token {
  const posterior = frame[phone] ?? -Infinity;
  return { ...token, score: token.score + posterior, acoustic: token.acoustic + posterior };
}

function weighed(arrival: Arrival, logWeight: number): Arrival {
  if (logWeight === 0) return arrival;
  const { token } = arrival;
  return { ...arrival, token: { ...token, score: token.score + logWeight } };
}

const endsOf = (sounding: ReadonlyMap<PhoneArc, Token[]>): (readonly [number, Token[]])[] =>
  [...sounding].map(([{ to }, tokens]) => [to, tokens] as const);

function listIn<Key>(lists: Map<Key, Token[]>, key: Key): Token[] {
  let list = lists.get(key);
  if (list === undefined) {
    list = [];
    lists.set(key, list);
  }
  return list;
}
