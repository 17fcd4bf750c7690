import {
  type Beginnings,
  beginningsOf,
  type BeginningsBehind,
  grouped,
  type Spoken,
} from './beginnings.ts';
import type { Pronunciations } from './dictionary.ts';
import type { JsgfRules } from './parse-jsgf.ts';
import type { Standing } from './standing.ts';
import { type WordNet, wordNet } from './word-net.ts';
import { type Onward, type Place, wordStates, type WordStates } from './word-states.ts';

export interface Sounds {
  readonly pronunciations: Pronunciations;
  /** The acoustic model's phones by index; the first is its blank. */
  readonly phones: readonly string[];
}

/**
 * A grammar as sounds, which grows where a search comes: words that begin alike share their sounds until they differ.
 * Arcs of node n are those from arcsFrom[n] to before arcsEnd[n], once it was reached.
 */
export interface SoundGraph {
  readonly start: number;
  readonly arcsFrom: readonly number[];
  readonly arcsEnd: readonly number[];
  /** Index into the phones of the acoustic model. */
  readonly arcPhone: readonly number[];
  readonly arcTo: readonly number[];
  /** The word that can only be meant from here on, an index into words; −1 where it is open or told before. */
  readonly arcWord: readonly number[];
  /** Log of the grammar's weight, told with the word. */
  readonly arcWeight: readonly number[];
  readonly words: readonly string[];
  /** The node that an arc leads to: where several words lead to the same, one node. */
  readonly end: (arc: number) => number;
  /** Works out what follows a node; null within a word, and as nothing where the graph is full. */
  readonly reach: (node: number) => BetweenWords | null;
  /** Forgets all that grew where it is more than so many arcs: nodes of before are none any more. */
  readonly trim: (mostArcs: number) => void;
  /** Forgets all that grew but where a search is, from where it grows again. */
  readonly renew: (where: Where) => Moved;
}

/** Where a search is: resting at nodes, in the sound of arcs. */
export interface Where {
  readonly nodes: readonly number[];
  readonly arcs: readonly number[];
}

/** What each of those nodes and arcs has become. */
export interface Moved {
  readonly nodes: ReadonlyMap<number, number>;
  readonly arcs: ReadonlyMap<number, number>;
}

/**
 * It grows no further in one frame of a search, which renews it before the next: 0.5 kB each. Where a frame says nothing,
 * thousands of tokens may each come to a node that nobody was at.
 */
export const FULL_OF_ARCS = 120_000;

export interface BetweenWords {
  readonly ends: number | null;
  /** Nodes where another sentence begins. */
  readonly again: readonly Onward[];
  readonly standing: Standing;
}

export type SoundGraphOutcome =
  | { readonly kind: 'graph'; readonly graph: SoundGraph }
  | { readonly kind: 'unknownWords'; readonly words: readonly string[] }
  | { readonly kind: 'malformed'; readonly message: string };

/** Every sentence of the grammar's public rules as a path of phones. */
export function soundGraph(
  grammar: JsgfRules,
  sounds: Sounds,
  mostArcs = FULL_OF_ARCS,
): SoundGraphOutcome {
  const outcome = wordNet(grammar);
  if (outcome.kind === 'malformed') return outcome;
  const words = wordsOf(outcome.net);
  const unknown = words.filter((word) => soundsOf(word, sounds).length === 0);
  if (unknown.length > 0) return { kind: 'unknownWords', words: unknown.sort() };
  const phones = new Map(sounds.phones.map((phone, index) => [phone, index]));
  const spoken = new Map<string, Spoken>();
  for (const [index, word] of words.entries()) {
    const ways = soundsOf(word, sounds).map((sound) => sound.split(' '));
    const strange = ways.flat().find((name) => !phones.has(name));
    if (strange !== undefined) {
      const message = `The grammar cannot be heard: ${word} holds the unknown sound ${strange}.`;
      return { kind: 'malformed', message };
    }
    spoken.set(word, { index, ways: ways.map((way) => way.map((name) => phones.get(name) ?? 0)) });
  }
  return { kind: 'graph', graph: new LazyGraph(outcome.net, { words, spoken, mostArcs }) };
}

const wordsOf = ({ nodes }: WordNet): string[] => [
  ...new Set(nodes.flatMap(({ words }) => words.map(({ word }) => word))),
];

const soundsOf = (word: string, { pronunciations }: Sounds): readonly string[] =>
  Object.hasOwn(pronunciations, word) ? [...new Set(pronunciations[word])] : [];

