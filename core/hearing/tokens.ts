/** One way through the grammar up to now. */
export interface Token {
  /** Its words so far: an index into WordPaths, −1 before the first. */
  path: number;
  /** What it is ranked by, and the log posterior of its path alone. */
  score: number;
  acoustic: number;
  /** The sound it comes from, which may not follow at once. */
  phone: number;
}

/** The words of tokens, each path a link to the one before it: the same words have the same wording. */
export class WordPaths {
  readonly word: number[] = [];
  readonly before: number[] = [];
  readonly startFrame: number[] = [];
  readonly acousticAtStart: number[] = [];
  readonly #wording: number[] = [];
  readonly #following = new Map<number, number>();
  readonly #vocabulary: number;

  constructor(vocabulary: number) {
    this.#vocabulary = vocabulary;
  }

  /** The token's words and one more. */
  add({ path, acoustic }: Token, word: number, startFrame: number): number {
    const key = this.wording(path) * this.#vocabulary + word;
    let wording = this.#following.get(key);
    if (wording === undefined) {
      wording = this.#following.size + 1;
      this.#following.set(key, wording);
    }
    this.word.push(word);
    this.before.push(path);
    this.startFrame.push(startFrame);
    this.acousticAtStart.push(acoustic);
    return this.#wording.push(wording) - 1;
  }

  wording(path: number): number {
    return this.#wording[path] ?? 0;
  }
}

/**
 * The best few tokens at each of many places, those of a place differing in their words (and in the sound they come
 * from, where that is told): in flat arrays, since a second of sound makes a hundred thousand tokens.
 */
export class TokenStore {
  readonly #most: number;
  readonly #paths: WordPaths;
  readonly #counts: Int32Array;
  readonly #path: Int32Array;
  readonly #phone: Uint8Array;
  readonly #score: Float64Array;
  readonly #acoustic: Float64Array;
  /** Where there are tokens, in order of arrival. */
  readonly places: number[] = [];

  constructor(places: number, most: number, paths: WordPaths) {
    this.#most = most;
    this.#paths = paths;
    this.#counts = new Int32Array(places);
    this.#path = new Int32Array(places * most);
    this.#phone = new Uint8Array(places * most);
    this.#score = new Float64Array(places * most);
    this.#acoustic = new Float64Array(places * most);
  }

  count(place: number): number {
    return this.#counts[place] ?? 0;
  }

  /** Copies the n-th token of a place into the one given. */
  read(place: number, nth: number, into: Token): void {
    const at = place * this.#most + nth;
    into.path = this.#path[at] ?? -1;
    into.phone = this.#phone[at] ?? 0;
    into.score = this.#score[at] ?? -Infinity;
    into.acoustic = this.#acoustic[at] ?? -Infinity;
  }

  /** Keeps a token where it is better than its like, or there is room, or it is better than the worst. */
  keep(place: number, token: Token): void {
    const count = this.count(place);
    const first = place * this.#most;
    let at = this.#alike(first, count, token);
    if (at < 0 && count < this.#most) {
      if (count === 0) this.places.push(place);
      this.#counts[place] = count + 1;
      this.#write(first + count, token);
      return;
    }
    if (at < 0) at = this.#worst(first, count);
    if ((this.#score[at] ?? 0) < token.score) this.#write(at, token);
  }

  clear(): void {
    for (const place of this.places) this.#counts[place] = 0;
    this.places.length = 0;
  }

  #write(at: number, { path, phone, score, acoustic }: Token): void {
    this.#path[at] = path;
    this.#phone[at] = phone;
    this.#score[at] = score;
    this.#acoustic[at] = acoustic;
  }

  #alike(first: number, count: number, { path, phone }: Token): number {
    const wording = this.#paths.wording(path);
    for (let at = first; at < first + count; at += 1) {
      if (this.#phone[at] !== phone) continue;
      if (this.#path[at] === path || this.#paths.wording(this.#path[at] ?? -1) === wording)
        return at;
    }
    return -1;
  }

  #worst(first: number, count: number): number {
    let worst = first;
    for (let at = first + 1; at < first + count; at += 1) {
      if ((this.#score[at] ?? 0) < (this.#score[worst] ?? 0)) worst = at;
    }
    return worst;
  }
}
