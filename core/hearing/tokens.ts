/** One way through the grammar up to now. */
export interface Token {
  /** Its words so far: an index into WordPaths, −1 before the first. */
  path: number;
  /** What it is ranked by, and the log posterior of its path alone. */
  score: number;
  acoustic: number;
  /** The sound it comes from, which may not follow at once. */
  phone: number;
  /** Where its last word began, told already or not, and `acoustic` there. */
  since: number;
  acousticSince: number;
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

  /** The token's words and one more, which began where its last one did. */
  add({ path, since, acousticSince }: Token, word: number): number {
    const wording = this.#wordingOf(path, word);
    this.word.push(word);
    this.before.push(path);
    this.startFrame.push(since);
    this.acousticAtStart.push(acousticSince);
    return this.#wording.push(wording) - 1;
  }

  wording(path: number): number {
    return this.#wording[path] ?? 0;
  }

  get count(): number {
    return this.word.length;
  }

  /** Lets go of all paths but these and those before them, and gives each its new number. */
  keepOnly(paths: Iterable<number>): Int32Array {
    const numbers = new Int32Array(this.count);
    for (const path of paths) this.#mark(path, numbers);
    this.#following.clear();
    let kept = 0;
    for (let path = 0; path < numbers.length; path += 1) {
      if (numbers[path] === 0) continue;
      const before = this.before[path] ?? -1;
      this.#move(path, { to: kept, before: before < 0 ? before : (numbers[before] ?? -1) });
      numbers[path] = kept;
      kept += 1;
    }
    const { word, before, startFrame, acousticAtStart } = this;
    for (const each of [word, before, startFrame, acousticAtStart, this.#wording]) {
      each.length = kept;
    }
    return numbers;
  }

  #mark(path: number, marks: Int32Array): void {
    for (let at = path; at >= 0 && marks[at] === 0; at = this.before[at] ?? -1) marks[at] = 1;
  }

  /** To a lower number, its wording counted anew: the one before it is there already. */
  #move(path: number, { to, before }: { readonly to: number; readonly before: number }): void {
    const word = this.word[path] ?? 0;
    this.word[to] = word;
    this.before[to] = before;
    this.startFrame[to] = this.startFrame[path] ?? 0;
    this.acousticAtStart[to] = this.acousticAtStart[path] ?? 0;
    this.#wording[to] = this.#wordingOf(before, word);
  }

  #wordingOf(path: number, word: number): number {
    const key = this.wording(path) * this.#vocabulary + word;
    const known = this.#following.get(key);
    if (known !== undefined) return known;
    const wording = this.#following.size + 1;
    this.#following.set(key, wording);
    return wording;
  }
}

/** Places with tokens before a store grows. */
const FIRST_PLACES = 256;

/**
 * The best few tokens at each of many places, those of a place differing in their words (and in the sound they come
 * from, where that is told): in flat arrays, since a second of sound makes a hundred thousand tokens. Places are as many
 * as the grammar has come to; only those with tokens take room.
 */
export class TokenStore {
  readonly #most: number;
  readonly #paths: WordPaths;
  /** By place, one more than where its tokens are kept; 0 where it has none. */
  #rooms = new Int32Array(0);
  #roomCount = 0;
  #size = 0;
  #counts = new Int32Array(0);
  #path = new Int32Array(0);
  #phone = new Uint8Array(0);
  #since = new Int32Array(0);
  #score = new Float64Array(0);
  #acoustic = new Float64Array(0);
  #acousticSince = new Float64Array(0);
  /** Where there are tokens, in order of arrival. */
  readonly places: number[] = [];

  constructor(most: number, paths: WordPaths) {
    this.#most = most;
    this.#paths = paths;
    this.#furnish(FIRST_PLACES);
  }

  /** Tokens at all places. */
  get size(): number {
    return this.#size;
  }

