/**
 * What the search must find, found the slow way: every sentence of a small grammar is written out, and
 * each is aligned with the frames by the textbook recursion over its phones with blanks between.
 */
export interface Scored {
  readonly words: string;
  readonly score: number;
}

export interface Utterance {
  readonly frames: readonly Float32Array[];
  readonly phoneBonus: number;
}

/** The best score of each wording, the best first; `sentences` are lists of [word, phones] pairs. */
export function bestOfAll(
  sentences: readonly (readonly (readonly [string, readonly number[]])[])[],
  utterance: Utterance,
): readonly Scored[] {
  const best = new Map<string, number>();
  for (const sentence of sentences) {
    const words = sentence.map(([word]) => word).join(' ');
    const phones = sentence.flatMap(([, sounds]) => sounds);
    const score = align(phones, utterance.frames) + utterance.phoneBonus * phones.length;
    if (score > (best.get(words) ?? -Infinity)) best.set(words, score);
  }
  return [...best]
    .map(([words, score]) => ({ words, score }))
    .sort((one, other) => other.score - one.score);
}

/** Log probability of the likeliest path whose sounds are these, blanks and stays collapsed. */
function align(phones: readonly number[], frames: readonly Float32Array[]): number {
  const labels = [0, ...phones.flatMap((phone) => [phone, 0])];
  const posterior = (frame: Float32Array, at: number): number =>
    frame[labels[at] ?? 0] ?? -Infinity;
  const [first, ...others] = frames;
  if (first === undefined) return phones.length === 0 ? 0 : -Infinity;
  let column = labels.map((_, at) => (at < 2 ? posterior(first, at) : -Infinity));
  for (const frame of others) {
    column = labels.map((label, at) => {
      const from = [column[at], column[at - 1]];
      if (label !== 0 && label !== labels[at - 2]) from.push(column[at - 2]);
      return Math.max(...from.map((each) => each ?? -Infinity)) + posterior(frame, at);
    });
  }
  return Math.max(column.at(-1) ?? -Infinity, column.at(-2) ?? -Infinity);
}
