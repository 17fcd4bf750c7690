import type { SoundGraph } from './sound-graph.ts';
import type { Standing } from './standing.ts';
import { type Token, TokenStore, WordPaths } from './tokens.ts';

/** How far the search looks. Scores are in nats, the unit of the acoustic model's log posteriors. */
export interface SearchSettings {
  /** What lies this far behind the best is given up. */
  readonly beam: number;
  /** Given to each sound, against the pull of a sum of log posteriors towards words of few sounds. */
  readonly phoneBonus: number;
  /** Different wordings kept at each place: those behind the best are the alternatives. */
  readonly wordings: number;
  /** Kept from one frame to the next, the best: where nothing is likely, thousands of places are within the beam. */
  readonly tokens: number;
  /** Words said by some token, each with the way to it, up to half of them of tokens that are no more: 0.1 kB each. */
  readonly paths: number;
  /** Of the graph, before it keeps only where the search is: 0.5 kB each. Half of them stay for the next utterance. */
  readonly arcs: number;
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
  /** What it holds in memory, beside the graph. */
  readonly held: () => { readonly tokens: number; readonly paths: number };
}

const BLANK = 0;

/**
 * In nats. A word half said can fit the end of a whole one better ("three hundred thir-teen" as "thirty n…"): 8 of 48
 * sentences that were over passed for unfinished. Within 2 nats none of 54 did, and of 40 beginnings ("suction", "how do
 * i") 37 still did; within 8 nats 28.
 */
const COULD_END_WITHIN = 2;

/**
 * Viterbi search of connectionist temporal classification (Graves et al., ICML 2006) over a grammar's
 * phones: a token stays in its sound, rests on a blank between sounds, and enters the next; the same
 * sound twice needs a blank between. Each place keeps the best few tokens that differ in their words
 * (token passing: Young, Russell and Thornton, 1989).
 */
export function createPhoneSearch(graph: SoundGraph, settings: SearchSettings): PhoneSearch {
  graph.trim(settings.arcs / 2);
  return new FrameSearch(graph, settings);
}

/** Where every token is after a frame: in the sound of an arc, or resting at a node. */
interface Front {
  readonly sounding: TokenStore;
  readonly resting: TokenStore;
}

const newToken = (): Token => ({
  path: -1,
  score: 0,
  acoustic: 0,
  phone: BLANK,
  since: 0,
  acousticSince: 0,
});

class FrameSearch implements PhoneSearch {
  readonly #graph: SoundGraph;
  readonly #settings: SearchSettings;
  readonly #paths: WordPaths;
  /** Log posterior of the best path without a grammar, up to each frame. */
  readonly #free = [0];
  #front: Front;
  #next: Front;
  /** Tokens between sounds, at the nodes they come through within one frame. */
  readonly #arrivals: TokenStore;
  /** Score of the best of the front, and of what is seen so far of the next. */
  #best = 0;
  #nextBest = -Infinity;
  // Two tokens for all of it: a million objects a second would keep the collector busy.
  readonly #token = newToken();
  readonly #entering = newToken();

  constructor(graph: SoundGraph, settings: SearchSettings) {
    this.#graph = graph;
    this.#settings = settings;
    this.#paths = new WordPaths(this.#graph.words.length + 1);
    this.#front = this.#emptyFront();
    this.#next = this.#emptyFront();
    // Two ways to come by the same words (by a blank and by a sound) must not crowd out others.
    this.#arrivals = new TokenStore(2 * settings.wordings, this.#paths);
    this.#front.resting.keep(graph.start, newToken());
  }