  count(place: number): number {
    const room = this.#rooms[place] ?? 0;
    return room === 0 ? 0 : (this.#counts[room - 1] ?? 0);
  }

  /** Copies the n-th token of a place into the one given. */
  read(place: number, nth: number, into: Token): void {
    const at = ((this.#rooms[place] ?? 1) - 1) * this.#most + nth;
    into.path = this.#path[at] ?? -1;
    into.phone = this.#phone[at] ?? 0;
    into.since = this.#since[at] ?? 0;
    into.score = this.#score[at] ?? -Infinity;
    into.acoustic = this.#acoustic[at] ?? -Infinity;
    into.acousticSince = this.#acousticSince[at] ?? 0;
  }

  /** Keeps a token where it is better than its like, or there is room, or it is better than the worst. */
  keep(place: number, token: Token): void {
    const room = this.#roomOf(place);
    const count = this.#counts[room] ?? 0;
    const first = room * this.#most;
    let at = this.#alike(first, count, token);
    if (at < 0 && count < this.#most) {
      this.#counts[room] = count + 1;
      this.#size += 1;
      this.#write(first + count, token);
      return;
    }
    if (at < 0) at = this.#worst(first, count);
    if ((this.#score[at] ?? 0) < token.score) this.#write(at, token);
  }

  clear(): void {
    for (const place of this.places) this.#rooms[place] = 0;
    this.places.length = 0;
    this.#roomCount = 0;
    this.#size = 0;
  }

  /** Each place becomes another, none two of them the same. */
  move(to: ReadonlyMap<number, number>): void {
    const rooms = this.places.map((place) => this.#rooms[place] ?? 0);
    for (const place of this.places) this.#rooms[place] = 0;
    for (const [at, room] of rooms.entries()) {
      const place = to.get(this.places[at] ?? 0) ?? 0;
      this.#rooms[place] = room;
      this.places[at] = place;
    }
  }

  *scores(): Generator<number> {
    for (const at of this.#tokens()) yield this.#score[at] ?? -Infinity;
  }

  *paths(): Generator<number> {
    for (const at of this.#tokens()) yield this.#path[at] ?? -1;
  }

  /** By what WordPaths.keepOnly gave. */
  renumber(paths: Int32Array): void {
    for (const at of this.#tokens()) this.#path[at] = paths[this.#path[at] ?? -1] ?? -1;
  }

  /** Gives up what lies below `least`, and all but so many of those on it; gives how many of these were not needed. */
  thin(least: number, onIt: number): number {
    let left = onIt;
    const places = [...this.places];
    this.places.length = 0;
    this.#size = 0;
    for (const place of places) {
      const room = (this.#rooms[place] ?? 1) - 1;
      const first = room * this.#most;
      const end = first + (this.#counts[room] ?? 0);
      let to = first;
      for (let at = first; at < end; at += 1) {
        const score = this.#score[at] ?? -Infinity;
        if (score < least || (score === least && left === 0)) continue;
        if (score === least) left -= 1;
        this.#copy(at, to);
        to += 1;
      }
      this.#settle(place, to - first);
    }
    return left;
  }

  #settle(place: number, count: number): void {
    this.#counts[(this.#rooms[place] ?? 1) - 1] = count;
    this.#size += count;
    if (count === 0) this.#rooms[place] = 0;
    else this.places.push(place);
  }

  /** Where each token is kept. */
  *#tokens(): Generator<number> {
    for (const place of this.places) {
      const first = ((this.#rooms[place] ?? 1) - 1) * this.#most;
      const end = first + this.count(place);
      for (let at = first; at < end; at += 1) yield at;
    }
  }

  #roomOf(place: number): number {
    if (place >= this.#rooms.length)
      this.#rooms = grown(this.#rooms, new Int32Array(2 * place + 1));
    const known = this.#rooms[place] ?? 0;
    if (known > 0) return known - 1;
    const room = this.#roomCount;
    if (room >= this.#counts.length) this.#furnish(2 * room);
    this.#roomCount = room + 1;
    this.#rooms[place] = room + 1;
    this.#counts[room] = 0;
    this.places.push(place);
    return room;
  }

  #furnish(rooms: number): void {
    const tokens = rooms * this.#most;
    this.#counts = grown(this.#counts, new Int32Array(rooms));
    this.#path = grown(this.#path, new Int32Array(tokens));
    this.#since = grown(this.#since, new Int32Array(tokens));
    this.#phone = grown(this.#phone, new Uint8Array(tokens));
    this.#score = grown(this.#score, new Float64Array(tokens));
    this.#acoustic = grown(this.#acoustic, new Float64Array(tokens));
    this.#acousticSince = grown(this.#acousticSince, new Float64Array(tokens));
  }

  #write(at: number, token: Token): void {
    this.#path[at] = token.path;
    this.#phone[at] = token.phone;
    this.#since[at] = token.since;
    this.#score[at] = token.score;
    this.#acoustic[at] = token.acoustic;
    this.#acousticSince[at] = token.acousticSince;
  }

  #copy(from: number, to: number): void {
    this.#path[to] = this.#path[from] ?? -1;
    this.#phone[to] = this.#phone[from] ?? 0;
    this.#since[to] = this.#since[from] ?? 0;
    this.#score[to] = this.#score[from] ?? -Infinity;
    this.#acoustic[to] = this.#acoustic[from] ?? -Infinity;
    this.#acousticSince[to] = this.#acousticSince[from] ?? 0;
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

function grown<Numbers extends Int32Array | Uint8Array | Float64Array>(
  from: Numbers,
  into: Numbers,
): Numbers {
  into.set(from);
  return into;
}