/** Beginnings of words whose places all come back to the same. */
interface Saying {
  readonly beginnings: Beginnings;
  readonly back: number;
  readonly logWeight: number;
}

/** What a node is: between words a state, or all the places that a word leads to as long as nobody came there. */
type Node =
  | { readonly kind: 'state'; readonly state: number }
  | { readonly kind: 'places'; readonly places: readonly Place[] }
  | { readonly kind: 'within'; readonly sayings: readonly Saying[]; readonly isTold: boolean };

interface Vocabulary {
  readonly words: readonly string[];
  readonly spoken: ReadonlyMap<string, Spoken>;
  readonly mostArcs: number;
}

class LazyGraph implements SoundGraph {
  readonly start: number;
  readonly arcsFrom: number[] = [];
  readonly arcsEnd: number[] = [];
  readonly arcPhone: number[] = [];
  readonly arcTo: number[] = [];
  readonly arcWord: number[] = [];
  readonly arcWeight: number[] = [];
  readonly words: readonly string[];
  readonly #spoken: ReadonlyMap<string, Spoken>;
  readonly #mostArcs: number;
  readonly #net: WordNet;
  #states: WordStates;
  #nodes: Node[] = [];
  readonly #nodeOf = new Map<number, number>();
  /** By node of the net. */
  readonly #beginnings: (Beginnings | undefined)[] = [];
  /** What was reached: undefined where nobody came yet. */
  readonly #reached: (BetweenWords | null | undefined)[] = [];

  constructor(net: WordNet, { words, spoken, mostArcs }: Vocabulary) {
    this.#mostArcs = mostArcs;
    this.#net = net;
    this.#states = wordStates(net);
    this.words = words;
    this.#spoken = spoken;
    this.start = this.#nodeOfState(this.#states.begin);
  }

  readonly trim = (mostArcs: number): void => {
    if (this.arcPhone.length > mostArcs) this.renew({ nodes: [], arcs: [] });
  };

  readonly renew = (where: Where): Moved => {
    const nodes = this.#nodes;
    const arcs = where.arcs.map((arc) => ({
      arc,
      phone: this.arcPhone[arc] ?? 0,
      to: this.end(arc),
      told: { word: this.arcWord[arc] ?? -1, weight: this.arcWeight[arc] ?? 0 },
    }));
    const movedState = this.#beginAnew();
    const nodeOf = new Map<number, number>();
    const movedNode = (at: number): number => {
      const known = nodeOf.get(at) ?? this.#addMoved(nodes[at], movedState);
      nodeOf.set(at, known);
      return known;
    };
    return {
      nodes: new Map(where.nodes.map((at) => [at, movedNode(at)])),
      arcs: new Map(
        arcs.map(({ arc, phone, to, told }) => [arc, this.#addArc(phone, movedNode(to), told)]),
      ),
    };
  };

  /** Gives what a state of before is now. */
  #beginAnew(): (state: number) => number {
    const { arcsFrom, arcsEnd, arcPhone, arcTo, arcWord, arcWeight } = this;
    for (const grown of [arcsFrom, arcsEnd, arcPhone, arcTo, arcWord, arcWeight]) grown.length = 0;
    this.#nodes = [];
    this.#reached.length = 0;
    this.#nodeOf.clear();
    const before = this.#states;
    this.#states = wordStates(this.#net);
    this.#nodeOfState(this.#states.begin);
    return this.#states.movedFrom(before);
  }

  #addMoved(node: Node | undefined, moved: (state: number) => number): number {
    switch (node?.kind) {
      case undefined:
        return this.start;
      case 'state':
        return this.#nodeOfState(moved(node.state));
      case 'places':
        return this.#add({ ...node, places: node.places.map(comingBackTo(moved)) });
      case 'within':
        return this.#add({ ...node, sayings: node.sayings.map(comingBackTo(moved)) });
    }
  }

  readonly end = (arc: number): number => {
    const to = this.arcTo[arc] ?? 0;
    const node = this.#nodes[to];
    if (node?.kind !== 'places') return to;
    const known = this.#nodeOfState(this.#states.join(node.places).to);
    this.arcTo[arc] = known;
    return known;
  };

  readonly reach = (node: number): BetweenWords | null => {
    const known = this.#reached[node];
    if (known !== undefined) return known;
    if (this.arcPhone.length >= this.#mostArcs) return null;
    const reached = this.#grow(node);
    this.#reached[node] = reached;
    return reached;
  };

  #grow(at: number): BetweenWords | null {
    const node = this.#nodes[at];
    if (node?.kind === 'state') return this.#growState(at, node.state);
    if (node?.kind === 'within') this.#addArcs(at, node);
    return null;
  }

