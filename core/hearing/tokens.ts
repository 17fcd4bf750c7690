/** A wording so far, as a branch of the tree of all wordings: the same words are the same object. */
export interface Said {
  readonly word: string;
  readonly following: Map<string, Said>;
}

/** The words of a token, the last first, with when each began. */
export interface WordPath {
  readonly said: Said;
  readonly before: WordPath | null;
  readonly startFrame: number;
  readonly acousticAtStart: number;
}

/** One way through the grammar up to now. */
export interface Token {
  /** Null before the first word. */
  readonly path: WordPath | null;
  /** What it is ranked by, and the log posterior of its path alone. */
  readonly score: number;
  readonly acoustic: number;
}

/** A token between sounds: the sound it comes from may not follow at once. */
export interface Arrival {
  readonly token: Token;
  readonly phone: number;
}

/** The tree of wordings of one utterance. */
export function createWordings(): (token: Token, word: string, startFrame: number) => WordPath {
  const none: Said = { word: '', following: new Map() };
  return ({ path, acoustic }, word, startFrame) => {
    const { following } = path?.said ?? none;
    let said = following.get(word);
    if (said === undefined) {
      said = { word, following: new Map() };
      following.set(word, said);
    }
    return { said, before: path, startFrame, acousticAtStart: acoustic };
  };
}

const sameWords = (one: Token, other: Token): boolean => one.path?.said === other.path?.said;

/** Keeps the best `most` tokens of different wordings, in no order. */
export function keepToken(tokens: Token[], token: Token, most: number): void {
  keep(tokens, token, { most, alike: sameWords, scoreOf });
}

/** As `keepToken`; those that come from different sounds are told apart too. */
export function keepArrival(arrivals: Arrival[], arrival: Arrival, most: number): void {
  keep(arrivals, arrival, { most, alike: sameArrival, scoreOf: arrivalScore });
}

const scoreOf = (token: Token): number => token.score;
const arrivalScore = (arrival: Arrival): number => arrival.token.score;
const sameArrival = (one: Arrival, other: Arrival): boolean =>
  one.phone === other.phone && sameWords(one.token, other.token);

interface Keeping<Kept> {
  readonly most: number;
  readonly alike: (one: Kept, other: Kept) => boolean;
  readonly scoreOf: (kept: Kept) => number;
}

function keep<Kept>(list: Kept[], fresh: Kept, { most, alike, scoreOf }: Keeping<Kept>): void {
  let place = list.findIndex((kept) => alike(kept, fresh));
  if (place < 0 && list.length < most) {
    list.push(fresh);
    return;
  }
  if (place < 0) place = worstOf(list, scoreOf);
  const replaced = list[place];
  if (replaced === undefined || scoreOf(replaced) < scoreOf(fresh)) list[place] = fresh;
}

function worstOf<Kept>(list: readonly Kept[], scoreOf: (kept: Kept) => number): number {
  return list.reduce((worst, kept, at) => {
    const least = list[worst];
    return least !== undefined && scoreOf(kept) < scoreOf(least) ? at : worst;
  }, 0);
}
