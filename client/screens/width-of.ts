/** Of a word, in usual characters: "moment" is as wide as seven of them. */
export function widthOf(word: string): number {
  return word.length + 0.55 * (word.match(/[mw%]/g)?.length ?? 0);
}