  #growState(at: number, state: number): BetweenWords {
    const { places, ends, again } = this.#states.at(state);
    const sayings = places.map(({ node, back, logWeight }) => ({
      beginnings: (this.#beginnings[node] ??= beginningsOf(
        this.#states.wordsAt(node),
        this.#spoken,
      )),
      back,
      logWeight,
    }));
    this.#addArcs(at, { sayings, isTold: false });
    return {
      ends,
      again: again.map(({ to, logWeight }) => ({ to: this.#nodeOfState(to), logWeight })),
      standing: ends === null ? 'incomplete' : places.length > 0 ? 'extendable' : 'closed',
    };
  }

  /** The sounds that come next: of words that are over with them, one each; of all longer ones, one together. */
  #addArcs(at: number, { sayings, isTold }: { sayings: readonly Saying[]; isTold: boolean }): void {
    this.arcsFrom[at] = this.arcPhone.length;
    for (const [phone, next] of bySound(sayings)) {
      for (const [word, whole] of grouped(wholeOf(next), ({ word }) => word)) {
        const places = whole.map(({ place }) => place);
        const weight = Math.max(...places.map(({ logWeight }) => logWeight));
        const told = isTold ? NOT_TOLD : { word, weight };
        this.#addArc(phone, this.#add({ kind: 'places', places }), told);
      }
      const longer = longerOf(next);
      if (longer.length === 0) continue;
      const told = isTold ? NOT_TOLD : onlyWord(next);
      const within = { sayings: longer, isTold: isTold || told.word !== -1 };
      this.#addArc(phone, this.#add({ kind: 'within', ...within }), told);
    }
    this.arcsEnd[at] = this.arcPhone.length;
  }

  #addArc(phone: number, to: number, { word, weight }: Told): number {
    this.arcTo.push(to);
    this.arcWord.push(word);
    this.arcWeight.push(weight);
    return this.arcPhone.push(phone) - 1;
  }

  #nodeOfState(state: number): number {
    const known = this.#nodeOf.get(state);
    if (known !== undefined) return known;
    const node = this.#add({ kind: 'state', state });
    this.#nodeOf.set(state, node);
    return node;
  }

  #add(node: Node): number {
    this.arcsFrom.push(0);
    this.arcsEnd.push(0);
    return this.#nodes.push(node) - 1;
  }
}

interface Told {
  readonly word: number;
  readonly weight: number;
}

const NOT_TOLD: Told = { word: -1, weight: 0 };

const comingBackTo =
  (moved: (state: number) => number) =>
  <Each extends { readonly back: number }>(each: Each): Each => ({
    ...each,
    back: moved(each.back),
  });

/** One sound of what is said. */
interface SoundSaid extends Omit<Saying, 'beginnings'> {
  readonly behind: BeginningsBehind;
}

function bySound(sayings: readonly Saying[]): ReadonlyMap<number, readonly SoundSaid[]> {
  const groups = new Map<number, SoundSaid[]>();
  for (const { beginnings, back, logWeight } of sayings) {
    for (const [phone, behind] of beginnings.next) {
      const said = { behind, back, logWeight };
      const group = groups.get(phone);
      if (group === undefined) groups.set(phone, [said]);
      else group.push(said);
    }
  }
  return groups;
}

const wholeOf = (next: readonly SoundSaid[]) =>
  next.flatMap(({ behind, back, logWeight: so }) =>
    behind.whole.map(({ word, to, logWeight }) => ({
      word,
      place: { node: to, back, logWeight: so + logWeight },
    })),
  );

const longerOf = (next: readonly SoundSaid[]): readonly Saying[] =>
  next.flatMap(({ behind: { longer }, back, logWeight }) =>
    longer === null ? [] : [{ beginnings: longer, back, logWeight }],
  );

/** The one word that all longer ones are, if so. */
function onlyWord(next: readonly SoundSaid[]): Told {
  const longer = next.filter(({ behind }) => behind.longer !== null);
  const word = longer[0]?.behind.only ?? -1;
  if (word === -1 || longer.some(({ behind }) => behind.only !== word)) return NOT_TOLD;
  return {
    word,
    weight: Math.max(...longer.map((said) => said.logWeight + said.behind.logWeight)),
  };
}