  readonly accept = (frame: Float32Array): void => {
    this.#nextBest = -Infinity;
    this.#stay(frame);
    this.#throughNodes((node, mayRest) => this.#leave({ node, mayRest }, frame));
    this.#free.push((this.#free.at(-1) ?? 0) + greatest(frame));
    [this.#front, this.#next] = [this.#next, this.#front];
    this.#next.sounding.clear();
    this.#next.resting.clear();
    this.#best = this.#nextBest;
    this.#keepBounds();
  };

  readonly best = (): Hypothesis | null => {
    const [found] = this.#placed();
    return found === undefined ? null : this.#hypothesis(found.token);
  };

  readonly standing = (): Standing => {
    const [best, ...others] = this.#placed();
    if (best === undefined) return 'incomplete';
    const standing = this.#standingAt(best.node);
    if (standing !== 'incomplete') return standing;
    const limit = best.token.score - COULD_END_WITHIN;
    const couldEnd = others.some(
      ({ node, token }) => token.score >= limit && this.#standingAt(node) !== 'incomplete',
    );
    return couldEnd ? 'extendable' : 'incomplete';
  };

  readonly finish = (): readonly Hypothesis[] => {
    const found = new TokenStore(this.#settings.wordings, this.#paths);
    this.#throughNodes((node) => {
      const ends = this.#graph.reach(node)?.ends ?? null;
      if (ends === null) return;
      for (const token of tokensAt(this.#arrivals, node)) {
        found.keep(0, { ...token, score: token.score + ends, phone: BLANK });
      }
    });
    return tokensAt(found, 0)
      .sort((one, other) => other.score - one.score)
      .map(this.#hypothesis);
  };

  readonly held = () => ({ tokens: this.#size(), paths: this.#paths.count });

  #emptyFront(): Front {
    const { wordings } = this.#settings;
    return {
      sounding: new TokenStore(wordings, this.#paths),
      resting: new TokenStore(wordings, this.#paths),
    };
  }

  #size(): number {
    const { sounding, resting } = this.#front;
    return sounding.size + resting.size;
  }

  #keepBounds(): void {
    const { tokens, paths, arcs } = this.#settings;
    if (this.#size() > tokens) this.#keepBest(tokens);
    if (this.#paths.count > paths / 2) this.#forgetPaths();
    if (this.#graph.arcPhone.length > arcs) this.#renewGraph();
  }

  /** Of the front, exactly so many. */
  #keepBest(tokens: number): void {
    const { sounding, resting } = this.#front;
    const scores = Float64Array.from([...sounding.scores(), ...resting.scores()]).sort();
    const first = scores.length - tokens;
    const least = scores[first] ?? -Infinity;
    let onIt = 1;
    while (scores[first + onIt] === least) onIt += 1;
    resting.thin(least, sounding.thin(least, onIt));
  }

  #renewGraph(): void {
    const { sounding, resting } = this.#front;
    const moved = this.#graph.renew({ nodes: resting.places, arcs: sounding.places });
    sounding.move(moved.arcs);
    resting.move(moved.nodes);
  }

  /** Lets go of the words that no token of the front has said; where they still are too many, of tokens as well. */
  #forgetPaths(): void {
    const { sounding, resting } = this.#front;
    for (let most = this.#size(); most > 0; most = Math.floor(most / 2)) {
      if (most < this.#size()) this.#keepBest(most);
      const numbers = this.#paths.keepOnly([...sounding.paths(), ...resting.paths()]);
      sounding.renumber(numbers);
      resting.renumber(numbers);
      if (this.#paths.count <= this.#settings.paths / 4) return;
    }
  }

  /** The sounds go on. */
  #stay(frame: Float32Array): void {
    const { sounding } = this.#front;
    const token = this.#token;
    for (const arc of sounding.places) {
      const posterior = frame[this.#graph.arcPhone[arc] ?? BLANK] ?? -Infinity;
      for (let nth = 0; nth < sounding.count(arc); nth += 1) {
        sounding.read(arc, nth, token);
        token.score += posterior;
        token.acoustic += posterior;
        if (this.#isNear(token.score)) this.#next.sounding.keep(arc, token);
      }
    }
  }

  /** Lets every token that ends a sound, or rests, pass on as far as it can without one. */
  #throughNodes(visit: (node: number, mayRest: boolean) => void): void {
    const { arcPhone, end } = this.#graph;
    const { sounding, resting } = this.#front;
    this.#arrivals.clear();
    for (const node of resting.places) this.#arrive(resting, node, { node, phone: BLANK });
    for (const arc of sounding.places) {
      this.#arrive(sounding, arc, { node: end(arc), phone: arcPhone[arc] ?? BLANK });
    }
    const { places } = this.#arrivals;
    const arrived = places.length;
    // It grows where another sentence may begin: whoever rests between the two does so at the end of the first.
    for (const node of places) this.#beginAgain(node);
    for (const [at, node] of places.entries()) visit(node, at < arrived);
  }

  #arrive(from: TokenStore, place: number, { node, phone }: Arriving): void {
    const limit = this.#best - this.#settings.beam;
    const token = this.#token;
    for (let nth = 0; nth < from.count(place); nth += 1) {
      from.read(place, nth, token);
      token.phone = phone;
      if (token.score >= limit) this.#arrivals.keep(node, token);
    }
  }

  #beginAgain(node: number): void {
    const token = this.#token;
    for (const { to, logWeight } of this.#graph.reach(node)?.again ?? []) {
      for (let nth = 0; nth < this.#arrivals.count(node); nth += 1) {
        this.#arrivals.read(node, nth, token);
        token.score += logWeight;
        this.#arrivals.keep(to, token);
      }
    }
  }

  #leave({ node, mayRest }: Leaving, frame: Float32Array): void {
    const { arcsFrom, arcsEnd } = this.#graph;
    const isBetweenWords = this.#graph.reach(node) !== null;
    const [first = 0, end = 0] = [arcsFrom[node], arcsEnd[node]];
    for (let nth = 0; nth < this.#arrivals.count(node); nth += 1) {
      this.#arrivals.read(node, nth, this.#token);
      if (mayRest) this.#rest(node, frame);
      if (isBetweenWords) this.#beginWord();
      for (let arc = first; arc < end; arc += 1) this.#enter(arc, frame);
    }
  }

  #beginWord(): void {
    this.#token.since = this.#free.length - 1;
    this.#token.acousticSince = this.#token.acoustic;
  }

  #rest(node: number, frame: Float32Array): void {
    const resting = this.#entering;
    const posterior = frame[BLANK] ?? -Infinity;
    resting.score = this.#token.score + posterior;
    if (!this.#isNear(resting.score)) return;
    resting.acoustic = this.#token.acoustic + posterior;
    resting.path = this.#token.path;
    resting.phone = BLANK;
    resting.since = this.#token.since;
    resting.acousticSince = this.#token.acousticSince;
    this.#next.resting.keep(node, resting);
  }

  #enter(arc: number, frame: Float32Array): void {
    const phone = this.#graph.arcPhone[arc] ?? BLANK;
    if (phone === this.#token.phone) return;
    const entering = this.#entering;
    const posterior = frame[phone] ?? -Infinity;
    const weight = this.#graph.arcWeight[arc] ?? 0;
    entering.score = this.#token.score + posterior + this.#settings.phoneBonus + weight;
    if (!this.#isNear(entering.score)) return;
    entering.acoustic = this.#token.acoustic + posterior;
    entering.phone = BLANK;
    entering.since = this.#token.since;
    entering.acousticSince = this.#token.acousticSince;
    const word = this.#graph.arcWord[arc] ?? -1;
    if (word >= 0 && this.#paths.count >= this.#settings.paths) return;
    entering.path = word < 0 ? this.#token.path : this.#paths.add(this.#token, word);
    this.#next.sounding.keep(arc, entering);
  }

  #standingAt(node: number): Standing {
    return this.#graph.reach(node)?.standing ?? 'incomplete';
  }

  /** Within the beam of the best seen so far in this frame. */
  #isNear(score: number): boolean {
    if (score > this.#nextBest) this.#nextBest = score;
    return score >= this.#nextBest - this.#settings.beam;
  }

  /** The tokens of the front, the best first, and the node that each is at or leads to. */
  #placed(): readonly { readonly token: Token; readonly node: number }[] {
    const { sounding, resting } = this.#front;
    const all = [
      ...resting.places.map((node) => ({ node, tokens: tokensAt(resting, node) })),
      ...sounding.places.map((arc) => ({
        node: this.#graph.end(arc),
        tokens: tokensAt(sounding, arc),
      })),
    ];
    return all
      .flatMap(({ node, tokens }) => tokens.map((token) => ({ node, token })))
      .sort((one, other) => other.token.score - one.token.score);
  }

  readonly #hypothesis = ({ path, score, acoustic }: Token): Hypothesis => {
    const { word, before, startFrame, acousticAtStart } = this.#paths;
    const words: TimedWord[] = [];
    let end = { frame: this.#free.length - 1, acoustic };
    for (let at = path; at >= 0; at = before[at] ?? -1) {
      const start = { frame: startFrame[at] ?? 0, acoustic: acousticAtStart[at] ?? 0 };
      words.unshift({
        word: this.#graph.words[word[at] ?? -1] ?? '',
        startFrame: start.frame,
        endFrame: end.frame,
        acoustic: end.acoustic - start.acoustic,
        free: (this.#free[end.frame] ?? 0) - (this.#free[start.frame] ?? 0),
      });
      end = start;
    }
    return { words, score, acoustic, free: this.#free.at(-1) ?? 0 };
  };
}

interface Leaving {
  readonly node: number;
  readonly mayRest: boolean;
}

/** The node that a token comes to, and the sound it comes from. */
interface Arriving {
  readonly node: number;
  readonly phone: number;
}

function tokensAt(store: TokenStore, place: number): Token[] {
  return Array.from({ length: store.count(place) }, (_, nth) => {
    const token = newToken();
    store.read(place, nth, token);
    return token;
  });
}

function greatest(frame: Float32Array): number {
  let most = -Infinity;
  for (const each of frame) if (each > most) most = each;
  return most;
}
